import type { Random } from '../generate/random.ts';

/** Values that break careless readers: wrong kinds, numbers at and past every border, names that mean something to a program. */
const strange: readonly unknown[] = [
  null,
  true,
  '',
  'NaN',
  '__proto__',
  'constructor',
  '<script>alert(1)</script>',
  '\u0000\u202e\ud800',
  'x'.repeat(5000),
  -1,
  0,
  1e-320,
  0.1 + 0.2,
  2000,
  1e6,
  1e308,
  Number.MAX_SAFE_INTEGER + 1,
  [],
  {},
  [[]],
  [0, 0],
  [1e9, -1e9],
  { at: {} },
  Array.from({ length: 300 }, (_, i) => i),
];

/** A card file's text spoilt in one to four ways: the tree changed, or the text itself. */
export function badCard(random: Random, good: unknown): string {
  const tree = structuredClone(good);
  const times = 1 + Math.floor(random.next() * 4);
  for (let n = 0; n < times; n++) spoilTree(random, tree);
  const text = JSON.stringify(tree);
  return random.next() < 0.25 ? spoilText(random, text) : text;
}

type Tree = Record<string, unknown>;

function spoilTree(random: Random, root: unknown): void {
  let at = root as Tree;
  for (let depth = 0; depth < 8; depth++) {
    const keys = Object.keys(at);
    if (keys.length === 0) return;
    const key = random.pick(keys);
    const next = at[key];
    const isTree = typeof next === 'object' && next !== null;
    if (isTree && random.next() < 0.75) {
      at = next as Tree;
      continue;
    }
    return change(random, at, key);
  }
}

function change(random: Random, at: Tree, key: string): void {
  const old = at[key];
  const way = random.next();
  if (way < 0.35) at[key] = structuredClone(random.pick(strange));
  else if (way < 0.6 && typeof old === 'number') at[key] = old * random.pick([-1, 0, 1e-6, 3, 40, 1e5]);
  else if (way < 0.7) Reflect.deleteProperty(at, key);
  else if (way < 0.8) at[random.pick(['lampz', 'toString', 'hasOwnProperty', `${key} `])] = old;
  else if (Array.isArray(at)) at.splice(Number(key), 0, structuredClone(old));
  else at[key] = nested(random);
}

function nested(random: Random): unknown {
  let tree: unknown = 1;
  const depth = Math.floor(random.between(1, 200));
  for (let n = 0; n < depth; n++) tree = random.next() < 0.5 ? [tree] : { a: tree };
  return tree;
}

function spoilText(random: Random, text: string): string {
  const at = Math.floor(random.next() * text.length);
  return random.pick([
    text.slice(0, at),
    text.slice(at),
    text.slice(0, at) + random.pick(['"', '}', '\\u', '\u0000', '1e999', '[[[[']) + text.slice(at),
    `\uFEFF${text}`,
    text + text,
    `${'['.repeat(20_000)}${text}`,
    text.replace(/"(\w+)":/, '"__proto__":'),
  ]);
}
