import { writeFile } from 'node:fs/promises';
import { extname } from 'node:path';
import sharp from 'sharp';
import type { Checked } from '../check/index.ts';
import { htmlRecord, pdfRecord, svgRecord } from '../record/index.ts';
import type { EncodedImage } from '../record/index.ts';
import { fontsInNode } from '../record/pdf/fontsInNode.ts';
import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';
import type { Job } from './job.ts';
import { stepImages } from './stepImages.ts';

/** Writes the files asked for. @throws FoilproofError when one cannot be written */
export async function writeOutputs(checked: Checked, job: Job): Promise<void> {
  const { mask, squared, report } = job.outputs;
  if (mask) await save(mask, await maskPng(checked));
  if (squared) await save(squared, await squaredImage(checked).png().toBuffer());
  if (report) await save(report, await reportOf(checked, extname(report).toLowerCase(), job));
}

/** The base's copper at 10 px/mm, white on black; a margin round the base is left out. */
function maskPng({ mask }: Checked): Promise<Buffer> {
  const { width, height } = mask;
  const left = Math.round(-mask.originMm[0] * mask.pxPerMm);
  const top = Math.round(-mask.originMm[1] * mask.pxPerMm);
  return sharp(
    mask.filled.map((v) => 255 * v),
    { raw: { width, height, channels: 1 } },
  )
    .extract({ left, top, width: width - 2 * left, height: height - 2 * top })
    .png()
    .toBuffer();
}

function squaredImage({ sheet: { rgb, width, height } }: Checked) {
  return sharp(rgb, { raw: { width, height, channels: 3 } });
}

async function reportOf(checked: Checked, kind: string, job: Job): Promise<string | Uint8Array> {
  if (kind === '.svg') return svgRecord(checked, checked.power, checked.card);
  const images = { squared: await encoded(checked), steps: await stepImages(job) };
  if (kind === '.pdf') {
    const options = { images, fonts: await fontsInNode(), paper: job.paper };
    return pdfRecord(checked, checked.power, checked.card, options);
  }
  return htmlRecord(checked, checked.power, checked.card, { images });
}

async function encoded(checked: Checked): Promise<EncodedImage> {
  const { width, height } = checked.sheet;
  const jpeg = await squaredImage(checked).jpeg({ quality: 85 }).toBuffer();
  return { media: 'image/jpeg', base64: jpeg.toString('base64'), width, height };
}

async function save(path: string, content: string | Uint8Array): Promise<void> {
  await writeFile(path, content).catch(() => {
    throw new FoilproofError(cliWords.cannotWrite(path));
  });
}
