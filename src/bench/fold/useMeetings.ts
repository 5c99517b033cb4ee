import { useEffect, useState } from 'react';
import type { Card } from '../../card/schema.ts';
import type { FlapMeeting, Tolerance } from '../../parts/index.ts';
import type { Traced } from '../../trace/index.ts';

export interface Meetings {
  meetings: FlapMeeting[];
  tolerances: Tolerance[];
}

/** How each flap's copper lands, worked out when the page rests; undefined until then. */
export function useMeetings(traced: Traced, card: Card): Meetings | undefined {
  const [found, setFound] = useState<Meetings>();
  useEffect(() => {
    let wanted = true;
    const timer = setTimeout(async () => {
      const { attach, foldTolerance } = await import('../../parts/index.ts');
      if (!wanted) return;
      const { meetings } = attach(traced, card);
      setFound({ meetings, tolerances: foldTolerance(traced, card, meetings) });
    }, 50);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [traced, card]);
  return found;
}
