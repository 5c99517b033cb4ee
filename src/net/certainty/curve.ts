/**
 * A finding's evidence, 0..1, becomes its certainty by a straight line in log-odds: logit(certainty) = shift + slope *
 * logit(evidence). It rises with the evidence as the slope is never negative.
 * @source J. Platt, "Probabilistic Outputs for Support Vector Machines" (1999)
 */
export interface Curve {
  shift: number;
  slope: number;
}

/** Nothing is surer than this, nor less sure than one less this. */
const most = 0.99;

export function certaintyBy({ shift, slope }: Curve, evidence: number): number {
  const chance = 1 / (1 + Math.exp(-shift - slope * logOdds(evidence)));
  return Math.min(most, Math.max(1 - most, chance));
}

export function logOdds(chance: number): number {
  const within = Math.min(most, Math.max(1 - most, chance));
  return Math.log(within / (1 - within));
}
