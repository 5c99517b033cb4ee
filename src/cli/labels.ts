import type { Checked } from '../check/index.ts';
import { readSheet } from '../check/labels/index.ts';
import { openLineReader } from '../engine/ocr.ts';
import { readerPlacesNode } from '../engine/ocrPlacesNode.ts';
import { attachLabels } from '../parts/labels/index.ts';
import type { LabelProposal } from '../parts/labels/index.ts';
import { sheetTag } from '../plan/index.ts';

/** What is written on the sheet, as `check --json --labels` tells it. */
export interface LabelsJson {
  upside_down: boolean;
  read: { text: string; means: string; x_mm: number; y_mm: number; certainty: number }[];
  /** What the labels propose for the card; nothing of it is taken over by the check. */
  proposed: ReturnType<typeof proposalJson>[];
  /** Whether the printed tag is that of the card's plan; absent without a tag or a plan. */
  tag_agrees?: boolean;
}

/** Reads the sheet of a finished check. */
export async function labelsOf(checked: Checked): Promise<LabelsJson> {
  const reader = await openLineReader(readerPlacesNode());
  try {
    const { labels, upsideDown } = await readSheet(checked, checked.card, reader);
    const proposals = upsideDown ? [] : attachLabels(labels, checked.card);
    const tag = proposals.find((each) => each.do === 'use-plan');
    return {
      upside_down: upsideDown,
      read: labels.map(({ text, means, at, certainty }) => ({
        text,
        means: means.kind,
        x_mm: Number(at[0].toFixed(1)),
        y_mm: Number(at[1].toFixed(1)),
        certainty: Number(certainty.toFixed(2)),
      })),
      proposed: proposals.map(proposalJson),
      ...(tag && checked.card.plan ? { tag_agrees: tag.code === sheetTag(checked.card) } : {}),
    };
  } finally {
    await reader.close();
  }
}

function proposalJson({ label, ...proposal }: LabelProposal) {
  return { ...proposal, certainty: Number(label.certainty.toFixed(2)) };
}
