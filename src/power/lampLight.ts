import type { LampColour } from '../card/index.ts';

/** The light of each lamp colour on a dark ground, sRGB (by eye, no source). */
export const lampLight: Record<LampColour, string> = {
  red: '#ff4a3d',
  orange: '#ff7f33',
  amber: '#ffa528',
  yellow: '#ffd23a',
  'yellow-green': '#bfe043',
  green: '#3fe08a',
  blue: '#5a8dff',
  white: '#f3f7ff',
  'warm-white': '#ffe2ad',
  pink: '#ff9ec8',
  uv: '#a88bff',
};

/** Radius and opacity of the two halos round a lamp, beside a body of radius 5. @param glow 0..1 */
export function halosOf(glow: number): { radius: number; opacity: number }[] {
  return [
    { radius: 8 + 10 * glow, opacity: 0.12 + 0.3 * glow },
    { radius: 5 + 6 * glow, opacity: 0.2 + 0.5 * glow },
  ];
}
