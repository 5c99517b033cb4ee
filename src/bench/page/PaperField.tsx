import type { Paper } from '../../record/pdf/types.ts';
import { unit } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';

const papers: Paper[] = ['a4', 'letter'];

/** The paper that goes with the unit chosen. */
export const usualPaper = (): Paper => (unit() === 'inch' ? 'letter' : 'a4');

/** The paper that a PDF is laid out for. */
export function PaperField({ paper, onChange }: { paper: Paper; onChange: (paper: Paper) => void }) {
  const { page: text } = planWords;
  return (
    <div className="fields">
      <label className="field">
        <span>{text.paper}</span>
        <select value={paper} onChange={({ target }) => onChange(target.value as Paper)}>
          {papers.map((each) => (
            <option key={each} value={each}>
              {text.papers[each]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
