import type { Point } from '../geometry/index.ts';

/** Copper as seen on a squared sheet; same size and frame as the sheet. All arrays row-major, width*height. */
export interface CopperMask {
  width: number;
  height: number;
  pxPerMm: number;
  originMm: Point;
  baseMm: { width: number; height: number };
  /** 1 = copper after glare has been bridged: the best single answer. Touch-up strokes are in it. */
  filled: Uint8Array;
  /** 1 = copper before bridging: only what looks like copper by itself. */
  strict: Uint8Array;
  /** Likelihood of copper, 0..255. */
  likelihood: Uint8Array;
  /** 0..1: how well this photograph could be read at all. Below 0.5 the check says that it cannot and why. */
  readable: number;
  /** Reasons for a low `readable`. */
  troubles: Trouble[];
  /** Chance of a lamp's body, 0..255; absent where no net saw the sheet. */
  lamp?: Uint8Array;
  /** Which segmenter gave it. */
  by: 'classical' | 'learned' | 'given';
  /** Cuts that the picture shows right across a strip; what the nets ran over is opened there. */
  cuts?: readonly SeenCut[];
  /** Places at which the maker has said that copper runs on. */
  sound?: readonly SoundPlace[];
}

/** Where copper runs on by the maker's word: round a place, along a unit vector and across it. */
export interface SoundPlace {
  /** mm. */
  at: Point;
  along: Point;
  /** How far that holds to both sides, along and across, mm. */
  alongMm: number;
  acrossMm: number;
}

/** A straight cut across a strip. */
export interface SeenCut {
  /** Its middle, mm. */
  at: Point;
  widthMm: number;
  /** Unit vector along the strip there, and the strip's own width, mm. */
  along: Point;
  stripMm: number;
  /** Chance that it is one, 0..1. */
  sure: number;
}

/** What the trained net says of each pixel of the sheet: chances 0..255, row-major, width*height. */
export interface LearnedMap {
  copper: Uint8Array;
  lamp: Uint8Array;
  cell: Uint8Array;
}

/** Why a photograph reads badly; keys of words/copper.ts. */
export type Trouble =
  'burnt-out' | 'too-dark' | 'odd-shapes' | 'doubtful' | 'disagree' | 'no-copper' | 'no-nets';
