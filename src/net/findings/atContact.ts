import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { contactPlace } from '../../parts/index.ts';
import { distance } from '../distance.ts';

/** Whether a place lies in a contact's own clearance. */
export function atContact({ contacts }: Pick<Card, 'contacts'>, at: Point): boolean {
  return contacts.some((contact) => distance(contactPlace(contact), at) <= Math.min(contact.reach_mm, 6));
}
