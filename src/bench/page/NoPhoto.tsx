import { benchWords as words } from '../../words/bench.ts';
import { goTo } from '../state/goTo.ts';

/** What a step says when there is no photograph yet. */
export function NoPhoto() {
  return (
    <div className="no-photo">
      <h1>{words.noPhoto.heading}</h1>
      <p>{words.noPhoto.text}</p>
      <button type="button" className="main" onClick={() => goTo('shoot')}>
        {words.noPhoto.act}
      </button>
    </div>
  );
}
