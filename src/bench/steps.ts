import { lazy, type ComponentType, type LazyExoticComponent } from 'react';
import type { StepName } from './state/types.ts';

export interface Step {
  name: StepName;
  /** Shown as the page; fetched when it is first opened, or before when idle. */
  Face: LazyExoticComponent<ComponentType>;
  /** Whether the step asks for a photograph that is squared up. */
  needsPhoto: boolean;
  /** Off the way from a photograph to the record. */
  beside?: boolean;
}

/** The steps in the order of the work. A further step is one folder and one line here. */
export const steps: Step[] = [
  { name: 'shoot', Face: lazy(() => import('./shoot/Shoot.tsx')), needsPhoto: false },
  { name: 'square', Face: lazy(() => import('./square/Square.tsx')), needsPhoto: true },
  { name: 'copper', Face: lazy(() => import('./copper/Copper.tsx')), needsPhoto: true },
  { name: 'parts', Face: lazy(() => import('./parts/Parts.tsx')), needsPhoto: true },
  { name: 'verdict', Face: lazy(() => import('./verdict/Verdict.tsx')), needsPhoto: true },
  { name: 'plan', Face: lazy(() => import('./plan/Plan.tsx')), needsPhoto: false },
  { name: 'record', Face: lazy(() => import('./record/Record.tsx')), needsPhoto: false },
  {
    name: 'classroom',
    Face: lazy(() => import('./classroom/Classroom.tsx')),
    needsPhoto: false,
    beside: true,
  },
];

/** The way from a photograph to the record; steps beside it (plan, fold) are reached by name. */
export function neighbour(name: StepName, by: 1 | -1): StepName | undefined {
  const step = steps[steps.findIndex((each) => each.name === name) + by];
  return step?.beside ? undefined : step?.name;
}
