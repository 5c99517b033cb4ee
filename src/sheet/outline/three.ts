/** Least, second least and mean of what the four sides of a figure have. */
export function three(sides: readonly number[]): [number, number, number] {
  const [a, b, c, d] = [...sides].sort((p, q) => p - q);
  return [a, b, (a + b + c + d) / 4];
}
