import { Matrix, solve } from 'ml-matrix';
import { classical } from '../../../src/copper/classical.ts';
import { fuseLearned } from '../../../src/copper/fuseLearned.ts';
import { seeCopperLearned } from '../../../src/copper/learned/index.ts';
import { meanLikelihood } from '../../../src/copper/readable.ts';
import type { Sureness } from '../../../src/copper/readable.ts';
import { overlap } from '../../../src/copper/seeCopper.ts';
import { decodePhoto } from '../../../src/photo/decodeNode.ts';
import { squareUp } from '../../../src/sheet/index.ts';
import { compareMask } from '../../exam/compareMask.ts';
import { frameFromCorners } from '../../exam/frame.ts';
import { namesIn, readEntry } from '../../exam/readSet.ts';

/**
 * npx tsx tests/copper/fit/fitReadable.ts DIR: the weights of `readable` from photographs with truth, true corners.
 * The shipped ones are of the second look's pictures 100 to 123 (tests/generate/secondLook.ts DIR 24 100).
 */
const badMask = 0.6;
/** Ridge on the weights, and how many needless warnings one bad mask that passes weighs. */
const ridge = 0.3;
const cost = 4;

interface Sample extends Sureness {
  name: string;
  iou: number;
}

async function sampleOf(folder: string, name: string): Promise<Sample> {
  const { card, cornersPx, k1 = 0, mask, photoPath } = await readEntry(folder, name);
  if (!cornersPx) throw new Error(`${name} has no true corners.`);
  const photo = await decodePhoto(photoPath);
  const { width_mm: width, height_mm: height } = card.base;
  const sheet = squareUp(photo, cornersPx, { width, height }, { pxPerMm: 10, marginMm: 0, k1 });
  const alone = classical(sheet, [], []);
  const fused = fuseLearned(sheet, alone, await seeCopperLearned(sheet));
  const frame = frameFromCorners(cornersPx, card.base, photo, k1);
  const whole = { ...sheet, ...fused, readable: 1, troubles: [], by: 'learned' as const };
  const { iou } = compareMask(whole, frame, mask, frame, card.base);
  return { name, iou, mean: meanLikelihood(fused), agreement: overlap(fused.filled, alone.filled) };
}

/** Logistic regression with a ridge, Newton's steps. @returns usual, mean, agreement */
function fit(samples: readonly Sample[]): number[] {
  const rows = samples.map(({ mean, agreement }) => [1, 10 * (mean - 0.75), 2 * (agreement - 0.5)]);
  let weights = [0, 0, 0];
  for (let step = 0; step < 50; step++) {
    const slope = weights.map((w, c) => (c ? -ridge * w : 0));
    const curve = Matrix.diag([1e-6, ridge, ridge]);
    rows.forEach((row, n) => {
      const p = 1 / (1 + Math.exp(-row.reduce((sum, v, c) => sum + v * weights[c], 0)));
      row.forEach((v, c) => {
        slope[c] += v * ((samples[n].iou >= badMask ? 1 : 0) - p);
        row.forEach((u, d) => curve.set(c, d, curve.get(c, d) + u * v * p * (1 - p)));
      });
    });
    const move = solve(curve, Matrix.columnVector(slope)).to1DArray();
    weights = weights.map((w, c) => w + move[c]);
  }
  return [weights[0] - Math.log(cost), 10 * weights[1], 2 * weights[2]];
}

const samples: Sample[] = [];
for (const name of await namesIn(process.argv[2])) samples.push(await sampleOf(process.argv[2], name));
const [usual, mean, agreement] = fit(samples);
process.stdout.write(`${JSON.stringify({ usual, mean, agreement })}\n`);
for (const s of samples.sort((a, b) => a.iou - b.iou)) {
  const odds = usual + mean * (s.mean - 0.75) + agreement * (s.agreement - 0.5);
  process.stdout.write(
    `${s.name}  IoU ${s.iou.toFixed(3)}  readable ${(1 / (1 + Math.exp(-odds))).toFixed(2)}\n`,
  );
}
