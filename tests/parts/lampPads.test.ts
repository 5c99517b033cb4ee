import { describe, expect, it } from 'vitest';
import { cardFrom, type CardInput } from '../../src/card/index.ts';
import { attach } from '../../src/parts/index.ts';
import { clear, strip, traceDrawn } from '../net/drawnSheet.ts';

/** Two strips of 4 mm end under a lamp whose body hides their last 1 mm. Sizes are common practice, no source. */
const traced = traceDrawn({
  width: 40,
  height: 20,
  laid: [strip(4, [2, 10], [18, 10]), strip(4, [22, 10], [38, 10]), clear(17, 8.5, 23, 11.5)],
});

function pads(plus: [number, number], minus: [number, number], more: Partial<CardInput> = {}) {
  const base = { width_mm: 40, height_mm: 20 };
  const card = cardFrom(
    { format: 'foilproof/1', base, lamps: [{ id: 'L1', plus, minus }], ...more },
    'drawn',
  );
  return attach(traced, card).pads;
}

describe('a lamp between two strips', () => {
  it('has each pad on the strip of its own side, though its body hides the copper there', () => {
    const [plus, minus] = pads([17.6, 10], [22.4, 10]);
    expect(plus.piece).toBeGreaterThan(0);
    expect(minus.piece).toBeGreaterThan(0);
    expect(plus.piece).not.toBe(minus.piece);
  });

  it('keeps both pads for a tap that is half a millimetre out', () => {
    for (const off of [-0.5, 0.5]) {
      expect(pads([17.6, 10 + off], [22.4, 10 + off]).every(({ piece }) => piece > 0)).toBe(true);
    }
  });

  it('hangs in the air when it lies 4 mm beside, and says how far', () => {
    for (const { piece, mm } of pads([17.6, 14], [22.4, 14])) {
      expect(piece).toBe(0);
      expect(mm).toBeGreaterThan(1.5);
      expect(mm).toBeLessThan(3);
    }
  });
});
