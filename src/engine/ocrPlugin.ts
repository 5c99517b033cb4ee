import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Plugin } from 'vite';

/** The text recogniser's own files under the page's `ocr/`, so that nothing is fetched from elsewhere. */
const files: Record<string, { from: string; type: string }> = {
  'eng.traineddata.gz': {
    from: '@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz',
    type: 'application/octet-stream',
  },
  'worker.min.js': { from: 'tesseract.js/dist/worker.min.js', type: 'text/javascript' },
  'core.js': { from: 'tesseract.js-core/tesseract-core-simd-lstm.wasm.js', type: 'text/javascript' },
};

/** Serves the recogniser's files in development and writes them out in a build, under names that do not change. */
export function ocrPlugin(): Plugin {
  const require = createRequire(import.meta.url);
  const read = (name: string) => readFileSync(require.resolve(files[name].from));
  return {
    name: 'foilproof-ocr',
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const name = /\/ocr\/([\w.]+)$/.exec(request.url?.split('?')[0] ?? '')?.[1];
        if (!name || !files[name]) return next();
        response.setHeader('Content-Type', files[name].type);
        response.end(read(name));
      });
    },
    generateBundle() {
      for (const name of Object.keys(files)) {
        this.emitFile({ type: 'asset', fileName: `ocr/${name}`, source: read(name) });
      }
    },
  };
}
