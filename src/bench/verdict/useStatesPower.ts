import { useEffect, useMemo, useState } from 'react';
import type { PowerReport } from '../../power/index.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';

type Solve = typeof import('../../power/index.ts').solveStates;

/** Which lamps light in which state, and how much they draw; undefined until it is worked out. */
export function useStatesPower(shown: Shown | undefined): PowerReport | undefined {
  const card = useBench((state) => state.card);
  const [solve, setSolve] = useState<{ by: Solve }>();
  useEffect(() => {
    void import('../../power/index.ts').then(({ solveStates }) => setSolve({ by: solveStates }));
  }, []);
  const netlist = shown?.netlist;
  const traced = shown?.traced;
  return useMemo(
    () => (solve && netlist && traced ? solve.by(netlist, traced, card, { depth: 'states' }) : undefined),
    [solve, netlist, traced, card],
  );
}
