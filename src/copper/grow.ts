import { squaredDistance } from './distance.ts';

/** The mask and all that lies within `reach` px of it. */
export function grow(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const most = reach * reach;
  const distance = squaredDistance(mask, width, height);
  return mask.map((_, k) => (distance[k] <= most ? 1 : 0));
}
