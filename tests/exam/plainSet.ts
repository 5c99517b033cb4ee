import { z } from 'zod';
import { cardSchema } from '../../src/card/index.ts';
import type { Quad } from '../../src/geometry/index.ts';
import type { Entry } from './entry.ts';
import { readBinary } from './picture.ts';
import type { JsonReader } from './renderSet.ts';

/**
 * The plain layout: NAME.jpg and NAME_mask.png in photo pixels; NAME.json may give `base` with width_mm, height_mm
 * and corners_px. Without a size the base counts as A6, lying as the picture does.
 */
const aboutSchema = z.object({
  base: z
    .object({
      width_mm: z.number().optional(),
      height_mm: z.number().optional(),
      corners_px: z
        .array(z.tuple([z.number(), z.number()]))
        .length(4)
        .optional(),
    })
    .optional(),
});

export async function readPlainEntry(
  stem: string,
  photo: string,
  name: string,
  json: JsonReader,
): Promise<Entry> {
  const about = aboutSchema.parse(await json(`${stem}.json`).catch(() => ({})));
  const mask = await readBinary(`${stem}_mask.png`);
  const [short, long] = [105, 148];
  const wide = mask.width > mask.height;
  const base = {
    width_mm: about.base?.width_mm ?? (wide ? long : short),
    height_mm: about.base?.height_mm ?? (wide ? short : long),
  };
  return {
    name,
    photoPath: photo,
    card: cardSchema.parse({ format: 'foilproof/1', base }),
    cornersPx: about.base?.corners_px as unknown as Quad | undefined,
    mask: { frame: 'photo', width: mask.width, height: mask.height, copper: mask.data },
    conditions: {},
  };
}
