import { useEffect, useState } from 'react';
import type { Card } from '../../card/index.ts';
import type { PlanChecks } from '../../plan/index.ts';
import { useBench } from '../state/store.ts';
import { tellTrouble } from '../state/trouble.ts';
import { call } from '../worker/client.ts';

/** Time from the last change to the check, ms. */
const restMs = 120;

/** What the checker says of the plan as drawn, a moment after every change; the last answer stands meanwhile. */
export function usePlanChecks(): { checks: PlanChecks | undefined; checking: boolean } {
  const card = useBench((state) => state.card);
  const [checks, setChecks] = useState<PlanChecks>();
  const [checking, setChecking] = useState(false);
  const { base, lamps, cell, contacts, flaps, patches, joins, limits, plan } = card;
  useEffect(() => {
    if (!plan?.strips.length) return setChecks(undefined);
    let wanted = true;
    setChecking(true);
    const timer = setTimeout(() => {
      call('planChecks', { card: withoutPictures(card) })
        .then((answer) => wanted && setChecks(answer))
        .catch(tellTrouble)
        .finally(() => wanted && setChecking(false));
    }, restMs);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
    // Only what the check looks at: a shifted artwork asks for nothing.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [base, lamps, cell, contacts, flaps, patches, joins, limits, plan]);
  return { checks, checking };
}

/** Pictures within the card are not needed by the worker. */
export function withoutPictures(card: Card): Card {
  return { ...card, photos: [] };
}
