import { useId } from 'react';
import { planWords } from '../../words/plan.ts';
import { useBench } from '../state/store.ts';
import { netsOf } from './planEdits.ts';

/** A net by its name, one that is there already or a new one. */
export function NetField({ net, take }: { net: string; take(net: string): void }) {
  const id = useId();
  const card = useBench((state) => state.card);
  return (
    <label className="field">
      <span>{planWords.page.net}</span>
      <input
        type="text"
        list={id}
        value={net}
        maxLength={40}
        onChange={({ target }) => target.value && take(target.value)}
      />
      <datalist id={id}>
        {netsOf(card).map((each) => (
          <option key={each} value={each} />
        ))}
      </datalist>
    </label>
  );
}
