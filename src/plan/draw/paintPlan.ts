import type { Card } from '../../card/index.ts';
import type { CopperMask } from '../../copper/index.ts';
import type { Point } from '../../geometry/index.ts';
import { boxOf, distanceToRibbon } from '../strip/ribbon.ts';

/**
 * The plan as a copper mask, as if laid without a fault, so that the same stages that read a photograph read a plan:
 * its nets, states, clearances and findings are then the checker's own.
 * @param pxPerMm 5 is enough for clearances of a millimetre, and quick
 */
export function paintPlan(card: Card, pxPerMm = 5): CopperMask {
  const { width_mm, height_mm, margin_mm } = card.base;
  const width = Math.round((width_mm + 2 * margin_mm) * pxPerMm);
  const height = Math.round((height_mm + 2 * margin_mm) * pxPerMm);
  const filled = new Uint8Array(width * height);
  for (const { path, width_mm: widthMm } of card.plan?.strips ?? []) {
    const box = boxOf(path, widthMm / 2);
    const column = (x: number) => Math.min(width, Math.max(0, Math.floor((x + margin_mm) * pxPerMm)));
    const row = (y: number) => Math.min(height, Math.max(0, Math.floor((y + margin_mm) * pxPerMm)));
    for (let j = row(box.y0); j < Math.min(height, row(box.y1) + 1); j++) {
      for (let i = column(box.x0); i < Math.min(width, column(box.x1) + 1); i++) {
        const place: Point = [(i + 0.5) / pxPerMm - margin_mm, (j + 0.5) / pxPerMm - margin_mm];
        if (distanceToRibbon(place, { path, widthMm }) === 0) filled[j * width + i] = 1;
      }
    }
  }
  return {
    width,
    height,
    pxPerMm,
    originMm: [-margin_mm, -margin_mm],
    baseMm: { width: width_mm, height: height_mm },
    filled,
    strict: filled,
    likelihood: filled.map((v) => 255 * v),
    readable: 1,
    troubles: [],
    by: 'given',
  };
}
