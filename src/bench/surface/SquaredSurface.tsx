import type { ReactNode } from 'react';
import type { Shown } from '../state/types.ts';
import { BitmapLayer } from './BitmapLayer.tsx';
import { SheetSurface } from './SheetSurface.tsx';
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

/** The squared-up photograph as the sheet, the seen copper over it where asked. */
export function SquaredSurface({ shown, copper = 0, ...rest }: Props) {
  const { sheet, picture, overlay } = shown;
  const content: Content = {
    width: sheet.width / sheet.pxPerMm,
    height: sheet.height / sheet.pxPerMm,
    origin: sheet.originMm,
  };
  return (
    <SheetSurface
      {...rest}
      baseMm={sheet.baseMm}
      content={content}
      layers={(view) => (
        <>
          <BitmapLayer bitmap={picture} width={content.width} view={view} />
          {copper > 0 && <BitmapLayer bitmap={overlay} width={content.width} view={view} opacity={copper} />}
        </>
      )}
    />
  );
}
