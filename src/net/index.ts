export { certain, certaintyBy, classOf, logOdds, type Curve } from './certainty/index.ts';
export { buildNetlist } from './buildNetlist.ts';
export { standings, type Standing } from './flow.ts';
export { ranked } from './ranked.ts';
export type { Finding, LampState, Net, Netlist, State, Weight } from './types.ts';
export { holds, verdictOf, type Verdict } from './verdict.ts';
