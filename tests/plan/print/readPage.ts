import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A part of a printed page as pixels. */
export interface ReadPart {
  width: number;
  height: number;
  pxPerMm: number;
  /** RGBA, row-major. */
  rgba: Uint8ClampedArray;
}

/** What pdf.js makes its canvases with: in Node @napi-rs/canvas. */
interface CanvasFactory {
  create(width: number, height: number): { context: CanvasRenderingContext2D };
}

/** Renders a box (mm on the page) of one page at so many dots an inch, by pdf.js on a canvas. */
export async function readPart(
  bytes: Uint8Array,
  pageNumber: number,
  dpi: number,
  box: { x: number; y: number; width: number; height: number },
): Promise<ReadPart> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const page = await document.getPage(pageNumber);
  const pxPerMm = dpi / 25.4;
  const [width, height] = [Math.round(box.width * pxPerMm), Math.round(box.height * pxPerMm)];
  const factory = document.canvasFactory as CanvasFactory;
  const { context } = factory.create(width, height);
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, width, height);
  const viewport = page.getViewport({
    scale: dpi / 72,
    offsetX: -box.x * pxPerMm,
    offsetY: -box.y * pxPerMm,
  });
  await page.render({ canvas: null, canvasContext: context, viewport }).promise;
  const { data } = context.getImageData(0, 0, width, height);
  await document.destroy();
  return { width, height, pxPerMm, rgba: data };
}

/** Grey value of a pixel, 0..255. */
export function greyAt({ width, rgba }: ReadPart, x: number, y: number): number {
  const at = 4 * (y * width + x);
  return (rgba[at] + rgba[at + 1] + rgba[at + 2]) / 3;
}

/** Text of every page, and whether the document is tagged. */
export async function readText(bytes: Uint8Array): Promise<{ pages: string[]; tagged: boolean }> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const { items } = await (await document.getPage(n)).getTextContent();
    pages.push(items.map((item) => ('str' in item ? item.str : '')).join(' '));
  }
  const marked = await document.getMarkInfo();
  const tree = await (await document.getPage(1)).getStructTree();
  await document.destroy();
  return { pages, tagged: Boolean(marked?.Marked) && tree !== null };
}
