/** Mean change of a grey level between two looks, under which the camera counts as still. Common practice, no source. */
export const steadyBelow = 4;

/**
 * How much two small frames differ.
 * @param before, now RGBA of the same size
 * @returns mean absolute difference of the green channel, 0..255
 */
export function frameChange(before: Uint8ClampedArray, now: Uint8ClampedArray): number {
  let sum = 0;
  for (let k = 1; k < now.length; k += 4) sum += Math.abs(now[k] - before[k]);
  return (4 * sum) / now.length;
}
