import type { CellKind } from '../card/index.ts';

/** A kind of coin cell. */
export interface CellKindData {
  /** mm, greatest. @source IEC 60086-2 sizes as quoted by an encyclopedia */
  diameterMm: number;
  heightMm: number;
  capacityMAh: number;
  /** Greatest recommended continuous and pulse currents, mA. */
  continuousMA: number;
  pulseMA: number;
  /** Internal resistance of a fresh cell, ohm. */
  freshOhm: number;
  chemistry: 'lithium' | 'alkaline';
}

/**
 * CR2032: sizes, capacity, 3 mA continuous, 15 mA pulse and 10-20 ohm fresh are confirmed by several pages. Nominal sizes and
 * capacities of the others are confirmed; their currents and resistances are from memory.
 * @source IEC 60086 (sizes, naming); encyclopedia articles and data sheet summaries (capacity at 15 to 62 kohm to 2.0 V)
 */
export const cellTable: Record<CellKind, CellKindData> = {
  CR2032: cr(20, 3.2, 225, 3, 15, 15),
  CR2025: cr(20, 2.5, 163, 3, 15, 17.5),
  CR2016: cr(20, 1.6, 90, 1, 10, 25),
  CR1620: cr(16, 2, 75, 1, 10, 30),
  CR1225: cr(12.5, 2.5, 50, 1, 5, 45),
  LR44: {
    diameterMm: 11.6,
    heightMm: 5.4,
    capacityMAh: 145,
    continuousMA: 5,
    pulseMA: 25,
    freshOhm: 6,
    chemistry: 'alkaline',
  },
};

function cr(
  diameterMm: number,
  heightMm: number,
  capacityMAh: number,
  continuousMA: number,
  pulseMA: number,
  freshOhm: number,
): CellKindData {
  return { diameterMm, heightMm, capacityMAh, continuousMA, pulseMA, freshOhm, chemistry: 'lithium' };
}

/**
 * Open-circuit voltage and resistance (as a multiple of fresh) by charge left, under load within seconds. An estimate: the fresh
 * point and the bends are confirmed for a CR2032 (flat to two thirds used, then falling; 30 ohm at 170 of 225 mAh), the rest is from memory.
 * An unloaded new lithium cell reads 3.1 to 3.4 V and relaxes to 3.0 V once it is loaded, so 3.0 V it is here.
 */
const curves: Record<
  CellKindData['chemistry'],
  readonly (readonly [charge: number, volt: number, ohms: number])[]
> = {
  lithium: [
    [0, 2.4, 8],
    [0.1, 2.6, 4],
    [0.3, 2.8, 2],
    [0.5, 2.95, 4 / 3],
    [1, 3, 1],
  ],
  alkaline: [
    [0, 0.9, 5],
    [0.1, 1.1, 3],
    [0.3, 1.22, 1.8],
    [0.5, 1.3, 1.4],
    [1, 1.55, 1],
  ],
};

/** Voltage and internal resistance of a cell. @param charge 1 = fresh, 0 = used up */
export function cellAt(kind: CellKind, charge: number): { volt: number; ohm: number } {
  const { chemistry, freshOhm } = cellTable[kind];
  const curve = curves[chemistry];
  const left = Math.min(1, Math.max(0, charge));
  const above = Math.max(
    1,
    curve.findIndex(([at]) => at >= left),
  );
  const [c0, v0, r0] = curve[above - 1] as readonly [number, number, number];
  const [c1, v1, r1] = curve[above] as readonly [number, number, number];
  const t = (left - c0) / (c1 - c0);
  return { volt: v0 + t * (v1 - v0), ohm: freshOhm * (r0 + t * (r1 - r0)) };
}
