import { openCvSource } from '#opencv';
import type { Cv } from './openCvSource.ts';

export type { Cv } from './openCvSource.ts';

let loading: Promise<Cv> | undefined;

/**
 * Starts OpenCV once; later calls give the same instance.
 * @param onProgress told shares 0..1 of the way to ready, only by the call that starts it
 */
export function loadOpenCv(onProgress: (share: number) => void = () => undefined): Promise<Cv> {
  loading ??= start(onProgress).catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

async function start(onProgress: (share: number) => void): Promise<Cv> {
  const { factory, compiled } = await openCvSource(onProgress);
  const cv = await new Promise<ReturnType<typeof factory>>((resolve, reject) => {
    const made = factory({
      instantiateWasm(imports, receive) {
        WebAssembly.instantiate(compiled, imports).then(receive).catch(reject);
        return {};
      },
      // The instance has a `then` of its own that never settles a promise; without it the instance is a plain value.
      onRuntimeInitialized() {
        delete made.then;
        resolve(made);
      },
      onAbort: reject,
      printErr: () => undefined,
    });
  });
  onProgress(1);
  return cv;
}
