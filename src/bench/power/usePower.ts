import { useEffect, useState } from 'react';
import type { PowerReport, PowerWords } from '../../power/index.ts';
import { useBench } from '../state/store.ts';
import { tellTrouble } from '../state/trouble.ts';
import type { Shown } from '../state/types.ts';

/** A tap shows its findings in its own frame; currents follow so much later, the whole answer once the maker rests, ms. */
const currentsMs = 50;
const restMs = 250;

export interface Power {
  /** Currents of every state. */
  report?: PowerReport;
  /** Life, spread, joints and advice, in words. */
  said?: PowerWords;
}

/** Which lamps light in which state at a charge of the cell, and a moment later what to expect of them and what to change. */
export function usePower(shown: Shown | undefined, charge: number): Power {
  const card = useBench((state) => state.card);
  const [power, setPower] = useState<Power>({});
  const netlist = shown?.netlist;
  const traced = shown?.traced;
  useEffect(() => {
    if (!netlist || !traced) return;
    let wanted = true;
    const later = async (ms: number, depth: 'states' | 'full') => {
      await new Promise((resolve) => setTimeout(resolve, ms));
      if (!wanted) return;
      const { solveStates, sayPower } = await import('../../power/index.ts');
      if (!wanted) return;
      const report = solveStates(netlist, traced, card, { charge, depth });
      setPower(depth === 'full' ? { report, said: sayPower(report) } : ({ said }) => ({ report, said }));
    };
    void later(currentsMs, 'states')
      .then(() => later(restMs - currentsMs, 'full'))
      .catch(tellTrouble);
    return () => {
      wanted = false;
    };
  }, [netlist, traced, card, charge]);
  return power;
}
