import type { Point } from '../geometry/index.ts';
import { lampSees, type Traced } from '../trace/index.ts';

/** A tap on a pad may be off by so much, mm. */
const tapMm = 0.5;
/** Steps along a line, mm. */
const stepMm = 0.05;
/** Of the way to copper that a body hides so much is body; its shade and its pale rim are the rest. */
const mostlyBody = 0.6;

/** Whether the picture shows a lamp's body at a pad. */
export function liesOnBody(traced: Traced, at: Point): boolean {
  const off = [-tapMm, 0, tapMm];
  return off.some((dx) => off.some((dy) => lookAt(traced, [at[0] + dx, at[1] + dy]) === lampSees.body));
}

/** The longest stretch of bare paper on a straight way, mm. */
export function barePaperMm(traced: Traced, from: Point, to: Point): number {
  let [longest, run] = [0, 0];
  for (const look of looksAlong(traced, from, to)) {
    run = look === lampSees.paper ? run + stepMm : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}

/** Whether a straight way runs beneath a lamp's body, with no paper bare on it. */
export function isUnderBody(traced: Traced, from: Point, to: Point): boolean {
  const looks = looksAlong(traced, from, to);
  const share = (of: number): number =>
    looks.filter((look) => look === of).length / Math.max(1, looks.length);
  return share(lampSees.body) >= mostlyBody && barePaperMm(traced, from, to) < 2 * stepMm;
}

function looksAlong(traced: Traced, from: Point, to: Point): number[] {
  const steps = Math.floor(Math.hypot(to[0] - from[0], to[1] - from[1]) / stepMm);
  return Array.from({ length: steps }, (_, n) => {
    const u = (n + 0.5) / steps;
    return lookAt(traced, [from[0] + u * (to[0] - from[0]), from[1] + u * (to[1] - from[1])]);
  });
}

function lookAt({ lampLook, width, height, pxPerMm, originMm }: Traced, [x, y]: Point): number {
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  return lampLook && i >= 0 && j >= 0 && i < width && j < height ? lampLook[j * width + i] : 0;
}
