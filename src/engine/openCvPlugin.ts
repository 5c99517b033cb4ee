import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { splitOpenCv } from './splitOpenCv.ts';

const id = 'virtual:opencv';

/**
 * Serves and builds `virtual:opencv`: the glue as an ES module without base64, and its WebAssembly as a file of our
 * own origin. The split is made once and kept beside the packages. Needed for workers too (`worker.plugins`).
 */
export function openCvPlugin(): Plugin {
  const require = createRequire(import.meta.url);
  const path = require.resolve('@techstark/opencv-js');
  const kept = join(path, '../../../../.cache/foilproof');
  return {
    name: 'foilproof-opencv',
    enforce: 'pre',
    resolveId: (source) => (source === id ? `\0${id}` : undefined),
    load(asked) {
      if (asked !== `\0${id}`) return undefined;
      const wasmFile = join(kept, 'opencv-4.12.wasm');
      const { glue, wasm } = splitOpenCv(readFileSync(path, 'latin1'), (base64) =>
        Buffer.from(base64, 'base64'),
      );
      if (!existsSync(wasmFile)) {
        mkdirSync(kept, { recursive: true });
        writeFileSync(wasmFile, wasm);
      }
      return [
        `export { default as wasmUrl } from ${JSON.stringify(`${wasmFile}?url`)};`,
        `export default function (process, require, importScripts, self, embind) {\n${glue}\n}`,
      ].join('\n');
    },
  };
}
