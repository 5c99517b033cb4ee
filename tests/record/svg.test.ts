import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { svgRecord } from '../../src/record/index.ts';
import { marginMm } from '../../src/record/drawing/placeMarks.ts';
import { harbour, powerOf, someFindings } from './harbour.ts';

/** librsvg sets mm by the density, and the whole is then enlarged by density over 72. */
const density = 144;
const pxPerMm = (density / 25.4) * (density / 72);

/** The drawing as librsvg, which knows nothing of this project, sees it. */
async function rendered() {
  const { checked, card } = harbour(someFindings);
  const svg = Buffer.from(svgRecord(checked, powerOf(checked, card), card));
  const picture = sharp(svg, { density });
  const { data, info } = await picture
    .flatten({ background: '#fff' })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number) => {
    const [i, j] = [Math.round((x + marginMm) * pxPerMm), Math.round((y + 3) * pxPerMm)];
    return [...data.subarray((j * info.width + i) * info.channels, (j * info.width + i) * info.channels + 3)];
  };
  return { info, at, svg: svg.toString(), checked, card };
}

describe('the redrawn circuit as SVG', () => {
  it('has its true size in mm', async () => {
    const { info, svg } = await rendered();
    const [, width = 0, height = 0] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)?.map(Number) ?? [];
    // The base is A6 (ISO 216: 105 x 148 mm); lamps and sentences stand below it.
    expect(width).toBeGreaterThanOrEqual(105 + 2 * marginMm);
    expect(height).toBeGreaterThan(148 + 14);
    expect(info.width).toBeCloseTo(width * pxPerMm, -1);
    expect(info.height).toBeCloseTo(height * pxPerMm, -1);
  });

  it('has copper where the strips lie and paper between them, to half a mm', async () => {
    const { at } = await rendered();
    const copper = (x: number, y: number) => {
      const [r = 0, , b = 0] = at(x, y);
      return r - b > 60;
    };
    // The beam strip of lamp B2 runs from (32, 30.4) to (32, 110), 3 mm wide.
    expect(copper(32, 60)).toBe(true);
    expect(copper(30.9, 60)).toBe(true);
    expect(copper(29.9, 60)).toBe(false);
    expect(copper(34.1, 60)).toBe(false);
    expect(copper(26, 60)).toBe(false);
  });

  it('is a text that parses however oddly a card is named', async () => {
    const { checked, card } = harbour(someFindings);
    const lamps = card.lamps.map((lamp, i) => ({ ...lamp, id: `L${i}<&"'\u0007` }));
    const svg = svgRecord(checked, powerOf(checked, card), { ...card, title: ']]> <svg onload="x">', lamps });
    expect((await sharp(Buffer.from(svg)).metadata()).format).toBe('svg');
    expect(svg).not.toContain('<svg onload');
  });
});
