import { z } from 'zod';
import { cardSchema } from '../../src/card/index.ts';
import type { Card, CardInput } from '../../src/card/index.ts';
import type { Homography, Point, Quad } from '../../src/geometry/index.ts';
import { applyHomography, invertHomography } from '../../src/sheet/index.ts';
import type { Entry, TrueFault } from './entry.ts';
import { distance } from './findingScore.ts';
import { readBinary } from './picture.ts';

/** The layout `tape-exam/1`: NAME.jpg, NAME_question.json, NAME.json, NAME_rect_mask.png, NAME_rect_valid.png. */

const point = z.tuple([z.number(), z.number()]);
const planSchema = z.object({
  strips: z.array(
    z.object({
      id: z.string(),
      path: z.array(point),
      width: z.number(),
      net: z.string(),
      surface: z.string(),
    }),
  ),
  lamps: z.array(z.object({ id: z.string(), c: point, axis_plus_to_minus: point, net_plus: z.string() })),
  cell: z.object({ c: point, top_net: z.string(), face_up: z.string() }).nullish(),
  flaps: z.array(
    z.object({
      id: z.string(),
      hinge_mm: z.array(point),
      out: point,
      length_mm: z.number(),
      use: z.string(),
    }),
  ),
  patches: z.array(z.object({ c: point, size: point })),
  openings: z.array(
    z.object({
      id: z.string(),
      kind: z.string(),
      x_mm: z.number(),
      y_mm: z.number(),
      gap_mm: z.number(),
      note: z.string().optional(),
    }),
  ),
});
const questionSchema = z.object({
  base: z.object({ width_mm: z.number(), height_mm: z.number() }),
  taps: z.object({
    lamps: z.array(z.object({ id: z.string(), c_px: point, plus_px: point.nullish() })),
    cell: z.object({ c_px: point, face_up: z.string() }).nullish(),
  }),
  plan: planSchema.nullish(),
});
const truthSchema = z.object({
  image_size: point,
  base: z.object({ corners_px: z.array(point) }),
  camera: z.object({
    homography_mm_to_undistorted_px: z.array(z.array(z.number())),
    K: z.array(z.array(z.number())),
    distortion: z.object({ k1: z.number(), k2: z.number() }),
    tilt_deg: z.number().optional(),
  }),
  asbuilt: z.object({
    lamps: z.array(z.object({ id: z.string(), c_mm: point })),
    pad_component: z.record(z.string(), z.string().nullable()),
    seams: z.array(z.object({ x_mm: z.number(), y_mm: z.number() })),
    strips: z.array(z.object({ net: z.string().optional(), path: z.array(point).optional() })).default([]),
  }),
  faults: z.array(
    z.object({
      kind: z.string(),
      x_mm: z.number(),
      y_mm: z.number(),
      size_mm: z.number().optional(),
      geom_mm: z.array(point).optional(),
    }),
  ),
  settings: z.object({ paper: z.string(), table: z.string(), light: z.string() }),
});
type Question = z.infer<typeof questionSchema>;
type Truth = z.infer<typeof truthSchema>;

const kindOf: Record<string, TrueFault['kind']> = {
  gap: 'gap',
  bridge: 'bridge',
  'near-bridge': 'tight',
  reversed: 'reversed-lamp',
  'lamp-off': 'lamp-off-strip',
  missing: 'missing-strip',
  shifted: 'shifted-strip',
};

/** Reads one photograph of the layout. @param stem path without .jpg */
export async function readRenderEntry(stem: string, name: string, json: JsonReader): Promise<Entry> {
  const question = questionSchema.parse(await json(`${stem}_question.json`));
  const truth = truthSchema.parse(await json(`${stem}.json`));
  const mask = await readBinary(`${stem}_rect_mask.png`);
  const valid = await readBinary(`${stem}_rect_valid.png`);
  return {
    name,
    photoPath: `${stem}.jpg`,
    card: cardOf(question, truth),
    cornersPx: truth.base.corners_px as unknown as Quad,
    k1: k1Of(truth),
    mask: { frame: 'base', width: mask.width, height: mask.height, copper: mask.data, valid: valid.data },
    faults: truth.faults.map(faultOf),
    excused: [...bareLamps(truth), ...bothUnderCell(question, truth)],
    seams: truth.asbuilt.seams.map((s) => [s.x_mm, s.y_mm]),
    conditions: {
      paper: truth.settings.paper,
      table: truth.settings.table,
      light: truth.settings.light,
      tilt: `${10 * Math.floor((truth.camera.tilt_deg ?? 0) / 10)}+ deg`,
    },
  };
}

export type JsonReader = (path: string) => Promise<unknown>;

function faultOf(f: Truth['faults'][number]): TrueFault {
  const kind = kindOf[f.kind];
  if (!kind) throw new Error(`Fault kind ${f.kind} has no finding.`);
  // Only a whole strip is a path; a sliver's fault is the place where it joins or nearly does.
  const whole = f.kind === 'missing' || f.kind === 'shifted';
  return { kind, path: whole && f.geom_mm ? f.geom_mm : [[f.x_mm, f.y_mm]], sizeMm: f.size_mm };
}

/** Lamps with a pad on no copper, whatever fault left it so. */
function bareLamps(truth: Truth): TrueFault[] {
  const bare = (id: string) => [`${id}+`, `${id}-`].some((pad) => truth.asbuilt.pad_component[pad] === null);
  return truth.asbuilt.lamps
    .filter((l) => bare(l.id))
    .map((l) => ({ kind: 'lamp-off-strip', path: [l.c_mm] }));
}

/** The cell's radius as drawn, mm. */
const cellMm = 10;

/**
 * Some sets lay strips of both nets on the base under the cell and call it no fault: the cell's lower face would short
 * them, so who says so is not wrong.
 */
function bothUnderCell({ taps }: Question, truth: Truth): TrueFault[] {
  if (!taps.cell) return [];
  const at = toMm(truth)(taps.cell.c_px);
  const under = truth.asbuilt.strips.filter(({ path }) => path && distance(path, at) < cellMm);
  if (new Set(under.map(({ net }) => net)).size < 2) return [];
  return [{ kind: 'shorted-cell', path: [at] }];
}

/** The maker's card: taps brought to mm by the true camera, the plan as drawn. */
function cardOf(q: Question, truth: Truth): Card {
  const mm = toMm(truth);
  const flapMargin = Math.max(0, ...(q.plan?.flaps ?? []).map((f) => f.length_mm + 4));
  const card: CardInput = {
    format: 'foilproof/1',
    base: { ...q.base, margin_mm: flapMargin },
    lamps: q.taps.lamps.map((tap) => {
      const at = mm(tap.c_px);
      const axis = q.plan?.lamps.find((l) => l.id === tap.id)?.axis_plus_to_minus ?? [1, 0];
      const plus: Point = tap.plus_px ? mm(tap.plus_px) : [at[0] - 2 * axis[0], at[1] - 2 * axis[1]];
      return { id: tap.id, plus: [...plus], minus: [2 * at[0] - plus[0], 2 * at[1] - plus[1]] };
    }),
    ...(q.taps.cell ? { cell: cellOf(q, mm(q.taps.cell.c_px)) } : {}),
    contacts: (q.plan?.openings ?? [])
      .filter((o) => o.kind === 'switch')
      .map((o) => ({ id: o.id, how: 'press', at: [o.x_mm, o.y_mm], reach_mm: o.gap_mm / 2 + 3 })),
    flaps: (q.plan?.flaps ?? []).map(flapOf),
    patches: (q.plan?.patches ?? []).map((p, i) => ({ id: `K${i + 1}`, outline: box(p.c, p.size) })),
    ...(q.plan ? { plan: { strips: q.plan.strips.map((s) => stripOf(s, q)) } } : {}),
  };
  return cardSchema.parse(card);
}

function cellOf(q: Question, at: Point): NonNullable<CardInput['cell']> {
  const top = q.plan?.cell?.top_net;
  const flapEnd = q.plan?.openings
    .find((o) => o.kind === 'battery-flap')
    ?.note?.match(/\[([-\d.]+), ([-\d.]+)\]/);
  const ends = (q.plan?.strips ?? [])
    .filter((s) => s.net === top)
    .flatMap((s) => [s.path[0], s.path[s.path.length - 1]]);
  const near = (p: Point) => Math.hypot(p[0] - at[0], p[1] - at[1]);
  const nearest = [...ends].sort((a, b) => near(a) - near(b))[0];
  const upper = flapEnd ? ([Number(flapEnd[1]), Number(flapEnd[2])] as const) : nearest;
  return {
    kind: 'CR2032',
    at: [...at],
    up: q.taps.cell?.face_up === '-' ? '-' : '+',
    ...(upper ? { upper_contact: [...upper] } : {}),
  };
}

function flapOf(f: z.infer<typeof planSchema>['flaps'][number]): NonNullable<CardInput['flaps']>[number] {
  const [a, b] = f.hinge_mm;
  const far = (p: Point): [number, number] => [p[0] + f.out[0] * f.length_mm, p[1] + f.out[1] * f.length_mm];
  const use = f.use === 'battery' ? 'cell' : 'press';
  return { id: f.id, fold: [[...a], [...b]], outline: [[...a], [...b], far(b), far(a)], use };
}

function stripOf(s: z.infer<typeof planSchema>['strips'][number], q: Question) {
  const flap = q.plan?.flaps.find((f) => f.use === 'switch')?.id;
  const on = s.surface === 'flap' && flap ? flap : 'base';
  return { id: s.id, net: s.net, width_mm: s.width, path: s.path.map((p): [number, number] => [...p]), on };
}

function box(c: Point, [w, h]: Point): [number, number][] {
  return [
    [c[0] - w / 2, c[1] - h / 2],
    [c[0] + w / 2, c[1] - h / 2],
    [c[0] + w / 2, c[1] + h / 2],
    [c[0] - w / 2, c[1] + h / 2],
  ];
}

/** Picture px to mm on the base: x_d = x(1 + k1 r^2 + k2 r^4) on normalised coordinates, then the homography. */
function toMm(truth: Truth): (px: Point) => Point {
  const inverse = invertHomography(
    truth.camera.homography_mm_to_undistorted_px.flat() as unknown as Homography,
  );
  const { K, distortion } = truth.camera;
  return (px) => {
    const xd = (px[0] - K[0][2]) / K[0][0];
    const yd = (px[1] - K[1][2]) / K[1][1];
    let s = 1;
    for (let i = 0; i < 12; i++) {
      const r2 = (xd * xd + yd * yd) / (s * s);
      s = 1 + distortion.k1 * r2 + distortion.k2 * r2 * r2;
    }
    return applyHomography(inverse, [K[0][2] + (xd / s) * K[0][0], K[1][2] + (yd / s) * K[1][1]]);
  };
}

/** The truth's k1 with r in half diagonals instead of focal lengths. */
function k1Of(truth: Truth): number {
  const half = Math.hypot(truth.image_size[0], truth.image_size[1]) / 2;
  return truth.camera.distortion.k1 * (half / truth.camera.K[0][0]) ** 2;
}
