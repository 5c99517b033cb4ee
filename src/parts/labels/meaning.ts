import { cellKinds } from '../../card/index.ts';
import type { KnownNames, LabelMeaning } from './types.ts';

/** Signs that stand for these digits where a name has a digit: likelier ones in an earlier group. */
const digitsLike: Record<string, readonly string[]> = {
  O: ['0'],
  o: ['0'],
  I: ['1'],
  l: ['1'],
  i: ['1'],
  '|': ['1'],
  S: ['5', '8', '9'],
  s: ['5', '8', '9'],
  B: ['8'],
  Z: ['2'],
  z: ['2'],
  a: ['4'],
  A: ['4'],
  E: ['68'],
  e: ['68'],
  é: ['6'],
  b: ['6'],
  G: ['6'],
  T: ['7'],
  g: ['9'],
  q: ['9'],
};
/** Digits that stand for these letters where a name begins. */
const lettersLike: Record<string, readonly string[]> = {
  '8': ['B'],
  '1': ['LI'],
  '0': ['DO'],
  '6': ['G'],
  '5': ['S'],
  '4': ['A'],
};

/**
 * What a read line says: a lamp's name ("L3"), a cell's marking, a plan's tag, a title, or nothing. A − is told by its
 * shape alone, not here: any short line is read as one.
 * @param aspect width of the line over its height: more signs than it has room for were not there
 */
export function meaningOf(text: string, known: KnownNames, aspect = Infinity): LabelMeaning {
  const code = known.tagIn(text);
  if (code) return { kind: 'tag', code };
  // A stroke beside the line is no part of it.
  const tight = text.replace(/(^|\s)[^\p{L}\d+＋]+(?=\s|$)/gu, '').replace(/\s+/g, '');
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
  const known = knownIn(tight, [...lamps, ...others]);
  if (known !== undefined) return lamps.includes(known) ? known : '';
  const found = /^([A-Za-z])([0-9OoIliSsBZz|]{1,3})$/.exec(tight);
  if (!found || !/[\dIl|Ss]/.test(found[2])) return undefined;
  return notLamps.test(tight) ? '' : `${found[1].toUpperCase()}${Number(digits(found[2]))}`;
}

/** The known name that a text comes nearest to, sign by sign; undefined where none does, or two as near. */
function knownIn(tight: string, names: readonly string[]): string | undefined {
  const near = names
    .map((name) => ({ name, off: misread(tight, name) }))
    .filter(({ off }) => Number.isFinite(off))
    .sort((a, b) => a.off - b.off);
  return near.length > 1 && near[0].off === near[1].off ? undefined : near[0]?.name;
}

/** How unlikely a text is a misreading of a name: 0 the same, Infinity none. */
function misread(tight: string, name: string): number {
  if (tight.length !== name.length) return Infinity;
  return [...tight].reduce((sum, sign, k) => {
    if (sign === name[k] || (k === 0 && sign.toUpperCase() === name[k])) return sum;
    const place =
      (k === 0 ? lettersLike : digitsLike)[sign]?.findIndex((group) => group.includes(name[k])) ?? -1;
    return place < 0 ? Infinity : sum + 1 + place;
  }, 0);
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

function digits(text: string): string {
  return [...text].map((sign) => digitsLike[sign]?.[0][0] ?? sign).join('');
}
