import { length, lengthFigure, unitSign } from '../words/lengths.ts';
import { decimal, whole } from '../words/numbers.ts';
import { powerWords as words } from '../words/power.ts';
import { sayState } from '../words/states.ts';
import { sayAdvice } from './sayAdvice.ts';
import { figure, lampList } from './sayFigures.ts';
import type { Balance, JointNeed, PowerReport, StatePower, Trouble } from './types.ts';

/** A power report in sentences, in the order in which a maker asks. */
export interface PowerWords {
  /** Cell, load, balance, life: what will be seen. */
  tells: string[];
  /** What to change. */
  advice: string[];
  /** The joints worth pressing, most sensitive first. */
  joints: string[];
  /** Why tape does not matter and contacts do. */
  lesson: string[];
}

const mostJoints = 6;

/** Says what a report found. */
export function sayPower(report: PowerReport): PowerWords {
  const { cell, states, advice, joints, tape } = report;
  const tells = cell
    ? [
        words.cell(cell.kind, Math.round(cell.charge * 100), decimal(cell.volt, 2), figure(cell.ohm)),
        ...sayLoads(report),
        ...states.flatMap(sayTroubles),
        ...sayBalances(report),
        ...sayLife(report),
        ...saySpread(report),
      ]
    : [words.noCell];
  const percent = figure(Math.max(0.01, tape.change * 100));
  return {
    tells: [...new Set(tells)],
    advice: advice.map(sayAdvice),
    joints: groupLegs(joints).slice(0, mostJoints).map(sayJoint),
    lesson: [
      words.tapeLesson(
        length(tape.lengthMm, 0),
        length(tape.widthMm),
        figure(tape.ohm),
        figure(tape.splitOhm),
        percent,
      ),
      words.contactLesson,
    ],
  };
}

function sayLoads({ states, cell }: PowerReport): string[] {
  if (!cell) return [];
  const live = states.filter(({ load }) => load !== 'none');
  if (!live.some(({ lamps }) => Object.values(lamps).some(({ lit }) => lit))) {
    return [
      words.nothingLit,
      ...live.filter(({ load }) => load === 'shorted').map((state) => sayLoad(state, cell)),
    ];
  }
  const shorted = live.filter(({ load }) => load === 'shorted');
  const rest = live.filter(({ load }) => load !== 'shorted').sort((p, q) => q.cellMA - p.cellMA);
  return [...shorted, ...rest.slice(0, 1)].map((state) => sayLoad(state, cell));
}

function sayLoad({ load, name, cellMA }: StatePower, cell: NonNullable<PowerReport['cell']>): string {
  return words.load[load](sayState(name), figure(cellMA), cell.kind, cell.continuousMA, cell.pulseMA);
}

/** With the cell out everything is afloat, and copper without lamps may stay so: neither is worth a line. */
function sayTroubles(state: StatePower): string[] {
  if (!state.closed.includes('cell')) return [];
  const telling = state.troubles.filter(({ kind, elements }) => kind !== 'afloat' || elements.length > 0);
  return telling.map((trouble) => sayTrouble(state, trouble));
}

/** Why a part of the net stays without an answer of its own. */
export function sayTrouble({ name }: Pick<StatePower, 'name'>, { kind, elements, nodes }: Trouble): string {
  if (kind === 'cell-shorted') return words.cellShorted(sayState(name));
  if (kind === 'lamp-on-one-node') return words.lampOnOneNode(sayState(name), lampList(elements));
  return words.afloat(sayState(name), lampList(elements.length > 0 ? elements : nodes));
}

/** One sentence for all even states together would hide the one that is not: the worst two are told. */
function sayBalances({ balance, states }: PowerReport): string[] {
  const worst = [...balance]
    .sort((p, q) => q.robbed.length - p.robbed.length || q.ratio - p.ratio)
    .slice(0, 2);
  const uneven = worst.filter(({ robbed, ratio }) => robbed.length > 0 || ratio >= 1.5);
  return (uneven.length > 0 ? uneven : worst.slice(0, 1)).map((one) => sayBalance(one, states));
}

function sayBalance(
  { state, brightest, dimmest, ratio, robbed, robbers }: Balance,
  states: StatePower[],
): string {
  const volt = decimal(states.find(({ name }) => name === state)?.terminalVolt ?? 0, 1);
  if (robbed.length > 0) {
    const say = robbers.length > 1 ? words.robbed : words.robbedByOne;
    return say(sayState(state), lampList(robbers), lampList(robbed), volt);
  }
  if (ratio < 1.5) return words.even(sayState(state), decimal(ratio, 2));
  return words.uneven(sayState(state), brightest, dimmest, figure(ratio));
}

function sayLife({ runTime, ageing }: PowerReport): string[] {
  if (!runTime) return [];
  const hours = (value: number) => words.hours(figure(value, 2));
  const presses = whole(Number(runTime.presses.toPrecision(2)));
  const lines = [
    words.runTime(sayState(runTime.state), hours(runTime.hoursLit), hours(runTime.hoursBright), presses),
  ];
  const lit = Object.entries(ageing[0]?.lamps ?? {}).filter(([, mA]) => mA >= 0.1);
  for (const { charge, lamps } of ageing) {
    const dark = lit.filter(([id]) => (lamps[id] ?? 0) < 0.1).map(([id]) => id);
    if (dark.length > 0) return [...lines, words.fadesAt(Math.round(charge * 100), lampList(dark))];
  }
  return [...lines, words.endures];
}

function saySpread({ spread, states }: PowerReport): string[] {
  const state = states.find(({ name }) => name === spread?.state);
  const lit = Object.entries(spread?.lamps ?? {}).filter(([id]) => state?.lamps[id]?.lit);
  const [id, band] = lit.sort(([, p], [, q]) => p.low - q.low)[0] ?? [];
  if (!id || !band) return [];
  const lines = [words.spread(id, figure(band.low), figure(band.high))];
  if (band.darkShare > 0.005) lines.push(words.darkShare(id, (band.darkShare * 100).toFixed(0)));
  return lines;
}

/** Legs that bear the same, within a tenth, are told together. */
function groupLegs(joints: readonly JointNeed[]): JointNeed[] {
  const groups: JointNeed[] = [];
  for (const need of joints) {
    const last = groups.findLast(({ kind, dimOhm }) => kind === 'lamp-leg' && need.dimOhm < 1.1 * dimOhm);
    if (need.kind === 'lamp-leg' && last) last.dims = [...last.dims, ...need.dims];
    else groups.push({ ...need });
  }
  return groups;
}

function sayJoint({ joint, kind, at, dims, dimOhm, darkOhm }: JointNeed): string {
  const dark = darkOhm >= 1e7 ? whole(1e7) : figure(darkOhm, 2);
  return words.jointNeed(jointName(), lampList(dims), figure(dimOhm, 2), dark);

  function jointName(): string {
    const id = joint.split(' ').at(-1) ?? joint;
    if (kind === 'seam') return words.jointNames.seam(placeOf(at));
    if (kind === 'lamp-leg' && dims.length > 1) return words.jointNames.legs(lampList(dims));
    return words.jointNames[kind](id);
  }
}

function placeOf([x, y]: readonly [number, number] = [0, 0]): string {
  return `(${lengthFigure(x, 0)}; ${lengthFigure(y, 0)}) ${unitSign()}`;
}
