import { useState } from 'react';
import type { CheckedByHand as Checked } from '../../card/index.ts';
import type { Finding } from '../../net/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { editCard } from '../state/editCard.ts';

/** How near a kept check must lie to be this finding's, mm. */
const sameMm = 3;

/** "Checked by hand", with a note; it settles the finding and stays in the card. */
export function CheckedByHand({ finding }: { finding: Finding }) {
  const [note, setNote] = useState(finding.checked?.note ?? '');
  const settle = (checked: boolean, text: string) =>
    editCard((card) => {
      const others = card.checked.filter((each) => !isOf(each, finding));
      const at: [number, number] = [finding.at[0], finding.at[1]];
      const mine = { kind: finding.kind, at, note: text, on: new Date().toISOString().slice(0, 10) };
      return { ...card, checked: checked ? [...others, mine] : others };
    });
  const settled = finding.checked !== undefined;
  return (
    <div className="by-hand">
      <label className="check">
        <input type="checkbox" checked={settled} onChange={({ target }) => settle(target.checked, note)} />
        {words.findings.checkBox}
      </label>
      <label className="field">
        <span>{words.findings.note}</span>
        <input
          type="text"
          value={note}
          maxLength={2000}
          placeholder={words.findings.noteHint}
          onChange={({ target }) => setNote(target.value)}
          onBlur={() => settled && note !== finding.checked?.note && settle(true, note)}
        />
      </label>
    </div>
  );
}

function isOf({ kind, at }: Checked, finding: Finding): boolean {
  return kind === finding.kind && Math.hypot(at[0] - finding.at[0], at[1] - finding.at[1]) < sameMm;
}
