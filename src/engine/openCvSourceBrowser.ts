import build, { wasmUrl } from 'virtual:opencv';
import { embindCallers } from './embindCallers.ts';
import type { OpenCvSource } from './openCvSource.ts';

/** OpenCV in a page or worker: the .wasm that the build split out streams from our own origin while it compiles. */
export async function openCvSource(onProgress: (share: number) => void): Promise<OpenCvSource> {
  const worker = { location: { href: '' } };
  const factory = build(undefined, undefined, () => undefined, worker, embindCallers);
  const response = await fetch(wasmUrl);
  if (!response.ok) throw new Error(`OpenCV could not be fetched (${response.status}).`);
  const told = follow(response.clone(), onProgress);
  const compiled = await WebAssembly.compileStreaming(response);
  await told;
  return { factory, compiled };
}

/** Reads a copy of the response to tell how much of it has come. */
async function follow(copy: Response, onProgress: (share: number) => void): Promise<void> {
  const reader = copy.body?.getReader();
  const total = Number(copy.headers.get('content-length')) || 8e6;
  let come = 0;
  for (let part = await reader?.read(); part && !part.done; part = await reader?.read()) {
    come += part.value.length;
    onProgress(Math.min(0.9, (0.9 * come) / total));
  }
}
