import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Plugin } from 'vite';
import { readerBytes, readerFiles, readerFolder, type ReaderFile } from './ocrFiles.ts';

/** Where npm put the recogniser's own files, so that nothing is fetched from elsewhere. */
const from: Record<ReaderFile, string> = {
  'eng.traineddata.gz': '@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz',
  'worker.min.js': 'tesseract.js/dist/worker.min.js',
  'core.js': 'tesseract.js-core/tesseract-core-simd-lstm.wasm.js',
};

const types: Record<ReaderFile, string> = {
  'eng.traineddata.gz': 'application/octet-stream',
  'worker.min.js': 'text/javascript',
  'core.js': 'text/javascript',
};

const isFile = (name: string | undefined): name is ReaderFile =>
  (readerFiles as readonly unknown[]).includes(name);

/** Serves the recogniser's files in development and writes them out in a build, under names that do not change. */
export function ocrPlugin(): Plugin {
  const require = createRequire(import.meta.url);
  const read = (name: ReaderFile) => readFileSync(require.resolve(from[name]));
  return {
    name: 'foilproof-ocr',
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const [folder, name] = request.url?.split('?')[0].split('/').slice(-2) ?? [];
        if (folder !== readerFolder || !isFile(name)) return next();
        response.setHeader('Content-Type', types[name]);
        response.end(read(name));
      });
    },
    generateBundle() {
      const { version } = require('tesseract.js/package.json') as { version: string };
      if (readerFolder !== `ocr-${version}`)
        this.error(`The reader is ${version}; its folder is named ${readerFolder}.`);
      let bytes = 0;
      for (const name of readerFiles) {
        const source = read(name);
        bytes += source.length;
        this.emitFile({ type: 'asset', fileName: `${readerFolder}/${name}`, source });
      }
      if (Math.abs(bytes - readerBytes) > 1e5)
        this.error(`The reader's files have ${bytes} bytes, not ${readerBytes}.`);
    },
  };
}
