import type { Card, PlanStrip } from '../../card/index.ts';
import type { CopperMask } from '../../copper/index.ts';
import { insideRing, scaleWithin } from '../../geometry/index.ts';
import type { Point } from '../../geometry/index.ts';
import { boxOf, distanceToRibbon } from '../strip/ribbon.ts';

/**
 * The planned copper as a mask, as if laid without a fault, so that the same stages that read a photograph read a plan:
 * its nets, states, clearances and findings are then the checker's own. Under a patch only what runs over it shows.
 * @param wanted px/mm, less where the sheet is too large for it; 5 is enough for clearances of a millimetre, and quick
 */
export function paintPlan(card: Card, wanted = 5): CopperMask {
  const { width_mm, height_mm, margin_mm } = card.base;
  const margin = Math.max(margin_mm, reachBeyond(card));
  const pxPerMm = scaleWithin(width_mm + 2 * margin, height_mm + 2 * margin, wanted);
  const width = Math.round((width_mm + 2 * margin) * pxPerMm);
  const height = Math.round((height_mm + 2 * margin) * pxPerMm);
  const filled = new Uint8Array(width * height);
  for (const strip of card.plan?.strips ?? []) paintStrip(strip, card, { filled, width, margin, pxPerMm });
  return {
    width,
    height,
    pxPerMm,
    originMm: [-margin, -margin],
    baseMm: { width: width_mm, height: height_mm },
    filled,
    strict: filled,
    likelihood: filled.map((v) => 255 * v),
    readable: 1,
    troubles: [],
    by: 'given',
  };
}

/** How far flaps with strips lie open beyond the base, mm. */
function reachBeyond(card: Card): number {
  const { width_mm: w, height_mm: h } = card.base;
  const places = (card.plan?.strips ?? []).flatMap((s) => s.path);
  return Math.ceil(Math.max(0, ...places.map(([x, y]) => 6 + Math.max(-6, -x, -y, x - w, y - h))));
}

interface Canvas {
  filled: Uint8Array;
  width: number;
  margin: number;
  pxPerMm: number;
}

function paintStrip(strip: PlanStrip, card: Card, { filled, width, margin, pxPerMm }: Canvas): void {
  const covers = card.patches.filter(({ beneath }) => beneath.some(({ id }) => id === strip.id));
  const ribbon = { path: strip.path, widthMm: strip.width_mm };
  const box = boxOf(strip.path, strip.width_mm / 2);
  const at = (mm: number) => Math.floor((mm + margin) * pxPerMm);
  const height = filled.length / width;
  for (let j = Math.max(0, at(box.y0)); j <= Math.min(height - 1, at(box.y1)); j++) {
    for (let i = Math.max(0, at(box.x0)); i <= Math.min(width - 1, at(box.x1)); i++) {
      const place: Point = [(i + 0.5) / pxPerMm - margin, (j + 0.5) / pxPerMm - margin];
      if (distanceToRibbon(place, ribbon) > 0) continue;
      if (covers.some(({ outline }) => insideRing(place, outline))) continue;
      filled[j * width + i] = 1;
    }
  }
}
