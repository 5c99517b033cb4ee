import type { Traced } from '../../src/trace/index.ts';
import type { Build } from '../generate/build.ts';
import { gridPxPerMm, lay, patchOwner } from '../generate/lay.ts';
import { traceMask } from './drawnSheet.ts';

/** Half length along and half width of a lamp's body, mm: it hides the copper under it. */
const body = { along: 4.4, across: 1.9 };

/** A build of the demo card as its copper shows from above: lamp bodies and a cell that is in hide what they cover. */
export function traceBuild(build: Build, seed = 1): Traced {
  const { owner, width, height } = lay(build, 0, seed);
  const step = gridPxPerMm / 10;
  const size = { width: width / step, height: height / step };
  const filled = new Uint8Array(size.width * size.height);
  for (let j = 0; j < size.height; j++) {
    for (let i = 0; i < size.width; i++) {
      const at = owner[j * step * width + i * step];
      const shows = at > 0 && at !== patchOwner && !covered(build, (i + 0.5) / 10, (j + 0.5) / 10);
      filled[j * size.width + i] = shows ? 1 : 0;
    }
  }
  const baseMm = { width: build.base.width_mm, height: build.base.height_mm };
  return traceMask(filled, { ...size, marginMm: 0, baseMm });
}

function covered({ lamps, cell }: Build, x: number, y: number): boolean {
  if (cell.present && Math.hypot(x - cell.at[0], y - cell.at[1]) < 10) return true;
  return lamps.some(({ at, axis }) => {
    const [dx, dy] = [x - at[0], y - at[1]];
    const along = Math.abs(dx * axis[0] + dy * axis[1]);
    const across = Math.abs(dy * axis[0] - dx * axis[1]);
    return along < body.along && across < body.across;
  });
}
