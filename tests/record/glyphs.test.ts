import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { solveStates } from '../../src/power/index.ts';
import { htmlRecord, pdfRecord, svgRecord } from '../../src/record/index.ts';
import { checkJson } from '../../src/record/checkJson.ts';
import { fontsInNode } from '../../src/record/pdf/fontsInNode.ts';
import { harbour, someFindings } from './harbour.ts';
import { plainPicture } from './picture.ts';

/** Ohm, minus, times, degree, and letters of German, French, Polish, Czech. */
const glyphs = 'Ω − × ° ß é ł č œ Ä Ö Ü ç « » „ “ ” … – ’ ½ ² ≥';
const markup = `<script>alert("1")</script> & 'two' <b>`;

/** Harbour Night under a title and with notes that a careless record would break on. */
function noted() {
  const { checked, card: plain } = harbour(
    someFindings.map((each) => (each.checked ? { ...each, checked: { note: `${glyphs} ${markup}` } } : each)),
  );
  const card = { ...plain, title: `Phare ${glyphs}`, note: `47 ${glyphs} ${markup}` };
  return { checked: { ...checked, card }, card, power: solveStates(checked.netlist, checked.traced, card) };
}

test('the PDF writes signs and letters beyond plain Latin, and markup as it was typed; a reader finds them', async () => {
  const { checked, card, power } = noted();
  const images = { squared: await plainPicture() };
  const bytes = await pdfRecord(checked, power, card, { images, fonts: await fontsInNode() });
  const pdf = await getDocument({ data: bytes, verbosity: 0 }).promise;
  let text = '';
  for (let n = 1; n <= pdf.numPages; n++) {
    const { items } = await (await pdf.getPage(n)).getTextContent();
    text += items.map((item) => ('str' in item ? item.str : '')).join(' ');
  }
  const tight = text.replace(/\s+/g, '');
  for (const said of [`47${glyphs}${markup}`, `Settledbyhand:${glyphs}${markup}`, `Phare${glyphs}`])
    expect(tight).toContain(said.replace(/\s+/g, ''));
  // A glyph that a font lacks is drawn as its glyph 0 and read back as nothing or as U+0000.
  expect(text).not.toMatch(/[\u0000\uFFFD]/);
});

test('title and notes that are markup stay text in HTML and SVG, and as they were in JSON', async () => {
  const { checked, card, power } = noted();
  const spelt = { ...card, title: markup };
  const html = htmlRecord({ ...checked, card: spelt }, power, spelt, {
    images: { squared: await plainPicture() },
  });
  const svg = svgRecord({ ...checked, card: spelt }, power, spelt);
  for (const record of [html, svg]) {
    expect(record).not.toContain('<script');
    expect(record).not.toContain('<b>');
    expect(record).toContain('&lt;script&gt;');
  }
  expect(html).toContain(glyphs.replaceAll('"', '&quot;'));
  const figures = JSON.stringify(checkJson(checked, power));
  expect(JSON.parse(figures)).toHaveProperty('findings.2.checked', `${glyphs} ${markup}`);
});
