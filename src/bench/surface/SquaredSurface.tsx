import type { ReactNode } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import type { Shown } from '../state/types.ts';
import { BitmapLayer } from './BitmapLayer.tsx';
import { Rulers } from './Rulers.tsx';
import { Surface } from './Surface.tsx';
import type { Tool } from './tool.ts';
import type { Content, View } from './view.ts';

interface Props {
  shown: Shown;
  label: string;
  tool?: Tool;
  /** How strongly the seen copper is laid over, 0..1. */
  copper?: number;
  marks?: (view: View) => ReactNode;
  handles?: (view: View) => ReactNode;
  holdsFinger?: boolean;
  keyCursor?: boolean;
  margin?: number;
}

/** The squared-up photograph in mm, with its crop marks and rulers. */
export function SquaredSurface({ shown, copper = 0, marks, margin = 30, ...rest }: Props) {
  const { sheet, picture, overlay } = shown;
  const content: Content = {
    width: sheet.width / sheet.pxPerMm,
    height: sheet.height / sheet.pxPerMm,
    origin: sheet.originMm,
  };
  return (
    <Surface
      {...rest}
      unit="mm"
      slug={words.surface.slug(sheet.baseMm)}
      content={content}
      margin={margin}
      layers={(view) => (
        <>
          <BitmapLayer bitmap={picture} width={content.width} view={view} />
          {copper > 0 && <BitmapLayer bitmap={overlay} width={content.width} view={view} opacity={copper} />}
        </>
      )}
      marks={(view) => (
        <>
          <Rulers view={view} content={content} baseMm={sheet.baseMm} />
          {marks?.(view)}
        </>
      )}
    />
  );
}
