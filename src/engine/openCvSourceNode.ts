import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { embindCallers } from './embindCallers.ts';
import type { OpenCvFactory, OpenCvSource } from './openCvSource.ts';
import { splitOpenCv } from './splitOpenCv.ts';

/**
 * OpenCV in Node: the package's script is read and split at run time, since there is no build step.
 * The glue is told that it runs in a worker, so that it does not take over the process's error handlers.
 */
export async function openCvSource(onProgress: (share: number) => void): Promise<OpenCvSource> {
  const path = createRequire(import.meta.url).resolve('@techstark/opencv-js');
  const script = await readFile(path, 'latin1');
  onProgress(0.3);
  const { glue, wasm } = splitOpenCv(script, (base64) => Buffer.from(base64, 'base64'));
  const build = new Function('process', 'require', 'importScripts', 'self', 'embind', glue);
  const worker = { location: { href: '' } };
  const factory = build(undefined, undefined, () => undefined, worker, embindCallers) as OpenCvFactory;
  const compiled = await WebAssembly.compile(wasm as BufferSource);
  onProgress(0.9);
  return { factory, compiled };
}
