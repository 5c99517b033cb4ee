import type { Card } from '../card/index.ts';
import { fuseShots } from '../copper/index.ts';
import type { Photo } from '../photo/index.ts';
import type { Outline, SquaredSheet } from '../sheet/index.ts';
import type { CheckOptions } from './options.ts';
import { place } from './place.ts';

/** What became of a further shot of the sheet. */
export interface ShotFate {
  name: string;
  /** Whether it is in the sheet that was looked at. */
  used: boolean;
  /** Why not: its base was not made out for certain, or it does not fit over the first. */
  why?: 'outline' | 'misfit';
  /** How far it had to be moved over the first at most, and how well it then fitted, mm. */
  movedMm: number;
  misfitMm: number;
}

/** A further shot whose own outline is less sure than this is left out. */
const sureOutline = 0.5;

/**
 * Squares up a photograph and further shots of the same sheet, and makes one sheet of them: glare moves from shot to
 * shot, gaps stay. Places in the result map back to the first photograph.
 * @param again further shots, each with its own corners, found by itself
 */
export async function placeShots(
  photo: Photo,
  again: readonly Photo[],
  card: Card,
  options: CheckOptions,
): Promise<{ outline: Outline; sheet: SquaredSheet; shots: ShotFate[] }> {
  const first = await place(photo, card, options);
  if (again.length === 0) return { ...first, shots: [] };
  const { corners_px: _ofTheFirst, ...free } = card;
  const placed: { name: string; sheet?: SquaredSheet }[] = [];
  for (const shot of again) {
    const { outline, sheet } = await place(shot, free, { ...options, outline: undefined });
    placed.push({ name: shot.name, sheet: outline.certainty >= sureOutline ? sheet : undefined });
  }
  const sure = placed.flatMap(({ sheet }) => sheet ?? []);
  const fused = fuseShots([first.sheet, ...sure]);
  const fates = fused.shots.slice(1).values();
  const shots = placed.map(({ name, sheet }) => fateOf(name, sheet && fates.next().value));
  return { outline: first.outline, sheet: fused.sheet, shots };
}

function fateOf(name: string, fused: Omit<ShotFate, 'name' | 'why'> | undefined): ShotFate {
  if (!fused) return { name, used: false, why: 'outline', movedMm: 0, misfitMm: Infinity };
  return fused.used ? { name, ...fused } : { name, ...fused, why: 'misfit' };
}
