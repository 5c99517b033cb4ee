import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { cardSchema } from '../../src/card/index.ts';
import type { TouchUp } from '../../src/card/index.ts';
import { brush, check, unbrush } from '../../src/check/index.ts';
import type { Checked } from '../../src/check/index.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';

const fixture = (name: string) => fileURLToPath(new URL(`../../fixtures/${name}`, import.meta.url));
const card = cardSchema.parse(JSON.parse(await readFile(fixture('gap-and-reversed.card.json'), 'utf8')));
const gapsIn = ({ netlist }: Checked) =>
  netlist.findings.flatMap(({ kind, at }) => (kind === 'gap' ? [at.map(Math.round).join()] : []));
const areaOf = ({ traced }: Checked) => traced.pieces.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
const added = (from: [number, number], to: [number, number]): TouchUp => ({
  do: 'add',
  width_mm: 2.5,
  path: [from, to],
});

it('a stroke elsewhere leaves a seen cut a gap, one over it mends it, and taking that back opens it again', async () => {
  const sound = await check(await decodePhoto(fixture('gap-and-reversed.jpg')), card, { depth: 'states' });
  const [gap] = gapsIn(sound);
  expect(gap).toBe('20,88');
  const before = areaOf(sound);
  const elsewhere = brush(sound, added([40, 8], [60, 8]));
  expect(areaOf(elsewhere) - before).toBeGreaterThan(40);
  expect(gapsIn(elsewhere)).toEqual([gap]);
  const mended = brush(elsewhere, added([20, 84], [20, 92]));
  expect(gapsIn(mended)).toEqual([]);
  expect(gapsIn(unbrush(mended))).toEqual([gap]);
}, 60_000);
