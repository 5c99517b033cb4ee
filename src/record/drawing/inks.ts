import type { LampColour } from '../../card/index.ts';
import { lampLight } from '../../power/lampLight.ts';
import type { Ink } from './types.ts';

const lights = Object.fromEntries(
  Object.entries(lampLight).map(([colour, light]) => [`light ${colour}`, light]),
) as Record<`light ${LampColour}`, string>;

/** Paper, graphite and one copper accent; the same in print and on screen. */
export const inks: Record<Ink, string> = {
  graphite: '#2b2b2e',
  grey: '#77736b',
  faint: '#d9d4c8',
  paper: '#fcfbf7',
  copper: '#a3501f',
  foil: '#d8a27f',
  lamp: '#fff3c4',
  night: '#1b1e20',
  chalk: '#ecebe6',
  ...lights,
};
