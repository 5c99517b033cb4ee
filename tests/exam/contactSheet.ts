import sharp from 'sharp';
import type { Checked } from '../../src/check/index.ts';
import type { Entry } from './entry.ts';
import type { Row } from './examine.ts';
import { frameFromCorners, frameOfSheet } from './frame.ts';

/** How bad a row is, for the order of the sheet. */
export function badness(row: Row): number {
  if (row.error) return 100;
  const false_ = row.findings?.judged.filter((j) => !j.right && j.kind !== 'seam').length ?? 0;
  const missed = row.findings?.missed.filter((f) => f.kind !== 'seam').length ?? 0;
  return 10 * (1 - (row.mask?.iou ?? 0)) + false_ + missed + Math.min(5, row.outline?.mm ?? 0);
}

/** The squared picture with the mask's error in colour and marks, as an HTML figure. */
export async function figure(row: Row, entry: Entry, checked: Checked): Promise<string> {
  const { width, height } = checked.sheet;
  const rgb = Buffer.from(checked.sheet.rgb);
  paintMask(rgb, entry, checked);
  const jpeg = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .composite([{ input: Buffer.from(marks(row, entry, checked)) }])
    .png({ compressionLevel: 1 })
    .toBuffer()
    .then((full) => sharp(full).resize(900, 900, { fit: 'inside' }).jpeg({ quality: 82 }).toBuffer());
  const source = `data:image/jpeg;base64,${jpeg.toString('base64')}`;
  const wrong = row.findings?.judged.filter((j) => !j.right && j.kind !== 'seam') ?? [];
  const missed = row.findings?.missed.filter((f) => f.kind !== 'seam') ?? [];
  return `<figure><img src="${source}"><figcaption><b>${row.name}</b> (${row.mode}) IoU ${row.mask?.iou.toFixed(3)},
    corners ${row.outline?.mm?.toFixed(2)} mm<br>missed: ${missed.map((f) => `${f.kind} ${f.sizeMm ?? ''}`).join(', ') || 'none'}<br>
    false: ${wrong.map((j) => `${j.kind} ${j.certainty.toFixed(2)}`).join(', ') || 'none'}</figcaption></figure>`;
}

export function page(figures: string[], table: string): string {
  return `<!doctype html><meta charset="utf-8"><title>Exam</title><style>body{font:14px sans-serif;margin:2rem}
    figure{display:inline-block;margin:.5rem;max-width:900px}img{max-width:100%}pre{font-size:12px}</style>
    <p>Red: copper said where there is none. Blue: copper missed. Green circles: true faults. Magenta: false findings.</p>
    ${figures.join('\n')}<pre>${table.replace(/</g, '&lt;')}</pre>`;
}

function paintMask(rgb: Buffer, entry: Entry, checked: Checked): void {
  const { mask, sheet } = checked;
  const seen = frameOfSheet(sheet, checked.photo, checked.outline.k1);
  const { cornersPx, card } = entry;
  const truth = cornersPx ? frameFromCorners(cornersPx, card.base, checked.photo, entry.k1 ?? 0) : seen;
  for (let j = 0; j < mask.height; j++) {
    for (let i = 0; i < mask.width; i++) {
      const px = seen.toPx([
        mask.originMm[0] + (i + 0.5) / mask.pxPerMm,
        mask.originMm[1] + (j + 0.5) / mask.pxPerMm,
      ]);
      const place = entry.mask.frame === 'photo' ? px : truth.toMm(px).map((v) => v * 10);
      const [u, v] = place.map(Math.floor);
      if (u < 0 || v < 0 || u >= entry.mask.width || v >= entry.mask.height) continue;
      const t = v * entry.mask.width + u;
      if (entry.mask.valid && !entry.mask.valid[t]) continue;
      const at = j * mask.width + i;
      if (mask.filled[at] === entry.mask.copper[t]) continue;
      const colour = mask.filled[at] ? [255, 0, 0] : [0, 60, 255];
      for (let k = 0; k < 3; k++) rgb[3 * at + k] = colour[k];
    }
  }
}

function marks(row: Row, entry: Entry, checked: Checked): string {
  const { sheet } = checked;
  const seen = frameOfSheet(sheet, checked.photo, checked.outline.k1);
  const truth = entry.cornersPx
    ? frameFromCorners(entry.cornersPx, entry.card.base, checked.photo, entry.k1 ?? 0)
    : seen;
  const circle = (at: readonly [number, number], colour: string) => {
    const mm = seen.toMm(truth.toPx(at));
    const x = (mm[0] - sheet.originMm[0]) * sheet.pxPerMm;
    const y = (mm[1] - sheet.originMm[1]) * sheet.pxPerMm;
    return `<circle cx="${x}" cy="${y}" r="${3 * sheet.pxPerMm}" fill="none" stroke="${colour}" stroke-width="5"/>`;
  };
  const trueOnes = (entry.faults ?? []).map((f) => circle(f.path[0], '#0a0'));
  const falseOnes = (row.findings?.judged ?? [])
    .filter((j) => !j.right && j.kind !== 'seam')
    .map((j) => circle(j.at, '#f0f'));
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${sheet.width}" height="${sheet.height}">${trueOnes.join('')}${falseOnes.join('')}</svg>`;
}
