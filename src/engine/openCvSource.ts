import type * as OpenCv from '@techstark/opencv-js';

/** The OpenCV module: matrices and functions under their usual names. */
export type Cv = typeof OpenCv;

export interface OpenCvOptions {
  instantiateWasm(imports: WebAssembly.Imports, receive: (instance: WebAssembly.Instance) => void): object;
  onRuntimeInitialized(): void;
  onAbort(reason: unknown): void;
  printErr(line: string): void;
}

export type OpenCvFactory = (options: OpenCvOptions) => Cv & { then?: unknown };

/** What an instance is made from; the Node and the browser file each give it in their own way. */
export interface OpenCvSource {
  factory: OpenCvFactory;
  compiled: WebAssembly.Module;
}
