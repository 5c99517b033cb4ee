import type { Random } from '../../generate/random.ts';
import { noise } from '../../generate/random.ts';
import type { Rgb, Surface } from './surfaces.ts';

/** Something that lies on the table, beneath the base or on it. */
export interface Item {
  covers(x: number, y: number): boolean;
  colour: Rgb | Surface;
}

/** What makes a scene hard: on the table beneath the base, and over it. */
export interface Clutter {
  names: string[];
  under: Item[];
  over: Item[];
}

const kinds = ['papers', 'mount', 'hand', 'twin', 'ruled', 'book', 'tapes'] as const;

/** One to three hard things, as a maker's table has them. */
export function clutterFor(w: number, h: number, paper: Rgb, d: Random): Clutter {
  const all: Clutter = { names: [], under: [], over: [] };
  for (let n = d.pick([1, 1, 2, 2, 3]); n > 0; n--) {
    const kind = d.pick(kinds);
    all.names.push(kind);
    if (kind === 'hand') all.over.push(...hand(w, h, d));
    else all.under.push(...beneath(kind, w, h, paper, d));
  }
  return all;
}

function beneath(
  kind: Exclude<(typeof kinds)[number], 'hand'>,
  w: number,
  h: number,
  paper: Rgb,
  d: Random,
): Item[] {
  if (kind === 'papers') return Array.from({ length: d.pick([1, 2, 3]) }, () => otherPaper(w, h, paper, d));
  if (kind === 'mount') return [mount(w, h, paper, d)];
  if (kind === 'twin') return [twin(w, h, paper, d)];
  if (kind === 'ruled') return [ruled(w, h, d)];
  if (kind === 'book') return [book(w, h, d)];
  return tapes(w, h, d);
}

/** A turned rectangle about a middle, mm. */
function turned(cx: number, cy: number, long: number, wide: number, angle: number) {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return (x: number, y: number) => {
    const u = (x - cx) * c + (y - cy) * s;
    const v = -(x - cx) * s + (y - cy) * c;
    return Math.abs(u) < long / 2 && Math.abs(v) < wide / 2;
  };
}

const shaded = (paper: Rgb, d: Random): Rgb => {
  const k = d.between(0.7, 1.1);
  return paper.map((v) => Math.min(0.9, v * k * d.between(0.95, 1.05))) as Rgb;
};

/** Another sheet that the base lies on in part, or beside. */
function otherPaper(w: number, h: number, paper: Rgb, d: Random): Item {
  const bearing = d.between(0, 2 * Math.PI);
  const far = d.between(0.3, 1.1);
  const square = d.next() < 0.4 ? d.between(-0.05, 0.05) : d.between(0, Math.PI);
  const [long, wide] = [d.between(80, 300), d.between(60, 210)];
  const cx = w / 2 + Math.cos(bearing) * far * (w / 2 + long / 2);
  const cy = h / 2 + Math.sin(bearing) * far * (h / 2 + wide / 2);
  const own: Rgb =
    d.next() < 0.6 ? shaded(paper, d) : [d.between(0.1, 0.8), d.between(0.1, 0.8), d.between(0.1, 0.8)];
  return { covers: turned(cx, cy, long, wide, square), colour: own };
}

/** A bigger sheet beneath, parallel or nearly so. */
function mount(w: number, h: number, paper: Rgb, d: Random): Item {
  const margin = () => d.between(3, 45);
  const [left, right, up, down] = [margin(), margin(), margin(), margin()];
  const covers = turned(
    (w + right - left) / 2,
    (h + down - up) / 2,
    w + left + right,
    h + up + down,
    d.between(-0.04, 0.04),
  );
  return {
    covers,
    colour:
      d.next() < 0.5 ? shaded(paper, d) : [d.between(0.05, 0.7), d.between(0.05, 0.7), d.between(0.05, 0.7)],
  };
}

/** A blank sheet of the same size close beside: the front of the card, waiting. */
function twin(w: number, h: number, paper: Rgb, d: Random): Item {
  const apart = d.between(1, 25);
  const [sx, sy] = d.pick([
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const);
  const cx = w / 2 + sx * (w + apart) + d.between(-8, 8);
  const cy = h / 2 + sy * (h + apart) + d.between(-8, 8);
  return { covers: turned(cx, cy, w, h, d.between(-0.06, 0.06)), colour: shaded(paper, d) };
}

/** A cutting mat with a border line, grid and its own edge. */
function ruled(w: number, h: number, d: Random): Item {
  const turn = d.between(-0.2, 0.2);
  const [long, wide] = [w + d.between(40, 160), h + d.between(40, 140)];
  const covers = turned(w / 2 + d.between(-15, 15), h / 2 + d.between(-15, 15), long, wide, turn);
  const own: Rgb = d.pick([
    [0.03, 0.12, 0.08],
    [0.03, 0.06, 0.16],
    [0.1, 0.1, 0.1],
    [0.35, 0.1, 0.16],
  ] as const) as unknown as Rgb;
  const line = own.map((v) => v + d.between(0.1, 0.45)) as Rgb;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const pitch = d.pick([10, 12.7, 25.4]);
  return {
    covers,
    colour: (x, y) => {
      const [u, v] = [x * c + y * s, -x * s + y * c].map(
        (t) => Math.abs(t / pitch - Math.round(t / pitch)) * pitch,
      );
      return Math.min(u, v) < 0.25 ? line : own;
    },
  };
}

/** An open book or a printed page: columns of grey lines. */
function book(w: number, h: number, d: Random): Item {
  const turn = d.between(-0.5, 0.5);
  const covers = turned(
    w / 2 + d.between(-60, 60),
    h / 2 + d.between(-60, 60),
    d.between(150, 320),
    d.between(120, 240),
    turn,
  );
  const seed = Math.floor(d.between(0, 1e6));
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return {
    covers,
    colour: (x, y) => {
      const [u, v] = [x * c + y * s, -x * s + y * c];
      const row = Math.round(v / 5);
      const ink =
        Math.abs(v / 5 - row) < 0.25 &&
        noise(u / 1.5, row * 9, seed) > -0.2 &&
        noise(u / 90, 0.5, seed) > -0.5;
      return ink ? [0.2, 0.2, 0.2] : [0.7, 0.68, 0.62];
    },
  };
}

/** Loose strips of tape and offcuts on the table, some parallel to the base and close to it. */
function tapes(w: number, h: number, d: Random): Item[] {
  return Array.from({ length: d.pick([2, 3, 5]) }, () => {
    const along = d.next() < 0.5;
    const off = d.between(1.5, 30) * d.pick([-1, 1]);
    const cx = along ? d.between(0, w) : off < 0 ? off : w + off;
    const cy = along ? (off < 0 ? off : h + off) : d.between(0, h);
    const turn = (along ? 0 : Math.PI / 2) + d.between(-0.1, 0.1);
    const k = d.between(0.1, 1.2);
    return {
      covers: turned(cx, cy, d.between(40, 200), d.between(3, 8), turn),
      colour: [0.9 * k, 0.55 * k, 0.42 * k] as Rgb,
    };
  });
}

/** A hand over one edge: a palm outside and four fingers reaching in. */
function hand(w: number, h: number, d: Random): Item[] {
  const bearing = d.between(0, 2 * Math.PI);
  const [ux, uy] = [Math.cos(bearing), Math.sin(bearing)];
  const reach = d.between(-5, 25);
  const edge = Math.min(Math.abs(w / 2 / (ux || 1e-9)), Math.abs(h / 2 / (uy || 1e-9)));
  const tone = d.between(0.25, 1.1);
  const skin: Rgb = [0.5 * tone, 0.3 * tone, 0.22 * tone];
  const palm = edge - reach + d.between(55, 80);
  const items: Item[] = [
    { covers: capsule(w / 2 + ux * palm, h / 2 + uy * palm, ux, uy, d.between(30, 42)), colour: skin },
  ];
  for (let k = 0; k < 4; k++) {
    const side = (k - 1.5) * d.between(15, 22);
    const start = edge - reach + Math.abs(k - 1.5) * 8;
    const x = w / 2 + ux * start - uy * side;
    const y = h / 2 + uy * start + ux * side;
    items.push({ covers: capsule(x, y, ux, uy, d.between(7, 9.5)), colour: skin });
  }
  return items;
}

/** A half-endless rounded bar from a tip outwards. */
function capsule(tipX: number, tipY: number, ux: number, uy: number, r: number) {
  return (x: number, y: number) => {
    const t = Math.max(0, (x - tipX) * ux + (y - tipY) * uy);
    return (x - tipX - t * ux) ** 2 + (y - tipY - t * uy) ** 2 < r * r;
  };
}
