import { readFileSync } from 'node:fs';

/** Rows of a comma-separated table of this folder, by column name. */
export function spiceTable(name: string): Record<string, string>[] {
  const text = readFileSync(new URL(`./${name}.csv`, import.meta.url), 'utf8');
  const [head = '', ...lines] = text.trim().split(/\r?\n/);
  const columns = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(columns.map((column, i) => [column, cells[i] ?? '']));
  });
}
