import { useEffect, useState } from 'react';
import type { PowerReport } from '../../power/index.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { tellTrouble } from '../state/trouble.ts';

/**
 * Which lamps light in which state, and how much they draw; undefined until it is worked out. It follows the findings a
 * moment later, so that a tap shows its findings in its own frame.
 */
export function useStatesPower(shown: Shown | undefined): PowerReport | undefined {
  const card = useBench((state) => state.card);
  const [report, setReport] = useState<PowerReport>();
  const netlist = shown?.netlist;
  const traced = shown?.traced;
  useEffect(() => {
    if (!netlist || !traced) return;
    let wanted = true;
    const timer = setTimeout(() => {
      import('../../power/index.ts')
        .then(({ solveStates }) => {
          if (wanted) setReport(solveStates(netlist, traced, card, { depth: 'states' }));
        })
        .catch(tellTrouble);
    }, 50);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [netlist, traced, card]);
  return report;
}
