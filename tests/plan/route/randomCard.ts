import type { Card } from '../../../src/card/index.ts';
import { cardSchema } from '../../../src/card/index.ts';
import { seeded } from '../compare/drawPair.ts';

/** An A6 card with one to eight lamps at random places and turns of 45 degrees, some lit by contacts of their own. */
export function randomCard(seed: number): Card {
  const random = seeded(seed);
  const [width, height] = [105, 148];
  const wanted = 1 + Math.floor(random() * 8);
  const spot = (rim: number): [number, number] => [
    rim + random() * (width - 2 * rim),
    rim + random() * (height - 2 * rim),
  ];
  const cell = spot(18);
  const taken: { at: [number, number]; room: number }[] = [{ at: cell, room: 26 }];
  const free = (at: [number, number], room: number) =>
    taken.every((t) => Math.hypot(at[0] - t.at[0], at[1] - t.at[1]) >= Math.max(room, t.room));
  const lamps: object[] = [];
  const contacts: object[] = [];
  for (let tries = 0; tries < 4000 && lamps.length < wanted; tries++) {
    const at = spot(16);
    const angle = (Math.floor(random() * 8) * Math.PI) / 4;
    const [ux, uy] = [2.5 * Math.cos(angle), 2.5 * Math.sin(angle)];
    if (!free(at, 24)) continue;
    taken.push({ at, room: 24 });
    const id = `L${lamps.length + 1}`;
    const contact = seed % 4 === 0 && contacts.length < 2 ? contactFor(id, spot, free) : undefined;
    if (contact) {
      taken.push({ at: contact.at, room: 24 });
      contacts.push(contact);
    }
    lamps.push({
      id,
      plus: [at[0] + ux, at[1] + uy],
      minus: [at[0] - ux, at[1] - uy],
      ...(contact && { intent: { contact: contact.id } }),
    });
  }
  return cardSchema.parse({
    format: 'foilproof/1',
    base: { width_mm: width, height_mm: height },
    cell: { at: cell },
    lamps,
    contacts,
  });
}

function contactFor(
  lamp: string,
  spot: (rim: number) => [number, number],
  free: (at: [number, number], room: number) => boolean,
): { id: string; at: [number, number]; how: 'press' } | undefined {
  for (let tries = 0; tries < 200; tries++) {
    const at = spot(16);
    if (free(at, 24)) return { id: `C of ${lamp}`, at, how: 'press' };
  }
  return undefined;
}
