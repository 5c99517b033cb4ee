/** The letters of a sentence, without figures and unit signs: what a language could say otherwise. */
export function letters(said: string): string {
  return said
    .replace(/mm|cm|px|mA|MB|\bin\b|\bV\b|\bm\b/g, '')
    .replace(/[a-zL]7\d/g, '')
    .replace(/[^\p{L}]/gu, '');
}

const everywhere = [
  'bench.name',
  'bench.square.sizes.A4',
  'bench.square.sizes.A5',
  'bench.square.sizes.A6',
  'bench.square.sizes.A7',
  'bench.parts.colours.orange',
  'plan.compareUsage',
  'plan.page.patchLine',
  'plan.page.papers.a4',
  'plan.foamLabel',
  'power.bandColours.orange',
];

/** Entries that may read as in English: the product's name, names of sizes and commands, words the two languages share. */
export const sameAsEnglish: Record<string, readonly string[]> = {
  de: [...everywhere, 'bench.steps.plan', 'bench.parts.id', 'plan.page.fileName', 'power.bandColours.gold'],
  fr: [
    ...everywhere,
    'bench.camera.shotName',
    'bench.parts.tools.contact',
    'bench.parts.contact',
    'bench.parts.colours.uv',
    'bench.findings.note',
    'plan.page.tools.contact',
    'power.bandColours.violet',
    'record.redrawn.ohm',
  ],
};
