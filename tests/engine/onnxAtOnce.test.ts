import { expect, test } from 'vitest';
import { openNet } from '../../src/engine/onnx.ts';

/** A picture of its own for each seed: 3 planes of side * side. */
const picture = (side: number, seed: number) =>
  Float32Array.from({ length: 3 * side * side }, (_, k) => Math.sin(k * 0.01 + seed));

test('nets that are opened and run at once answer as they do one after another', async () => {
  const files = ['sheet.onnx', 'base.onnx'];
  const ask = async (file: string, n: number) => {
    const side = 64 * (n + 1);
    return (await openNet(file)).run(picture(side, n), side, side);
  };
  const asked = files.flatMap((file) => [0, 1].map((n) => [file, n] as const));
  const atOnce = await Promise.all(asked.map(([file, n]) => ask(file, n)));
  for (const [k, [file, n]] of asked.entries()) expect(atOnce[k]).toEqual(await ask(file, n));
});
