import type { Card } from '../card/index.ts';
import type { Net, Netlist } from '../net/index.ts';
import { statesOf } from '../net/states.ts';
import { solveStates } from '../power/index.ts';
import type { PowerOptions, PowerReport } from '../power/index.ts';
import { trace } from '../trace/index.ts';
import type { Traced } from '../trace/index.ts';
import { nets } from './nets.ts';
import { paintPlan } from '../plan/index.ts';

/** A card as drawn, with no photograph: its nets and what they would light. */
export interface AsPlanned {
  netlist: Netlist;
  power: PowerReport;
  /** False where the card has no plan and every part was taken as joined the way its intent says. */
  byPlan: boolean;
}

/** Checks a card's own plan; without one, each lamp is taken as fed straight from the cell through its contact. */
export function asPlanned(card: Card, options: PowerOptions = {}): AsPlanned {
  const byPlan = (card.plan?.strips.length ?? 0) > 0;
  const traced = byPlan ? trace(paintPlan(card, 10)) : noCopper(card);
  const netlist = byPlan ? nets(traced, card).netlist : straightNets(card);
  return { netlist, power: solveStates(netlist, traced, card, options), byPlan };
}

function noCopper(card: Card): Traced {
  const { width_mm: width, height_mm: height } = card.base;
  return {
    width: 0,
    height: 0,
    pxPerMm: 10,
    originMm: [0, 0],
    baseMm: { width, height },
    labels: new Int32Array(0),
    pieces: [],
    necks: [],
    clearances: [],
    crossings: [],
    smallestGapMm: 0,
  };
}

function straightNets(card: Card): Netlist {
  const through = (contact: string) =>
    card.lamps.filter(({ intent }) => typeof intent === 'object' && intent.contact === contact);
  const known = card.contacts.filter(({ id }) => through(id).length > 0);
  const always = card.lamps.filter((lamp) => !known.some(({ id }) => through(id).includes(lamp)));
  const plus = ['cell+', ...card.lamps.map(({ id }) => `${id}+`)];
  const minus = ['cell-', ...always.map(({ id }) => `${id}-`), ...known.map(({ id }) => `${id}b`)];
  const switched = known.map(({ id }) => [`${id}a`, ...through(id).map((lamp) => `${lamp.id}-`)]);
  const made = [plus, minus, ...switched].map((pads, i): Net => ({
    id: `n${i + 1}`,
    pieces: [],
    pads,
    areaMm2: 0,
  }));
  const netOf = Object.fromEntries(made.flatMap(({ id, pads }) => pads.map((pad) => [pad, id])));
  return { nets: made, netOf, states: statesOf(card, made, netOf), findings: [], notSeen: [] };
}
