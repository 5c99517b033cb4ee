import runnerUrl from 'onnxruntime-web/ort-wasm-simd-threaded.wasm?url';
import type { OnnxPlaces } from './onnxPlaces.ts';

/** A built script or worker lies in assets/, one folder below the page; the development server serves from the root. */
const models = import.meta.env.DEV ? '/models/' : '../models/';

/** Everything from our own origin. */
export const onnxPlaces: OnnxPlaces = {
  runner: async () => (await fetched(new URL(runnerUrl, import.meta.url))).arrayBuffer(),
  async model(file) {
    const response = await fetched(new URL(models + file, import.meta.url));
    return new Uint8Array(await response.arrayBuffer());
  },
};

async function fetched(url: URL): Promise<Response> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`.trim());
  return response;
}
