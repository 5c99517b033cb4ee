import type { Random } from '../../generate/random.ts';
import { noise } from '../../generate/random.ts';
import { clutterFor } from './clutter.ts';
import type { Item } from './clutter.ts';
import { paperSurface, papers, tableSurface, tables } from './surfaces.ts';
import type { Rgb, Surface } from './surfaces.ts';

export interface Layout {
  base: { width: number; height: number };
  paper: string;
  table: string;
  at: Surface;
}

const sizes = [
  [105, 148],
  [148, 105],
  [127, 127],
  [148, 210],
  [210, 148],
  [101.6, 152.4],
  [127, 177.8],
  [140, 140],
  [88.9, 127],
  [74, 105],
] as const;

/** One made-up table with a base on it, seen from above, in base mm; a hard one has more lying about. */
export function layOut(d: Random, hard = false): Layout {
  const [width, height] = d.pick(sizes);
  const paperKind = d.pick(papers);
  const paper = paperSurface(paperKind, d);
  const tableKind =
    paperKind === 'black'
      ? d.pick(['wood', 'pale', 'granite', 'cloth', 'newsprint'] as const)
      : d.pick(tables);
  const pale: Rgb = paperKind === 'black' ? [0.6, 0.6, 0.6] : paper.colour;
  const table = tableSurface(tableKind, pale, d);
  const on = [...flaps(width, height, paper.at, d), ...copper(width, height, d)];
  const clutter = hard ? clutterFor(width, height, paper.colour, d) : { names: [], under: [], over: [] };
  const over = [...things(width, height, d), ...fingers(width, height, d), ...clutter.over];
  const lightFrom = d.between(0, 2 * Math.PI);
  const thick = d.between(0.1, 0.8);
  const bow = [0, 1, 2, 3].map(() => (d.next() < 0.25 ? d.between(-0.5, 0.5) : 0));
  const shade = d.between(0.4, 0.9);
  const inBase = (x: number, y: number) => {
    const tx = (4 * x * (width - x)) / (width * width);
    const ty = (4 * y * (height - y)) / (height * height);
    return x > bow[0] * ty && x < width + bow[1] * ty && y > bow[2] * tx && y < height + bow[3] * tx;
  };
  const at: Surface = (x, y) => {
    for (const item of over) if (item.covers(x, y)) return colourOf(item, x, y);
    const sheet = inBase(x, y);
    for (const item of on) if (item.covers(x, y)) return colourOf(item, x, y);
    if (sheet) return paper.at(x, y);
    const below = clutter.under.find((item) => item.covers(x, y));
    const own = below ? colourOf(below, x, y) : table(x - width / 2, y - height / 2);
    const k = inBase(x + Math.cos(lightFrom) * thick, y + Math.sin(lightFrom) * thick) ? shade : 1;
    return [own[0] * k, own[1] * k, own[2] * k];
  };
  const onTable = [tableKind, ...clutter.names].join('+');
  return { base: { width, height }, paper: paperKind, table: onTable, at };
}

const colourOf = (item: Item, x: number, y: number): Rgb =>
  typeof item.colour === 'function' ? item.colour(x, y) : item.colour;

const box = (x0: number, y0: number, x1: number, y1: number) => (x: number, y: number) =>
  x > x0 && x < x1 && y > y0 && y < y1;

function flaps(w: number, h: number, paper: Surface, d: Random): Item[] {
  return Array.from({ length: d.pick([0, 0, 1, 1, 2]) }, () => {
    const side = d.pick([0, 1, 2, 3]);
    const long = side % 2 === 0 ? w : h;
    const size = d.between(12, 0.4 * long);
    const from = d.next() < 0.3 ? d.pick([0, long - size]) : d.between(0, long - size);
    const out = d.between(12, 35);
    const covers =
      side === 0
        ? box(from, -out, from + size, 0)
        : side === 1
          ? box(w, from, w + out, from + size)
          : side === 2
            ? box(from, h, from + size, h + out)
            : box(-out, from, 0, from + size);
    const k = d.between(0.85, 1.05);
    return { covers, colour: (x: number, y: number) => paper(x, y).map((v) => v * k) as Rgb };
  });
}

/** Tape: rails parallel to the sides and a few cross strips, each a mirror of something bright or dark. */
function copper(w: number, h: number, d: Random): Item[] {
  const inset = d.between(4, 14);
  const tape = d.between(2.5, 7);
  const strips: Item[] = [];
  const add = (x0: number, y0: number, x1: number, y1: number) => {
    const seed = Math.floor(d.between(0, 1e6));
    const bright = d.next() < 0.4 ? 1.3 : 0.12;
    strips.push({
      covers: box(Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1)),
      colour: (x, y) => {
        const k = Math.max(
          0.03,
          bright * (0.6 + 0.6 * noise(x / 2, y / 2, seed) + 0.4 * noise(x / 15, y / 15, seed + 1)),
        );
        return [0.95 * k, 0.62 * k, 0.5 * k];
      },
    });
  };
  if (d.next() < 0.8) add(inset, inset, w - inset * d.between(0.8, 2), inset + tape);
  if (d.next() < 0.8) add(inset, h - inset - tape, w - inset, h - inset);
  if (d.next() < 0.7) add(w - inset - tape, inset, w - inset, h - inset * d.between(0.8, 2));
  if (d.next() < 0.5) add(inset, inset, inset + tape, h - inset);
  for (let k = Math.floor(d.between(0, 5)); k > 0; k--) {
    const x = d.between(inset, w - inset - tape);
    add(x, inset, x + tape, d.between(inset + 10, h - inset));
  }
  return strips;
}

/** Cards, a pencil, a ruler: near the base, seldom over its edge. */
function things(w: number, h: number, d: Random): Item[] {
  return Array.from({ length: Math.floor(d.between(0, 5)) }, () => {
    const long = d.between(15, 150);
    const wide = d.next() < 0.4 ? d.between(6, 30) : d.between(0.3, 1) * long;
    const a = d.between(0, 2 * Math.PI);
    const far = d.next() < 0.2 ? -4 : d.between(2, 40);
    const bearing = d.between(0, 2 * Math.PI);
    const reach = Math.max(w, h) / 2 + far + wide / 2;
    const cx = w / 2 + Math.cos(bearing) * reach * (w / Math.max(w, h) + 0.3);
    const cy = h / 2 + Math.sin(bearing) * reach * (h / Math.max(w, h) + 0.3);
    const c = Math.cos(a);
    const s = Math.sin(a);
    const tone = d.between(0.3, 1);
    const colour: Rgb =
      d.next() < 0.3
        ? [0.75, 0.74, 0.7]
        : [d.between(0.05, 0.8) * tone, d.between(0.05, 0.8) * tone, d.between(0.05, 0.8) * tone];
    return {
      covers: (x: number, y: number) => {
        const u = (x - cx) * c + (y - cy) * s;
        const v = -(x - cx) * s + (y - cy) * c;
        return Math.abs(u) < long / 2 && Math.abs(v) < wide / 2;
      },
      colour,
    };
  });
}

/** Capsules of skin that hold the sheet down, reaching in from outside. */
function fingers(w: number, h: number, d: Random): Item[] {
  return Array.from({ length: d.pick([0, 0, 0, 1, 1, 2, 3]) }, () => {
    const bearing = d.between(0, 2 * Math.PI);
    const r = d.between(6, 10);
    const deep = d.between(-5, 15);
    const tipX = w / 2 + Math.cos(bearing) * (w / 2 - deep);
    const tipY = h / 2 + Math.sin(bearing) * (h / 2 - deep);
    const a = bearing + d.between(-0.6, 0.6);
    const tone = d.between(0.25, 1.1);
    const c = Math.cos(a);
    const s = Math.sin(a);
    return {
      covers: (x: number, y: number) => {
        const t = Math.max(0, (x - tipX) * c + (y - tipY) * s);
        return (x - tipX - t * c) ** 2 + (y - tipY - t * s) ** 2 < r * r;
      },
      colour: [0.5 * tone, 0.3 * tone, 0.22 * tone] as Rgb,
    };
  });
}
