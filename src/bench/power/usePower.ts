import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import type { PowerReport, PowerWords } from '../../power/index.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';

type Power = typeof import('../../power/index.ts');

/** The whole answer waits this long after the last change, ms: it takes longer than a frame. */
const restMs = 200;

/** Currents of every state at a charge of the cell, at once; life, spread and advice in words a moment later. */
export function usePower(shown: Shown, charge: number): { report?: PowerReport; full?: PowerWords } {
  const card = useDeferredValue(useBench((state) => state.card));
  const [power, setPower] = useState<Power>();
  const [full, setFull] = useState<PowerWords>();
  useEffect(() => {
    void import('../../power/index.ts').then((loaded) => setPower(() => loaded));
  }, []);
  // A tap shows its findings in its own frame; the currents follow in the next.
  const { netlist, traced } = useDeferredValue(shown);
  const report = useMemo(
    () => power?.solveStates(netlist, traced, card, { charge, depth: 'states' }),
    [power, netlist, traced, card, charge],
  );
  useEffect(() => {
    if (!power) return;
    const timer = setTimeout(
      () => setFull(power.sayPower(power.solveStates(netlist, traced, card, { charge, depth: 'full' }))),
      restMs,
    );
    return () => clearTimeout(timer);
  }, [power, netlist, traced, card, charge]);
  return { report, full };
}
