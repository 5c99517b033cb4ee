import { describe, expect, it } from 'vitest';
import { grabCut, grabCutHint } from '../../src/engine/grabCut.ts';
import { loadOpenCv } from '../../src/engine/openCv.ts';
import { randomFrom } from '../generate/random.ts';

describe('grabCut', () => {
  it('cuts a disc of another colour out of noise from a loose box', async () => {
    const size = 90;
    const r = randomFrom(2);
    const rgb = new Uint8Array(size * size * 3);
    const hints = new Uint8Array(size * size);
    const truth = new Uint8Array(size * size);
    for (let y = 0, i = 0; y < size; y++) {
      for (let x = 0; x < size; x++, i++) {
        truth[i] = Number(Math.hypot(x - 45, y - 45) < 22);
        const colour = truth[i] ? [190, 180, 150] : [90, 110, 120];
        for (let c = 0; c < 3; c++) rgb[3 * i + c] = Math.min(255, Math.max(0, colour[c] + 15 * r.normal()));
        const inBox = Math.max(Math.abs(x - 45), Math.abs(y - 45)) < 32;
        hints[i] = inBox ? grabCutHint.probablyForeground : grabCutHint.background;
      }
    }
    const cut = grabCut(await loadOpenCv(), rgb, size, size, hints, 3);
    let both = 0;
    let either = 0;
    for (let i = 0; i < cut.length; i++) {
      both += cut[i] & truth[i];
      either += cut[i] | truth[i];
    }
    expect(both / either).toBeGreaterThan(0.97);
  });
});
