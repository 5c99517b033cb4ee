import { components } from './components.ts';

/** Keeps the regions of `score >= low` that hold at least `seeds` pixels of `score >= high`. Result: 1 = kept. */
export function hysteresis(
  score: Uint8Array,
  width: number,
  height: number,
  low: number,
  high: number,
  seeds = 1,
): Uint8Array {
  const weak = new Uint8Array(score.length);
  for (let k = 0; k < score.length; k++) weak[k] = score[k] >= low ? 1 : 0;
  const { labels, count } = components(weak, width, height, 8);
  const strong = new Int32Array(count + 1);
  for (let k = 0; k < score.length; k++) if (score[k] >= high) strong[labels[k]]++;
  for (let k = 0; k < weak.length; k++) weak[k] = weak[k] && strong[labels[k]] >= seeds ? 1 : 0;
  return weak;
}
