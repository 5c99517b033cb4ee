import { cellKinds } from '../../card/index.ts';
import type { LabelMeaning } from './types.ts';

/** Letters that a recogniser takes for digits' neighbours. */
const digitLike: Record<string, string> = {
  O: '0',
  o: '0',
  I: '1',
  l: '1',
  '|': '1',
  S: '5',
  B: '8',
  Z: '2',
};

/**
 * What a read line says: a lamp's label ("L3"), a polarity mark, a cell's marking, a plan's tag, a title, or nothing.
 *
 * @param isTag tells whether a text is a plan's printed tag (its check letters agree)
 */
export function meaningOf(text: string, isTag: (text: string) => string | undefined): LabelMeaning {
  const tight = text.replace(/\s+/g, '');
  const code = isTag(tight);
  if (code) return { kind: 'tag', code };
  if (/^[+＋]$/.test(tight)) return { kind: 'polarity', sign: '+' };
  if (/^[-–—_]$/.test(tight)) return { kind: 'polarity', sign: '-' };
  const lamp = /^L([0-9OoIlSBZ|]{1,3})$/.exec(tight);
  if (lamp) return { kind: 'lamp', id: `L${digits(lamp[1])}` };
  const cell = cellKinds.find((kind) => tight.toUpperCase().includes(kind));
  if (cell) return { kind: 'cell', cell };
  if (/^[\p{L}][\p{L}\s'’-]{3,40}$/u.test(text.trim())) return { kind: 'title', title: text.trim() };
  return { kind: 'nothing' };
}

function digits(text: string): string {
  return String(Number([...text].map((c) => digitLike[c] ?? c).join('')));
}
