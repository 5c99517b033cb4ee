import { z } from 'zod';
import { cardSchema, findingKinds } from '../../src/card/index.ts';
import type { Point, Quad } from '../../src/geometry/index.ts';
import type { Entry } from './entry.ts';
import { readBinary } from './picture.ts';
import type { JsonReader } from './renderSet.ts';

/** The layout `foilproof-fixture/1`: NAME.jpg, NAME.card.json, NAME.json, NAME_mask.png (photo pixels). */

const point = z.tuple([z.number(), z.number()]);
const truthSchema = z.object({
  base: z.object({ width_mm: z.number(), height_mm: z.number(), corners_px: z.array(point).length(4) }),
  camera: z.object({ k1: z.number() }),
  faults: z.array(
    z.object({
      kind: z.enum(findingKinds),
      at: point,
      sizeMm: z.number().optional(),
      lamp: z.string().optional(),
    }),
  ),
  lamps: z.array(z.object({ id: z.string(), plus: point, minus: point })),
  settings: z.object({ paper: z.string(), table: z.string(), light: z.string(), tiltDeg: z.number() }),
});

export async function readFixtureEntry(stem: string, name: string, json: JsonReader): Promise<Entry> {
  const truth = truthSchema.parse(await json(`${stem}.json`));
  const mask = await readBinary(`${stem}_mask.png`);
  return {
    name,
    photoPath: `${stem}.jpg`,
    card: cardSchema.parse(await json(`${stem}.card.json`)),
    cornersPx: truth.base.corners_px as unknown as Quad,
    k1: truth.camera.k1,
    mask: { frame: 'photo', width: mask.width, height: mask.height, copper: mask.data },
    faults: truth.faults.map((f) => {
      const lamp = truth.lamps.find(({ id }) => id === f.lamp);
      const path = lamp ? [lamp.plus, lamp.minus] : [f.at];
      return { kind: f.kind, path: path as Point[], sizeMm: f.sizeMm };
    }),
    conditions: {
      paper: truth.settings.paper,
      table: truth.settings.table,
      light: truth.settings.light,
      tilt: `${10 * Math.floor(truth.settings.tiltDeg / 10)}+ deg`,
    },
  };
}
