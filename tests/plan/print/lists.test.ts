import { describe, expect, it } from 'vitest';
import { cutList, readTag, sheetTag } from '../../../src/plan/index.ts';
import { mirroredAbout } from '../../../src/plan/print/templates.ts';
import { smallCard } from '../built/layCard.ts';

describe('the cut list', () => {
  const { lines, byWidth, totalRollMm } = cutList(smallCard(), 8);

  it('adds a tape width for each lap and each fold', () => {
    // A rail of 87 mm laps nothing at its ends; a branch of 25 mm laps the rail at one.
    expect(lines[0]).toMatchObject({ id: 'plus rail', lengthMm: 87, folds: 0, joins: 0, cutMm: 87 });
    expect(lines[2]).toMatchObject({ id: 'plus 1', lengthMm: 25, folds: 0, joins: 1, cutMm: 29 });
  });

  it('counts a length split in halves once for two strips', () => {
    expect(byWidth).toEqual([
      { widthMm: 5, cutMm: 174, rollMm: 174 },
      { widthMm: 4, cutMm: 174, rollMm: 87 },
    ]);
    expect(totalRollMm).toBe(261);
    expect(lines.map(({ split }) => split)).toEqual([false, false, true, true, true, true, true, true]);
  });

  it('counts folds by corners', () => {
    const card = smallCard();
    card.plan!.strips[0].path = [
      [8, 10],
      [95, 10],
      [95, 30],
    ];
    expect(cutList(card, 5).lines[0]).toMatchObject({ folds: 1, cutMm: 107 + 5 });
  });
});

describe('the tag', () => {
  it('is read back, blanks lost or added', () => {
    const tag = sheetTag(smallCard());
    const signs = tag.slice(-4);
    for (const seen of [
      tag,
      `noise ${tag} more`,
      tag.replace('FP ', 'FP'),
      tag.replace(signs, [...signs].join(' ')),
    ]) {
      expect(readTag(seen)).toEqual({ widthMm: 105, heightMm: 74, signs });
    }
    expect(readTag('no tag here')).toBeUndefined();
    // A sign that no tag has was misread: by its one likeness it is mended, else it is no tag.
    expect(readTag('FP 105x74 KM7y')).toMatchObject({ signs: 'KMTY' });
    expect(readTag('FP 105x74 KMA4')).toBeUndefined();
  });

  it('changes with the plan', () => {
    const other = smallCard();
    other.plan!.strips[0].width_mm = 4;
    expect(sheetTag(other)).not.toBe(sheetTag(smallCard()));
  });
});

it('mirrors about a line: twice is where it was, and the line itself stays', () => {
  const line = [
    [3, 1],
    [7, 9],
  ] as const;
  const back = mirroredAbout(mirroredAbout([12, 5], line), line);
  expect(back[0]).toBeCloseTo(12, 9);
  expect(back[1]).toBeCloseTo(5, 9);
  expect(mirroredAbout([3, 1], line)).toEqual([3, 1]);
});
