/** Resistivity of annealed copper at 20 degrees C, ohm m, and its rise per K. @source IEC 60028 (1925) */
export const copperOhmM = 1.7241e-8;
export const copperPerK = 0.00393;

/** Foil of craft tape, mm. 0.035 mm is "1 oz" copper; craft tape is 0.035 to 0.07 mm (common practice, no source). */
export const foilMm = 0.035;

/**
 * Resistance of a length of tape.
 * @param lengthMm along the strip
 * @param widthMm across it
 * @returns ohm
 */
export function tapeOhm(lengthMm: number, widthMm: number, thicknessMm = foilMm, celsius = 20): number {
  const resistivity = copperOhmM * (1 + copperPerK * (celsius - 20)) * 1000;
  return (resistivity * lengthMm) / (widthMm * thicknessMm);
}

/**
 * Resistance of a round copper wire, ohm per metre. @param gauge American wire gauge
 * @source ASTM B258: d = 0.127 mm x 92^((36 - n) / 39)
 */
export function wireOhmPerM(gauge: number): number {
  const diameterMm = 0.127 * 92 ** ((36 - gauge) / 39);
  return (copperOhmM * 1e6) / ((Math.PI / 4) * diameterMm ** 2);
}

/**
 * Current that warms a flat conductor by `risesK`, A. Made for board material: on paper an order of magnitude only.
 * @source IPC-2221: I = k dT^0.44 A^0.725, A in square mil, k = 0.048 in air
 */
export function warmingAmps(widthMm: number, risesK: number, thicknessMm = foilMm): number {
  const squareMil = (widthMm * thicknessMm) / 0.0254 ** 2;
  return 0.048 * risesK ** 0.44 * squareMil ** 0.725;
}
