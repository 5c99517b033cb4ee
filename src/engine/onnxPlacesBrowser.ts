import glueUrl from 'onnxruntime-web/ort-wasm-simd-threaded.mjs?url';
import runnerUrl from 'onnxruntime-web/ort-wasm-simd-threaded.wasm?url';
import { gpuHere } from './gpuHere.ts';
import type { OnnxPlaces } from './onnxPlaces.ts';
import { ownAddress } from './ownAddress.ts';

/** A built script or worker lies in assets/, one folder below the page; the development server serves from the root. */
const models = import.meta.env.DEV ? '/models/' : '../models/';

/** More threads than these gain little on nets of this size. */
const mostThreads = 4;

/** Everything from our own origin. The runner streams; its threads share memory, which only an isolated page may do. */
export const onnxPlaces: OnnxPlaces = {
  runner: async () => ({
    numThreads: self.crossOriginIsolated ? Math.min(navigator.hardwareConcurrency, mostThreads) : 1,
    wasmPaths: { mjs: ownAddress(glueUrl), wasm: ownAddress(runnerUrl) },
  }),
  async model(file) {
    const response = await fetch(ownAddress(models + file));
    if (!response.ok) throw new Error(`${response.status} ${response.statusText}`.trim());
    return new Uint8Array(await response.arrayBuffer());
  },
  async gpu(choice) {
    if (!(await gpuHere(choice))) return undefined;
    const { gpuRunner } = await import('./onnxGpu.ts');
    return { ...gpuRunner(), untimed: choice?.played };
  },
};
