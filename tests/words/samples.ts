import type { Entry } from './entries.ts';

/** What an entry is given where plain texts and numbers will not do: choices by key, objects, lists. */
const special: Record<string, unknown[]> = {
  'bench.verdict.clear-once-checked': [{ toCheck: 71 }],
  'bench.verdict.hold': [{ holding: 71 }],
  'bench.surface.place': [[71, 72], 'u73'],
  'bench.surface.slug': [{ width: 71, height: 72 }],
  'plan.conductorSaid': ['n71', 'dark', true],
  'plan.maskFault': ['nibble'],
  'plan.maskFaultLine': ['nibble', 'x71', 'y72', 'size73', true],
  'plan.page.crossing': [['n71', 'n72']],
  'plan.steps': [
    [
      { id: 's71', net: 'n' },
      { id: 's72', net: 'm' },
    ],
    73,
  ],
  'power.and': [['L71', 'L72', 'L73']],
};

/** An entry as it is told; numbers it is given are 71 and on, so that each can be found again. */
export function told(key: string, entry: Entry): string {
  if (typeof entry === 'string') return entry;
  return JSON.stringify(entry(...(special[key] ?? given(entry.length))));
}

/** So many arguments that can be read as a text and as a number alike. */
function given(count: number): unknown[] {
  return Array.from({ length: count }, (_, k) => textAndNumber(71 + k));
}

/** A text that a sentence may also reckon with: '71' compares as 71, and has a number's own way of writing decimals. */
function textAndNumber(value: number): unknown {
  return Object.assign(Object(String(value)) as object, {
    toFixed: (digits: number) => value.toFixed(digits),
  });
}

/** The figures of a sentence that come from what it was given, each once, decimals and thousands left off. */
export function figures(sentence: string): string[] {
  return [...new Set(sentence.match(/7\d(?!\d)/g) ?? [])].sort();
}
