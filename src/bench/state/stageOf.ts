import type { Card } from '../../card/index.ts';
import type { RenewableStage } from '../worker/protocol.ts';

const parts: [RenewableStage, (keyof Card)[]][] = [
  ['square', ['base', 'corners_px']],
  ['copper', ['teach']],
  ['trace', ['touch_up']],
  [
    'net',
    ['lamps', 'cell', 'contacts', 'flaps', 'patches', 'joins', 'checked', 'limits', 'plan', 'show_inches'],
  ],
];

/** The first stage that a changed card asks to have renewed; undefined where only words have changed. */
export function stageOf(before: Card, after: Card): RenewableStage | undefined {
  if (sheets(before) !== sheets(after)) return 'square';
  return parts.find(([, keys]) => keys.some((key) => before[key] !== after[key]))?.[0];
}

/** What the photographs of further sheets hang on; the front's artwork is no sheet with copper. */
function sheets({ photos }: Card): string {
  return photos
    .filter(({ sheet }) => sheet !== 'front')
    .map(({ base64, ...rest }) => JSON.stringify([base64?.length, rest]))
    .join();
}

const order: RenewableStage[] = ['square', 'copper', 'trace', 'net'];

/** The earlier of two stages. */
export function earlier(a: RenewableStage | undefined, b: RenewableStage): RenewableStage {
  return a !== undefined && order.indexOf(a) < order.indexOf(b) ? a : b;
}
