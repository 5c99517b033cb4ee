import type { Card } from '../card/index.ts';
import type { Photo } from '../photo/index.ts';
import { renewFrom } from './renew.ts';
import type { SheetPhoto } from './sheets/index.ts';
import type { CheckOptions } from './options.ts';
import type { Checked } from './types.ts';

/**
 * The whole check of one photograph: square up, see the copper, trace it, build the nets, solve the states.
 * @param photo upright picture
 * @param card what the maker declares: base size, lamps, cell, contacts, plan; its `corners_px` are taken as they are
 * @param again further shots of the same sheet, the lamp or the camera moved: glare goes, gaps stay
 * @param sheets photographs of the card's other sheets: flaps opened flat, the base before a patch
 * @throws FoilproofError when the base cannot be placed at all
 */
export function check(
  photo: Photo,
  card: Card,
  options: CheckOptions = {},
  again: readonly Photo[] = [],
  sheets: readonly SheetPhoto[] = [],
): Promise<Checked> {
  return renewFrom('square', { photo, card, again, sheets }, options);
}
