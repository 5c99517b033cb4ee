import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import type { Plugin } from 'vite';

const mark = new URL('../../../public/mark.svg', import.meta.url);
const paper = '#fdfdfb';

/** Icons of the installed page. Those that a device cuts to its own shape keep the mark within the middle. */
export const icons = [
  { src: 'icon-192.png', side: 192, share: 1, purpose: 'any' },
  { src: 'icon-512.png', side: 512, share: 1, purpose: 'any' },
  { src: 'icon-cut-512.png', side: 512, share: 0.64, purpose: 'maskable' },
] as const;

/** Draws the icons from the mark at each build. */
export function drawIcons(): Plugin {
  return {
    name: 'foilproof-icons',
    apply: 'build',
    async generateBundle() {
      const drawing = readFileSync(mark);
      for (const { src, side, share } of icons) {
        const inner = Math.round(side * share);
        const drawn = await sharp(drawing, { density: (72 * inner) / 32 })
          .resize(inner, inner)
          .toBuffer();
        const source = await sharp({ create: { width: side, height: side, channels: 4, background: paper } })
          .composite([{ input: drawn }])
          .png()
          .toBuffer();
        this.emitFile({ type: 'asset', fileName: src, source });
      }
    },
  };
}
