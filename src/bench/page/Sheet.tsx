import type { ReactNode } from 'react';

/** A step's page: the picture as the sheet, its lines in the margin. */
export function Sheet({
  heading,
  sheet,
  children,
}: {
  heading: string;
  sheet: ReactNode;
  children: ReactNode;
}) {
  return (
    <div className="spread">
      <div className="sheet-side">{sheet}</div>
      <section className="margin-side">
        <h1>{heading}</h1>
        {children}
      </section>
    </div>
  );
}
