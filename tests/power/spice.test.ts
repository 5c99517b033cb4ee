import { describe, expect, it } from 'vitest';
import type { LampColour } from '../../src/card/index.ts';
import { colourDiode } from '../../src/power/lampTable.ts';
import { solve } from '../../src/power/solve.ts';
import type { Diode, Element } from '../../src/power/types.ts';
import { spiceTable } from '../references/spice/table.ts';
import { currentsOf, type Part } from './nodal.ts';

/** Printed to six figures, so 1e-4 relative above 1 uA leaves room for the print alone. */
function agrees(amps: number, mA: string) {
  const expected = Number(mA) / 1000;
  if (Math.abs(expected) < 1e-6) expect(Math.abs(amps)).toBeLessThan(2e-6);
  else expect(Math.abs(amps - expected) / Math.abs(expected)).toBeLessThan(1e-4);
}

function parallel(volt: number, ohm: number, lamps: { diode: Diode; seriesOhm: number; count: number }[]) {
  const elements: Element[] = [{ kind: 'cell', id: 'cell', plus: 'p', minus: 'n', volt, ohm }];
  lamps.forEach(({ diode, seriesOhm, count }, kind) => {
    for (let i = 0; i < count; i++)
      elements.push({ kind: 'lamp', id: `${kind}.${i}`, plus: 'p', minus: 'n', diode, seriesOhm });
  });
  return solve({ elements });
}

describe('lamps in parallel: ngspice 39', () => {
  it('agrees on every mix of one to eight red and white lamps', () => {
    const rows = spiceTable('redWhite');
    expect(rows).toHaveLength(2340);
    for (const row of rows) {
      const series = Number(row['lamp_R_ohm']);
      const { amps } = parallel(Number(row['cell_emf_V']), Number(row['cell_R_ohm']), [
        { diode: colourDiode('red'), seriesOhm: series, count: Number(row['n_red']) },
        {
          diode: colourDiode('white'),
          seriesOhm: row['resistor_in'] === 'each' ? series : 0,
          count: Number(row['n_white']),
        },
      ]);
      if (row['I_each_red_mA']) agrees(amps('0.0'), row['I_each_red_mA']);
      if (row['I_each_white_mA']) agrees(amps('1.0'), row['I_each_white_mA']);
      agrees(amps('cell'), row['I_total_mA'] ?? '');
    }
  });

  it('agrees on one to eight lamps of each colour', () => {
    const ours: Record<string, LampColour> = {
      yellow_green: 'yellow-green',
      true_green: 'green',
      uv400: 'uv',
    };
    const rows = spiceTable('colours');
    expect(rows).toHaveLength(900);
    for (const row of rows) {
      const colour = ours[row['colour'] ?? ''] ?? (row['colour'] as LampColour);
      const { amps } = parallel(Number(row['cell_emf_V']), Number(row['cell_R_ohm']), [
        {
          diode: colourDiode(colour),
          seriesOhm: Number(row['lamp_R_ohm']) || 1e-4,
          count: Number(row['n_lamps']),
        },
      ]);
      agrees(amps('0.0'), row['I_each_mA'] ?? '');
    }
  });

  it('agrees on white lamps of shifted forward voltage', () => {
    const rows = spiceTable('whiteCorners');
    expect(rows).toHaveLength(288);
    for (const row of rows) {
      const diode = { ...colourDiode('white'), saturationA: Number(row['Is_A']) };
      const { amps } = parallel(Number(row['cell_emf_V']), Number(row['cell_R_ohm']), [
        { diode, seriesOhm: 0, count: Number(row['n_lamps']) },
      ]);
      agrees(amps('0.0'), row['I_each_mA'] ?? '');
    }
  });
});

/** The ladder of the fault decks: cell, a joint on each side, two strips of three segments, three lamps. */
function ladder(row: Record<string, string>): Element[] {
  const joint = Number(row['each_joint_ohm']);
  const leg = 2 * Number(row['each_lamp_contact_ohm']);
  const segment = Number(row['rail_segment_mohm']) / 1000;
  const volt = Number(row['cell_emf_V']);
  const elements: Element[] = [
    { kind: 'cell', id: 'cell', plus: 'c', minus: 'g', volt, ohm: Number(row['cell_R_ohm']) },
    { kind: 'resistor', id: 'joint+', a: 'c', b: 'p0', ohm: joint },
    { kind: 'resistor', id: 'joint-', a: 'n0', b: 'g', ohm: joint },
  ];
  for (const i of [1, 2, 3]) {
    const open = row['case'] === 'gap_before_lamp2' && i === 2;
    const turned = row['case'] === 'lamp2_reversed' && i === 2;
    elements.push(
      { kind: 'resistor', id: `p${i}`, a: `p${i - 1}`, b: `p${i}`, ohm: open ? 1e8 : segment },
      { kind: 'resistor', id: `n${i}`, a: `n${i - 1}`, b: `n${i}`, ohm: segment },
      {
        kind: 'lamp',
        id: `lamp${i}`,
        plus: turned ? `n${i}` : `p${i}`,
        minus: turned ? `p${i}` : `n${i}`,
        diode: colourDiode('white'),
        seriesOhm: leg,
      },
    );
  }
  const bridges: Record<string, number> = {
    bridge_5mohm_at_lamp3: 0.005,
    bridge_100ohm_at_lamp3: 100,
    damp_paper_10kohm: 10_000,
  };
  const bridge = bridges[row['case'] ?? ''];
  if (bridge) elements.push({ kind: 'resistor', id: 'bridge', a: 'p3', b: 'n3', ohm: bridge });
  return elements;
}

describe('the nodal analysis that other tests rely on: ngspice 39', () => {
  it('agrees on mixes of red and white lamps', () => {
    for (const row of spiceTable('redWhite').filter((_, k) => k % 120 === 7)) {
      const series = Number(row['lamp_R_ohm']);
      const [reds, whites] = [Number(row['n_red']), Number(row['n_white'])];
      const parts: Part[] = [
        { id: 'cell', from: 0, to: 1, ohm: Number(row['cell_R_ohm']), volt: Number(row['cell_emf_V']) },
      ];
      for (let k = 0; k < reds; k++)
        parts.push({ id: `red ${k}`, from: 1, to: 0, ohm: series, diode: colourDiode('red') });
      for (let k = 0; k < whites; k++)
        parts.push({
          id: `white ${k}`,
          from: 1,
          to: 0,
          ohm: row['resistor_in'] === 'each' ? series : 0,
          diode: colourDiode('white'),
        });
      agrees(currentsOf(parts)['cell'], row['I_total_mA'] ?? '');
    }
  });
});

describe('faults along two strips: ngspice 39', () => {
  it.each(spiceTable('ladderFaults').map((row) => [row['case'], row['cell_emf_V'], row] as const))(
    '%s at %s V',
    (_name, _volt, row) => {
      const { amps, volts } = solve({ elements: ladder(row) });
      for (const i of [1, 2, 3]) agrees(amps(`lamp${i}`), row[`I_lamp${i}_mA`] ?? '');
      agrees(amps('cell'), row['I_cell_mA'] ?? '');
      const terminal = volts('c') - volts('g');
      expect(Math.abs(terminal - Number(row['cell_terminal_V']))).toBeLessThan(1e-5);
    },
  );
});
