import type { ReactNode } from 'react';

interface Props {
  heading: string;
  sheet: ReactNode;
  /** The margin begins with tools for the picture. */
  withTools?: boolean;
  children: ReactNode;
}

/** A step's page: the picture as the sheet, its lines in the margin. */
export function Sheet({ heading, sheet, withTools, children }: Props) {
  return (
    <div className={withTools ? 'spread with-tools' : 'spread'}>
      <div className="sheet-side">{sheet}</div>
      <section className="margin-side">
        <h1>{heading}</h1>
        {children}
      </section>
    </div>
  );
}
