import glueUrl from 'onnxruntime-web/ort-wasm-simd-threaded.asyncify.mjs?url';
import runnerUrl from 'onnxruntime-web/ort-wasm-simd-threaded.asyncify.wasm?url';
import * as ort from 'onnxruntime-web/webgpu';
import { watched, type GpuDevice } from './gpuFaults.ts';
import { oneByOne, turns } from './inTurn.ts';
import type { QuickRunner } from './net.ts';
import { netOf } from './onnxSession.ts';
import { ownAddress } from './ownAddress.ts';

// Where there is no such device the session is refused: a second name in the list would quietly stand in for it.
const settings = { executionProviders: ['webgpu'], graphOptimizationLevel: 'all' } as const;

/** The runner on the graphics processor, by WebGPU. Some 27 MB: this file is imported only where it is to be used. */
export function gpuRunner(): QuickRunner {
  const inTurn = turns();
  const sessions: ort.InferenceSession[] = [];
  const wasmPaths = { mjs: ownAddress(glueUrl), wasm: ownAddress(runnerUrl) };
  Object.assign(ort.env.wasm, { numThreads: 1, wasmPaths });
  return {
    async open(weights) {
      const session = await inTurn(() => ort.InferenceSession.create(weights, settings));
      sessions.push(session);
      return oneByOne(watched(netOf(session, ort.Tensor), await device()), inTurn);
    },
    async close() {
      const held = sessions.splice(0);
      if (held.length === 0) return;
      await Promise.allSettled(held.map((session) => inTurn(() => session.release())));
      (await device()).destroy();
    },
  };
}

/** The device that the runner has chosen; known once it has a session. */
async function device(): Promise<GpuDevice> {
  return (await ort.env.webgpu.device) as unknown as GpuDevice;
}
