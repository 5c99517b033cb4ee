import { cellKinds } from '../../card/index.ts';
import type { KnownNames, LabelMeaning } from './types.ts';

/** Letters that a recogniser takes for digits. */
const digitLike: Record<string, string> = {
  O: '0',
  o: '0',
  I: '1',
  l: '1',
  i: '1',
  '|': '1',
  S: '5',
  s: '5',
  B: '8',
  Z: '2',
  z: '2',
};

/**
 * What a read line says: a lamp's name ("L3"), a cell's marking, a plan's tag, a title, or nothing. A − is told by its
 * shape alone, not here: any short line is read as one.
 * @param aspect width of the line over its height: more signs than it has room for were not there
 */
export function meaningOf(text: string, known: KnownNames, aspect = Infinity): LabelMeaning {
  const code = known.tagIn(text);
  if (code) return { kind: 'tag', code };
  const tight = text.replace(/\s+/g, '');
  if (/^[+＋]$/.test(tight)) return { kind: 'polarity', sign: '+' };
  const name = nameIn(roomFor(tight, aspect), known);
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
  const all = [...lamps, ...others];
  // An 8 is read as an S too: where no name has the 5, the 8 is meant.
  const known =
    all.find((id) => alike(id) === alike(tight)) ??
    all.find((id) => alike(id) === alike(tight.replace(/(?<=.)[Ss]/g, '8')));
  if (known !== undefined) return lamps.includes(known) ? known : '';
  const found = /^([A-Za-z])([0-9OoIliSsBZz|]{1,3})$/.exec(tight);
  if (!found || !/[\dIl|Ss]/.test(found[2])) return undefined;
  return notLamps.test(tight) ? '' : `${found[1].toUpperCase()}${Number(digits(found[2]))}`;
}

/** Least widths of printed and written signs, of their height: most of them, and broad letters. */
const signWidth = { usual: 0.55, broad: 0.9 };
/** One sign may be read as two of these: a B as B8, a W as wW, a 1 as il. */
const readTwice = [/^(.)\1/i, /^(B)8/i, /[il1|]([il1|])$/i];

/** A short text without a sign that was read twice, where the line has no room for it. */
function roomFor(tight: string, aspect: number): string {
  if (tight.length < 3 || tight.length > 4 || leastWidth(tight) <= aspect) return tight;
  const twice = readTwice.find((pattern) => pattern.test(tight));
  const once = twice ? tight.replace(twice, '$1') : tight;
  return leastWidth(once) <= aspect ? once : '';
}

function leastWidth(tight: string): number {
  return [...tight].reduce((sum, sign) => sum + (/[MW]/i.test(sign) ? signWidth.broad : signWidth.usual), 0);
}

/** A name with letters that are mistaken for digits written as those, so that both spellings agree. */
function alike(name: string): string {
  return name.slice(0, 1).toUpperCase() + digits(name.slice(1));
}

function digits(text: string): string {
  return [...text].map((c) => digitLike[c] ?? c).join('');
}
