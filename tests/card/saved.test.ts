import { expect, test } from 'vitest';
import { parseCard } from '../../src/card/index.ts';
import { cardText, openCardText } from '../../src/card/saved.ts';
import { emptyCard } from '../../src/bench/state/emptyBench.ts';

// RFC 4648 section 10 gives "foobar" as Zm9vYmFy.
const foobar = new Blob(['foobar'], { type: 'image/png' });

test('a card is saved with its photograph as base64 (RFC 4648) and opened again as it was', async () => {
  const card = { ...emptyCard(), title: 'Harbour Night' };
  const text = await cardText(card, [
    { name: 'base.png', file: foobar, taken: '2026-01-02T03:04:05.000Z' },
    { name: 'again.png', file: new Blob(['foo'], { type: 'image/png' }) },
  ]);
  expect(text).toContain('"Zm9vYmFy"');
  const opened = openCardText(text, 'x.card.json');
  expect(opened.card).toEqual(parseCard(JSON.stringify(card), 'x'));
  expect(opened.photo).toMatchObject({ name: 'base.png', taken: '2026-01-02T03:04:05.000Z' });
  expect(opened.photo?.file.type).toBe('image/png');
  expect(await opened.photo?.file.text()).toBe('foobar');
  expect(opened.again.map(({ name }) => name)).toEqual(['again.png']);
  expect(await opened.again[0].file.text()).toBe('foo');
});

test('a card without a photograph opens without one', async () => {
  const opened = openCardText(await cardText(emptyCard()), 'x.card.json');
  expect(opened.photo).toBeUndefined();
  expect(opened.card.photos).toEqual([]);
});

test('a photograph that is no base64 is refused, with its key', () => {
  const photos = [{ name: 'a.jpg', base64: 'not base64!' }];
  const text = JSON.stringify({ ...emptyCard(), photos });
  expect(() => openCardText(text, 'x.card.json')).toThrow(/photos\[0\]\.base64/);
});
