import type { Env } from 'onnxruntime-web/wasm';

/** Where the net runner and the trained weights lie: our own origin in a page, the disk in Node. */
export interface OnnxPlaces {
  /** How the runner is found, and how many threads it may take. */
  runner(): Promise<Pick<Env.WebAssemblyFlags, 'numThreads' | 'wasmBinary' | 'wasmPaths'>>;
  /** A file of public/models/. */
  model(file: string): Promise<Uint8Array>;
}
