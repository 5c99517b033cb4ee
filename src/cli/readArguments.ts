import { parseArgs } from 'node:util';
import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';

export interface Arguments {
  files: string[];
  values: Map<string, string>;
  flags: Set<string>;
}

/**
 * Parts a command's arguments into files, options with a value, and flags.
 * @throws FoilproofError naming the option that is not known or lacks its value
 */
export function readArguments(
  command: string,
  args: string[],
  known: { values: string[]; flags: string[] },
): Arguments {
  const options = Object.fromEntries([
    ...known.values.map((k) => [k, { type: 'string' as const }]),
    ...known.flags.map((k) => [k, { type: 'boolean' as const }]),
  ]);
  const { tokens } = parseArgs({ args, options, strict: false, allowPositionals: true, tokens: true });
  const read: Arguments = { files: [], values: new Map(), flags: new Set() };
  for (const token of tokens) {
    if (token.kind === 'positional') read.files.push(token.value);
    if (token.kind !== 'option') continue;
    if (known.flags.includes(token.name)) read.flags.add(token.name);
    else if (!known.values.includes(token.name))
      throw new FoilproofError(cliWords.unknownOption(command, token.rawName));
    else if (!token.value) throw new FoilproofError(cliWords.optionNeedsValue(token.rawName));
    else read.values.set(token.name, token.value);
  }
  return read;
}
