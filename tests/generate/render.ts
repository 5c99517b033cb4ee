import sharp from 'sharp';
import { encodeSrgb } from './encode.ts';
import type { Build } from './build.ts';
import { cameraOver, unproject } from './camera.ts';
import type { Camera } from './camera.ts';
import { drawLight } from './conditions.ts';
import type { Conditions, Light } from './conditions.ts';
import { gridPxPerMm, lay, patchOwner } from './lay.ts';
import type { Laid } from './lay.ts';
import { placeParts } from './place.ts';
import { randomFrom } from './random.ts';
import { shade } from './shade.ts';
import type { Shaded } from './shade.ts';
import { tableAt } from './table.ts';
import type { Truth } from './truth.ts';
import { truthOf } from './truth.ts';

/** A generated photograph: the picture, where copper shows in it, and all that is true of it. */
export interface Rendered {
  jpeg: Buffer;
  /** Upright RGBA before JPEG, for tests that need no file. */
  width: number;
  height: number;
  /** 1 where copper is seen, picture pixels. */
  mask: Uint8Array;
  truth: Truth;
}

/** Renders a build under the conditions; the same seed gives the same picture. */
export async function render(build: Build, c: Conditions, seed: number, name: string): Promise<Rendered> {
  const random = randomFrom(seed);
  const light = drawLight(c.light, random);
  const camera = cameraOver(build.base, c);
  const laid = lay(build, c.wrinkle, seed);
  const shaded = shade(build, laid, c, light, camera, seed);
  const hidden = placeParts(build, laid, shaded, light, camera);
  const { linear, mask } = expose(build, c, laid, shaded, hidden, light, camera, seed);
  const rgb = encodeSrgb(linear, c, random);
  const jpeg = await sharp(rgb, { raw: { width: c.width, height: c.height, channels: 3 } })
    .jpeg({ quality: c.quality, chromaSubsampling: '4:2:0' })
    .toBuffer();
  return { jpeg, width: c.width, height: c.height, mask, truth: truthOf(build, c, camera, seed, name) };
}

/** Four samples a pixel, two by two. */
function expose(
  build: Build,
  c: Conditions,
  laid: Laid,
  shaded: Shaded,
  hidden: Uint8Array,
  light: Light,
  camera: Camera,
  seed: number,
): { linear: Float32Array; mask: Uint8Array } {
  const linear = new Float32Array(c.width * c.height * 3);
  const mask = new Uint8Array(c.width * c.height);
  for (let j = 0; j < c.height; j++) {
    for (let i = 0; i < c.width; i++) {
      const to = j * c.width + i;
      let copper = 0;
      for (let s = 0; s < 4; s++) {
        const [x, y] = unproject(camera, i + 0.25 + 0.5 * (s & 1), j + 0.25 + 0.5 * (s >> 1));
        const gx = Math.floor(x * gridPxPerMm);
        const gy = Math.floor(y * gridPxPerMm);
        const onBase = gx >= 0 && gy >= 0 && gx < laid.width && gy < laid.height;
        if (!onBase) {
          const t = tableAt(x, y, c, light, build.base, seed);
          for (let k = 0; k < 3; k++) linear[3 * to + k] += t[k] / 4;
          continue;
        }
        const at = gy * laid.width + gx;
        for (let k = 0; k < 3; k++) linear[3 * to + k] += Math.min(1.6, shaded[3 * at + k]) / 4;
        if (laid.owner[at] > 0 && laid.owner[at] !== patchOwner && !hidden[at]) copper++;
      }
      mask[to] = copper >= 2 ? 1 : 0;
    }
  }
  return { linear, mask };
}
