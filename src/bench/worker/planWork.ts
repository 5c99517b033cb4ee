import type { Card } from '../../card/index.ts';
import { decodePhotoInBrowser } from '../../photo/decodeBrowser.ts';
import type { Photo } from '../../photo/index.ts';
import { baseSize, frontOf, planChecks, planFromSketch, printPlan, suggestRoute } from '../../plan/index.ts';
import { findOutline, squareUp } from '../../sheet/index.ts';
import type { Outline } from '../../sheet/index.ts';
import { measureAs } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import { FoilproofError } from '../../words/index.ts';
import { pictureOf } from './pictures.ts';
import type { PlanCallName, PlanCalls } from './planCalls.ts';

type Answer<Name extends PlanCallName> = { given: PlanCalls[Name]['answer']; transfer: Transferable[] };
type Work = { [Name in PlanCallName]: (ask: PlanCalls[Name]['ask']) => Promise<Answer<Name>> };

/** Below this the maker is asked to look whether the four sides were found. */
const SURE = 0.5;
const SKETCH_PX_PER_MM = 5;
/** A backdrop needs no more, and a card with it stays under a megabyte. */
const ARTWORK_PX = 1600;

/** What the worker does for step Plan. */
export const planWork: Work = {
  planChecks: async ({ card }) => alone(planChecks(card)),
  suggestRoute: async ({ card }) => alone(suggestRoute(card)),
  printPlan: async ({ card, paper }) => {
    measureAs(card);
    const { fontsInBrowser } = await import('../../record/pdf/fontsInBrowser.ts');
    const bytes = await printPlan(card, { paper, fonts: await fontsInBrowser(), made: new Date() });
    return alone(new Blob([bytes as BlobPart], { type: 'application/pdf' }));
  },
  planFromSketch: async ({ card, name, file, widthMm }) => {
    const photo = await decodePhotoInBrowser(file, name);
    const { cornersPx, k1 } = await outlineOf(photo, card, planWords.page.sketchLost);
    const sheet = squareUp(photo, cornersPx, baseSize(card), { pxPerMm: SKETCH_PX_PER_MM, k1 });
    return alone(planFromSketch(sheet, widthMm));
  },
  readArtwork: async ({ name, file }) => alone(await shrunk(await decodePhotoInBrowser(file, name))),
  checkFront: async ({ card, name, file, side }) => {
    const photo = await decodePhotoInBrowser(file, name);
    const outline = await outlineOf(photo, card, planWords.page.frontLost);
    const { misses, sheet } = frontOf(photo, outline, card, side);
    const picture = side === 'back' ? mirrored(pictureOf(sheet)) : pictureOf(sheet);
    const given = { misses, picture, sure: outline.certainty >= SURE };
    return { given, transfer: [picture] };
  },
};

const alone = <T>(given: T) => ({ given, transfer: [] });

async function outlineOf(photo: Photo, card: Card, unsure: string): Promise<Outline> {
  const outline = await findOutline(photo, baseSize(card));
  if (!outline) throw new FoilproofError(unsure);
  return outline;
}

async function shrunk({ width, height, rgba }: Photo) {
  const by = Math.min(1, ARTWORK_PX / Math.max(width, height));
  const canvas = new OffscreenCanvas(Math.round(width * by), Math.round(height * by));
  const image = new ImageData(width, height);
  image.data.set(rgba);
  const full = await createImageBitmap(image);
  canvas.getContext('2d')?.drawImage(full, 0, 0, canvas.width, canvas.height);
  full.close();
  const file = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 });
  const url = new FileReaderSync().readAsDataURL(file);
  return { width: canvas.width, height: canvas.height, base64: url.slice(url.indexOf(',') + 1) };
}

function mirrored(picture: ImageBitmap): ImageBitmap {
  const canvas = new OffscreenCanvas(picture.width, picture.height);
  const context = canvas.getContext('2d');
  context?.setTransform(-1, 0, 0, 1, picture.width, 0);
  context?.drawImage(picture, 0, 0);
  picture.close();
  return canvas.transferToImageBitmap();
}
