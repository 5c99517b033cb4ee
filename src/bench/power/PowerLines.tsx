import type { PowerWords } from '../../power/index.ts';
import { powerStripWords as words } from '../../words/powerStrip.ts';

/** What to expect and what to change, in sentences. */
export function PowerLines({ said }: { said: PowerWords | undefined }) {
  if (!said) return <p className="pencil">{words.working}</p>;
  return (
    <>
      <h3>{words.tells}</h3>
      <Lines lines={said.tells} />
      {said.advice.length > 0 && <h3>{words.advice}</h3>}
      <Lines lines={said.advice} />
      {said.joints.length > 0 && (
        <details>
          <summary>{words.joints}</summary>
          <Lines lines={said.joints} />
        </details>
      )}
      <details>
        <summary>{words.lesson}</summary>
        <Lines lines={said.lesson} />
      </details>
    </>
  );
}

function Lines({ lines }: { lines: string[] }) {
  if (lines.length === 0) return null;
  return (
    <ul>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
