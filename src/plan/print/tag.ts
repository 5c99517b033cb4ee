import type { Card } from '../../card/index.ts';

/**
 * Letters that are not taken for one another when read off paper. No digits: a recogniser that knows its letters' company
 * reads J4NN as JANN, and is as sure of it. No vowels: four of these make no word.
 */
const SIGNS = 'CDHKLMNPRTXY';
/** Signs outside of those, and the one that each is then. */
const MISREAD: Record<string, string> = { O: 'D', '0': 'D', Q: 'D', '7': 'T', V: 'Y', G: 'C' };

/**
 * The text printed on a base: its size and four signs of its plan, so that a photograph tells which plan it was built by.
 * @example "FP 105x148 KMXT"
 */
export function sheetTag(card: Card): string {
  const { width_mm, height_mm } = card.base;
  return `FP ${shown(width_mm)}x${shown(height_mm)} ${signsOf(JSON.stringify([card.base, card.plan?.strips ?? []]))}`;
}

export interface ReadTag {
  widthMm: number;
  heightMm: number;
  signs: string;
}

/**
 * A tag out of text read from a photograph; undefined where there is none, or one with a sign that no tag has. Blanks may be
 * lost or too many, the cross misread, a letter read as a small one.
 */
export function readTag(text: string): ReadTag | undefined {
  const found =
    /F\s*P\s*(\d+(?:\.\d+)?)\s*[xX×¥%]+\s*(\d+(?:\.\d+)?)\s+([A-Za-z0-9](?:\s*[A-Za-z0-9]){3})(?![A-Za-z0-9])/.exec(
      text,
    );
  if (!found) return undefined;
  const signs = [...found[3].replace(/\s/g, '').toUpperCase()].map((sign) => MISREAD[sign] ?? sign);
  if (!signs.every((sign) => SIGNS.includes(sign))) return undefined;
  return { widthMm: Number(found[1]), heightMm: Number(found[2]), signs: signs.join('') };
}

const shown = (mm: number) => `${Math.round(mm * 10) / 10}`;

/** Four signs by the 32-bit FNV-1a hash. @source Fowler, Noll, Vo; offset and prime as in IETF draft-eastlake-fnv */
function signsOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let k = 0; k < text.length; k++) hash = Math.imul(hash ^ text.charCodeAt(k), 0x01000193) >>> 0;
  let signs = '';
  for (let k = 0; k < 4; k++) {
    signs += SIGNS[hash % SIGNS.length];
    hash = Math.floor(hash / SIGNS.length);
  }
  return signs;
}
