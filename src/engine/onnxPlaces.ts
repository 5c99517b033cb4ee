import type { Env } from 'onnxruntime-web/wasm';
import type { GpuChoice } from './gpuHere.ts';
import type { QuickRunner } from './net.ts';

/** Where the net runner and the trained weights lie: our own origin in a page, the disk in Node. */
export interface OnnxPlaces {
  /** How the runner is found, and how many threads it may take. */
  runner(): Promise<Pick<Env.WebAssemblyFlags, 'numThreads' | 'wasmBinary' | 'wasmPaths'>>;
  /** A file of public/models/. */
  model(file: string): Promise<Uint8Array>;
  /** The runner on a graphics processor, where there is one to run on. */
  gpu(choice?: GpuChoice): Promise<QuickRunner | undefined>;
}
