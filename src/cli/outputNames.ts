import { basename, extname, join, parse } from 'node:path';
import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';

/** Files that a check is asked to write beside its answer. */
export interface Outputs {
  mask?: string;
  squared?: string;
  report?: string;
}

/** Refuses a kind of file that cannot be written, before any work is done. */
export function checkOutputs({ mask, squared, report }: Outputs): void {
  if (mask && extname(mask).toLowerCase() !== '.png')
    throw new FoilproofError(cliWords.notPng('--mask', mask));
  if (squared && extname(squared).toLowerCase() !== '.png')
    throw new FoilproofError(cliWords.notPng('--squared', squared));
  if (report && !/\.(html|pdf|svg)$/i.test(report)) throw new FoilproofError(cliWords.badReport(report));
}

/** The outputs of one of several photographs: out.png becomes out-PHOTO.png; of a single one they stay. */
export function outputsOf(outputs: Outputs, photo: string, single: boolean): Outputs {
  if (single) return outputs;
  const stem = basename(photo, extname(photo));
  const own = (path?: string) => {
    if (!path) return undefined;
    const { dir, name, ext } = parse(path);
    return join(dir, `${name}-${stem}${ext}`);
  };
  return { mask: own(outputs.mask), squared: own(outputs.squared), report: own(outputs.report) };
}
