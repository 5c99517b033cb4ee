import { toScreen, type View } from '../surface/view.ts';

/** Where the numbers of proof marks may stand, px: just outside of the sheet's sides. */
export function sheetEdges(view: View, baseMm: { width: number; height: number }) {
  const [left] = toScreen(view, [0, 0]);
  const [right, bottom] = toScreen(view, [baseMm.width, baseMm.height]);
  return { left: Math.max(15, left - 15), right: right + 15, bottom: Math.max(bottom, 120) };
}
