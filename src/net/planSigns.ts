import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import { toSegment } from './distance.ts';

type Sign = '+' | '-';

/** Which face of the cell the planned nets lead to. */
export interface PlanSigns {
  ofNet: (net: string) => Sign | undefined;
  /** At a place of the base, where one net's strip is planned. */
  at: (place: Point) => Sign | undefined;
}

/** A net is of one side of the cell where so many times more lamps say so than say the other. */
const mostly = 2;

/** Told by the lamps whose pads lie on the strips as they are planned. */
export function planSigns({ plan, lamps }: Card): PlanSigns {
  const votes = new Map<string, { plus: number; minus: number }>();
  for (const lamp of lamps) {
    for (const side of ['plus', 'minus'] as const) {
      const net = netAt(lamp[side]);
      if (net === undefined) continue;
      const count = votes.get(net) ?? { plus: 0, minus: 0 };
      count[side]++;
      votes.set(net, count);
    }
  }
  const ofNet = (net: string): Sign | undefined => {
    const { plus, minus } = votes.get(net) ?? { plus: 0, minus: 0 };
    if (plus > mostly * minus) return '+';
    return minus > mostly * plus ? '-' : undefined;
  };
  const at = (place: Point): Sign | undefined => {
    const net = netAt(place);
    return net === undefined ? undefined : ofNet(net);
  };
  return { ofNet, at };

  /** The one planned net at a place; undefined where there is none or more than one. */
  function netAt(place: Point): string | undefined {
    const strips = plan?.strips.filter(({ path, width_mm }) =>
      path.some((q, k) => k > 0 && toSegment(place, path[k - 1], q) <= width_mm / 2),
    );
    const [net, ...others] = new Set(strips?.map((strip) => strip.net));
    return others.length > 0 ? undefined : net;
  }
}
