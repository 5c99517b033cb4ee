import type { CardInput } from '../../src/card/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { Build, BuiltLamp, BuiltStrip } from './build.ts';

/**
 * Harbour Night: an A6 card (105 x 148 mm, ISO 216) with a lighthouse. A finger along the wave lights the
 * five beam lamps in turn; three window lamps stay lit while the cell is pressed. Invented for the demo.
 */

const beamXs = [20, 32, 44, 56, 68];
const padMm = 3.6;
const waveY = 116;
const columnEnd = 110;

/** The sound build, with its card: taps where the lamps lie, the cell, the contacts, and the plan. */
export function harbourNight(): Build {
  const strips = allStrips();
  const lamps = allLamps();
  const contacts = beamXs.map((x, i) => ({
    id: `C${i + 1}`,
    at: [x, (columnEnd + waveY - 2.5) / 2] as Point,
    order: i + 1,
  }));
  const build: Build = {
    base: { width_mm: 105, height_mm: 148 },
    strips,
    patch: { id: 'K1', ring: rectangle(78.5, 118.5, 91, 130.5), before: 'P-cottage' },
    slivers: [],
    lamps,
    cell: { at: [26, 132], present: false },
    contacts,
    pencil: pencilLines(),
    planted: [],
    card: { format: 'foilproof/1', base: { width_mm: 105, height_mm: 148 } },
  };
  return { ...build, card: cardOf(build, strips) };
}

function allStrips(): BuiltStrip[] {
  const strip = (id: string, net: string, widthMm: number, path: Point[]): BuiltStrip => {
    return { id, net, widthMm, path, cuts: [], necks: [] };
  };
  return [
    strip('N-rail', 'minus', 5, [
      [14, 134.5],
      [85.5, 134.5],
      [85.5, 46],
    ]),
    strip('N-wave', 'minus', 5, [
      [14, waveY],
      [88, waveY],
    ]),
    strip('P-rail', 'plus', 5, [
      [8, 138],
      [8, 16],
      [95, 16],
      [95, 127],
    ]),
    ...beamXs.map((x, i) =>
      strip(`P-beam-${i + 1}`, 'plus', 3, [
        [x, 14.5],
        [x, 25.6],
      ]),
    ),
    ...beamXs.map((x, i) =>
      strip(`beam-${i + 1}`, `beam-${i + 1}`, 3, [
        [x, 30.4],
        [x, columnEnd],
      ]),
    ),
    strip('P-cottage', 'plus', 4, [
      [97, 124.5],
      [59.5, 124.5],
    ]),
  ];
}

function allLamps(): BuiltLamp[] {
  const lamp = (id: string, at: Point, axis: Point, colour: BuiltLamp['colour']): BuiltLamp => {
    return { id, at, axis, colour, padMm };
  };
  return [
    ...beamXs.map((x, i) => lamp(`B${i + 1}`, [x, 28], [0, 1], 'white')),
    lamp('W1', [90.25, 60], [-1, 0], 'warm-white'),
    lamp('W2', [90.25, 85], [-1, 0], 'warm-white'),
    lamp('W3', [62, 129.3], [0, 1], 'warm-white'),
  ];
}

/** The card as a maker would write it for this build: lamps tapped where they lie, the plan as drawn. */
export function cardOf(build: Build, planned: BuiltStrip[]): CardInput {
  const rounded = (p: Point): [number, number] => [round(p[0]), round(p[1])];
  return {
    format: 'foilproof/1',
    title: 'Harbour Night',
    base: build.base,
    lamps: build.lamps.map((l) => ({
      id: l.id,
      plus: rounded(padOf(l, -1)),
      minus: rounded(padOf(l, 1)),
      colour: l.colour,
      intent: l.id.startsWith('B') ? { contact: `C${l.id.slice(1)}` } : 'always',
    })),
    cell: { kind: 'CR2032', at: rounded(build.cell.at), up: '+', upper_contact: [8, 134] },
    contacts: build.contacts.map((c) => ({
      id: c.id,
      how: 'stroke' as const,
      order: c.order,
      at: rounded(c.at),
      reach_mm: 4,
    })),
    patches: [
      {
        id: build.patch.id,
        outline: build.patch.ring.map(rounded),
        beneath: [
          {
            id: 'N-rail',
            width_mm: 5,
            path: [
              [85.5, 134.5],
              [85.5, 114],
            ],
          },
        ],
      },
    ],
    plan: {
      strips: planned.map((s) => ({ id: s.id, net: s.net, width_mm: s.widthMm, path: s.path.map(rounded) })),
    },
  };
}

/** Middle of a lamp's pad: side -1 is the + pad, 1 the - pad. */
export function padOf(lamp: BuiltLamp, side: -1 | 1): Point {
  return [lamp.at[0] + side * lamp.axis[0] * lamp.padMm, lamp.at[1] + side * lamp.axis[1] * lamp.padMm];
}

/** The lighthouse, its beam and the waves as the maker pencilled them for placing the lamps. */
function pencilLines(): Point[][] {
  const tower: Point[] = [
    [74, 112],
    [76.5, 42],
    [81, 42],
    [82, 112],
  ];
  const beam: Point[] = [
    [73, 34],
    [14, 40],
    [14, 22],
    [73, 31],
  ];
  const wave: Point[] = [];
  for (let x = 12; x <= 80; x += 1) wave.push([x, 106 + 1.6 * Math.sin(x / 3.2)]);
  const cottage: Point[] = [
    [52, 143],
    [52, 128],
    [58, 121],
    [66, 128],
    [66, 143],
  ];
  return [tower, beam, wave, cottage];
}

export function rectangle(x0: number, y0: number, x1: number, y1: number): Point[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

function round(v: number): number {
  return Math.round(v * 100) / 100;
}
