import type { PowerReport } from '../../power/index.ts';
import { useBench } from '../state/store.ts';
import { toScreen, type View } from '../surface/view.ts';

/** The lamps as they look in a state: rays and a disc where lit, a ring where dark. */
export function Glow({ view, power, state }: { view: View; power: PowerReport | undefined; state: string }) {
  const lamps = useBench(({ card }) => card.lamps);
  const now = power?.states.find(({ name }) => name === state);
  if (!now) return null;
  return lamps.map(({ id, plus, minus }) => {
    const [x, y] = toScreen(view, [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2]);
    const { look, glow } = now.lamps[id] ?? { look: 'dark', glow: 0 };
    const r = Math.max(5, 2 * view.scale);
    return (
      <g key={id} className={`glow ${look}`} transform={`translate(${x} ${y})`}>
        {look !== 'dark' && <circle className="halo" r={r * 3.4} opacity={0.25 + 0.55 * glow} />}
        {look === 'lit' &&
          [0, 45, 90, 135, 180, 225, 270, 315].map((turn) => (
            <path key={turn} d={`M0 ${-r * 1.5}V${-r * 2.3}`} transform={`rotate(${turn})`} />
          ))}
        <circle className="lamp" r={r} />
      </g>
    );
  });
}
