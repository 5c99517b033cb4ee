import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';
import { checkCommand } from './check.ts';
import { compareCommand } from './compare.ts';
import { planCommand } from './plan.ts';
import { powerCommand } from './power.ts';
import { speakAsAsked } from './speakAsAsked.ts';

type Command = (args: string[]) => Promise<number>;

const commands: Record<string, Command> = {
  check: (args) => checkCommand(args),
  compare: (args) => compareCommand(args),
  power: (args) => powerCommand(args),
  plan: (args) => planCommand(args),
};

/**
 * Runs one command. What it finds goes to standard output, why it could not check to standard error.
 * @returns exit status: 0 clear, 1 findings that hold, 2 could not check
 */
export async function run(given: string[]): Promise<number> {
  try {
    return await runCommand(await speakAsAsked(given));
  } catch (error) {
    console.error(`foilproof: ${sentenceOf(error)}`);
    return 2;
  }
}

async function runCommand([name, ...args]: string[]): Promise<number> {
  if (name === undefined || name === '--help' || name === '-h' || args.includes('--help')) {
    console.log(cliWords.help);
    return name === undefined ? 2 : 0;
  }
  if (!Object.hasOwn(commands, name)) throw new FoilproofError(cliWords.unknownCommand(name));
  return commands[name](args);
}

function sentenceOf(error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  return message.replace(/\s*\n\s*/g, ' ');
}
