import type { Band, LampPower } from './types.ts';

/**
 * Upper limits of each band, mA. A lamp at 0.2 mA is a good indicator indoors, at 1.8 uA it is just seen by looking into it.
 * @source bench accounts on public forums and blogs for single points; the bands themselves are common practice, no source
 */
const limits: readonly (readonly [number, Band])[] = [
  [0.01, 'off'],
  [0.1, 'faint'],
  [0.5, 'dim'],
  [5, 'good'],
  [20, 'bright'],
  [Infinity, 'over'],
];

export const darkMA = 0.1;
export const dimMA = 0.5;

/** What a current looks like. */
export function lampPower(mA: number): LampPower {
  const band = limits.find(([limit]) => mA < limit)?.[1] ?? 'over';
  const look = mA < darkMA ? 'dark' : mA < dimMA ? 'dim' : 'lit';
  return { mA, band, look, lit: look !== 'dark', glow: glowOf(mA) };
}

/** The eye compresses: half the current looks about three quarters as bright. @source Stevens' power law, exponent 0.33 to 0.5 */
function glowOf(mA: number): number {
  return Math.min(1, (Math.max(0, mA) / 10) ** 0.4);
}
