import type { Card, CardPhoto } from '../../card/index.ts';
import type { Point, Segment } from '../../geometry/index.ts';
import { dataUrl } from '../record/dataUrl.ts';
import { takenOf } from './takenOf.ts';

/** A picture as a card holds it. */
export type Picture = Pick<CardPhoto, 'name' | 'media' | 'base64' | 'taken'>;

/** What a further photograph shows: a flap opened flat, the base before a patch, the inside of a folded base. */
export type Shows = Pick<CardPhoto, 'sheet' | 'before' | 'fold_of'>;

/** Whether a photograph of the card is one of a further sheet with copper. */
export function isSheetPhoto({ sheet, before, fold_of, base64 }: CardPhoto): boolean {
  const further = sheet !== 'base' || before !== undefined || fold_of !== undefined;
  return base64 !== undefined && sheet !== 'front' && further;
}

/** Everything that a further photograph of this card can show. */
export function showable({ flaps, patches }: Pick<Card, 'flaps' | 'patches'>): Shows[] {
  return [
    ...flaps.map(({ id }) => ({ sheet: id })),
    ...flaps.map(({ id }) => ({ sheet: 'base', fold_of: id })),
    ...patches.map(({ id }) => ({ sheet: 'base', before: id })),
  ];
}

/** Adds a photograph; one that stood for the same goes. */
export function addSheetPhoto(card: Card, shows: Shows, picture: Picture): Card {
  const others = card.photos.filter(
    ({ sheet, before, fold_of }) =>
      !(sheet === shows.sheet && before === shows.before && fold_of === shows.fold_of),
  );
  return { ...card, photos: [...others, { ...picture, ...shows, ...spreadFrame(card, shows) }] };
}

/** A folded base's inside shows base and flap side by side: its size, and where the fold runs in it. */
function spreadFrame(card: Card, { fold_of }: Shows): Pick<CardPhoto, 'size_mm' | 'fold'> {
  const flap = card.flaps.find(({ id }) => id === fold_of);
  if (!flap) return {};
  const { width_mm, height_mm } = card.base;
  const box = boxOf([[0, 0], [width_mm, height_mm], ...flap.outline]);
  return { size_mm: [box.width, box.height], fold: movedBy(flap.fold, box.origin) };
}

/** The photographed sheet's own size, mm, and its fold line in its own frame, where it has one. */
export function sheetFrame(
  card: Card,
  photo: CardPhoto,
): { width: number; height: number; fold: Segment | undefined } {
  const flap = card.flaps.find(({ id }) => id === (photo.fold_of ?? photo.sheet));
  const outline = flap && photo.fold_of === undefined ? boxOf(flap.outline) : undefined;
  const { width_mm, height_mm } = card.base;
  const [width, height] = photo.size_mm ?? [outline?.width ?? width_mm, outline?.height ?? height_mm];
  return { width, height, fold: photo.fold ?? (flap && outline && movedBy(flap.fold, outline.origin)) };
}

/** Changes a further photograph where it stands in the card. */
export function changeSheetPhoto(card: Card, photo: CardPhoto, part: Partial<CardPhoto>): Card {
  return {
    ...card,
    photos: card.photos.map((each) => (each.name === photo.name ? { ...each, ...part } : each)),
  };
}

function boxOf(ring: readonly Point[]): { origin: Point; width: number; height: number } {
  const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
  const origin: Point = [Math.min(...xs), Math.min(...ys)];
  return { origin, width: Math.max(...xs) - origin[0], height: Math.max(...ys) - origin[1] };
}

function movedBy([a, b]: Segment, [x, y]: Point): [[number, number], [number, number]] {
  return [
    [a[0] - x, a[1] - y],
    [b[0] - x, b[1] - y],
  ];
}

/** A file's picture as text, with the time at which it was taken. */
export async function pictureOf(file: File): Promise<Picture> {
  const url = await dataUrl(file);
  const known = ['image/png', 'image/webp', 'image/heic'] as const;
  const media = known.find((each) => each === file.type) ?? ('image/jpeg' as const);
  const taken = await takenOf(file);
  return { name: file.name, media, base64: url.slice(url.indexOf(',') + 1), taken };
}
