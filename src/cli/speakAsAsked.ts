import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';
import { chooseLanguage, language, languageOf, languages, type Language } from '../words/language.ts';
import { measureAs, measureIn, unit, type Unit } from '../words/lengths.ts';

const units: readonly string[] = ['mm', 'inch'] satisfies Unit[];
let unitAsked = false;

/**
 * Takes `--language` and `--units` out of the arguments and speaks and measures as they say; without them as the
 * terminal's locale and the card say.
 * @returns the arguments that are left
 * @throws FoilproofError naming what is not spoken here
 */
export async function speakAsAsked(
  args: string[],
  locale: NodeJS.ProcessEnv = process.env,
): Promise<string[]> {
  const rest: string[] = [];
  let wanted = languageOf([locale.LC_ALL || locale.LC_MESSAGES || locale.LANG || '']);
  for (let i = 0; i < args.length; i++) {
    const [option, inline] = args[i].split('=', 2);
    if (option !== '--language' && option !== '--units') rest.push(args[i]);
    else if (option === '--language') wanted = languageAsked(inline ?? args[++i]);
    else askUnit(inline ?? args[++i]);
  }
  await chooseLanguage(wanted);
  return rest;
}

/** A card may ask for inches; `--units` comes before it. */
export function measureAsCard(card: { show_inches?: boolean }): void {
  if (!unitAsked) measureAs(card);
}

/** The arguments under which another process speaks and measures as this one does. */
export function spokenArguments(): string[] {
  return ['--language', language(), '--units', unit()];
}

function languageAsked(given: string | undefined): Language {
  const known = languages.find((each) => each === given);
  if (!known) throw new FoilproofError(cliWords.unknownLanguage(given ?? '', languages.join(', ')));
  return known;
}

function askUnit(given: string | undefined): void {
  if (given === undefined || !units.includes(given))
    throw new FoilproofError(cliWords.unknownUnit(given ?? '', units.join(', ')));
  measureIn(given as Unit);
  unitAsked = true;
}
