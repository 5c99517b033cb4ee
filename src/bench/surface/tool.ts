import type { Point } from '../../geometry/index.ts';

/** What a drag does once it has taken hold of something. */
export interface Grip {
  move(to: Point): void;
  end(): void;
  /** Drops it without a trace. */
  cancel?(): void;
}

/** What a tap, a click or a key on the surface means in a step. Places come in the content's unit. */
export interface Tool {
  tap?(at: Point): void;
  /** Takes hold of what lies at a place; without a grip the drag shifts the picture. @param reach within which a finger hits */
  grab?(at: Point, reach: number): Grip | undefined;
}
