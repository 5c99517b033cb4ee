import type { Card } from '../../card/index.ts';
import type { Point, Quad } from '../../geometry/index.ts';
import { applyHomography, homographyFromQuad, invertHomography } from '../../sheet/index.ts';

/**
 * The front's artwork under the plan. Its place is told as for any photograph: by the four corners of the base in the
 * picture's own pixels, which may lie outside of the picture.
 */
export type ArtworkCorners = Quad;

type Size = { width: number; height: number };
type BaseMm = Size;

export const baseSize = ({ base }: Pick<Card, 'base'>): BaseMm => ({
  width: base.width_mm,
  height: base.height_mm,
});

/** A picture as large as the base allows, in its middle, upright. */
export function fitArtwork(picture: { width: number; height: number }, base: BaseMm): ArtworkCorners {
  const pxPerMm = Math.max(picture.width / base.width, picture.height / base.height);
  const x = (picture.width - base.width * pxPerMm) / 2;
  const y = (picture.height - base.height * pxPerMm) / 2;
  return moved(base, (p) => [x + p[0] * pxPerMm, y + p[1] * pxPerMm]);
}

/** Place of the picture's pixel under a place of the base. */
export function artworkPixel(corners: ArtworkCorners, base: BaseMm, at: Point): Point {
  return applyHomography(homographyFromQuad(corners, base), at);
}

/** The picture shifted by so many mm on the base. */
export function shiftArtwork(corners: ArtworkCorners, base: BaseMm, [dx, dy]: Point): ArtworkCorners {
  return moved(base, ([x, y]) => artworkPixel(corners, base, [x - dx, y - dy]));
}

/**
 * The picture scaled about the first of two places until they lie so far apart as measured.
 * @param a first place as it lies on the base now, mm; b second
 * @param apartMm their true distance
 * @returns undefined where the two places are one
 */
export function scaleArtwork(
  corners: ArtworkCorners,
  base: BaseMm,
  a: Point,
  b: Point,
  apartMm: number,
): ArtworkCorners | undefined {
  const now = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (now < 0.5 || apartMm <= 0) return undefined;
  const shrink = now / apartMm;
  return moved(base, ([x, y]) =>
    artworkPixel(corners, base, [a[0] + (x - a[0]) * shrink, a[1] + (y - a[1]) * shrink]),
  );
}

/**
 * The picture laid by the front's own corners: each is tapped where it lies now and comes to the base's corner.
 * @param taps top-left, top-right, bottom-right, bottom-left
 */
export function layArtwork(corners: ArtworkCorners, base: BaseMm, taps: Quad): ArtworkCorners {
  return taps.map((tap) => artworkPixel(corners, base, tap)) as unknown as ArtworkCorners;
}

/** Where the picture's own corners lie on the base, mm: top-left, top-right, bottom-right, bottom-left. */
export function artworkEdges(corners: ArtworkCorners, base: BaseMm, picture: Size): Quad {
  const toBase = invertHomography(homographyFromQuad(corners, base));
  return moved(picture, (p) => applyHomography(toBase, p));
}

/**
 * The picture drawn out by one of its corners, the other three staying where they lie.
 * @param k which: 0 top-left, 1 top-right, 2 bottom-right, 3 bottom-left
 * @param to its new place on the base, mm
 * @returns undefined where the picture would be folded over
 */
export function pullArtwork(
  corners: ArtworkCorners,
  base: BaseMm,
  picture: Size,
  k: number,
  to: Point,
): ArtworkCorners | undefined {
  const edges = artworkEdges(corners, base, picture).map((p, i) => (i === k ? to : p)) as unknown as Quad;
  if (!isConvex(edges)) return undefined;
  const toPicture = invertHomography(homographyFromQuad(edges, picture));
  return moved(base, (p) => applyHomography(toPicture, p));
}

function isConvex(quad: Quad): boolean {
  return quad.every((b, k) => {
    const [a, c] = [quad[(k + 3) % 4], quad[(k + 1) % 4]];
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]) > 1;
  });
}

/** Picture px to base mm, as a CSS matrix3d takes it (column by column), scaled by px a mm and shifted on the screen. */
export function artworkMatrix(corners: ArtworkCorners, base: BaseMm, scale: number, [x, y]: Point): number[] {
  const [a, b, c, d, e, f, g, h, i] = invertHomography(homographyFromQuad(corners, base));
  const row = (p: number, q: number, shift: number) => scale * p + shift * q;
  return [
    [row(a, g, x), row(d, g, y), 0, g],
    [row(b, h, x), row(e, h, y), 0, h],
    [0, 0, 1, 0],
    [row(c, i, x), row(f, i, y), 0, i],
  ].flat();
}

function moved({ width, height }: BaseMm, to: (place: Point) => Point): ArtworkCorners {
  return [to([0, 0]), to([width, 0]), to([width, height]), to([0, height])];
}
