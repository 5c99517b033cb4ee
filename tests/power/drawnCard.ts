import { cardSchema, type Card, type CardInput } from '../../src/card/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { Net, Netlist, State } from '../../src/net/index.ts';
import type { CentreLine, Clearance, Piece, Traced } from '../../src/trace/index.ts';

/** A strip drawn as a path; strips that share an end are one piece only if drawn as one. */
export interface DrawnStrip {
  net: string;
  widthMm: number;
  path: Point[];
}

/** A card whose copper is drawn strip by strip, as a perfect trace and netlist would give it. */
export function drawnCard(
  strips: DrawnStrip[],
  input: Omit<CardInput, 'format' | 'base'>,
  states: Omit<State, 'shorted'>[],
  padNets: Record<string, string>,
): { card: Card; traced: Traced; netlist: Netlist } {
  const card = cardSchema.parse({ format: 'foilproof/1', base: { width_mm: 105, height_mm: 148 }, ...input });
  const pieces = strips.map(pieceOf);
  const nets = [...new Set(strips.map(({ net }) => net))].map((id): Net => {
    const own = strips.flatMap((strip, i) => (strip.net === id ? [i + 1] : []));
    const pads = Object.keys(padNets).filter((pad) => padNets[pad] === id);
    const areaMm2 = own.reduce((sum, piece) => sum + (pieces[piece - 1]?.areaMm2 ?? 0), 0);
    return { id, pieces: own, pads, areaMm2 };
  });
  return {
    card,
    traced: {
      width: 1050,
      height: 1480,
      pxPerMm: 10,
      originMm: [0, 0],
      baseMm: { width: 105, height: 148 },
      labels: new Int32Array(0),
      pieces,
      necks: [],
      clearances: clearances(pieces),
      crossings: [],
      smallestGapMm: 0.3,
    },
    netlist: {
      nets,
      netOf: padNets,
      states: states.map((state) => ({ ...state, shorted: false })),
      findings: [],
      notSeen: [],
    },
  };
}

function pieceOf({ widthMm, path }: DrawnStrip, i: number): Piece {
  const lengthMm = path.slice(1).reduce((sum, [x, y], k) => {
    const [px, py] = path[k] as Point;
    return sum + Math.hypot(x - px, y - py);
  }, 0);
  const line: CentreLine = { piece: i + 1, path, widths: path.map(() => widthMm), lengthMm };
  const [xs, ys] = [path.map(([x]) => x), path.map(([, y]) => y)];
  const half = widthMm / 2;
  const box = {
    x0: Math.min(...xs) - half,
    y0: Math.min(...ys) - half,
    x1: Math.max(...xs) + half,
    y1: Math.max(...ys) + half,
  };
  const outer: Point[] = [
    [box.x0, box.y0],
    [box.x1, box.y0],
    [box.x1, box.y1],
    [box.x0, box.y1],
  ];
  const outline = { outer, holes: [] };
  return { id: i + 1, areaMm2: lengthMm * widthMm, box, outline, widthMm, sure: 1, lines: [line], ends: [] };
}

function clearances(pieces: Piece[]): Clearance[] {
  return pieces.flatMap((a) =>
    pieces
      .filter((b) => b.id > a.id)
      .map((b) => {
        const pairs = endsOf(a).flatMap((atA) =>
          endsOf(b).map((atB) => ({ atA, atB, mm: Math.hypot(atA[0] - atB[0], atA[1] - atB[1]) })),
        );
        const near = pairs.sort((p, q) => p.mm - q.mm)[0] as (typeof pairs)[number];
        return { a: a.id, b: b.id, ...near };
      }),
  );
}

function endsOf({ lines }: Piece): Point[] {
  return lines.flatMap(({ path }) => [path[0] as Point, path.at(-1) as Point]);
}

/** Two long strips with lamps between them, all lit while the cell is pressed. */
export function railCard(
  lamps: { id: string; colour: Card['lamps'][number]['colour']; series_ohm?: number }[],
  cell: CardInput['cell'] = { at: [10, 60] },
) {
  const step = 90 / Math.max(1, lamps.length);
  const placed = lamps.map((lamp, i) => {
    const x = 10 + step * i;
    return { ...lamp, plus: [x, 40] as [number, number], minus: [x, 50] as [number, number] };
  });
  const pads = Object.fromEntries(
    placed.flatMap(({ id }) => [[`${id}+`, 'plus'] as const, [`${id}-`, 'minus'] as const]),
  );
  return drawnCard(
    [
      {
        net: 'plus',
        widthMm: 5,
        path: [
          [5, 40],
          [100, 40],
        ],
      },
      {
        net: 'minus',
        widthMm: 5,
        path: [
          [5, 50],
          [100, 50],
        ],
      },
    ],
    { lamps: placed, cell: { upper_contact: [5, 40], ...cell } as NonNullable<CardInput['cell']> },
    [
      { name: 'at rest', closed: [], nodes: [['plus'], ['minus']] },
      { name: 'cell pressed', closed: ['cell'], nodes: [['plus'], ['minus']] },
    ],
    { ...pads, 'cell+': 'plus', 'cell-': 'minus' },
  );
}
