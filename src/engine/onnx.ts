import { onnxPlaces } from '#onnx';
import * as ort from 'onnxruntime-web/wasm';
import { FoilproofError } from '../words/index.ts';
import { learned } from '../words/learned.ts';

/** A trained net with one picture in and one stack of maps out. */
export interface Net {
  /**
   * @param planes channel-major floats, channels * height * width
   * @returns channel-major floats of the same height and width
   */
  run(planes: Float32Array, height: number, width: number): Promise<Float32Array>;
}

const open = new Map<string, Promise<Net>>();
let runner: Promise<void> | undefined;

/**
 * Loads a net of public/models/ once; later calls give the same one.
 * @throws FoilproofError when the runner or the weights cannot be read
 */
export function openNet(file: string): Promise<Net> {
  const known = open.get(file);
  if (known) return known;
  const net = start(file).catch((error: unknown) => {
    open.delete(file);
    throw new FoilproofError(learned.weightsNotLoaded(file, error instanceof Error ? error.message : ''));
  });
  open.set(file, net);
  return net;
}

async function start(file: string): Promise<Net> {
  runner ??= startRunner();
  const [weights] = await Promise.all([onnxPlaces.model(file), runner]);
  const settings = { executionProviders: ['wasm'], graphOptimizationLevel: 'all' } as const;
  const session = await inTurn(() => ort.InferenceSession.create(weights, settings));
  const [input] = session.inputNames;
  const [output] = session.outputNames;
  return {
    async run(planes, height, width) {
      const channels = planes.length / (height * width);
      const picture = new ort.Tensor('float32', planes, [1, channels, height, width]);
      const answer = await inTurn(() => session.run({ [input]: picture }));
      return answer[output].data as Float32Array;
    },
  };
}

let before: Promise<unknown> = Promise.resolve();

/** One after another: what the runner lays on its stack is overwritten where a second call begins before the first has ended. */
function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const turn = before.then(work, work);
  before = turn;
  return turn;
}

async function startRunner(): Promise<void> {
  try {
    Object.assign(ort.env.wasm, await onnxPlaces.runner());
  } catch (error) {
    runner = undefined;
    throw error;
  }
}
