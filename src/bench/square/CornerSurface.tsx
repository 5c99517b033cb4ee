import type { Quad } from '../../geometry/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { usePhotoUrl } from '../page/usePhotoUrl.ts';
import type { Shot } from '../state/types.ts';
import { BaseFrame } from './BaseFrame.tsx';
import { layCorners } from './edits.ts';
import { HandleSurface } from './HandleSurface.tsx';

/** The photograph with the base's corners. */
export function CornerSurface({ shot, corners }: { shot: Shot; corners: Quad }) {
  const url = usePhotoUrl();
  return (
    <HandleSurface
      label={words.square.photoLabel}
      url={url}
      size={shot}
      points={corners}
      names={words.square.corners}
      lay={(points) => layCorners(points as unknown as Quad)}
      marks={(points, view) => <BaseFrame corners={points} view={view} />}
    />
  );
}
