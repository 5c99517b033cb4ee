import type { LampColour } from '../../card/index.ts';
import type { StatePower } from '../../power/index.ts';
import { halosOf, lampLight } from '../../power/lampLight.ts';
import { benchWords } from '../../words/bench.ts';
import { powerStripWords as words } from '../../words/powerStrip.ts';
import { sayState } from '../../words/states.ts';

/** A row of lamps, each with its halo as bright as it would look; shape and words say the same as the light. */
export function LampRow({
  lamps,
  state,
}: {
  lamps: { id: string; colour: LampColour }[];
  state: StatePower;
}) {
  return (
    <ul className="lamp-row" aria-label={words.strip(sayState(state.name))}>
      {lamps.map(({ id, colour }) => {
        const { look = 'dark', glow = 0, mA = 0 } = state.lamps[id] ?? {};
        return (
          <li
            key={id}
            className={look}
            aria-label={words.lamp(id, benchWords.parts.colours[colour], words.looks[look], words.mA(mA))}
          >
            <svg viewBox="-20 -20 40 40" aria-hidden="true">
              {look !== 'dark' &&
                halosOf(glow).map(({ radius, opacity }) => (
                  <circle key={radius} r={radius} fill={lampLight[colour]} opacity={opacity} />
                ))}
              <circle className="body" r={5} fill={look === 'dark' ? 'none' : lampLight[colour]} />
              {look === 'dark' && <path className="out" d="M-3 -3L3 3M-3 3L3 -3" />}
            </svg>
            <b>{id}</b>
            <small>{words.looks[look]}</small>
            <small>{words.mA(mA)}</small>
          </li>
        );
      })}
    </ul>
  );
}
