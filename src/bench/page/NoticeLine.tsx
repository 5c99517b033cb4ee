import { benchWords as words } from '../../words/bench.ts';
import { change, useBench } from '../state/store.ts';

/** One sentence that matters now, with what can be done about it. */
export function NoticeLine() {
  const notice = useBench((state) => state.notice);
  if (!notice) return <div role="alert" />;
  return (
    <div role="alert" className={`notice ${notice.tone}`}>
      <p>{notice.text}</p>
      {notice.acts?.map(({ label, act }) => (
        <button key={label} type="button" onClick={act}>
          {label}
        </button>
      ))}
      <button type="button" className="quiet" onClick={() => change({ notice: undefined })}>
        {words.dismiss}
      </button>
    </div>
  );
}
