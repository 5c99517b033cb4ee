import { planWords } from '../../words/plan.ts';
import { LengthField } from '../page/LengthField.tsx';
import { NetField } from './NetField.tsx';
import type { Draft } from './planTool.ts';

interface Props {
  draft: Draft;
  setDraft(draft: Draft): void;
  finish(): void;
  drop(): void;
}

/** Net and width of the strip under way, and its end. */
export function StripDraft({ draft, setDraft, finish, drop }: Props) {
  const { page: text } = planWords;
  return (
    <>
      <div className="fields">
        <NetField net={draft.net} take={(net) => setDraft({ ...draft, net })} />
        <LengthField
          label={text.width}
          mm={draft.widthMm}
          leastMm={1}
          mostMm={20}
          take={(widthMm) => setDraft({ ...draft, widthMm })}
        />
      </div>
      <div className="line-of-acts">
        <button type="button" className="main" disabled={draft.path.length < 2} onClick={finish}>
          {text.finish}
        </button>
        <button type="button" disabled={!draft.path.length} onClick={drop}>
          {text.drop}
        </button>
      </div>
    </>
  );
}
