import { execFileSync, spawnSync } from 'node:child_process';
import { copyFile, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cardFrom } from '../../src/card/index.ts';
import { check as checkPhoto } from '../../src/check/index.ts';
import { cardPhotos } from '../../src/cli/cardPhotos.ts';
import { checkCommand } from '../../src/cli/check.ts';
import { answerOf } from '../../src/cli/job.ts';
import { scaleTold } from '../../src/parts/scale/index.ts';
import { planCommand } from '../../src/cli/plan.ts';
import { powerCommand } from '../../src/cli/power.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';

/** The contract that scripts rely on: arguments, JSON keys, exit status, one sentence on standard error. */

const root = fileURLToPath(new URL('../..', import.meta.url));
const fixture = (name: string) => join(root, 'fixtures', name);
const foilproof = join(root, 'src/foilproof.mjs');
let folder = '';
const file = (name: string) => join(folder, name);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'foilproof-'));
});
afterAll(() => rm(folder, { recursive: true }));

async function check(...args: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const status = await checkCommand(
    args,
    (line) => out.push(line),
    (line) => err.push(line),
  );
  return { status, out, err };
}

/** The folded card whose third flap strip lies off, of two photographs: what its patch hides is written, not photographed. */
async function folded(): Promise<void> {
  const card = JSON.parse(await readFile(fixture('folded/strip-off.card.json'), 'utf8'));
  card.photos = card.photos.slice(1);
  card.photos[0].taken = '2026-05-04';
  Object.assign(card.photos[1], { taken: '2026-05-03T10:00:00', step: 'the flap, opened' });
  card.patches[0].beneath = JSON.parse(await readFile(fixture('sound.card.json'), 'utf8')).patches[0].beneath;
  await writeFile(file('folded.card.json'), JSON.stringify(card));
  for (const { name } of card.photos) await copyFile(fixture(`folded/${name}`), file(name));
}

describe('foilproof check', () => {
  it('prints one object with the agreed keys for a card file of several photographs, and writes mask, squared picture and record', async () => {
    await folded();
    const { status, out } = await check(
      '--card',
      file('folded.card.json'),
      '--json',
      '--mask',
      file('mask.png'),
      '--squared',
      file('squared.png'),
      '--report',
      file('record.html'),
    );
    expect(out).toHaveLength(1);
    const said = JSON.parse(out[0]);
    for (const key of ['verdict', 'corners_px', 'nets', 'not_seen']) expect(said).toHaveProperty(key);
    expect(said.photo).toMatch(/patched\.jpg$/);
    expect(said.base).toEqual({ width_mm: 105, height_mm: 148 });
    expect(said.corners_px).toHaveLength(4);
    expect(Object.keys(said.timings_ms).sort()).toEqual([
      'copper',
      'decode',
      'net',
      'power',
      'square',
      'trace',
    ]);
    for (const finding of said.findings) {
      expect(finding).toMatchObject({
        kind: expect.any(String),
        x_mm: expect.any(Number),
        y_mm: expect.any(Number),
        certainty: expect.any(Number),
        lamps: expect.any(Array),
        nets: expect.any(Array),
        say: expect.stringMatching(/\.$/),
        do: expect.stringMatching(/\.$/),
      });
    }
    expect(said.findings.map(({ kind }: { kind: string }) => kind)).toContain('missed-contact');
    const names = said.states.map(({ name }: { name: string }) => name);
    expect(names).toEqual([
      'at rest',
      'cell pressed',
      ...[1, 2, 3, 4, 5].map((k) => `stroke ${k}`),
      'everything pressed',
    ]);
    const [rest, pressed] = said.states;
    expect([rest.closed, pressed.closed]).toEqual([[], ['cell']]);
    expect(rest.lamps.W1).toEqual({ lit: false, mA: 0, look: 'dark' });
    expect(pressed.lamps.W1).toEqual({ lit: true, mA: expect.any(Number), look: 'lit' });
    const contact = (id: string) => said.contacts.find((each: { id: string }) => each.id === id);
    expect(contact('C2')).toEqual({
      id: 'C2',
      how: 'stroke',
      order: 2,
      flap: 'F1',
      nets: expect.any(Array),
      sides: expect.any(Array),
      tolerance: { fold_off_mm: 0.5, turned_deg: 1, still_meets: expect.any(Number) },
    });
    for (const side of contact('C2').sides)
      expect(side).toEqual({ overlap_mm2: expect.any(Number), miss_mm: 0, direction: null });
    // The fixture's third strip was laid 1.5 mm beyond its partner.
    const [missed] = contact('C3').sides.filter((side: { miss_mm: number }) => side.miss_mm > 0);
    expect(missed.overlap_mm2).toBe(0);
    expect(Math.abs(missed.miss_mm - 1.5)).toBeLessThan(0.3);
    expect(missed.direction).toBe('below');
    expect(said.sheets).toEqual([
      { photo: 'flap-off.jpg', sheet: 'F1', laid_by: 'fold', residual_mm: expect.any(Number) },
    ]);
    expect(status).toBe(said.verdict === 'hold' ? 1 : 0);
    expect(said.verdict).toBe('hold');
    const mask = await sharp(file('mask.png')).metadata();
    // The base, and below it the flap of 50 mm with a millimetre round it.
    expect([mask.width, mask.height]).toEqual([1050, 1990]);
    const values = new Set(await sharp(file('mask.png')).toColourspace('b-w').raw().toBuffer());
    expect([...values].sort()).toEqual([0, 255]);
    expect((await sharp(file('squared.png')).metadata()).width).toBe(1050);
    const record = await readFile(file('record.html'), 'utf8');
    expect(record).toMatch(/^<!doctype html>/i);
    // The earliest photograph first, each with what it shows and its day.
    const captions = [...record.matchAll(/<figcaption>([^<]*\.jpg, [^<]*)</g)].map(([, text]) => text);
    expect(captions).toEqual([
      'the flap, opened, flap-off.jpg, May 3, 2026',
      'the base with patch K1, patched.jpg, May 4, 2026',
    ]);
  });

  it('tells the scale by the cell and what became of a second shot', async () => {
    const photo = await decodePhoto(fixture('sound-with-cell.jpg'));
    const card = cardFrom(JSON.parse(await readFile(fixture('sound-with-cell.card.json'), 'utf8')), 'card');
    const options = { learned: false as const, depth: 'states' as const, pxPerMm: 5 };
    const checked = await checkPhoto(photo, card, options, [{ ...photo, name: 'again.jpg' }]);
    const { json } = answerOf('sound-with-cell.jpg', checked);
    expect(json?.shots).toEqual([
      { photo: 'again.jpg', used: true, moved_mm: expect.any(Number), misfit_mm: expect.any(Number) },
    ]);
    // A rim that the picture leaves unsure measures nothing, so the tape does; here the rim is taken for sure.
    expect(json?.scale).toMatchObject({ tape_mm: expect.any(Number), agrees: true });
    const cell = { ...checked.suggested.cell!, certainty: 0.9 };
    const scale = scaleTold(card, { ...checked.suggested, cell }, checked.traced);
    const sure = answerOf('x.jpg', { ...checked, scale }).json;
    expect(sure?.scale).toEqual({ cell_mm: expect.any(Number), ratio: expect.any(Number), agrees: true });
    // A CR2032 is 20 mm across (IEC 60086-3).
    expect(Math.abs(sure!.scale!.cell_mm! - 20)).toBeLessThan(0.5);
  });

  it('asks for the base where a card file names none of its photographs, and for a picture that is gone', async () => {
    const card = cardFrom(JSON.parse(await readFile(fixture('folded/sound.card.json'), 'utf8')), 'card');
    const flapAlone = { ...card, photos: card.photos.filter(({ sheet }) => sheet === 'F1') };
    await expect(cardPhotos(flapAlone, fixture('folded/x.json'))).rejects.toThrow(/base/);
    await expect(cardPhotos(card, file('elsewhere.json'))).rejects.toThrow(/\.jpg/);
  });

  it('takes a folder on all cores, one line each in order, and never stops at a bad photograph', async () => {
    await mkdir(file('class'));
    await copyFile(fixture('reversed-lamp.jpg'), file('class/b.jpg'));
    await writeFile(file('class/a.jpg'), 'no picture');
    const { status, out, err } = await check(file('class'), '--card', fixture('reversed-lamp.card.json'));
    expect(out).toHaveLength(2);
    expect(out[0]).toContain('a.jpg');
    expect(out[1]).toContain('b.jpg');
    expect(err).toHaveLength(1);
    expect(err[0]).toContain('a.jpg');
    expect(status).toBe(2);
  });

  it.each([
    ['a missing photograph', ['nowhere.jpg'], 'no file nowhere.jpg'],
    ['no photograph', [], 'needs a photograph'],
    ['an unknown option', ['x.jpg', '--loud'], '--loud'],
    ['an option without its value', ['x.jpg', '--mask'], '--mask'],
    ['a report of another kind', ['x.jpg', '--report', 'a.docx'], '.html, .pdf or .svg'],
    ['another paper', ['x.jpg', '--report', 'a.pdf', '--paper', 'a3'], 'a4 or letter'],
    ['a mask that is no PNG', ['x.jpg', '--mask', 'a.jpg'], 'PNG'],
  ])('says in a sentence what is wrong: %s', async (_, args, part) => {
    await expect(check(...args)).rejects.toThrow(part);
  });

  it.each([
    ['0 bytes', ''],
    ['no picture', 'hello'],
    ['a truncated JPEG', undefined],
  ])('ends with 2 and one line for a file of %s', async (_, text) => {
    const whole = await readFile(fixture('sound.jpg'));
    await writeFile(file('bad.jpg'), text ?? whole.subarray(0, 20_000));
    const { status, err } = await check(file('bad.jpg'), '--json');
    expect(status).toBe(2);
    expect(err).toHaveLength(1);
    expect(err[0]).toMatch(/bad\.jpg.*\.$/);
    expect(err[0]).not.toContain('\n');
  });

  it('names the key of a card that is wrong', async () => {
    await writeFile(
      file('card.json'),
      '{"format":"foilproof/1","base":{"width_mm":105,"height_mm":148},"lampz":[]}',
    );
    await expect(check(fixture('sound.jpg'), '--card', file('card.json'))).rejects.toThrow('"lampz"');
  });
});

describe('foilproof as a program', () => {
  it('runs with no build step; help is no fault, an unknown command is', () => {
    expect(execFileSync(process.execPath, [foilproof, '--help'], { encoding: 'utf8' })).toContain(
      'foilproof check',
    );
    const unknown = spawnSync(process.execPath, [foilproof, 'chekc'], { encoding: 'utf8' });
    expect(unknown.status).toBe(2);
    expect(unknown.stderr.trim().split('\n')).toHaveLength(1);
    expect(unknown.stderr).toContain('chekc');
  });
});

describe('foilproof power', () => {
  it('tells currents of each state from the plan', async () => {
    const out: string[] = [];
    const status = await powerCommand([fixture('sound.card.json'), '--json'], (line) => out.push(line));
    const said = JSON.parse(out[0]);
    const state = (name: string) => said.states.find((s: { name: string }) => s.name === name);
    const lit = (name: string) => Object.keys(state(name).lamps).filter((id) => state(name).lamps[id].lit);
    expect(status).toBe(0);
    expect(lit('at rest')).toEqual([]);
    expect(lit('cell pressed')).toEqual(['W1', 'W2', 'W3']);
    expect(lit('stroke 2')).toEqual(['B2', 'W1', 'W2', 'W3']);
  });
});

describe('foilproof plan', () => {
  it('prints the plan as a PDF', async () => {
    expect(await planCommand([fixture('sound.card.json'), '--print', file('plan.pdf')])).toBe(0);
    expect((await readFile(file('plan.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('asks for a file to print to', async () => {
    await expect(planCommand([fixture('sound.card.json')])).rejects.toThrow('--print');
  });
});
