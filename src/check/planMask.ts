import type { Card, PlanStrip } from '../card/index.ts';
import type { CopperMask } from '../copper/index.ts';
import { insideRing } from '../geometry/index.ts';
import type { Point } from '../geometry/index.ts';
import { boxOf, distanceToRibbon } from '../plan/strip/ribbon.ts';

/**
 * The planned copper as a mask, all strips laid; under a patch only what runs over it shows.
 * @param pxPerMm 10 unless given
 */
export function planMask(card: Card, pxPerMm = 10): CopperMask {
  const margin = Math.max(card.base.margin_mm, reachBeyond(card));
  const width = Math.round((card.base.width_mm + 2 * margin) * pxPerMm);
  const height = Math.round((card.base.height_mm + 2 * margin) * pxPerMm);
  const filled = new Uint8Array(width * height);
  for (const strip of card.plan?.strips ?? []) draw(strip, card, filled, width, margin, pxPerMm);
  return {
    width,
    height,
    pxPerMm,
    originMm: [-margin, -margin],
    baseMm: { width: card.base.width_mm, height: card.base.height_mm },
    filled,
    strict: filled,
    likelihood: filled.map((v) => 255 * v),
    readable: 1,
    troubles: [],
    by: 'given',
  };
}

function reachBeyond(card: Card): number {
  const { width_mm: w, height_mm: h } = card.base;
  const places = (card.plan?.strips ?? []).flatMap((s) => s.path);
  return Math.ceil(Math.max(0, ...places.map(([x, y]) => 6 + Math.max(-6, -x, -y, x - w, y - h))));
}

function draw(
  strip: PlanStrip,
  card: Card,
  filled: Uint8Array,
  width: number,
  margin: number,
  pxPerMm: number,
): void {
  const hidden = card.patches.filter((p) => p.beneath.some((b) => b.id === strip.id));
  const box = boxOf(strip.path, strip.width_mm / 2);
  const ribbon = { path: strip.path, widthMm: strip.width_mm };
  const at = (mm: number) => Math.floor((mm + margin) * pxPerMm);
  const height = filled.length / width;
  for (let j = Math.max(0, at(box.y0)); j <= Math.min(height - 1, at(box.y1)); j++) {
    for (let i = Math.max(0, at(box.x0)); i <= Math.min(width - 1, at(box.x1)); i++) {
      const place: Point = [(i + 0.5) / pxPerMm - margin, (j + 0.5) / pxPerMm - margin];
      if (distanceToRibbon(place, ribbon) > 0) continue;
      if (hidden.some((p) => insideRing(place, p.outline))) continue;
      filled[j * width + i] = 1;
    }
  }
}
