import type { TouchUp } from '../card/index.ts';
import { paintStroke, repaint, strokeBox } from '../copper/index.ts';
import { verdictOf } from '../net/index.ts';
import { solveStates } from '../power/index.ts';
import { retrace } from '../trace/index.ts';
import { nets } from './nets.ts';
import { cardWithSheets } from './sheets/index.ts';
import type { Checked } from './types.ts';

/**
 * One more brush stroke: only the pieces that it touches are traced anew. The mask and the trace of `before` are
 * taken over and changed in place, so `before` must not be used any more; the stroke joins the card's own.
 */
export function brush(before: Checked, stroke: TouchUp): Checked {
  const mask = before.mask === before.seen ? copyOf(before.mask) : before.mask;
  const dirty = paintStroke(mask, stroke);
  const touch_up = [...before.card.touch_up, stroke];
  return traceAgain({ ...before, mask }, { ...before.card, touch_up }, dirty);
}

/** Takes the last brush stroke back, in the same way. */
export function unbrush(before: Checked): Checked {
  const touch_up = before.card.touch_up.slice(0, -1);
  const last = before.card.touch_up[touch_up.length];
  if (!last) return before;
  const dirty = strokeBox(last);
  repaint(before.mask, before.seen, dirty, touch_up);
  return traceAgain(before, { ...before.card, touch_up }, dirty);
}

function traceAgain(before: Checked, card: Checked['card'], dirty: ReturnType<typeof strokeBox>): Checked {
  const traced = retrace(before.traced, before.mask, dirty);
  const { netlist, compared } = nets(traced, card, before.joined);
  const power = solveStates(netlist, traced, cardWithSheets(card, before.joined?.beneath), {
    depth: 'states',
  });
  return { ...before, card, traced, netlist, compared, power, verdict: verdictOf(netlist.findings) };
}

function copyOf(mask: Checked['mask']): Checked['mask'] {
  return {
    ...mask,
    filled: mask.filled.slice(),
    strict: mask.strict.slice(),
    likelihood: mask.likelihood.slice(),
  };
}
