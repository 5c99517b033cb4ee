import { onnxPlaces } from '#onnx';
import * as ort from 'onnxruntime-web/wasm';
import { oneByOne, turns } from './inTurn.ts';
import type { Runner } from './net.ts';
import { netOf } from './onnxSession.ts';

const settings = { executionProviders: ['wasm'], graphOptimizationLevel: 'all' } as const;
const inTurn = turns();
let started: Promise<void> | undefined;

/** The runner on the processor, by WebAssembly: to be had everywhere, and the measure of any other. */
export const wasmRunner: Runner = {
  async open(weights) {
    await (started ??= start());
    const session = await inTurn(() => ort.InferenceSession.create(weights, settings));
    return oneByOne(netOf(session, ort.Tensor), inTurn);
  },
};

async function start(): Promise<void> {
  try {
    Object.assign(ort.env.wasm, await onnxPlaces.runner());
  } catch (error) {
    started = undefined;
    throw error;
  }
}
