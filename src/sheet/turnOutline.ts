import { turnBow } from './bow.ts';
import { turnCorners } from './homography.ts';
import type { Outline } from './types.ts';

/** The same outline with its corners begun `turns` further on, clockwise, and its bow with them. */
export function turnOutline(outline: Outline, turns: number): Outline {
  const { cornersPx, bow } = outline;
  return {
    ...outline,
    cornersPx: turnCorners(cornersPx, turns),
    ...(bow ? { bow: turnBow(bow, turns) } : {}),
  };
}
