import { useState } from 'react';
import type { Card } from '../../card/index.ts';
import { printBarMm, shortLength } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import { PaperField, usualPaper } from '../page/PaperField.tsx';
import { saveFile } from '../record/saveFile.ts';
import { tellTrouble } from '../state/trouble.ts';
import { call } from '../worker/client.ts';
import { stripsOf } from './planEdits.ts';
import { withoutPictures } from './usePlanChecks.ts';

/** The plan as a PDF to print at its true size. */
export function PrintLine({ card }: { card: Card }) {
  const { page: text } = planWords;
  const [paper, setPaper] = useState(usualPaper);
  const [said, setSaid] = useState('');
  const print = () => {
    const name = `${text.fileName}.pdf`;
    setSaid(text.printing);
    call('printPlan', { card: withoutPictures(card), paper })
      .then((blob) => {
        saveFile(name, blob);
        setSaid(text.printed(name, shortLength(printBarMm())));
      })
      .catch((error) => {
        setSaid('');
        tellTrouble(error);
      });
  };
  return (
    <section aria-labelledby="plan-print">
      <h2 id="plan-print">{text.printHeading}</h2>
      <PaperField paper={paper} onChange={setPaper} />
      <div className="line-of-acts">
        <button type="button" disabled={!stripsOf(card).length} onClick={print}>
          {text.print}
        </button>
      </div>
      <p role="status">{said}</p>
    </section>
  );
}
