import type { CardInput } from '../../src/card/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { Build, BuiltStrip } from './build.ts';
import { cameraOver, cornersPx } from './camera.ts';
import { drawConditions, type Conditions } from './conditions.ts';
import { rimShort } from './faults.ts';
import { harbourNight, rectangle } from './harbourNight.ts';
import { randomFrom } from './random.ts';

/**
 * Harbour Night with a flap of 105 x 50 mm hinged at the foot of the base: five strips on it close the openings along
 * the wave and one brings plus onto the cell. Photographed before its patch was laid, with it, and the flap by itself.
 */

const footY = 148;
const flapMm = { width_mm: 105, height_mm: 50 };
/** The minus rail crosses under the patch, the plus tape over it. */
const widePatch = rectangle(78.5, 118.5, 91, 130.5);
/** Covers the crossing by 1.2 mm on its left only. */
const scantPatch = rectangle(81.8, 118.5, 91, 130.5);

/** Two columns cross beneath and over it where the stroke's order was swapped in laying them. */
const crossPatch = rectangle(32.5, 63, 43.5, 73);

/** One photograph of a sheet, and how it is taken. */
export interface SheetShot {
  name: string;
  seed: number;
  build: Build;
  conditions: Conditions;
}

const upright = { width: 1000, height: 1340, pxPerMm: 8, rollDeg: 2, tiltDeg: 6, quality: 80 };
const lying = { width: 1000, height: 560, pxPerMm: 8, rollDeg: -2, tiltDeg: 5, quality: 80 };

/**
 * Every photograph of the folded card.
 * @param salt draws them under other conditions and seeds; 0 draws the fixtures
 */
export function foldedShots(salt = 0): SheetShot[] {
  const shot = (name: string, seed: number, build: Build, given: Partial<Conditions>): SheetShot => ({
    name,
    seed: seed + 1000 * salt,
    build,
    conditions: drawConditions(randomFrom(seed + 1000 * salt), {
      paper: 'white',
      table: 'wood',
      light: 'window',
      ...given,
    }),
  });
  return [
    shot('before', 41, base({ patched: false }), upright),
    shot('patched', 52, base({}), { ...upright, rollDeg: -3 }),
    shot('patched-scant', 43, base({ patch: scantPatch }), upright),
    shot('before-crossed', 47, base({ patched: false, crossed: true }), upright),
    shot('patched-crossed', 50, base({ crossed: true }), upright),
    shot('patched-rim', 43, rimShort()(base({})), upright),
    shot('flap', 45, flap(), lying),
    shot('flap-off', 46, flap({ offMm: 5 }), lying),
  ];
}

interface BaseBuild {
  patched?: boolean;
  patch?: Point[];
  /** The columns of the second and third beam change places. */
  crossed?: boolean;
}

function base({ patched = true, patch = widePatch, crossed = false }: BaseBuild): Build {
  const sound = harbourNight();
  const strips = sound.strips.map((strip) => {
    if (strip.id === 'P-rail') return { ...strip, path: [[8, footY + 1], ...strip.path.slice(1)] as Point[] };
    if (strip.id === 'P-cottage') return { ...strip, absent: !patched };
    if (!crossed) return strip;
    if (strip.id === 'beam-2') return { ...strip, path: changingPlaces(strip.path, 12) };
    return strip.id === 'beam-3'
      ? { ...strip, path: changingPlaces(strip.path, -12), absent: !patched }
      : strip;
  });
  return {
    ...sound,
    strips,
    patch: { id: 'K1', ring: patch, before: patched ? 'P-cottage' : 'none' },
    morePatches: crossed ? [{ id: 'K2', ring: crossPatch, before: patched ? 'beam-3' : 'none' }] : [],
  };
}

/** A column that leaves its lamp straight down and reaches the contact so far to the side. */
function changingPlaces([[x, top], [, end]]: Point[], by: number): Point[] {
  return [
    [x, top],
    [x, 62],
    [x + by, 74],
    [x + by, end],
  ];
}

/** @param offMm the third strip lies so far up the flap: 3.5 mm of overlap and 1.5 mm beyond make 5 */
function flap({ offMm = 0 } = {}): Build {
  const strip = (id: string, net: string, widthMm: number, path: Point[]): BuiltStrip => {
    return { id, net, widthMm, path, cuts: [], necks: [] };
  };
  const sound = harbourNight();
  return {
    ...sound,
    base: flapMm,
    strips: [
      strip('to-cell', 'plus', 4, [
        [8, -1],
        [8, 22],
        [30, 22],
      ]),
      ...sound.contacts.map(({ id, at: [x] }, k) => {
        const up = k === 2 ? offMm : 0;
        return strip(`over-${id}`, id, 4, [
          [x, 31 - up],
          [x, 41.5 - up],
        ]);
      }),
    ],
    patch: { id: 'none', ring: widePatch, before: 'none' },
    lamps: [],
    pencil: [],
    contacts: [],
  };
}

export interface FoldedCase {
  name: string;
  card: CardInput;
  /** What must be found; nothing else of weight may be said. */
  finds: { kind: string; facts?: Record<string, unknown>; mm?: number }[];
}

interface Spoilt {
  before?: string;
  patched?: string;
  flap?: string;
  fold?: [Point, Point];
  patch?: Point[];
  crossed?: boolean;
  swapped?: boolean;
  layers?: number;
}

/** The card with each fault, and what should be said of it. */
export function foldedCases(salt = 0): FoldedCase[] {
  const of = (name: string, spoilt: Spoilt, finds: FoldedCase['finds']) => ({
    name,
    card: foldedCard(spoilt, salt),
    finds,
  });
  const otherEdge: [Point, Point] = [
    [105, 50],
    [0, 50],
  ];
  return [
    of('sound', {}, []),
    of('strip-off', { flap: 'flap-off' }, [
      { kind: 'missed-contact', facts: { of: 'C3', direction: 'below' }, mm: 1.5 },
    ]),
    of('fold-side', { fold: otherEdge }, [{ kind: 'missed-contact', facts: { of: 'F1', foldSide: true } }]),
    of('patch-scant', { patched: 'patched-scant', patch: scantPatch }, [
      { kind: 'tight', facts: { patch: 'K1' }, mm: 1.2 },
    ]),
    of('order', { swapped: true }, [{ kind: 'missed-contact', facts: { among: 'C3, C2' } }]),
    of('crossed', { before: 'before-crossed', patched: 'patched-crossed', crossed: true }, [
      { kind: 'lit-at-rest', facts: { contact: 'C2', another: true } },
      { kind: 'lit-at-rest', facts: { contact: 'C3', another: true } },
    ]),
    of('rim', { patched: 'patched-rim' }, [{ kind: 'shorted-cell', facts: { rim: true } }]),
    of('foam', { layers: 1 }, [{ kind: 'lit-at-rest', facts: { of: 'nest' } }]),
  ];
}

function foldedCard(
  {
    before = 'before',
    patched = 'patched',
    flap: flapShot = 'flap',
    fold,
    patch = widePatch,
    crossed = false,
    swapped = false,
    layers = 2,
  }: Spoilt,
  salt: number,
): CardInput {
  const photo = photoOf(salt);
  const { card } = harbourNight();
  const order = swapped ? [1, 3, 2, 4, 5] : [1, 2, 3, 4, 5];
  return {
    ...card,
    title: 'Harbour Night, folded',
    photos: [
      photo(before, 'base'),
      { ...photo(patched, 'base'), after: 'K1' },
      { ...photo(flapShot, 'F1'), size_mm: [105, 50], fold: (fold ?? ownEdge) as [Mm, Mm] },
    ],
    cell: { kind: 'CR2032', at: [26, 132], up: '+' },
    contacts: card.contacts?.map((each, k) => ({ ...each, order: order[k], flap: 'F1' })),
    flaps: [
      {
        id: 'F1',
        fold: [
          [0, footY],
          [105, footY],
        ],
        outline: rectangle(0, footY, 105, footY + flapMm.height_mm) as Mm[],
        use: 'cell',
      },
    ],
    patches: [
      { id: 'K1', outline: patch as Mm[] },
      ...(crossed ? [{ id: 'K2', outline: crossPatch as Mm[] }] : []),
    ],
    plan: { foam: [{ outline: rectangle(14, 120, 38, 144) as Mm[], layers, layer_mm: 2 }] },
  };
}

type Mm = [number, number];
const ownEdge: [Point, Point] = [
  [0, 0],
  [105, 0],
];

/** A photograph as the card names it, with its true corners. */
function photoOf(salt: number) {
  const shots = foldedShots(salt);
  return (name: string, sheet: string) => {
    const { build, conditions } = shots.find((each) => each.name === name)!;
    const corners = cornersPx(cameraOver(build.base, conditions), build.base);
    const rounded = corners.map(([x, y]) => [Math.round(100 * x) / 100, Math.round(100 * y) / 100]);
    return { name: `${name}.jpg`, sheet, corners_px: rounded as unknown as [Mm, Mm, Mm, Mm] };
  };
}
