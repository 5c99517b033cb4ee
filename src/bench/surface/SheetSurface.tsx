import type { ComponentProps } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { Rulers } from './Rulers.tsx';
import { Surface } from './Surface.tsx';

type Props = Omit<ComponentProps<typeof Surface>, 'unit' | 'slug'> & {
  baseMm: { width: number; height: number };
};

/** A sheet in mm under the hands, with its crop marks, rulers and size. */
export function SheetSurface({ baseMm, content, marks, margin = 30, ...rest }: Props) {
  return (
    <Surface
      {...rest}
      unit="mm"
      slug={words.surface.slug(baseMm)}
      content={content}
      margin={margin}
      marks={(view) => (
        <>
          <Rulers view={view} content={content} baseMm={baseMm} />
          {marks?.(view)}
        </>
      )}
    />
  );
}
