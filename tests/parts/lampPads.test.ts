import { describe, expect, it } from 'vitest';
import { cardFrom, type CardInput } from '../../src/card/index.ts';
import { attach } from '../../src/parts/index.ts';
import { lampSees, type Traced } from '../../src/trace/index.ts';
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

describe('a sticker, whose body reaches far beyond its pads', () => {
  const card = cardFrom(
    {
      format: 'foilproof/1',
      base: { width_mm: 40, height_mm: 20 },
      lamps: [{ id: 'L1', plus: [17, 10], minus: [23, 10] }],
    },
    'drawn',
  );
  /** Strips that come in from both sides up to `x` and 40 - x; the body lies from 13.8 to 26.2 mm. */
  const laidUpTo = (x: number): Traced => {
    const drawn = traceDrawn({
      width: 40,
      height: 20,
      laid: [strip(4, [2, 10], [x, 10]), strip(4, [40 - x, 10], [38, 10])],
    });
    const lampLook = new Uint8Array(drawn.width * drawn.height);
    for (let k = 0; k < lampLook.length; k++) {
      const [i, j] = [k % drawn.width, Math.floor(k / drawn.width)];
      if (drawn.labels[k]) continue;
      lampLook[k] = i >= 138 && i < 262 && j >= 70 && j < 130 ? lampSees.body : lampSees.paper;
    }
    return { ...drawn, lampLook };
  };

  it('rests on strips that run in under it, farther than a slab hides them', () => {
    for (const { piece, mm } of attach(laidUpTo(13.8), card).pads) {
      expect(piece).toBeGreaterThan(0);
      expect(mm).toBeGreaterThan(3);
    }
  });

  it('hangs over paper where paper shows between it and the strips', () => {
    for (const { piece, certainty } of attach(laidUpTo(13.2), card).pads) {
      expect(piece).toBe(0);
      expect(certainty).toBeGreaterThanOrEqual(0.9);
    }
  });

  it('is doubted little by little where no body was seen', () => {
    const { lampLook: _, ...blind } = laidUpTo(14.7);
    for (const { piece, certainty } of attach(blind, card).pads) {
      expect(piece).toBe(0);
      expect(certainty).toBeLessThan(0.7);
    }
  });
});
