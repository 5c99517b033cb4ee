import type { Card, PlanStrip } from '../../card/index.ts';
import type { OpenCrossing } from '../../plan/index.ts';
import { editCard } from '../state/editCard.ts';

type Plan = NonNullable<Card['plan']>;

const emptyPlan: Plan = { strips: [], holes: [], foam: [] };

function editPlan(edit: (plan: Plan) => Plan): void {
  editCard((card) => ({ ...card, plan: edit(card.plan ?? emptyPlan) }));
}

export function setStrips(strips: PlanStrip[]): void {
  editPlan((plan) => ({ ...plan, strips }));
}

/** Adds a strip under the next free name. */
export function addStrip(strip: Omit<PlanStrip, 'id' | 'on'>): void {
  editPlan((plan) => {
    const names = new Set(plan.strips.map(({ id }) => id));
    let n = plan.strips.length + 1;
    while (names.has(`S${n}`)) n++;
    return { ...plan, strips: [...plan.strips, { ...strip, id: `S${n}`, on: 'base' }] };
  });
}

export function removeStrip(id: string): void {
  editPlan((plan) => ({ ...plan, strips: plan.strips.filter((strip) => strip.id !== id) }));
}

/** Lays the proposed patch over a crossing. */
export function layPatch({ patch }: OpenCrossing): void {
  editCard((card) => {
    let n = card.patches.length + 1;
    while (card.patches.some(({ id }) => id === `K${n}`)) n++;
    const outline = patch.map(([x, y]): [number, number] => [x, y]);
    return { ...card, patches: [...card.patches, { id: `K${n}`, outline, strips: [], beneath: [] }] };
  });
}
