import { foldWords } from '../../words/fold.ts';
import { length } from '../../words/lengths.ts';
import { useBench } from '../state/store.ts';

/** A sheet that lies farther off than this is asked about, mm. */
const askedFromMm = 1;

/** How a further photograph was laid on the base and how far off it lies; over 1 mm it asks. */
export function SheetFateLine({ name }: { name: string }) {
  const fate = useBench(({ shown }) => shown?.joined?.fates.find((each) => each.name === name));
  const busy = useBench((state) => state.busy !== undefined);
  const { sheets, offRegister } = foldWords;
  if (!fate) return <p className="pencil">{busy ? '' : sheets.notLaid}</p>;
  const asks = fate.residualMm > askedFromMm;
  return (
    <div role="status" aria-busy={busy}>
      <p className={asks ? 'warn' : 'pencil'}>
        {sheets.laid(offRegister.by[fate.by], length(fate.residualMm))}
        {asks && ` ${offRegister.do}`}
      </p>
    </div>
  );
}
