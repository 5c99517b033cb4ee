/** One choice: the features of each alternative, and which of them are right. */
export interface Choice {
  features: number[][];
  right: boolean[];
}

/** One event: its features, and whether it came true. */
export interface Event {
  features: number[];
  right: boolean;
}

const rounds = 3000;

/**
 * Weights of a conditional logit: in each choice the right alternatives together are to have the greatest share of
 * the exponentials. Choices without a right alternative say nothing.
 * @param ridge penalty on the square of each weight
 * @source D. McFadden, Conditional logit analysis of qualitative choice behavior, 1974
 */
export function conditionalLogit(choices: Choice[], ridge: number): number[] {
  const told = choices.filter(({ right }) => right.some(Boolean));
  const size = told[0].features[0].length;
  return descend(size, (weights, gradient) => {
    for (const { features, right } of told) {
      const scores = features.map((f) => dot(f, weights));
      const top = Math.max(...scores);
      const shares = scores.map((s) => Math.exp(s - top));
      const all = sum(shares);
      const good = sum(shares.filter((_, i) => right[i]));
      features.forEach((f, i) => {
        const pull = shares[i] / all - (right[i] ? shares[i] / good : 0);
        for (let k = 0; k < size; k++) gradient[k] += (pull * f[k]) / told.length;
      });
    }
    for (let k = 0; k < size; k++) gradient[k] += ridge * weights[k];
  });
}

/**
 * Weights of a logistic regression, the offset last.
 * @param costOfFalse how much more a wrong one weighs than a right one
 */
export function logistic(events: Event[], ridge: number, costOfFalse: number): number[] {
  const size = events[0].features.length;
  return descend(size + 1, (weights, gradient) => {
    for (const { features, right } of events) {
      const p = 1 / (1 + Math.exp(-dot(features, weights) - weights[size]));
      const pull = (right ? p - 1 : costOfFalse * p) / events.length;
      for (let k = 0; k < size; k++) gradient[k] += pull * features[k];
      gradient[size] += pull;
    }
    for (let k = 0; k < size; k++) gradient[k] += ridge * weights[k];
  });
}

/** @source D. P. Kingma, J. Ba, Adam: a method for stochastic optimization, 2015 */
function descend(size: number, addGradient: (weights: number[], gradient: number[]) => void): number[] {
  const weights = new Array<number>(size).fill(0);
  const mean = new Array<number>(size).fill(0);
  const square = new Array<number>(size).fill(0);
  for (let t = 1; t <= rounds; t++) {
    const gradient = new Array<number>(size).fill(0);
    addGradient(weights, gradient);
    const step = 0.05 * (1 - t / (rounds + 1));
    for (let k = 0; k < size; k++) {
      mean[k] = 0.9 * mean[k] + 0.1 * gradient[k];
      square[k] = 0.999 * square[k] + 0.001 * gradient[k] ** 2;
      weights[k] -= (step * (mean[k] / (1 - 0.9 ** t))) / (Math.sqrt(square[k] / (1 - 0.999 ** t)) + 1e-9);
    }
  }
  return weights;
}

const dot = (a: number[], b: number[]) => a.reduce((s, v, i) => s + v * b[i], 0);
const sum = (v: number[]) => v.reduce((s, x) => s + x, 0);
