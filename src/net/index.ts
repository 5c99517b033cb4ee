export type { Finding, LampState, Net, Netlist, State, Weight } from './types.ts';
