import { cliWords as english } from './en/cli.ts';
import { spoken } from './spoken.ts';

export const cliWords = spoken('cli', english);
