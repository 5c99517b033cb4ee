import { useEffect, useState } from 'react';
import type { Card } from '../../card/index.ts';
import { readTag, sheetTag } from '../../plan/print/tag.ts';
import { labelWords as words } from '../../words/labels.ts';
import { length } from '../../words/lengths.ts';
import { editCard } from '../state/editCard.ts';
import { allKept } from '../state/shelf.ts';

/** What a printed tag says of the plan at hand: that it is the one, or where it can be had. */
export function TagLines({ tag, card, sure }: { tag: string; card: Card; sure: string }) {
  const [other, setOther] = useState<Card>();
  const same = card.plan !== undefined && sheetTag(card) === tag;
  useEffect(() => {
    let on = true;
    const find = async () => (await allKept()).find((kept) => kept.card.plan && sheetTag(kept.card) === tag);
    if (!same)
      void find().then(
        (found) => on && setOther(found?.card),
        () => undefined,
      );
    return () => void (on = false);
  }, [tag, same]);
  if (same) return <p>{words.tagAgrees(tag)}</p>;
  const size = readTag(tag);
  const { width_mm, height_mm } = card.base;
  const sized = size && (size.widthMm !== width_mm || size.heightMm !== height_mm) ? size : undefined;
  return (
    <>
      <p>
        {words.tagOther(tag)} <small>{sure}</small>
      </p>
      <div className="line-of-acts">
        {other && (
          <button
            type="button"
            onClick={() => editCard((now) => ({ ...now, base: other.base, plan: other.plan }))}
          >
            {words.tagPlan(other.title ?? tag)}
          </button>
        )}
        {sized && !other && (
          <button
            type="button"
            onClick={() =>
              editCard((now) => ({
                ...now,
                base: { ...now.base, width_mm: sized.widthMm, height_mm: sized.heightMm },
              }))
            }
          >
            {words.tagSize(length(sized.widthMm), length(sized.heightMm))}
          </button>
        )}
      </div>
    </>
  );
}
