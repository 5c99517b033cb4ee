import type { Card } from '../card/index.ts';
import type { Netlist, State } from '../net/index.ts';
import type { Traced } from '../trace/index.ts';
import { cellAt } from './cellTable.ts';
import { sets } from './graph.ts';
import { jointRanges } from './joints.ts';
import { layCircuit, type Joint, type LaidCircuit } from './layCircuit.ts';
import type { Circuit, Element, Resistor } from './types.ts';

const tapePrefix = 'tape ';

/** Whether an element is a run of tape. */
export function isTape(id: string): boolean {
  return id.startsWith(tapePrefix);
}

/** A state as a circuit, and its joints by element id. */
export interface StateCircuit extends Circuit {
  joints: Joint[];
}

/**
 * The circuit of one state of a card.
 * @param state which contacts are closed and which nets are thereby joined
 * @param charge charge left in the cell, 1 = fresh
 */
export function circuitOf(
  netlist: Netlist,
  traced: Traced,
  card: Card,
  state: State,
  charge = card.cell?.charge ?? 1,
): StateCircuit {
  return closeState(layCircuit(netlist, traced, card), card, state, charge);
}

/** Closes a state's contacts on laid copper and presses the cell in. */
export function closeState(laid: LaidCircuit, card: Card, state: State, charge: number): StateCircuit {
  const joints = [...laid.joints, ...contactJoints(laid, state), ...cellJoints(laid, state)];
  const elements: Element[] = [
    ...laid.tape.map(({ a, b, ohm }, i): Resistor => ({
      kind: 'resistor',
      id: `${tapePrefix}${i + 1}`,
      a,
      b,
      ohm,
    })),
    ...joints.map(({ id, a, b, ohm }): Resistor => ({ kind: 'resistor', id, a, b, ohm })),
    ...laid.lamps.map((lamp) => ({ kind: 'lamp' as const, ...lamp })),
  ];
  if (card.cell && state.closed.includes('cell') && laid.padNode.has('cell+') && laid.padNode.has('cell-')) {
    const { volt, ohm } = cellAt(card.cell.kind, charge);
    elements.push({ kind: 'cell', id: 'cell', plus: 'face +', minus: 'face -', volt, ohm });
  }
  return { elements, joints };
}

/** Contacts join their own pads where they lie; what else a state joins is joined at the nets' first pads. */
function contactJoints(laid: LaidCircuit, state: State): Joint[] {
  return state.nodes.flatMap((nets) => {
    if (nets.length < 2) return [];
    const index = new Map(nets.map((net, i) => [net, i]));
    const joined = sets(nets.length);
    const joints: Joint[] = [];
    const { usual: ohm } = jointRanges.contact;
    for (const { id, pads, at } of laid.contacts) {
      if (!state.closed.includes(id)) continue;
      const inside = pads.filter((pad) => index.has(laid.netOf[pad] ?? ''));
      const [first, ...rest] = inside;
      for (const [k, pad] of rest.entries()) {
        const [a, b] = [laid.padNode.get(first as string) ?? '', laid.padNode.get(pad) ?? ''];
        joined.join(
          index.get(laid.netOf[first as string] as string) as number,
          index.get(laid.netOf[pad] as string) as number,
        );
        joints.push({
          id: k === 0 ? `contact ${id}` : `contact ${id}.${k + 1}`,
          kind: 'contact',
          a,
          b,
          ohm,
          ...(at ? { at } : {}),
        });
      }
    }
    nets.slice(1).forEach((net, i) => {
      if (joined.top(0) === joined.top(i + 1)) return;
      joined.join(0, i + 1);
      const [a, b] = [laid.netNode.get(nets[0] as string) ?? '', laid.netNode.get(net) ?? ''];
      joints.push({ id: `join ${nets[0]}-${net}`, kind: 'contact', a, b, ohm });
    });
    return joints;
  });
}

function cellJoints(laid: LaidCircuit, state: State): Joint[] {
  if (!state.closed.includes('cell')) return [];
  return ['+', '-'].flatMap((face): Joint[] => {
    const pad = laid.padNode.get(`cell${face}`);
    if (!pad) return [];
    const { usual: ohm } = jointRanges['cell-face'];
    return [{ id: `cell face ${face}`, kind: 'cell-face', a: `face ${face}`, b: pad, ohm }];
  });
}
