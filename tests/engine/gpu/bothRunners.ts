import { onnxPlaces } from '#onnx';
import type { Net, QuickRunner } from '../../../src/engine/net.ts';
import { netsOn } from '../../../src/engine/nets.ts';
import { wasmRunner } from '../../../src/engine/onnxWasm.ts';
import { farthest } from '../../../src/engine/sameAnswer.ts';
import type { Question, Told } from './protocol.ts';

/** What is needed of a GPUAdapter. */
interface Adapter {
  requestDevice(...asked: unknown[]): Promise<{ destroy(): void }>;
}
declare const GPUAdapter: { prototype: Adapter };

self.onmessage = ({ data }: MessageEvent<Question>) =>
  answer(data).then(
    (told) => self.postMessage(told),
    (error: unknown) => self.postMessage({ failed: String(error) } satisfies Told),
  );

async function answer({ planes, side }: Question): Promise<Told> {
  const runner = await onnxPlaces.gpu({ played: true });
  if (!runner) return { none: 'this Chromium gives no graphics processor, not even a played one' };
  const unasked = (await onnxPlaces.gpu()) !== undefined;
  const picture = Float32Array.from(planes);
  const nets = netsOn(wasmRunner, onnxPlaces.model);
  const net = await nets.open('sheet.onnx');
  await nets.open('base.onnx');
  const wasm = await ask(net, picture, side);
  const counted = counting(runner);
  const devices = devicesFrom(GPUAdapter.prototype);
  const taken = await nets.quicken(async () => counted.runner);
  const before = counted.asked();
  const gpu = await ask(net, picture, side);
  const asked = counted.asked() - before;
  const lost = await runAndLose(net, picture, side, devices);
  const area = side * side;
  const copper = wasm.maps.subarray(0, area);
  return {
    unasked,
    taken,
    asked,
    apart: farthest(wasm.maps, gpu.maps),
    apartOnceLost: farthest(wasm.maps, lost),
    askedOnceLost: counted.asked() - before - asked,
    alike: copper.filter((logit, k) => logit > 0 === gpu.maps[k] > 0).length / area,
    filled: copper.filter((logit) => logit > 0).length / area,
    wasmMs: wasm.ms,
    gpuMs: gpu.ms,
  };
}

async function ask(
  net: Net,
  picture: Float32Array,
  side: number,
): Promise<{ maps: Float32Array; ms: number }> {
  const start = performance.now();
  const maps = await net.run(picture, side, side);
  return { maps, ms: performance.now() - start };
}

/** The same runner, and how often a net of it has answered. */
function counting(runner: QuickRunner): { runner: QuickRunner; asked(): number } {
  let asked = 0;
  const open = async (weights: Uint8Array) => {
    const net = await runner.open(weights);
    const run: Net['run'] = async (...picture) => {
      const maps = await net.run(...picture);
      asked++;
      return maps;
    };
    return { run };
  };
  return { runner: { ...runner, open }, asked: () => asked };
}

/** Every device that is asked for from now on. */
function devicesFrom(adapter: Adapter): { destroy(): void }[] {
  const devices: { destroy(): void }[] = [];
  const request = adapter.requestDevice;
  adapter.requestDevice = async function (...asked) {
    const device = await request.apply(this, asked);
    devices.push(device);
    return device;
  };
  return devices;
}

/** What is answered where every device goes in the middle of a run. */
async function runAndLose(net: Net, picture: Float32Array, side: number, devices: { destroy(): void }[]) {
  if (devices.length === 0) throw new Error('No device was asked for.');
  const answer = net.run(picture, side, side);
  await new Promise((resolve) => setTimeout(resolve, 50));
  for (const device of devices) device.destroy();
  return answer;
}
