import type { ReactNode } from 'react';
import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { PlanChecks } from '../../plan/index.ts';
import { baseSize } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';
import type { Shown } from '../state/types.ts';
import { SheetSurface } from '../surface/SheetSurface.tsx';
import type { Tool } from '../surface/tool.ts';
import type { Content, View } from '../surface/view.ts';
import { layMarks } from '../verdict/layMarks.ts';
import { ProofMark } from '../verdict/ProofMark.tsx';
import { sheetEdges } from '../verdict/sheetEdges.ts';
import { artworkOf } from './artworkEdits.ts';
import { CrossingMark, FrontMarks, Taps } from './CheckMarks.tsx';
import type { Front } from './FrontCheck.tsx';
import { ArtworkLayer, Paper, PictureLayer } from './Layers.tsx';
import type { Picked } from './picked.ts';
import { PlanMarks, Tape } from './PlanMarks.tsx';
import type { Draft } from './planTool.ts';
import type { Proposed } from './Proposal.tsx';

interface Props {
  /** As a drag under way would leave it. */
  card: Card;
  shown: Shown | undefined;
  front: Front | undefined;
  checks: PlanChecks | undefined;
  tool: Tool;
  draft: Draft;
  proposed: Proposed | undefined;
  picked: Picked | undefined;
  plus: Point | undefined;
  box: readonly [Point, Point] | undefined;
  taps: Point[];
  fade: number;
  wipe: number;
  hidden: boolean;
  handles?: (view: View) => ReactNode;
}

/** The base in mm: paper, artwork or photograph below, the plan above. */
export function PlanSurface(props: Props) {
  const { card, shown, front, checks, tool, draft, proposed, picked, plus, box, taps, fade, wipe } = props;
  const artwork = artworkOf(card);
  const base = baseSize(card);
  const marks = (view: View) => (
    <>
      {!props.hidden && (
        <g className={`${shown && wipe > 0 ? 'over-photo' : ''} ${proposed ? 'with-proposal' : ''}`}>
          <PlanMarks card={card} view={view} picked={picked} plus={plus}>
            {proposed?.strips.map((strip) => (
              <Tape key={strip.id} path={strip.path} widthMm={strip.width_mm} view={view} kind="proposed" />
            ))}
            {draft.path.length > 0 && (
              <Tape path={draft.path} widthMm={draft.widthMm} view={view} kind="draft" />
            )}
          </PlanMarks>
          {checks?.crossings.map(({ at }) => (
            <CrossingMark key={at.join()} at={at} view={view} />
          ))}
          {checks &&
            !proposed &&
            layMarks(checks.findings, view, sheetEdges(view, base)).map((mark) => (
              <ProofMark key={mark.number} mark={mark} here={false} />
            ))}
          {front && <FrontMarks card={card} misses={front.misses} view={view} />}
        </g>
      )}
      <Taps taps={taps} box={box} view={view} />
    </>
  );
  return (
    <SheetSurface
      label={planWords.page.sheetLabel}
      baseMm={base}
      content={contentOf(card)}
      holdsFinger
      tool={tool}
      layers={(view) => (
        <>
          <Paper card={card} view={view} />
          {artwork && <ArtworkLayer artwork={artwork} card={card} view={view} fade={fade} />}
          {front && (
            <PictureLayer
              picture={front.picture}
              sheet={{ originMm: [0, 0], pxPerMm: front.picture.width / base.width, baseMm: base }}
              view={view}
            />
          )}
          {shown && wipe > 0 && (
            <PictureLayer picture={shown.picture} sheet={shown.sheet} view={view} share={wipe} />
          )}
        </>
      )}
      marks={marks}
      handles={props.handles}
    />
  );
}

/** The base, and the flaps that lie open beside it. */
function contentOf(card: Card): Content {
  const { width_mm: w, height_mm: h } = card.base;
  const places: Point[] = [[0, 0], [w, h], ...card.flaps.flatMap(({ outline }) => outline)];
  const xs = places.map(([x]) => x);
  const ys = places.map(([, y]) => y);
  const origin: Point = [Math.min(...xs), Math.min(...ys)];
  return { origin, width: Math.max(...xs) - origin[0], height: Math.max(...ys) - origin[1] };
}
