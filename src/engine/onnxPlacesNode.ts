import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { OnnxPlaces } from './onnxPlaces.ts';

const models = new URL('../../public/models/', import.meta.url);

/** The runner as npm put it, the weights as they lie in the checkout. */
export const onnxPlaces: OnnxPlaces = {
  async runner() {
    const path = createRequire(import.meta.url).resolve('onnxruntime-web/ort-wasm-simd-threaded.wasm');
    const file = await readFile(path);
    return file.buffer.slice(file.byteOffset, file.byteOffset + file.byteLength) as ArrayBuffer;
  },
  model: (file) => readFile(new URL(file, models)),
};
