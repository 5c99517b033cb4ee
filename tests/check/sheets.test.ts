import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { cardSchema, type Card, type CardInput } from '../../src/card/index.ts';
import { check, renewFrom, type Checked } from '../../src/check/index.ts';
import { standings } from '../../src/net/index.ts';
import { cellAt, circuitOf } from '../../src/power/index.ts';
import { colourDiode } from '../../src/power/lampTable.ts';
import { jointRanges } from '../../src/power/joints.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { sayFinding } from '../../src/record/sayFinding.ts';
import { currentsOf, partsOf, type Part } from '../power/nodal.ts';
import { foldedCases, foldedShots, type FoldedCase } from '../generate/folded.ts';

const fixture = (name: string) => new URL(`../../fixtures/folded/${name}`, import.meta.url);
const cases = foldedCases();
const photos = new Map<string, Awaited<ReturnType<typeof decodePhoto>>>();

beforeAll(async () => {
  for (const { name } of foldedShots())
    photos.set(`${name}.jpg`, await decodePhoto(fileURLToPath(fixture(`${name}.jpg`))));
});

/** The last photograph of the base is the base as it is; the others come beside it. Corners are the true ones. */
function checkFolded(card: Card): Promise<Checked> {
  const sheets = card.photos.map((given) => ({ given, photo: photos.get(given.name)! }));
  const now = sheets.filter(({ given }) => given.sheet === 'base').at(-1)!;
  const others = sheets.filter((each) => each !== now);
  return check(
    now.photo,
    { ...card, corners_px: now.given.corners_px },
    { learned: false, depth: 'states', pxPerMm: 8 },
    [],
    others,
  );
}

/** What holds the verdict or asks for a hand. Overlaps of the build itself are real and told in every case. */
const weighty = ({ netlist }: Checked) =>
  netlist.findings.filter(({ weight, kind }) => weight !== 'note' && kind !== 'seam');

const lampsIn = ({ power }: Checked, name: string) =>
  power.states.find((state) => state.name === name)!.lamps;

const parsed = (card: CardInput): Card => cardSchema.parse(card);
let sound: Checked;

describe('Harbour Night folded, three photographs', () => {
  it.each(cases.map((each) => [each.name, each] as const))(
    '%s',
    async (name, { card, finds }: FoldedCase) => {
      const checked = await checkFolded(parsed(card));
      if (name === 'sound') sound = checked;
      const said = weighty(checked);
      expect(said.map(({ kind, sizeMm, facts }) => ({ kind, sizeMm, facts }))).toEqual(
        finds.map(({ kind, facts }) => ({
          kind,
          sizeMm: said[0].sizeMm,
          facts: expect.objectContaining(facts ?? {}),
        })),
      );
      for (const [k, { mm }] of finds.entries())
        if (mm !== undefined) expect(Math.abs(said[k].sizeMm! - mm)).toBeLessThan(0.25);
      for (const finding of said) expect(sayFinding(finding).say).toMatch(/\.$/);
    },
  );

  it('lays both further sheets within 0.5 mm and says by what', () => {
    expect(sound.joined!.fates.map(({ name, by }) => [name, by])).toEqual([
      ['before.jpg', 'corners'],
      ['flap.jpg', 'fold'],
    ]);
    for (const { residualMm } of sound.joined!.fates) expect(residualMm).toBeLessThan(0.5);
  });

  it('remembers the rail under the patch from the earlier photograph, so that its net is one', () => {
    const { beneath } = sound.joined!;
    expect(beneath.K1).toHaveLength(1);
    expect(Math.abs(beneath.K1[0].width_mm - 5)).toBeLessThan(0.4);
    const { netOf } = sound.netlist;
    expect(netOf['W1-']).toBe(netOf['W3-']);
  });

  it('tells the tape off the patch as a seam on the plus rail, and none where it ends on paper', () => {
    const { seams } = sound.joined!;
    expect(seams).toHaveLength(1);
    // The plus rail is 5 mm wide about x = 95, the tape 4 mm wide about y = 124.5.
    expect(Math.hypot(seams[0][0] - 92.5, seams[0][1] - 124.5)).toBeLessThan(1);
  });

  it('lights each beam by its own step alone, the windows always', () => {
    const { card, netlist } = sound;
    const lit = Object.fromEntries(
      netlist.states.map((state) => [
        state.name,
        [...standings(card, state, netlist.netOf)].flatMap(([id, standing]) =>
          standing === 'fed' && state.closed.includes('cell') ? [id] : [],
        ),
      ]),
    );
    expect(lit['at rest']).toEqual([]);
    expect(lit['cell pressed']).toEqual(['W1', 'W2', 'W3']);
    for (let k = 1; k <= 5; k++) expect(lit[`stroke ${k}`]).toEqual([`B${k}`, 'W1', 'W2', 'W3']);
  });

  it('gives each lamp the current of a circuit written by hand and solved by nodal analysis', () => {
    const { volt, ohm } = cellAt('CR2032', 1);
    const joint = (kind: keyof typeof jointRanges) => jointRanges[kind].usual;
    const leg = 2 * joint('lamp-leg');
    const pressed: Part[] = [
      { id: 'cell', from: 0, to: 1, ohm, volt },
      { id: 'upper face', from: 1, to: 2, ohm: joint('cell-face') },
      { id: 'lower face', from: 3, to: 0, ohm: joint('cell-face') },
      { id: 'W1', from: 2, to: 3, ohm: leg, diode: colourDiode('warm-white') },
      { id: 'W2', from: 2, to: 3, ohm: leg, diode: colourDiode('warm-white') },
      { id: 'tape off the patch', from: 2, to: 4, ohm: joint('seam') },
      { id: 'W3', from: 4, to: 3, ohm: leg, diode: colourDiode('warm-white') },
    ];
    const beam = (k: number): Part[] => [
      { id: 'tape on the rail', from: 2, to: 5, ohm: joint('seam') },
      { id: `B${k}`, from: 5, to: 6, ohm: leg, diode: colourDiode('white') },
      { id: 'column to flap', from: 6, to: 7, ohm: joint('contact') },
      { id: 'flap to wave', from: 7, to: 3, ohm: joint('contact') },
    ];
    const compare = (name: string, parts: Part[]) => {
      const expected = currentsOf(parts);
      for (const [id, { mA }] of Object.entries(lampsIn(sound, name)))
        if (!(id in expected)) expect(mA, `${id}, ${name}`).toBeLessThan(1e-3);
        // Seams that the photograph leaves open along the rails are reckoned with and not written by hand.
        else expect(Math.abs(mA / (1000 * expected[id]) - 1), `${id}, ${name}`).toBeLessThan(0.05);
    };
    compare('cell pressed', pressed);
    for (let k = 1; k <= 5; k++) compare(`stroke ${k}`, [...pressed, ...beam(k)]);
  });

  it('solves its own circuit as the nodal analysis does, tape by tape', () => {
    const { netlist, traced, card } = sound;
    for (const state of netlist.states.filter(({ closed }) => closed.includes('cell'))) {
      const expected = currentsOf(partsOf(circuitOf(netlist, traced, card, state).elements));
      for (const [id, { mA }] of Object.entries(lampsIn(sound, state.name)))
        expect(Math.abs(mA - 1000 * (expected[id] ?? 0)), `${id}, ${state.name}`).toBeLessThan(1e-4);
    }
  });

  it('renews a part without looking at any photograph again', async () => {
    const card = { ...sound.card, contacts: sound.card.contacts.slice(1) };
    const renewed = await renewFrom(
      'net',
      { photo: photos.get('patched.jpg')!, card, before: sound },
      { learned: false, depth: 'states', pxPerMm: 8 },
    );
    expect(renewed.traced === sound.traced).toBe(true);
    expect(renewed.netlist.netOf['W1-']).toBe(renewed.netlist.netOf['W3-']);
  });
});

describe('The folded fixtures', () => {
  it('carry cards that are remade byte for byte', async () => {
    for (const { name, card } of cases)
      expect(`${JSON.stringify(card, null, 1)}\n`).toBe(await readFile(fixture(`${name}.card.json`), 'utf8'));
  });
});
