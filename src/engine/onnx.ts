import { onnxPlaces } from '#onnx';
import { FoilproofError } from '../words/index.ts';
import { learned } from '../words/learned.ts';
import type { GpuChoice } from './gpuHere.ts';
import type { Net } from './net.ts';
import { netsOn } from './nets.ts';
import { wasmRunner } from './onnxWasm.ts';

export type { Net } from './net.ts';

const nets = netsOn(wasmRunner, onnxPlaces.model);

/**
 * Loads a net of public/models/ once; later calls give the same one.
 * @throws FoilproofError when the runner or the weights cannot be read
 */
export async function openNet(file: string): Promise<Net> {
  try {
    return await nets.open(file);
  } catch (error) {
    throw new FoilproofError(learned.weightsNotLoaded(file, error instanceof Error ? error.message : ''));
  }
}

/**
 * Lets the graphics processor take over the nets, where a page has one. Nothing waits for it, and nothing fails with it.
 * @returns whether it runs them
 */
export function quickenNets(choice?: GpuChoice): Promise<boolean> {
  return nets.quicken(() => onnxPlaces.gpu(choice));
}
