import { createCanvas, type SKRSContext2D } from '@napi-rs/canvas';

type Place = readonly [number, number];
interface Size {
  width: number;
  height: number;
}
interface DrawnFile {
  name: string;
  mimeType: string;
  buffer: Buffer;
}

const PX_PER_MM = 8;
const TABLE_MM = 12;

/** A white sheet on a dark table, seen from straight above, as a file to choose. */
async function drawnSheet(
  { width, height }: Size,
  draw: (context: SKRSContext2D) => void,
): Promise<DrawnFile> {
  const canvas = createCanvas((width + 2 * TABLE_MM) * PX_PER_MM, (height + 2 * TABLE_MM) * PX_PER_MM);
  const context = canvas.getContext('2d');
  context.scale(PX_PER_MM, PX_PER_MM);
  context.fillStyle = '#3a342e';
  context.fillRect(0, 0, width + 2 * TABLE_MM, height + 2 * TABLE_MM);
  context.translate(TABLE_MM, TABLE_MM);
  context.fillStyle = '#f2f0ea';
  context.fillRect(0, 0, width, height);
  draw(context);
  return { name: 'sheet.jpg', mimeType: 'image/jpeg', buffer: await canvas.encode('jpeg', 92) };
}

/** The back of a front with round holes of 1.6 mm; places as on its face, so the back shows them mirrored. */
export function drawnFront(size: Size, holes: Place[]): Promise<DrawnFile> {
  return drawnSheet(size, (context) => {
    context.fillStyle = '#2a2520';
    for (const [x, y] of holes) {
      context.beginPath();
      context.arc(size.width - x, y, 0.8, 0, 2 * Math.PI);
      context.fill();
    }
  });
}

/** Pencil lines of half a millimetre. */
export function drawnSketch(size: Size, lines: Place[][]): Promise<DrawnFile> {
  return drawnSheet(size, (context) => {
    context.strokeStyle = '#55524e';
    context.lineWidth = 0.5;
    for (const line of lines) {
      context.beginPath();
      line.forEach(([x, y], k) => (k ? context.lineTo(x, y) : context.moveTo(x, y)));
      context.stroke();
    }
  });
}
