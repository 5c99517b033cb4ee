import { z } from 'zod';

/** The only definition of a card file. Lengths in mm, angles in degrees clockwise, resistances in ohm. */

/** Zod else tries whether text may be evaluated, which the page's policy forbids and reports. */
z.config({ jitless: true });

const number = z.number().finite();
/** Places lie within 3 m of the base, farther out than any sheet reaches. */
const coordinate = number.min(-3000).max(3000);
const point = z.tuple([coordinate, coordinate]);
const pixel = z.tuple([number, number]);
const id = z.string().min(1).max(40);
const path = z.array(point).min(2).max(2000);
const ring = z.array(point).min(3).max(2000);

/** The sheet a thing lies on: 'base', or the id of a flap or a patch. Places are in that sheet's own frame. */
const sheetId = z.string().min(1).max(40).default('base');

export const lampColours = [
  'red',
  'orange',
  'amber',
  'yellow',
  'yellow-green',
  'green',
  'blue',
  'white',
  'warm-white',
  'pink',
  'uv',
] as const;

export const cellKinds = ['CR2032', 'CR2025', 'CR2016', 'CR1620', 'CR1225', 'LR44'] as const;

const colour = z.enum(lampColours);

const lamp = z.strictObject({
  id,
  plus: point,
  minus: point,
  colour: colour.default('white'),
  series_ohm: number.min(0).max(1e6).default(0),
  /** A maker's own lamp: forward voltage at a current. */
  forward: z.strictObject({ volt: number.min(0.5).max(6), mA: number.positive().max(100) }).optional(),
  on: sheetId,
  /** When the maker wants it lit: 'always' while the cell is pressed, or by a stroke or press contact. */
  intent: z.union([z.literal('always'), z.strictObject({ contact: id })]).optional(),
});

const cell = z.strictObject({
  kind: z.enum(cellKinds).default('CR2032'),
  at: point,
  /** The face that looks up, away from the base. */
  up: z.enum(['+', '-']).default('+'),
  on: sheetId,
  /** Charge left, 1 = fresh. */
  charge: number.min(0).max(1).default(1),
  /** Where the copper that meets the upper face touches it, if not a flap: a place on a strip of the base. */
  upper_contact: point.optional(),
});

const contact = z.strictObject({
  id,
  /** Press: closes at once. Stroke: closed one after another, by order. */
  how: z.enum(['press', 'stroke']).default('press'),
  order: z.number().int().min(1).max(999).optional(),
  /** One place (joins the strip ends within reach), or a place on each side. */
  at: z.union([point, z.tuple([point, point])]),
  reach_mm: number.positive().max(200).default(8),
  /** The flap whose copper closes it, if a flap does. */
  flap: id.optional(),
});

const flap = z.strictObject({
  id,
  /** The fold line on the base; closing mirrors the flap about it. */
  fold: z.tuple([point, point]),
  /** The flap's outline as photographed open, in the base's frame (so beyond the fold). */
  outline: ring,
  /** Copper of the flap as polylines in the base's frame, flap open, where no photograph shows it. */
  strips: z.array(z.strictObject({ id, width_mm: number.positive().max(50), path })).default([]),
  /** What closing it does: press the cell, press a contact, or be stroked along. */
  use: z.enum(['cell', 'press', 'stroke']).default('press'),
});

const patch = z.strictObject({
  id,
  outline: ring,
  /** Copper that runs over the patch. */
  strips: z.array(z.strictObject({ id, width_mm: number.positive().max(50), path })).default([]),
  /** Copper known to lie beneath it (from an earlier photograph or by hand). */
  beneath: z.array(z.strictObject({ id, width_mm: number.positive().max(50), path })).default([]),
});

/** A place where two pieces are known to conduct or known not to: the maker metered, pressed or soldered it. */
const join = z.strictObject({
  at: point,
  conducts: z.boolean(),
  ohm: number.min(0).max(1e6).optional(),
  note: z.string().max(2000).optional(),
});

const stroke = z.strictObject({
  do: z.enum(['add', 'remove']),
  width_mm: number.positive().max(50),
  path: z.array(point).min(1).max(5000),
});

const planStrip = z.strictObject({
  id,
  net: id,
  width_mm: number.positive().max(50),
  path,
  on: sheetId,
});

const plan = z.strictObject({
  strips: z.array(planStrip).max(2000).default([]),
  /** Lamps as planned; absent, the card's own lamps are the plan. */
  lamps: z
    .array(z.strictObject({ id, plus: point, minus: point, colour: colour.default('white'), on: sheetId }))
    .max(200)
    .optional(),
  /** Light holes in the front, in the base's frame. */
  holes: z
    .array(z.strictObject({ id, at: point, diameter_mm: number.positive().max(30).default(1.6) }))
    .max(500)
    .default([]),
  foam: z
    .array(
      z.strictObject({
        outline: ring,
        layers: z.number().int().min(1).max(9),
        layer_mm: number.positive().max(10),
      }),
    )
    .default([]),
});

/** A photograph of a sheet of this card. The picture itself may be within, as base64. */
const photo = z.strictObject({
  /** File name; at the terminal a path from the card file's folder on. */
  name: z.string().max(400),
  /** 'base' or the id of a flap. Of several of the base without `before` the last is the base as it is now. */
  sheet: z.string().min(1).max(40).default('base'),
  /** The patch that had just been laid when the base was photographed. */
  after: id.optional(),
  /** An earlier photograph of the base: the patch that was laid next. */
  before: id.optional(),
  /** The photographed sheet's own size, where it is not the base's: a flap (its outline's unless given), a spread. */
  size_mm: z.tuple([number.min(10).max(2000), number.min(10).max(2000)]).optional(),
  /** The fold line in the photographed sheet's own frame, its ends in the order of the flap's fold on the base. */
  fold: z.tuple([point, point]).optional(),
  /** The flap that the fold line belongs to, where the sheet shows base and flap together: a folded base's inside. */
  fold_of: id.optional(),
  step: z.string().max(200).optional(),
  taken: z.string().max(40).optional(),
  corners_px: z.tuple([pixel, pixel, pixel, pixel]).optional(),
  media: z.enum(['image/jpeg', 'image/png', 'image/webp', 'image/heic']).optional(),
  base64: z.string().max(80_000_000).optional(),
});

export const findingKinds = [
  'shorted-cell',
  'bridge',
  'gap',
  'reversed-lamp',
  'lamp-off-strip',
  'lamp-on-one-strip',
  'unfed-lamp',
  'lit-at-rest',
  'missed-contact',
  'missing-strip',
  'extra-strip',
  'shifted-strip',
  'shifted-lamp',
  'tight',
  'narrow-neck',
  'seam',
  'loose-end',
  'near-edge',
  'off-register',
] as const;

const checkedByHand = z.strictObject({
  kind: z.enum(findingKinds),
  at: point,
  note: z.string().max(2000).default(''),
  on: z.string().max(40).optional(),
});

const limits = z.strictObject({
  clearance_mm: number.min(0).max(20).default(1),
  edge_mm: number.min(0).max(20).default(1.5),
  neck_ratio: number
    .min(0)
    .max(1)
    .default(1 / 3),
});

export const cardSchema = z.strictObject({
  format: z.literal('foilproof/1'),
  title: z.string().max(200).optional(),
  note: z.string().max(20_000).optional(),
  show_inches: z.boolean().optional(),
  base: z.strictObject({
    width_mm: number.min(10).max(2000),
    height_mm: number.min(10).max(2000),
    /** Margin round the base that the squared picture takes, for flaps opened flat. */
    margin_mm: number.min(0).max(300).default(0),
  }),
  /** The user's own corners, in the upright stored picture's pixels. */
  corners_px: z.tuple([pixel, pixel, pixel, pixel]).optional(),
  photos: z.array(photo).max(50).default([]),
  lamps: z.array(lamp).max(200).default([]),
  cell: cell.optional(),
  contacts: z.array(contact).max(200).default([]),
  flaps: z.array(flap).max(50).default([]),
  patches: z.array(patch).max(50).default([]),
  joins: z.array(join).max(500).default([]),
  touch_up: z.array(stroke).max(2000).default([]),
  /** Taps on the tape (copper) or on the paper that teach a hard photograph, mm. */
  teach: z
    .strictObject({ copper: z.array(point).max(12).default([]), paper: z.array(point).max(12).default([]) })
    .default({ copper: [], paper: [] }),
  checked: z.array(checkedByHand).max(500).default([]),
  limits: limits.default({ clearance_mm: 1, edge_mm: 1.5, neck_ratio: 1 / 3 }),
  plan: plan.optional(),
});

export type Card = z.infer<typeof cardSchema>;
/** A card as a person may write it, defaults left out. */
export type CardInput = z.input<typeof cardSchema>;
export type Lamp = z.infer<typeof lamp>;
export type Cell = z.infer<typeof cell>;
export type Contact = z.infer<typeof contact>;
export type Flap = z.infer<typeof flap>;
export type Patch = z.infer<typeof patch>;
export type Join = z.infer<typeof join>;
export type TouchUp = z.infer<typeof stroke>;
export type Plan = z.infer<typeof plan>;
export type PlanStrip = z.infer<typeof planStrip>;
export type CardPhoto = z.infer<typeof photo>;
export type CheckedByHand = z.infer<typeof checkedByHand>;
export type Limits = z.infer<typeof limits>;
export type LampColour = (typeof lampColours)[number];
export type CellKind = (typeof cellKinds)[number];
export type FindingKind = (typeof findingKinds)[number];
