import { leak } from './diode.ts';
import type { Graph } from './graph.ts';
import type { Element } from './types.ts';
import { wrightOmega } from './wrightOmega.ts';

/**
 * A graph's open elements as plain arrays, for the inner loop. A resistor or cell carries (V - volt) / ohm; a lamp its curve.
 * All arrays have one entry an element.
 */
export interface Compiled {
  nodes: number;
  a: Int32Array;
  b: Int32Array;
  lamp: Uint8Array;
  /** 1/ohm of a resistor or cell; a/R of a lamp. */
  scale: Float64Array;
  /** Open-circuit voltage of a cell, 0 of a resistor; a of a lamp. */
  volt: Float64Array;
  /** Lamps only: whole series resistance; Is; (Is R)/a + ln(Is R/a). */
  ohm: Float64Array;
  saturation: Float64Array;
  offset: Float64Array;
}

/** @param elements in the graph's order of open elements; their values may differ from the graph's own */
export function compile({ nodes, open }: Graph, elements: readonly Element[]): Compiled {
  const count = open.length;
  const column = () => new Float64Array(count);
  const compiled: Compiled = {
    nodes,
    a: Int32Array.from(open, ({ a }) => a),
    b: Int32Array.from(open, ({ b }) => b),
    lamp: new Uint8Array(count),
    scale: column(),
    volt: column(),
    ohm: column(),
    saturation: column(),
    offset: column(),
  };
  elements.forEach((element, i) => setElement(compiled, i, element));
  return compiled;
}

function setElement(to: Compiled, i: number, element: Element): void {
  if (element.kind !== 'lamp') {
    to.scale[i] = 1 / element.ohm;
    to.volt[i] = element.kind === 'cell' ? element.volt : 0;
    return;
  }
  const { saturationA, slopeV, ohm: chip } = element.diode;
  const ohm = chip + element.seriesOhm;
  const bend = (saturationA * ohm) / slopeV;
  to.lamp[i] = 1;
  to.scale[i] = slopeV / ohm;
  to.volt[i] = slopeV;
  to.ohm[i] = ohm;
  to.saturation[i] = saturationA;
  to.offset[i] = bend + Math.log(bend);
}

/** Currents, slopes and what stays unbalanced at each node at given potentials. */
export interface Linearised {
  /** Current from a to b through each element, A. */
  amps: Float64Array;
  /** Slope of each element, S. */
  siemens: Float64Array;
  /** Current still unbalanced into each node, A. */
  inflow: Float64Array;
}

/** Every element at given node potentials, V. */
export function linearise(net: Compiled, volts: Float64Array): Linearised {
  const { a, b, lamp, scale, volt, ohm, saturation, offset } = net;
  const count = a.length;
  const amps = new Float64Array(count);
  const siemens = new Float64Array(count);
  const inflow = new Float64Array(net.nodes);
  for (let i = 0; i < count; i++) {
    const [from, to] = [a[i] as number, b[i] as number];
    const across = (volts[from] as number) - (volts[to] as number);
    let flow: number;
    if (lamp[i]) {
      const y = wrightOmega(across / (volt[i] as number) + (offset[i] as number));
      flow = (scale[i] as number) * y - (saturation[i] as number) + leak * across;
      siemens[i] = y / ((ohm[i] as number) * (1 + y)) + leak;
    } else {
      flow = (across - (volt[i] as number)) * (scale[i] as number);
      siemens[i] = scale[i] as number;
    }
    amps[i] = flow;
    inflow[from] = (inflow[from] as number) - flow;
    inflow[to] = (inflow[to] as number) + flow;
  }
  return { amps, siemens, inflow };
}
