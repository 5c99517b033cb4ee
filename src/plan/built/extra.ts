import type { Point } from '../../geometry/index.ts';
import { components } from '../../copper/index.ts';
import type { Traced } from '../../trace/index.ts';
import type { Ribbon } from '../strip/ribbon.ts';
import { boxOf, distanceToRibbon } from '../strip/ribbon.ts';

/** Copper that the plan does not have. */
export interface ExtraCopper {
  at: Point;
  piece: number;
  areaMm2: number;
  lengthMm: number;
}

/** Copper this near to a planned strip is that strip, laid by hand. */
const SLACK_MM = 1.5;
const LEAST_AREA_MM2 = 10;
const LEAST_LENGTH_MM = 5;

/** Regions of copper farther from every known ribbon than a hand's slack. */
export function extraCopper(traced: Traced, known: Ribbon[]): ExtraCopper[] {
  const { width, height, pxPerMm, originMm, labels } = traced;
  const left = new Uint8Array(labels.length);
  for (let k = 0; k < left.length; k++) left[k] = labels[k] ? 1 : 0;
  for (const ribbon of known) wipe(left, ribbon, traced);
  const found = components(left, width, height, 4);
  const sums = Array.from({ length: found.count + 1 }, () => ({
    n: 0,
    x: 0,
    y: 0,
    x0: 1e9,
    y0: 1e9,
    x1: 0,
    y1: 0,
    k: 0,
  }));
  for (let k = 0; k < left.length; k++) {
    const sum = sums[found.labels[k]];
    if (!found.labels[k]) continue;
    const x = k % width;
    const y = (k - x) / width;
    Object.assign(sum, { n: sum.n + 1, x: sum.x + x, y: sum.y + y, k });
    Object.assign(sum, {
      x0: Math.min(sum.x0, x),
      y0: Math.min(sum.y0, y),
      x1: Math.max(sum.x1, x),
      y1: Math.max(sum.y1, y),
    });
  }
  return sums
    .filter(({ n }) => n / pxPerMm ** 2 >= LEAST_AREA_MM2)
    .map((s) => ({
      at: [originMm[0] + s.x / s.n / pxPerMm, originMm[1] + s.y / s.n / pxPerMm] as Point,
      piece: labels[s.k],
      areaMm2: s.n / pxPerMm ** 2,
      lengthMm: Math.hypot(s.x1 - s.x0, s.y1 - s.y0) / pxPerMm,
    }))
    .filter(({ lengthMm }) => lengthMm >= LEAST_LENGTH_MM);
}

/** Takes away all copper within slack of a ribbon. */
function wipe(left: Uint8Array, ribbon: Ribbon, { width, height, pxPerMm, originMm }: Traced): void {
  const box = boxOf(ribbon.path, ribbon.widthMm / 2 + SLACK_MM);
  const i0 = Math.max(0, Math.floor((box.x0 - originMm[0]) * pxPerMm));
  const i1 = Math.min(width - 1, Math.ceil((box.x1 - originMm[0]) * pxPerMm));
  const j0 = Math.max(0, Math.floor((box.y0 - originMm[1]) * pxPerMm));
  const j1 = Math.min(height - 1, Math.ceil((box.y1 - originMm[1]) * pxPerMm));
  for (let j = j0; j <= j1; j++) {
    for (let i = i0; i <= i1; i++) {
      if (!left[j * width + i]) continue;
      const place: Point = [originMm[0] + (i + 0.5) / pxPerMm, originMm[1] + (j + 0.5) / pxPerMm];
      if (distanceToRibbon(place, ribbon) <= SLACK_MM) left[j * width + i] = 0;
    }
  }
}
