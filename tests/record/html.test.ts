import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { solveStates } from '../../src/power/index.ts';
import { htmlRecord } from '../../src/record/index.ts';
import { chooseLanguage } from '../../src/words/language.ts';
import { harbour, someFindings } from './harbour.ts';
import { plainPicture } from './picture.ts';

let html = '';
beforeAll(async () => {
  const { checked, card } = harbour(someFindings);
  const titled = {
    ...card,
    title: 'Night <script>alert(1)</script> & "day"',
    note: '</style><img src=x onerror=alert(1)>',
  };
  const squared = await plainPicture();
  html = htmlRecord(checked, solveStates(checked.netlist, checked.traced, card), titled, {
    images: { squared },
  });
});

describe('the record as a page', () => {
  it('asks nothing of anyone: no script, no link, no address but a name space', () => {
    expect(html).not.toMatch(/<script|<link|<iframe|javascript:|\son\w+\s*=\s*["']/i);
    const addresses = [...html.matchAll(/https?:\/\/[^"'\s<)]+/g)].map(([address]) => address);
    expect(new Set(addresses)).toEqual(new Set(['http://www.w3.org/2000/svg']));
    expect(html).toContain("default-src 'none'");
  });

  it('shows what makers wrote as text, never as markup', () => {
    expect(html).toContain('&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;day&quot;');
    expect(html).toContain('&lt;/style&gt;&lt;img src=x');
    expect(html).toContain('metered: 0.1 ohm &amp; steady &lt;ok&gt;');
  });

  it('opens and closes every element in turn', () => {
    const open: string[] = [];
    const empty = new Set(['meta', 'img', 'br']);
    const body = html.replace(/<style>[\s\S]*?<\/style>/, '');
    for (const [, close, name = '', self] of body.matchAll(/<(\/?)([a-zA-Z][\w-]*)[^>]*?(\/?)>/g)) {
      if (empty.has(name) || self) continue;
      if (close) expect(open.pop(), `</${name}>`).toBe(name);
      else open.push(name);
    }
    expect(open).toEqual([]);
  });

  it('carries the photograph once, however many cut-outs show it', () => {
    expect(html.match(/data:image\/png/g)).toHaveLength(1);
    expect(html.match(/<use href="#picture-1"/g)).toHaveLength(1 + someFindings.length);
  });

  it('has everything a maker needs to mend the card', () => {
    for (const heading of [
      'Findings',
      'Circuit diagram',
      'What lights in each state',
      'Current and life',
      'Nets',
      'Parts',
      'Not seen',
      'Cautions',
    ])
      expect(html).toContain(`<h2>${heading}</h2>`);
    for (const { id } of harbour().card.lamps) expect(html).toContain(`>${id}<`);
    expect(html).toContain('Settled by hand: metered');
    expect(html).toContain('emergency department at once');
  });
});

describe('the record in another language', () => {
  afterAll(() => chooseLanguage('en'));

  it('names parts in it, in the diagram and the tables too, and no folder of the maker’s', async () => {
    await chooseLanguage('de');
    const { checked, card } = harbour();
    const netlist = { ...checked.netlist, notSeen: [] };
    const named = { ...checked, netlist, photo: { ...checked.photo, name: '/home/maker/cards/harbour.jpg' } };
    const page = htmlRecord(named, solveStates(checked.netlist, checked.traced, card), card);
    const words = page.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<[^>]+>/g, ' | ');
    expect(words).not.toMatch(/(?<!\p{L})(white|warm-white|cell[+-]?)(?!\p{L})/u);
    expect(words).toContain('warmweiß');
    expect(words).toContain('Zelle+');
    expect(words).not.toContain('/home/maker');
    expect(words).toContain('harbour.jpg');
  });
});
