import type { CopperMask } from '../copper/index.ts';
import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { surroundings, type Surroundings } from './contrast.ts';
import { cutProbability } from './cutProbability.ts';
import { cutShape } from './cutShape.ts';
import { cutSides } from './cutSides.ts';
import { fineEvidence, paperEvidence } from './evidence.ts';
import { facingEnds, type Facing } from './facing.ts';
import { facingSides } from './facingSides.ts';
import { toMm, toPx, type Frame } from './frame.ts';
import { straighten, type Ribbon } from './ribbon.ts';
import { branchSeams } from './branchSeams.ts';
import { notches } from './notches.ts';
import { seamLines } from './seamLines.ts';
import { sidePaths } from './sidePath.ts';
import type { CentreLine, Clearance, Crossing, Piece } from './types.ts';

/** mm beyond the strip's borders in which its paper is looked for. */
const margin = 1.5;
/** mm along the strip over which copper and paper are taken as alike, and the step between such windows. */
const reach = 6;
const window = 4;
/** mm: two crossings nearer than this along a strip are one. */
const apart = 1.5;

/** The part of a ribbon that is tape, with what each of its samples says for paper. */
interface StripEvidence {
  ribbon: Ribbon;
  /** First column of the strip in the ribbon, and how many. */
  first: number;
  columns: number;
  evidence: Float32Array;
  /** The same for fine cuts, whose colour a photograph does not keep. */
  fine: Float32Array;
  blurPx: number;
  around: (s: number) => Surroundings | undefined;
}

/**
 * Lines across strips: cuts that the filled mask bridges or that lie between two facing ends, seams, and places where
 * glare hides what is there.
 * @param blurPx how far a sharp border is spread in the squared picture, px
 */
export function crossingsOf(
  pieces: readonly Piece[],
  labels: Int32Array,
  clearances: readonly Clearance[],
  mask: CopperMask,
  sheet: SquaredSheet,
  blurPx: number,
  smallestGapMm: number,
): Crossing[] {
  const frame: Frame = mask;
  const found: Crossing[] = [];
  for (const piece of pieces) {
    for (const line of piece.lines) {
      if (line.path.length < 8) continue;
      const widths = [...line.widths].sort((a, b) => a - b);
      const strip = look(openPart(line, piece), widths[widths.length >> 1], sheet, labels, frame, blurPx);
      if (!strip) continue;
      found.push(...cutsIn(strip, piece.id, frame, smallestGapMm));
      found.push(...fineCutsIn(strip, piece.id, frame, smallestGapMm));
      found.push(...glareIn(strip, piece.id, mask, frame));
      found.push(...seamsIn(strip, piece.id, frame));
    }
  }
  for (const { piece, path, widthMm } of pieces.flatMap(notches)) {
    const strip = look(path, widthMm, sheet, labels, frame, blurPx);
    if (strip) found.push(...cutsIn(strip, piece, frame, smallestGapMm));
  }
  for (const piece of pieces) found.push(...branchSeams(piece));
  for (const { a, b, path, widthMm } of facings(pieces, labels, clearances, frame)) {
    const strip = look(path, widthMm, sheet, labels, frame, blurPx);
    if (!strip) continue;
    const gap = Math.max(0, ...cutsIn(strip, a.piece, frame, smallestGapMm).map((cut) => cut.gap));
    const at: Point = [(a.at[0] + b.at[0]) / 2, (a.at[1] + b.at[1]) / 2];
    const width = Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]);
    found.push({ at, piece: a.piece, other: b.piece, widthMm: width, gap, seam: 0, glare: 1 - gap });
  }
  const doubted = found.filter(({ at }) => !isSound(mask, at));
  return strongest([...doubted, ...openedCuts(mask, labels, frame, doubted)]);
}

/** Whether the maker has said that copper runs on at a place. */
const isSound = ({ sound = [] }: CopperMask, [x, y]: Point): boolean =>
  sound.some(({ at, along: [ux, uy], alongMm, acrossMm }) => {
    const [dx, dy] = [x - at[0], y - at[1]];
    return Math.abs(dx * ux + dy * uy) < alongMm && Math.abs(dx * uy - dy * ux) < acrossMm;
  });

/** The cuts that the copper stage saw, where the mask is open. */
function openedCuts(
  { cuts = [], filled }: CopperMask,
  labels: Int32Array,
  frame: Frame,
  told: readonly Crossing[],
): Crossing[] {
  return cuts.flatMap((cut) => {
    const { at, along, widthMm, stripMm, sure } = cut;
    const [piece, other] = cutSides(labels, frame, cut);
    const [x, y] = toPx(frame, at);
    if (!piece || !other || filled[Math.floor(y) * frame.width + Math.floor(x)]) return [];
    const near = told.filter((each) => Math.hypot(each.at[0] - at[0], each.at[1] - at[1]) < apart);
    const gap = Math.max(sure, ...near.map((each) => each.gap));
    return [{ at, piece, other, widthMm, along, stripMm, gap, seam: 0, glare: 0, opened: true }];
  });
}

/** Facing ends, and facing sides of pieces that no pair of ends already tells. */
function facings(
  pieces: readonly Piece[],
  labels: Int32Array,
  clearances: readonly Clearance[],
  frame: Frame,
): Facing[] {
  const byEnds = facingEnds(pieces);
  const told = new Set(byEnds.flatMap(({ a, b }) => [`${a.piece} ${b.piece}`, `${b.piece} ${a.piece}`]));
  const untold = clearances.filter(({ a, b }) => !told.has(`${a} ${b}`));
  return [...byEnds, ...facingSides(untold, labels, frame)];
}

/** mm at a free end that are not asked: a slanted end or a pad laid over it shows paper or grey, which is no cut. */
const endMargin = 1.6;

/** A centre-line without its free ends. */
function openPart({ path }: CentreLine, { ends }: Piece): readonly Point[] {
  const skip = Math.ceil(endMargin / 0.5);
  const free = (p: Point): boolean => ends.some(({ at }) => Math.hypot(at[0] - p[0], at[1] - p[1]) < 0.1);
  return path.slice(free(path[0]) ? skip : 0, free(path[path.length - 1]) ? -skip : undefined);
}

/** Straightens a strip and asks each of its samples. */
function look(
  path: readonly Point[],
  widthMm: number,
  sheet: SquaredSheet,
  labels: Int32Array,
  frame: Frame,
  blurPx: number,
): StripEvidence | undefined {
  const { pxPerMm } = frame;
  const half = Math.round((widthMm / 2) * pxPerMm);
  const blur = Math.max(1, Math.round(1.5 * blurPx));
  const inner = half - 1;
  // Too narrow a strip, or too short a stretch between its ends, to ask.
  if (inner < 3 || path.length < 2) return undefined;
  const ribbon = straighten(path, widthMm / 2 + margin, sheet, labels, frame);
  const columns = 2 * inner + 1;
  const first = (ribbon.across - 1) / 2 - inner;
  const rows = Math.round(window * pxPerMm);
  const views = Array.from({ length: Math.ceil(ribbon.length / rows) }, (_, n) =>
    surroundings(ribbon, Math.round((n + 0.5) * rows), half, Math.round(reach * pxPerMm), blur),
  );
  const around = (s: number): Surroundings | undefined => views[Math.floor(s / rows)];
  const evidence = new Float32Array(ribbon.length * columns).fill(-1);
  const fine = evidence.slice();
  const bent = bends(ribbon);
  for (let s = 0; s < ribbon.length; s++) {
    const view = around(s);
    if (!view) continue;
    for (let t = 0; t < columns; t++) {
      const n = s * ribbon.across + first + t;
      const beside = bent[s] && ribbon.piece[n] <= 0;
      evidence[s * columns + t] = beside ? -3 : paperEvidence(ribbon, n, view);
      fine[s * columns + t] = beside ? -3 : fineEvidence(ribbon, n, view);
    }
  }
  return { ribbon, first, columns, evidence, fine, blurPx, around };
}

/** Rows at which the strip turns a corner: there the columns reach over its outer side, and paper is no cut. */
function bends({ normal, length }: Ribbon): boolean[] {
  return normal.map((n, s) => {
    const before = normal[Math.max(0, s - 25)];
    const after = normal[Math.min(length - 1, s + 25)];
    return Math.min(n[0] * before[0] + n[1] * before[1], n[0] * after[0] + n[1] * after[1]) < 0.96;
  });
}

/** Ways of paper from side to side, best first within each stretch. */
function cutsIn(
  strip: StripEvidence,
  piece: number,
  frame: Frame,
  smallestGapMm: number,
  leastSure = 0,
): Crossing[] {
  const { ribbon, columns, evidence } = strip;
  const { mean, rowsFrom } = sidePaths(evidence, ribbon.length, columns);
  const near = Math.round(apart * frame.pxPerMm);
  const cuts: Crossing[] = [];
  for (let s = 0; s < ribbon.length; s++) {
    if (mean[s] < -0.2) continue;
    let top = s;
    let end = s;
    while (end < ribbon.length && mean[end] >= -0.2 && end - s < 8 * near) {
      if (mean[end] > mean[top]) top = end;
      end++;
    }
    const rows = rowsFrom(top);
    const shape = cutShape(strip, rows, strip.blurPx);
    const widthMm = shape.width / frame.pxPerMm;
    const view = strip.around(top);
    const gap = view ? cutProbability(mean[top], shape, widthMm / smallestGapMm, view) : 0;
    if (shape.sure < leastSure) {
      s = end + near;
      continue;
    }
    const [x, y] = ribbon.centre[rows[columns >> 1]];
    const [nx, ny] = ribbon.normal[rows[columns >> 1]];
    const lies = { along: [ny, -nx] as Point, stripMm: columns / frame.pxPerMm };
    cuts.push({ at: toMm(frame, x, y), piece, widthMm, ...lies, gap, seam: 0, glare: 0 });
    s = end + near;
  }
  return cuts.filter(({ gap }) => gap > 0.1);
}

/** A fine cut is told from this probability on, with paper at this share of the columns, up to this width, mm. */
const fineFrom = 0.6;
const fineSure = 0.9;
const fineMm = 1;
/** What its colour leaves of the probability: on creased sound strips glints look like it, so nobody can tell. */
const fineCertainty = 0.5;

/** Straight lines of the paper's lightness from side to side that may be cuts too fine for their colour to be kept. */
function fineCutsIn(strip: StripEvidence, piece: number, frame: Frame, smallestGapMm: number): Crossing[] {
  const fine = { ...strip, evidence: strip.fine };
  return cutsIn(fine, piece, frame, smallestGapMm, fineSure)
    .filter(({ gap, widthMm }) => gap >= fineFrom && widthMm <= fineMm)
    .map((cut) => ({ ...cut, gap: fineCertainty * cut.gap, fine: true }));
}

/** Stretches that only the bridging made copper, from side to side. */
function glareIn(
  { ribbon, first, columns }: StripEvidence,
  piece: number,
  mask: CopperMask,
  frame: Frame,
): Crossing[] {
  const bridged = new Uint8Array(ribbon.length);
  for (let s = 0; s < ribbon.length; s++) {
    let seen = 0;
    for (let t = 0; t < columns; t++) {
      const off = first + t - (ribbon.across - 1) / 2;
      const i = Math.floor(ribbon.centre[s][0] + off * ribbon.normal[s][0]);
      const j = Math.floor(ribbon.centre[s][1] + off * ribbon.normal[s][1]);
      if (i >= 0 && j >= 0 && i < frame.width && j < frame.height) seen += mask.strict[j * frame.width + i];
    }
    bridged[s] = seen < 0.1 * columns ? 1 : 0;
  }
  const found: Crossing[] = [];
  for (let s = 0; s < ribbon.length; s++) {
    if (!bridged[s]) continue;
    let end = s;
    while (end < ribbon.length && bridged[end]) end++;
    const [x, y] = ribbon.centre[(s + end) >> 1];
    const widthMm = (end - s) / frame.pxPerMm;
    if (widthMm > 0.2) found.push({ at: toMm(frame, x, y), piece, widthMm, gap: 0, seam: 0, glare: 0.7 });
    s = end;
  }
  return found;
}

function seamsIn({ ribbon, first, columns }: StripEvidence, piece: number, frame: Frame): Crossing[] {
  return seamLines(ribbon, first, columns).map(({ row, share, widthPx }) => {
    const [x, y] = ribbon.centre[row];
    const seam = 0.35 + 0.25 * share;
    return { at: toMm(frame, x, y), piece, widthMm: widthPx / frame.pxPerMm, gap: 0, seam, glare: 0 };
  });
}

/** Of crossings that tell of one and the same place the most certain stays: a cut that was opened above all, a cut above a seam above glare. */
function strongest(found: Crossing[]): Crossing[] {
  const rank = ({ gap, seam, glare, opened }: Crossing): number =>
    4 * gap + 2 * seam + glare + (opened ? 1 : 0);
  const kept: Crossing[] = [];
  for (const crossing of [...found].sort((a, b) => rank(b) - rank(a))) {
    const [x, y] = crossing.at;
    if (kept.some(({ at, widthMm }) => Math.hypot(at[0] - x, at[1] - y) < Math.max(apart, widthMm))) continue;
    kept.push(crossing);
  }
  return kept;
}
