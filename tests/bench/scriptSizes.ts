import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

export interface Size {
  file: string;
  kB: number;
  gzipKB: number;
}

/** Scripts, styles, WebAssembly and models of dist/, largest first; empty before `npm run build`. */
export async function scriptSizes(folder: string): Promise<Size[]> {
  const files = await readdir(folder, { recursive: true }).catch(() => [] as string[]);
  const sizes: Size[] = [];
  for (const file of files.filter((f) => /\.(m?js|css|wasm|onnx|html)$/.test(f))) {
    const bytes = await readFile(join(folder, file));
    sizes.push({ file, kB: bytes.length / 1024, gzipKB: gzipSync(bytes).length / 1024 });
  }
  return sizes.sort((a, b) => b.kB - a.kB);
}

/** Compressed kB that the page names in its own HTML: what comes before the first paint. */
export async function beforeFirstPaint(folder: string, sizes: Size[]): Promise<number | undefined> {
  const html = await readFile(join(folder, 'index.html'), 'utf8').catch(() => undefined);
  if (!html) return undefined;
  return sizes
    .filter((s) => s.file.endsWith('.html') || html.includes(s.file.split('/').pop() ?? s.file))
    .reduce((n, s) => n + s.gzipKB, 0);
}
