import type { Card, Lamp } from '../card/index.ts';
import { balanceOf } from './balance.ts';
import { darkMA, dimMA } from './brightness.ts';
import { cellAt, cellTable } from './cellTable.ts';
import { diodeVolt } from './diode.ts';
import type { SolvedState } from './jointNeeds.ts';
import { familyOf, lampDiode } from './lampTable.ts';
import { colourBands, nextUp, seriesOhm, valuesBetween } from './resistorSeries.ts';
import { solve } from './solve.ts';
import { statePower } from './statesPower.ts';
import type { Advice, Balance, StatePower } from './types.ts';

/** Lamps this uneven are worth a resistor: the eye sees three times the current as half as bright again. */
const unevenRatio = 3;

/** What would light the card better, from a fresh cell's currents. */
export function adviceOn(states: readonly SolvedState[], balance: readonly Balance[], card: Card): Advice[] {
  const mixed = balancing(states, balance, card);
  // A resistor for the 2 V lamps settles the load too, so one remedy is named, not three.
  const greedy = mixed.length > 0 ? [] : limiting(states, card);
  const crowded = greedy.length > 0 || mixed.length > 0 ? [] : crowding(states, card);
  return [...tooLow(card), ...whichGreen(card), ...mixed, ...greedy, ...crowded];
}

function tooLow(card: Card): Advice[] {
  if (!card.cell) return [];
  const { volt } = cellAt(card.cell.kind, 1);
  const lamps = card.lamps
    .filter((lamp) => diodeVolt(lampDiode(lamp), darkMA / 1000) > volt)
    .map(({ id }) => id);
  return lamps.length > 0 ? [{ kind: 'cell-too-low', volt, lamps }] : [];
}

/** "Green" names lamps a volt apart; which kind it is decides with what it may share a cell. */
function whichGreen(card: Card): Advice[] {
  const lamps = card.lamps.filter((lamp) => lamp.colour === 'green' && !lamp.forward).map(({ id }) => id);
  return lamps.length > 0 ? [{ kind: 'which-green', lamps }] : [];
}

/** The worst mixed state: a resistor for its 2 V lamps, or, where none helps, circuits of their own. */
function balancing(states: readonly SolvedState[], balance: readonly Balance[], card: Card): Advice[] {
  const worst = [...balance]
    .filter(({ robbed, ratio }) => robbed.length > 0 || ratio >= unevenRatio)
    .sort((p, q) => q.ratio - p.ratio)[0];
  const state = states.find(({ power }) => power.name === worst?.state);
  if (!worst || !state) return [];
  const shown = card.lamps.filter(({ id }) => state.power.lamps[id]?.lit || worst.robbed.includes(id));
  const low = shown.filter((lamp) => familyOf(lamp) === 'low').map(({ id }) => id);
  const high = shown.filter((lamp) => familyOf(lamp) === 'high').map(({ id }) => id);
  if (low.length === 0 || high.length === 0) return [];
  const best = bestResistor(state, low, [...low, ...high]);
  const split: Advice = { kind: 'split-colours', state: worst.state, low, high };
  if (!best || best.dimmest < darkMA) return [split];
  const resistor: Advice = {
    kind: 'resistor',
    state: worst.state,
    lamps: low,
    ohm: best.ohm,
    series: 'E12',
    bands: colourBands(best.ohm),
    ratioBefore: worst.ratio,
    ratioAfter: best.ratio,
    mA: best.mA,
  };
  return best.dimmest < dimMA ? [resistor, split] : [resistor];
}

function bestResistor({ circuit }: SolvedState, low: string[], fed: string[]) {
  const tries = valuesBetween('E12', 10, 4700).map((ohm) => {
    const elements = circuit.elements.map((element) =>
      element.kind === 'lamp' && low.includes(element.id)
        ? { ...element, seriesOhm: element.seriesOhm + ohm }
        : element,
    );
    const { amps } = solve({ elements });
    const mA = Object.fromEntries(fed.map((id) => [id, amps(id) * 1000]));
    const values = Object.values(mA);
    return { ohm, mA, dimmest: Math.min(...values), ratio: Math.max(...values) / Math.min(...values) };
  });
  return tries.sort((p, q) => p.ratio - q.ratio)[0];
}

/** Bare 2 V lamps that draw more than a lamp or the cell should give. */
function limiting(states: readonly SolvedState[], card: Card): Advice[] {
  if (!card.cell) return [];
  const { pulseMA } = cellTable[card.cell.kind];
  const worst = greediest(states);
  if (!worst) return [];
  const lit = card.lamps.filter(({ id }) => worst.power.lamps[id]?.lit);
  const low = lit.filter((lamp) => familyOf(lamp) === 'low');
  const most = Math.max(0, ...low.map(({ id }) => worst.power.lamps[id]?.mA ?? 0));
  if (low.length === 0 || low.length < lit.length || (most <= 20 && worst.power.cellMA <= pulseMA)) return [];
  const target = Math.min(5, pulseMA / low.length) / 1000;
  const forward = diodeVolt(lampDiode(low[0] as Lamp), target);
  const ohm = nextUp(seriesOhm(cellAt(card.cell.kind, 1), forward, target, low.length), 'E12');
  const lamps = low.map(({ id }) => id);
  const then = withSeries(worst, card, lamps, ohm);
  const mAThen = Math.max(...lamps.map((id) => then.lamps[id]?.mA ?? 0));
  const name = worst.power.name;
  return [{ kind: 'limit-current', state: name, lamps, mA: most, ohm, bands: colourBands(ohm), mAThen }];
}

function withSeries({ circuit, power }: SolvedState, card: Card, lamps: string[], ohm: number): StatePower {
  const elements = circuit.elements.map((element) =>
    element.kind === 'lamp' && lamps.includes(element.id)
      ? { ...element, seriesOhm: element.seriesOhm + ohm }
      : element,
  );
  return statePower({ elements }, card, power, 1);
}

/** Too many lamps at once for one cell. */
function crowding(states: readonly SolvedState[], card: Card): Advice[] {
  const worst = greediest(states);
  if (!card.cell || !worst) return [];
  const lit = Object.entries(worst.power.lamps).filter(([, lamp]) => lamp.lit);
  const dimmest = Math.min(...lit.map(([, lamp]) => lamp.mA));
  const load = worst.power.load === 'over-pulse';
  const dim = dimmest < dimMA;
  if (lit.length < 2 || (!load && !dim)) return [];
  const now = lit.length;
  const most = mostLamps(
    worst,
    card,
    lit.map(([id]) => id),
  );
  const second = secondCell(worst, card, dimmest);
  const fewer: Advice = {
    kind: 'fewer-lamps',
    state: worst.power.name,
    now,
    most,
    because: dim ? 'dim' : 'load',
  };
  return most < now ? [fewer, ...second] : second;
}

/** Leaves the last lamps out one by one until the rest are bright and the cell is not overloaded. */
function mostLamps({ circuit, power }: SolvedState, card: Card, lit: string[]): number {
  for (let count = lit.length - 1; count > 1; count--) {
    const out = new Set(lit.slice(count));
    const elements = circuit.elements.filter(({ id }) => !out.has(id));
    const state = statePower({ elements }, card, power, 1);
    const dimmest = Math.min(...lit.slice(0, count).map((id) => state.lamps[id]?.mA ?? 0));
    if (dimmest >= dimMA && state.load !== 'over-pulse') return count;
  }
  return 1;
}

function secondCell({ circuit, power }: SolvedState, card: Card, mANow: number): Advice[] {
  const elements = circuit.elements.map((element) =>
    element.kind === 'cell' ? { ...element, ohm: element.ohm / 2 } : element,
  );
  const then = statePower({ elements }, card, power, 1);
  const mAThen = Math.min(...Object.values(then.lamps).flatMap((lamp) => (lamp.lit ? [lamp.mA] : [])));
  return mAThen > 1.15 * mANow ? [{ kind: 'second-cell', state: power.name, mANow, mAThen }] : [];
}

/** The state that draws most from the cell without being a short. */
export function greediest(states: readonly SolvedState[]): SolvedState | undefined {
  return states
    .filter(({ power }) => power.load !== 'shorted' && power.load !== 'none')
    .reduce<SolvedState | undefined>(
      (best, state) => (best && best.power.cellMA >= state.power.cellMA ? best : state),
      undefined,
    );
}

/** Balance of every state, worst first kept by the caller. */
export function balances(states: readonly SolvedState[], card: Card): Balance[] {
  return states.flatMap(({ power, circuit }) => balanceOf(power, circuit, card) ?? []);
}
