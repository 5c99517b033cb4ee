/**
 * The place of an open or a short: the pixel of the difference where the way to the one side and the way to the other
 * are together least; for the rest the pixel nearest the middle.
 */
export function faultPoint(
  pixels: number[],
  width: number,
  sides?: [number[], number[]],
): { x: number; y: number } {
  const xOf = (i: number) => i % width;
  const yOf = (i: number) => Math.floor(i / width);
  const cost = sides
    ? (i: number) => wayTo(i, sides[0], width) + wayTo(i, sides[1], width)
    : wayToMiddle(pixels, width);
  let best = pixels[0];
  let least = Infinity;
  for (const i of pixels) {
    const c = cost(i);
    if (c < least) [least, best] = [c, i];
  }
  return { x: xOf(best), y: yOf(best) };
}

function wayTo(from: number, side: number[], width: number): number {
  const x = from % width;
  const y = (from - x) / width;
  let least = Infinity;
  for (const i of side) {
    const dx = (i % width) - x;
    const dy = Math.floor(i / width) - y;
    least = Math.min(least, dx * dx + dy * dy);
  }
  return Math.sqrt(least);
}

function wayToMiddle(pixels: number[], width: number): (i: number) => number {
  const mx = pixels.reduce((sum, i) => sum + (i % width), 0) / pixels.length;
  const my = pixels.reduce((sum, i) => sum + Math.floor(i / width), 0) / pixels.length;
  return (i) => Math.hypot((i % width) - mx, Math.floor(i / width) - my);
}
