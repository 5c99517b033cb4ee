import { expect, test } from 'vitest';
import { cardSchema } from '../../src/card/index.ts';
import { solveStates } from '../../src/power/index.ts';
import { htmlRecord, svgRecord } from '../../src/record/index.ts';
import { harbour, someFindings } from './harbour.ts';
import { plainPicture } from './picture.ts';

const evil = '"><svg onload=alert(1)>\'&';

test('ids and names that are markup stay text in every record', async () => {
  const { checked, card } = harbour(someFindings);
  const spoilt = cardSchema.parse(JSON.parse(JSON.stringify(card).replaceAll('"B3"', JSON.stringify(evil))));
  const lamps = (ids: readonly string[]) => ids.map((id) => (id === 'B3' ? evil : id));
  const findings = checked.netlist.findings.map((each) => ({ ...each, lamps: [...lamps(each.lamps), evil] }));
  const of = { ...checked, card: spoilt, netlist: { ...checked.netlist, findings } };
  const power = solveStates(of.netlist, of.traced, spoilt);
  const html = htmlRecord(of, power, spoilt, { images: { squared: await plainPicture() } });
  const svg = svgRecord(of, power, spoilt);
  expect(html).toContain('&quot;&gt;&lt;svg');
  for (const record of [html, svg]) {
    expect(record).not.toContain(evil);
    expect(record).not.toMatch(/<svg onload/);
    expect(record).not.toMatch(/<[^>]*\sonload=/);
  }
});
