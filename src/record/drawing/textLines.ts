import type { Shape } from './types.ts';

/** Letters of a sans-serif face are about half as wide as the em is high (common practice, no source). */
const letterEm = 0.5;
const leading = 1.35;

/** Sentences set below one another, broken at words; drawings have no breaking of their own. */
export function textLines(
  sentences: readonly string[],
  box: { x0: number; y0: number; widthMm: number; size: number },
): { shapes: Shape[]; y1: number } {
  const most = Math.floor(box.widthMm / (letterEm * box.size));
  const lines = sentences.flatMap((sentence) => broken(sentence, most));
  const shapes = lines.map((text, i): Shape => ({
    kind: 'text',
    at: [box.x0, box.y0 + box.size * leading * (i + 1)],
    text,
    size: box.size,
  }));
  return { shapes, y1: box.y0 + box.size * leading * (lines.length + 0.5) };
}

function broken(sentence: string, most: number): string[] {
  const lines: string[] = [''];
  for (const word of sentence.split(' ')) {
    const last = lines[lines.length - 1];
    if (last === '') lines[lines.length - 1] = word;
    else if (last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
