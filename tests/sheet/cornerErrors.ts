import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Quad } from '../../src/geometry/index.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { findOutline } from '../../src/sheet/index.ts';
import { cornerErrorMm } from './cornerErrorMm.ts';

/**
 * Prints how far the found corners lie from the true ones, in mm, for every NAME.jpg with a NAME.json beside it
 * (`base.width_mm`, `base.height_mm`, `base.corners_px`): npx tsx tests/sheet/cornerErrors.ts DIR
 */
const dir = process.argv[2];
if (!dir) throw new Error('Give the folder of photographs with their truth.');

for (const file of readdirSync(dir).filter((name) => name.endsWith('.jpg'))) {
  const truth = JSON.parse(readFileSync(join(dir, file.replace(/\.jpg$/, '.json')), 'utf8')) as {
    base: { width_mm: number; height_mm: number; corners_px: unknown };
  };
  const size = { width: truth.base.width_mm, height: truth.base.height_mm };
  const photo = await decodePhoto(join(dir, file));
  const start = performance.now();
  const found = await findOutline(photo, size);
  const ms = Math.round(performance.now() - start);
  const error = found
    ? cornerErrorMm(found.cornersPx, truth.base.corners_px as Quad, size).toFixed(2)
    : 'none';
  console.log(
    `${file}  error ${error} mm  certainty ${found?.certainty.toFixed(3)}  k1 ${found?.k1.toFixed(4)}  residual ${found?.residualMm.toFixed(2)} mm  ${ms} ms`,
  );
}
