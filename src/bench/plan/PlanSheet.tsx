import { useEffect, useRef, useState, type PointerEvent } from 'react';
import type { Card, PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { planWords } from '../../words/plan.ts';
import type { Shown } from '../state/types.ts';

const words = planWords.page;

interface Props {
  card: Card;
  shown?: Shown;
  /** A strip under way and a proposal, over the plan. */
  draft: readonly Point[];
  proposed: PlanStrip[];
  widthMm: number;
  /** Share of the photograph that is shown, from the left, 0..1. */
  wipe: number;
  onTap: (at: Point) => void;
}

/** The base in mm: photograph below, planned strips above; B blinks the plan away. */
export function PlanSheet({ card, shown, draft, proposed, widthMm, wipe, onTap }: Props) {
  const { width_mm: width, height_mm: height } = card.base;
  const hidden = useBlink();
  const tap = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    onTap([
      ((event.clientX - box.left) / box.width) * width,
      ((event.clientY - box.top) / box.height) * height,
    ]);
  };
  return (
    <div
      className="plan-sheet"
      style={{ aspectRatio: `${width} / ${height}`, width: `min(100%, calc(80vh * ${width / height}))` }}
    >
      {shown && <Photograph shown={shown} wipe={wipe} />}
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.sheetLabel} onPointerDown={tap}>
        <g visibility={hidden ? 'hidden' : 'visible'}>
          {(card.plan?.strips ?? []).map((strip) => (
            <Tape key={strip.id} path={strip.path} widthMm={strip.width_mm} kind="planned" />
          ))}
          {proposed.map((strip) => (
            <Tape key={strip.id} path={strip.path} widthMm={strip.width_mm} kind="proposed" />
          ))}
          {draft.length > 0 && <Tape path={draft} widthMm={widthMm} kind="draft" />}
          {card.patches.map(({ id, outline }) => (
            <polygon key={id} className="plan-patch" points={outline.map((p) => p.join()).join(' ')} />
          ))}
          {card.lamps.map(({ id, plus, minus }) => (
            <g key={id} className="plan-lamp">
              <line x1={plus[0]} y1={plus[1]} x2={minus[0]} y2={minus[1]} />
              <text x={plus[0]} y={plus[1] + 1}>
                +
              </text>
            </g>
          ))}
          {card.cell && <circle className="plan-cell" cx={card.cell.at[0]} cy={card.cell.at[1]} r={10} />}
        </g>
      </svg>
    </div>
  );
}

function Tape({ path, widthMm, kind }: { path: readonly Point[]; widthMm: number; kind: string }) {
  if (path.length === 1) return <circle className={`tape ${kind}`} cx={path[0][0]} cy={path[0][1]} r={1} />;
  return (
    <polyline
      className={`tape ${kind}`}
      points={path.map((p) => p.join()).join(' ')}
      style={{ strokeWidth: widthMm }}
    />
  );
}

function Photograph({ shown, wipe }: { shown: Shown; wipe: number }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { picture, sheet } = shown;
  useEffect(() => {
    const [x, y] = [-sheet.originMm[0] * sheet.pxPerMm, -sheet.originMm[1] * sheet.pxPerMm];
    canvas.current?.getContext('2d')?.drawImage(picture, -x, -y);
  }, [picture, sheet]);
  return (
    <canvas
      ref={canvas}
      width={Math.round(sheet.baseMm.width * sheet.pxPerMm)}
      height={Math.round(sheet.baseMm.height * sheet.pxPerMm)}
      style={{ clipPath: `inset(0 ${100 - 100 * wipe}% 0 0)` }}
      aria-hidden="true"
    />
  );
}

/** Held down, B hides the plan. */
function useBlink(): boolean {
  const [hidden, setHidden] = useState(false);
  useEffect(() => {
    const set = (to: boolean) => (event: KeyboardEvent) => {
      const typing =
        event.target instanceof HTMLElement && /input|textarea|select/i.test(event.target.tagName);
      if (event.key.toLowerCase() === 'b' && !typing) setHidden(to);
    };
    const [down, up] = [set(true), set(false)];
    addEventListener('keydown', down);
    addEventListener('keyup', up);
    return () => {
      removeEventListener('keydown', down);
      removeEventListener('keyup', up);
    };
  }, []);
  return hidden;
}
