import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Finding } from '../../net/index.ts';

/** A lamp farther than this from its plan is shifted. */
const SLACK_MM = 1;
const HOLE_REACH_MM = 8;

const middle = (lamp: { plus: Point; minus: Point }): Point => [
  (lamp.plus[0] + lamp.minus[0]) / 2,
  (lamp.plus[1] + lamp.minus[1]) / 2,
];
const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Lamps that sit beside their planned place, or beside the light hole they are to shine through. */
export function shiftedLamps(card: Card): Finding[] {
  const planned = new Map((card.plan?.lamps ?? []).map((lamp) => [lamp.id, middle(lamp)]));
  return card.lamps.flatMap((lamp) => {
    const at = middle(lamp);
    const plan = planned.get(lamp.id);
    const hole = nearestHole(card, plan ?? at);
    const miss = hole ? apart(at, hole.at) : undefined;
    const off = plan ? apart(at, plan) : (miss ?? 0);
    if (off <= SLACK_MM) return [];
    const target = plan ?? hole!.at;
    return [
      {
        kind: 'shifted-lamp' as const,
        at,
        sizeMm: off,
        certainty: 0.9,
        weight: 'holds' as const,
        lamps: [lamp.id],
        nets: [],
        sheet: lamp.on,
        facts: {
          dxMm: at[0] - target[0],
          dyMm: at[1] - target[1],
          ...(hole && { hole: hole.id, holeMissMm: miss!, holeDiameterMm: hole.diameter_mm }),
        },
      },
    ];
  });
}

function nearestHole(card: Card, at: Point) {
  const holes = (card.plan?.holes ?? []).map((hole) => ({ hole, d: apart(hole.at, at) }));
  holes.sort((a, b) => a.d - b.d);
  return holes.length && holes[0].d <= HOLE_REACH_MM ? holes[0].hole : undefined;
}
