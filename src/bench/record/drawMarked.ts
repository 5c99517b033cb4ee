import { holds } from '../../net/index.ts';
import { marginMm, placeMarks, type Mark } from '../../record/drawing/placeMarks.ts';
import type { Shown } from '../state/types.ts';

const copper = '#9c4a17';
const paper = '#fcfcfa';

/** The squared photograph on a canvas with its proof marks in the margins, at the sheet's own scale. */
export function drawMarked({ sheet, picture, netlist }: Shown): OffscreenCanvas {
  const k = sheet.pxPerMm;
  const margin = marginMm * k;
  const [x0, y0] = sheet.originMm;
  const box = { x0, y0, x1: x0 + sheet.width / k, y1: y0 + sheet.height / k };
  const canvas = new OffscreenCanvas(sheet.width + 2 * margin, sheet.height + margin);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('No canvas to draw on.');
  context.fillStyle = paper;
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(picture, margin, margin / 2, sheet.width, sheet.height);
  context.setTransform(k, 0, 0, k, margin - x0 * k, margin / 2 - y0 * k);
  for (const mark of placeMarks(netlist.findings, box)) drawMark(context, mark);
  return canvas;
}

/** Filled holds, ringed asks for a check, dashed is a note. */
function drawMark(
  context: OffscreenCanvasRenderingContext2D,
  { number, finding, at, label: wished, radius }: Mark,
): void {
  const label = wished ?? at;
  const far = Math.hypot(at[0] - label[0], at[1] - label[1]) || 1;
  const [ux, uy] = [(at[0] - label[0]) / far, (at[1] - label[1]) / far];
  // Where the margin is full the number stands at the place itself, without a leader.
  for (const [colour, width] of wished
    ? ([
        [paper, 0.9],
        [copper, 0.35],
      ] as const)
    : []) {
    context.strokeStyle = colour;
    context.lineWidth = width;
    context.beginPath();
    context.moveTo(label[0] + ux * radius, label[1] + uy * radius);
    context.lineTo(at[0] - ux * 1.6, at[1] - uy * 1.6);
    context.moveTo(at[0] + 1.6, at[1]);
    context.arc(at[0], at[1], 1.6, 0, 2 * Math.PI);
    context.stroke();
  }
  const filled = holds({ weight: finding.weight, certainty: finding.certainty });
  context.beginPath();
  context.arc(label[0], label[1], radius, 0, 2 * Math.PI);
  context.fillStyle = filled ? copper : paper;
  context.fill();
  context.strokeStyle = copper;
  context.lineWidth = 0.35;
  context.setLineDash(finding.weight === 'note' ? [0.8, 0.6] : []);
  context.stroke();
  context.setLineDash([]);
  context.fillStyle = filled ? paper : copper;
  context.font = `bold ${radius * 1.2}px sans-serif`;
  context.textAlign = 'center';
  context.fillText(String(number), label[0], label[1] + radius * 0.42);
}
