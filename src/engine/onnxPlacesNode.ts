import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { OnnxPlaces } from './onnxPlaces.ts';

const models = new URL('../../public/models/', import.meta.url);

/** The runner as npm put it, on one thread, since the pool of `foilproof check` keeps every core busy; the weights of the checkout. */
export const onnxPlaces: OnnxPlaces = {
  async runner() {
    const path = createRequire(import.meta.url).resolve('onnxruntime-web/ort-wasm-simd-threaded.wasm');
    const file = await readFile(path);
    return {
      numThreads: 1,
      wasmBinary: file.buffer.slice(file.byteOffset, file.byteOffset + file.length) as ArrayBuffer,
    };
  },
  model: (file) => readFile(new URL(file, models)),
  gpu: async () => undefined,
};
