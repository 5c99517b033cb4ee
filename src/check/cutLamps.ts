import type { Card, Lamp } from '../card/index.ts';
import type { CopperMask } from '../copper/index.ts';

/** A cut is this wide along the lamp and this far to both sides of its axis, mm. */
const alongMm = 1.2;
const asideMm = 2.2;

/**
 * The mask parted under the middle of each lamp that the card places: a grey body can look like copper, and what lies
 * under it no photograph shows. Copper wider than a body still joins round it. The mask given stays as it is, and so
 * does one that the trained net gave: it knows lamps itself.
 */
export function cutLamps(mask: CopperMask, card: Card): CopperMask {
  const lamps = card.lamps.filter(({ on }) => on === 'base');
  if (lamps.length === 0 || mask.by !== 'classical') return mask;
  const cut = { ...mask, filled: mask.filled.slice(), strict: mask.strict.slice() };
  for (const lamp of lamps) cutUnder(cut, lamp);
  return cut;
}

function cutUnder(mask: CopperMask, { plus, minus }: Lamp): void {
  const length = Math.hypot(minus[0] - plus[0], minus[1] - plus[1]);
  if (length < 2 * alongMm) return;
  const [ux, uy] = [(minus[0] - plus[0]) / length, (minus[1] - plus[1]) / length];
  const [cx, cy] = [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2];
  const { width, height, pxPerMm, originMm } = mask;
  const reach = asideMm + alongMm;
  const i0 = Math.max(0, Math.floor((cx - reach - originMm[0]) * pxPerMm));
  const i1 = Math.min(width - 1, Math.ceil((cx + reach - originMm[0]) * pxPerMm));
  const j0 = Math.max(0, Math.floor((cy - reach - originMm[1]) * pxPerMm));
  const j1 = Math.min(height - 1, Math.ceil((cy + reach - originMm[1]) * pxPerMm));
  for (let j = j0; j <= j1; j++) {
    for (let i = i0; i <= i1; i++) {
      const dx = originMm[0] + (i + 0.5) / pxPerMm - cx;
      const dy = originMm[1] + (j + 0.5) / pxPerMm - cy;
      if (Math.abs(dx * ux + dy * uy) > alongMm / 2 || Math.abs(dx * uy - dy * ux) > asideMm) continue;
      mask.filled[j * width + i] = 0;
      mask.strict[j * width + i] = 0;
    }
  }
}
