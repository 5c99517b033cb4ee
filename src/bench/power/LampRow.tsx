import type { LampColour } from '../../card/index.ts';
import type { StatePower } from '../../power/index.ts';
import { benchWords } from '../../words/bench.ts';
import { powerStripWords as words } from '../../words/powerStrip.ts';
import { sayState } from '../../words/states.ts';

/** The light of each lamp colour on a dark ground, sRGB (by eye, no source). */
const light: Record<LampColour, string> = {
  red: '#ff4a3d',
  orange: '#ff7f33',
  amber: '#ffa528',
  yellow: '#ffd23a',
  'yellow-green': '#bfe043',
  green: '#3fe08a',
  blue: '#5a8dff',
  white: '#f3f7ff',
  'warm-white': '#ffe2ad',
  pink: '#ff9ec8',
  uv: '#a88bff',
};

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
              <circle
                r={8 + 10 * glow}
                fill={light[colour]}
                opacity={look === 'dark' ? 0 : 0.12 + 0.3 * glow}
              />
              <circle
                r={5 + 6 * glow}
                fill={light[colour]}
                opacity={look === 'dark' ? 0 : 0.2 + 0.5 * glow}
              />
              <circle className="body" r={5} fill={look === 'dark' ? 'none' : light[colour]} />
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
