import { cellKinds } from '../../card/index.ts';
import type { KnownNames, LabelMeaning } from './types.ts';

/** Letters that a recogniser takes for digits. */
const digitLike: Record<string, string> = {
  O: '0',
  o: '0',
  I: '1',
  l: '1',
  '|': '1',
  S: '5',
  s: '5',
  B: '8',
  Z: '2',
  z: '2',
};

/**
 * What a read line says: a lamp's name ("L3"), a polarity mark, a cell's marking, a plan's tag, a title, or nothing.
 */
export function meaningOf(text: string, known: KnownNames): LabelMeaning {
  const code = known.tagIn(text);
  if (code) return { kind: 'tag', code };
  const tight = text.replace(/\s+/g, '');
  if (/^[+＋]$/.test(tight)) return { kind: 'polarity', sign: '+' };
  if (/^[-–—−_]$/.test(tight)) return { kind: 'polarity', sign: '-' };
  const name = nameIn(tight, known);
  if (name !== undefined) return name === '' ? { kind: 'nothing' } : { kind: 'lamp', id: name };
  const cell = cellKinds.find((kind) => tight.toUpperCase().includes(kind));
  if (cell) return { kind: 'cell', cell };
  if (/^[\p{L}][\p{L}\s'’-]{3,40}$/u.test(text.trim())) return { kind: 'title', title: text.trim() };
  return { kind: 'nothing' };
}

/** Contacts, patches and flaps are named so by the printed plan: never a lamp that nobody knows. */
const notLamps = /^[CFKNP]/;

/** A lamp's name; '' for another part's; undefined where the text is no name at all. */
function nameIn(tight: string, { lamps, others }: KnownNames): string | undefined {
  const known = [...lamps, ...others].find((id) => alike(id) === alike(tight));
  if (known !== undefined) return lamps.includes(known) ? known : '';
  const found = /^([A-Z])([0-9OoIlSsBZz|]{1,3})$/.exec(tight);
  if (!found) return undefined;
  return notLamps.test(tight) ? '' : `${found[1]}${Number(digits(found[2]))}`;
}

/** A name with letters that are mistaken for digits written as those, so that both spellings agree. */
function alike(name: string): string {
  return name.slice(0, 1).toUpperCase() + digits(name.slice(1));
}

function digits(text: string): string {
  return [...text].map((c) => digitLike[c] ?? c).join('');
}
