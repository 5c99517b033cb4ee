import { useMemo } from 'react';
import type { CardPhoto } from '../../card/index.ts';
import type { Point, Quad, Segment } from '../../geometry/index.ts';
import { applyHomography, homographyFromQuad, invertHomography } from '../../sheet/homography.ts';
import { benchWords } from '../../words/bench.ts';
import { foldWords } from '../../words/fold.ts';
import { LengthField } from '../page/LengthField.tsx';
import { Sheet } from '../page/Sheet.tsx';
import { usePicture } from '../page/usePicture.ts';
import { UndoLine } from '../page/UndoLine.tsx';
import { PlaceFields } from '../parts/PlaceFields.tsx';
import { BaseFrame } from '../square/BaseFrame.tsx';
import { HandleSurface } from '../square/HandleSurface.tsx';
import '../square/square.css';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';
import { toScreen, type View } from '../surface/view.ts';
import { SheetFateLine } from './SheetFateLine.tsx';
import { changeSheetPhoto, sheetFrame } from './sheetPhotos.ts';

/** Where a further sheet lies on its photograph: its corners, its size and its fold line, by hand, by keys, by numbers. */
export function SheetPlace({ photo, done }: { photo: CardPhoto; done(): void }) {
  const card = useBench((state) => state.card);
  const found = useBench(
    ({ shown }) => shown?.joined?.fates.find(({ name }) => name === photo.name)?.cornersPx,
  );
  const picture = usePicture(photo);
  const { width, height, fold } = sheetFrame(card, photo);
  const corners = photo.corners_px ?? found ?? (picture && inset(picture));
  const points = useMemo(
    () => corners && [...corners, ...(fold ? gripsOnPhoto(corners, { width, height }, fold) : [])],
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the same places are the same points
    [JSON.stringify([corners, width, height, fold])],
  );
  const set = (part: Partial<CardPhoto>) => editCard((now) => changeSheetPhoto(now, photo, part));
  const lay = (moved: Point[], i: number) => {
    const quad = moved.slice(0, 4) as unknown as Quad;
    if (i < 4) return set({ corners_px: quad.map(pair) as NonNullable<CardPhoto['corners_px']> });
    const toSheet = invertHomography(homographyFromQuad(quad, { width, height }));
    const [a, b] = moved.slice(4).map((p) => applyHomography(toSheet, p));
    set({ fold: [rounded(beyond(b, a)), rounded(beyond(a, b))] });
  };
  const { sheets } = foldWords;
  const { square } = benchWords;
  return (
    <Sheet
      heading={sheets.place(photo.name)}
      sheet={
        picture && points ? (
          <HandleSurface
            label={sheets.placeLabel(photo.name)}
            url={picture.url}
            size={picture}
            points={points}
            names={[...square.corners, ...sheets.foldEnds]}
            looks={onFold}
            lay={lay}
            marks={(now, view) => (
              <>
                <BaseFrame corners={now.slice(0, 4)} view={view} />
                {now.length > 4 && <FoldLine grips={now.slice(4)} view={view} />}
              </>
            )}
          />
        ) : null
      }
    >
      <p>{fold ? sheets.placeFold : sheets.placeCorners}</p>
      <SheetFateLine name={photo.name} />
      <div className="fields">
        <LengthField
          label={square.width}
          mm={width}
          leastMm={10}
          mostMm={2000}
          take={(value) => set({ size_mm: [value, height] })}
        />
        <LengthField
          label={square.height}
          mm={height}
          leastMm={10}
          mostMm={2000}
          take={(value) => set({ size_mm: [width, value] })}
        />
      </div>
      {fold?.map((end, k) => (
        <PlaceFields
          key={k}
          legend={sheets.foldEnds[k]}
          at={end}
          take={(to) => set({ fold: fold.map((other, i) => pair(i === k ? to : other)) as Fold })}
        />
      ))}
      <div className="line-of-acts">
        <button type="button" className="main" onClick={done}>
          {sheets.done}
        </button>
        <button type="button" disabled={!photo.corners_px} onClick={() => set({ corners_px: undefined })}>
          {square.find}
        </button>
        {photo.fold_of === undefined && (
          <button type="button" disabled={!photo.fold} onClick={() => set({ fold: undefined })}>
            {sheets.foldAsDrawn}
          </button>
        )}
      </div>
      <UndoLine />
    </Sheet>
  );
}

type Fold = NonNullable<CardPhoto['fold']>;

/** Handles stand so far along the fold from its ends, apart from the corners, at which folds mostly end. */
const gripShare = 0.2;
const onFold = ['', '', '', '', 'on-fold', 'on-fold'];

function FoldLine({ grips: [a, b], view }: { grips: readonly Point[]; view: View }) {
  const d = `M${[beyond(b, a), beyond(a, b)].map((end) => toScreen(view, end).join(' ')).join('L')}`;
  return (
    <g className="fold-line">
      <path className="under" d={d} />
      <path className="over" d={d} />
    </g>
  );
}

/** Where the handles of a sheet's fold line, mm, stand on its photograph, px. */
function gripsOnPhoto(corners: Quad, size: { width: number; height: number }, [a, b]: Segment): Point[] {
  const toPhoto = homographyFromQuad(corners, size);
  const along = (share: number): Point => [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
  return [gripShare, 1 - gripShare].map((share) => applyHomography(toPhoto, along(share)));
}

/** The end of the fold beyond a handle, seen from the other. */
function beyond([ax, ay]: Point, [bx, by]: Point): Point {
  const more = gripShare / (1 - 2 * gripShare);
  return [bx + more * (bx - ax), by + more * (by - ay)];
}

/** Corners to begin with where none are known: a tenth inside the picture. */
function inset({ width: w, height: h }: { width: number; height: number }): Quad {
  return [
    [0.1 * w, 0.1 * h],
    [0.9 * w, 0.1 * h],
    [0.9 * w, 0.9 * h],
    [0.1 * w, 0.9 * h],
  ];
}

function pair([x, y]: Point): [number, number] {
  return [x, y];
}

function rounded([x, y]: Point): [number, number] {
  return [Math.round(10 * x) / 10, Math.round(10 * y) / 10];
}
