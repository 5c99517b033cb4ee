/** A value, and how much it counts. */
export interface Weighed {
  value: number;
  weight: number;
}

/** The median of weighed values, with the quartiles and the weight of all; undefined where nothing weighs. */
export function middleBy(
  values: readonly Weighed[],
): { lower: number; middle: number; upper: number; weight: number } | undefined {
  const sorted = values.filter(({ weight }) => weight > 0).sort((a, b) => a.value - b.value);
  const weight = sorted.reduce((sum, v) => sum + v.weight, 0);
  if (weight === 0) return undefined;
  const at = (share: number) => {
    let sum = 0;
    return (sorted.find((v) => (sum += v.weight) >= share * weight) ?? sorted[sorted.length - 1]).value;
  };
  return { lower: at(0.25), middle: at(0.5), upper: at(0.75), weight };
}
