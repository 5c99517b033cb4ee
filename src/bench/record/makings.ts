import { cardText } from '../../card/saved.ts';
import { solveStates } from '../../power/index.ts';
// Not by record/index.ts, which would bring the PDF along before it is asked for.
import { checkJson } from '../../record/checkJson.ts';
import type { Paper } from '../../record/pdf/types.ts';
import { htmlRecord } from '../../record/htmlRecord.ts';
import type { Recordable, RecordImages } from '../../record/types.ts';
import type { BenchState, Shown } from '../state/types.ts';
import { drawMarked } from './drawMarked.ts';
import { encoded } from './encoded.ts';
import { freed, freedWithin } from './freed.ts';
import { stepPhotos } from './stepPhotos.ts';

export interface Made {
  name: string;
  blob: Blob;
}

/** The squared photograph with its proof marks as a picture. */
export async function png(state: BenchState): Promise<Made> {
  const { shown } = recordable(state);
  const blob = await drawMarked(shown).convertToBlob({ type: 'image/png' });
  return { name: `${fileName(state)}.png`, blob };
}

/** The record as one page that needs nothing else. */
export async function html(state: BenchState): Promise<Made> {
  const { checked, shown } = recordable(state);
  const power = solveStates(shown.netlist, shown.traced, state.card);
  const page = htmlRecord(checked, power, state.card, { images: await imagesOf(state, shown) });
  return { name: `${fileName(state)}.html`, blob: new Blob([page], { type: 'text/html' }) };
}

/** The record as a PDF to print and keep. */
export async function pdf(state: BenchState, paper: Paper = 'a4'): Promise<Made> {
  const { checked, shown } = recordable(state);
  const power = solveStates(shown.netlist, shown.traced, state.card);
  const [{ pdfRecord }, { fontsInBrowser }] = await Promise.all([
    import('../../record/pdfRecord.ts'),
    import('../../record/pdf/fontsInBrowser.ts'),
  ]);
  const images = await imagesOf(state, shown);
  const options = { images, fonts: await fontsInBrowser(), paper };
  const bytes = await pdfRecord(checked, power, state.card, options);
  return { name: `${fileName(state)}.pdf`, blob: new Blob([bytes as BlobPart], { type: 'application/pdf' }) };
}

/** The figures that scripts read. */
export async function json(state: BenchState): Promise<Made> {
  const { checked, shown } = recordable(state);
  const power = solveStates(shown.netlist, shown.traced, state.card);
  const text = JSON.stringify(checkJson(checked, power), null, 1);
  return { name: `${fileName(state)}-figures.json`, blob: new Blob([text], { type: 'application/json' }) };
}

export async function cardWith(state: BenchState): Promise<Made> {
  const { shot, again = [] } = state;
  const corners = state.card.corners_px ?? cornersOf(state.shown);
  const card = { ...state.card, corners_px: corners };
  const shots = shot ? [shot, ...again] : [];
  const text = await cardText(await freedCard(card), await Promise.all(shots.map(freed)));
  return { name: `${fileName(state)}.card.json`, blob: new Blob([text], { type: 'application/json' }) };
}

/**
 * No picture goes along, neither of another sheet nor the front's artwork. Names, corners and strokes stay, for the
 * photographs that lie beside the card.
 */
export async function cardWithout(state: BenchState): Promise<Made> {
  const photos = state.card.photos.map(({ base64: _left, media: _out, ...named }) => named);
  const text = await cardText({ ...state.card, photos });
  return { name: `${fileName(state)}.card.json`, blob: new Blob([text], { type: 'application/json' }) };
}

async function freedCard(card: BenchState['card']): Promise<BenchState['card']> {
  return { ...card, photos: await Promise.all(card.photos.map(freedWithin)) };
}

function recordable({ shot, shown, card }: BenchState): { checked: Recordable; shown: Shown } {
  if (!shot || !shown) throw new Error('Nothing is checked yet.');
  const { outline, sheet, traced, netlist, verdict, timingsMs } = shown;
  const photo = { name: shot.name, width: shot.width, height: shot.height };
  // A record shows the squared picture as given beside it and never reads the sheet's own pixels.
  const frame = { ...sheet, rgb: new Uint8Array() };
  return { checked: { photo, card, outline, sheet: frame, traced, netlist, verdict, timingsMs }, shown };
}

function cornersOf(shown: Shown | undefined): BenchState['card']['corners_px'] {
  if (!shown) return undefined;
  const [a, b, c, d] = shown.outline.cornersPx.map(([x, y]): [number, number] => [x, y]);
  return [a, b, c, d];
}

async function imagesOf({ card, shot, again }: BenchState, shown: Shown): Promise<RecordImages> {
  const [squared, steps] = await Promise.all([encoded(shown.picture), stepPhotos(card, shot, again)]);
  return { squared, steps };
}

/** The title as a file name: letters, digits and hyphens. */
function fileName({ card }: BenchState): string {
  const name = (card.title ?? '')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return name || 'foilproof';
}
