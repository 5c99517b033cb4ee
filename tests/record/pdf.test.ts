import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { solveStates } from '../../src/power/index.ts';
import { pdfRecord, type Paper } from '../../src/record/index.ts';
import { fontsInNode } from '../../src/record/pdf/fontsInNode.ts';
import { harbour, someFindings } from './harbour.ts';
import { plainPicture } from './picture.ts';

/** The record as an independent reader opens it. */
async function made(paper: Paper) {
  const { checked, card } = harbour(someFindings);
  const squared = await plainPicture();
  const bytes = await pdfRecord(checked, solveStates(checked.netlist, checked.traced, card), card, {
    images: { squared },
    fonts: await fontsInNode(),
    paper,
  });
  // The reader takes the bytes for itself.
  const size = bytes.length;
  const raw = Buffer.from(bytes).toString('latin1');
  return { pdf: await getDocument({ data: bytes, verbosity: 0 }).promise, size, raw, card };
}

const records = new Map<Paper, ReturnType<typeof made>>();

/** Each paper's record is made and opened once. */
function opened(paper: Paper): ReturnType<typeof made> {
  const record = records.get(paper) ?? made(paper);
  records.set(paper, record);
  return record;
}

interface Node {
  role?: string;
  alt?: string;
  children?: Node[];
}

function roles(node: Node): string[] {
  return [...(node.role ? [node.role] : []), ...(node.children ?? []).flatMap(roles)];
}

describe('the record as PDF, read back by pdf.js', () => {
  it.each([
    ['a4', 210, 297],
    ['letter', 215.9, 279.4],
  ] as const)('%s pages are %s x %s mm', async (paper, width, height) => {
    const { pdf } = await opened(paper);
    const page = await pdf.getPage(1);
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = page.view;
    expect(((x1 - x0) * 25.4) / 72).toBeCloseTo(width, 1);
    expect(((y1 - y0) * 25.4) / 72).toBeCloseTo(height, 1);
  });

  it('can be searched: verdict, findings, states, parts and cautions are text', async () => {
    const { pdf, card } = await opened('a4');
    let text = '';
    for (let i = 1; i <= pdf.numPages; i++) {
      const { items } = await (await pdf.getPage(i)).getTextContent();
      text += items.map((item) => ('str' in item ? item.str : '')).join(' ');
    }
    const plain = text.replace(/\s+/g, ' ');
    for (const word of [
      'Hold: 1 to put right',
      'Gap, 41.2 mm from the left',
      'stroke 3',
      'Settled by hand',
      'emergency department',
    ])
      expect(plain).toContain(word);
    for (const { id } of card.lamps) expect(plain).toContain(id);
  });

  // PDF 1.7 (ISO 32000-1) 14.7 and 14.8: structure tree, standard structure types, alternative text of figures.
  it('is tagged: headings, lists, tables with heads, figures with words for them', async () => {
    const { pdf } = await opened('a4');
    const info = await pdf.getMarkInfo();
    expect(info?.Marked).toBe(true);
    const trees = await Promise.all(
      Array.from(
        { length: pdf.numPages },
        async (_, i) => (await (await pdf.getPage(i + 1)).getStructTree()) as Node,
      ),
    );
    const seen = new Set(trees.flatMap(roles));
    for (const role of ['H1', 'H2', 'H3', 'P', 'L', 'LI', 'Table', 'TR', 'TH', 'TD', 'Figure'])
      expect(seen).toContain(role);
    const figures = trees.flatMap(function find(node: Node): Node[] {
      return [...(node.role === 'Figure' ? [node] : []), ...(node.children ?? []).flatMap(find)];
    });
    expect(figures.length).toBeGreaterThanOrEqual(3 + someFindings.length);
    expect(figures.every(({ alt }) => (alt ?? '').length > 5)).toBe(true);
  });

  it('has a title and a language, embeds its fonts and carries the photograph once', async () => {
    const { pdf, raw, size } = await opened('a4');
    const { info } = (await pdf.getMetadata()) as { info: { Title?: string; Language?: string } };
    expect(info.Title).toBe('Harbour Night: proof record');
    expect(info.Language).toBe('en');
    expect(raw.match(/\/FontFile[23]?\s/g)).toHaveLength(2);
    expect(raw).not.toMatch(/\/BaseFont \/Helvetica/);
    expect(raw.match(/\/Subtype \/Image/g)).toHaveLength(1);
    expect(size).toBeLessThan(400_000);
  });
});
