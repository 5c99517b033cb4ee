import { describe, expect, it } from 'vitest';
import { seeded } from '../../src/power/random.ts';
import type { DiagramPart } from '../../src/record/diagram/parts.ts';
import { diagramParts } from '../../src/record/diagram/parts.ts';
import { partMm, placeDiagram } from '../../src/record/diagram/place.ts';
import { harbour } from './harbour.ts';

function randomParts(seed: number): DiagramPart[] {
  const random = seeded(seed);
  const nets = 2 + Math.floor(random() * 6);
  return Array.from({ length: 2 + Math.floor(random() * 12) }, (_, i) => {
    const upper = Math.floor(random() * nets);
    const lower = (upper + 1 + Math.floor(random() * (nets - 1))) % nets;
    return {
      id: `P${i}`,
      kind: 'lamp',
      label: `P${i}`,
      note: '',
      upper: `n${upper}`,
      lower: `n${lower}`,
      seriesOhm: 0,
    };
  });
}

describe('the diagram', () => {
  it('stands every part between the lines of its own two nets and of no other', () => {
    for (let seed = 1; seed <= 50; seed++) {
      const { buses, parts } = placeDiagram(randomParts(seed));
      const bus = (net: string) => buses.find((one) => one.net === net);
      for (const { part, x, top, bottom } of parts) {
        const [a, b] = [bus(part.upper), bus(part.lower)];
        expect([a?.y, b?.y].sort((p = 0, q = 0) => p - q)).toEqual([top, bottom]);
        for (const one of [a, b]) expect(x >= (one?.x0 ?? NaN) && x <= (one?.x1 ?? NaN)).toBe(true);
        expect(bottom - top).toBeGreaterThanOrEqual(8);
      }
    }
  });

  it('never runs two nets into one another, nor a lead through another part', () => {
    for (let seed = 1; seed <= 50; seed++) {
      const { buses, parts } = placeDiagram(randomParts(seed));
      buses.forEach((a, i) =>
        buses.slice(i + 1).forEach((b) => {
          const meet = Math.abs(a.y - b.y) < 0.5 && a.x0 <= b.x1 && b.x0 <= a.x1;
          expect(meet, `net ${seed}: ${a.net} and ${b.net}`).toBe(false);
        }),
      );
      parts.forEach((a, i) =>
        parts.slice(i + 1).forEach((b) => {
          const overlap = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
          expect(a.x === b.x && overlap > 0.2, `net ${seed}: ${a.part.id} and ${b.part.id}`).toBe(false);
        }),
      );
    }
  });

  it('draws Harbour Night as lamps over their stroke contacts between two rails', () => {
    const { checked, card } = harbour();
    const { parts } = placeDiagram(diagramParts(card, checked.netlist));
    const at = (id: string) => parts.find(({ part }) => part.id === id);
    for (let i = 1; i <= 5; i++) {
      expect(at(`B${i}`)?.x).toBe(at(`C${i}`)?.x);
      expect(at(`B${i}`)?.bottom).toBe(at(`C${i}`)?.top);
    }
    expect((at('cell')?.bottom ?? 0) - (at('cell')?.top ?? 0)).toBeGreaterThan(partMm);
  });
});
