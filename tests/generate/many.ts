import type { Point } from '../../src/geometry/index.ts';
import type { Build, BuiltStrip } from './build.ts';
import type { Entry } from './catalogue.ts';
import { drawConditions } from './conditions.ts';
import {
  bridge,
  extraTape,
  gap,
  lifted,
  neck,
  notLaid,
  planMoved,
  reversed,
  spoil,
  tight,
  withCell,
} from './faults.ts';
import type { Fault } from './faults.ts';
import { harbourNight } from './harbourNight.ts';
import { inside } from './lay.ts';
import { randomFrom } from './random.ts';
import type { Random } from './random.ts';

/** Seeds of the two sets never meet: certainty is fitted on the one and measured on the other. */
export const splits = { fit: 100_000, held: 200_000 } as const;
export type Split = keyof typeof splits;

/** Faults lie this far from one another, mm, so that none explains a neighbour's finding. */
const apart = 14;

/** Harbour Night with a few faults of drawn kinds, places and sizes, under drawn conditions; one in five is sound. */
export function drawMany(split: Split, count: number): Entry[] {
  return Array.from({ length: count }, (_, k) => {
    const seed = splits[split] + k;
    const random = randomFrom(seed);
    const conditions = drawConditions(random);
    const faults = drawFaults(random);
    return {
      name: `${split}-${String(k).padStart(3, '0')}`,
      seed,
      build: spoil(harbourNight(), faults),
      conditions,
    };
  });
}

function drawFaults(random: Random): Fault[] {
  const sound = harbourNight();
  const faults: Fault[] = random.next() < 0.5 ? [withCell()] : [];
  if (random.next() < 0.2) return faults;
  const taken: Point[] = [];
  const free = (p: Point): boolean => taken.every((q) => Math.hypot(p[0] - q[0], p[1] - q[1]) > apart);
  const count = 2 + Math.floor(random.between(0, 3));
  for (let tries = 0; taken.length < count && tries < 200; tries++) {
    const drawn = drawFault(sound, random);
    if (!drawn || !free(drawn.at)) continue;
    taken.push(drawn.at);
    faults.push(drawn.fault);
  }
  return faults;
}

interface Drawn {
  at: Point;
  fault: Fault;
}

function drawFault(sound: Build, random: Random): Drawn | undefined {
  const dice = random.next();
  if (dice < 0.45) return drawGap(sound, random);
  if (dice < 0.6) return betweenBeams(random, true);
  if (dice < 0.7) return betweenBeams(random, false);
  if (dice < 0.8) return drawNeck(sound, random);
  if (dice < 0.84) return ofLamp(sound, random, (id) => reversed(id));
  if (dice < 0.88) return ofLamp(sound, random, (id) => lifted(id, aside(id, random.pick([3.4, -3.4]))));
  if (dice < 0.93) return drawExtra(sound, random);
  const id = `beam-${random.pick([1, 2, 3, 4, 5])}`;
  const beam = sound.strips.find((strip) => strip.id === id)!;
  const at = middle(beam.path[0], beam.path[1], 0.5);
  return { at, fault: dice < 0.96 ? notLaid(beam.id) : planMoved(beam.id, [random.pick([-2.2, 2.2]), 0]) };
}

function drawGap(sound: Build, random: Random): Drawn | undefined {
  const place = placeOnStrip(sound, random);
  if (!place) return undefined;
  const widthMm = random.pick([0.3, 0.5, 0.7, 0.7, 1, 1, 1.2, 1.5, 2, 2.5]);
  return { at: place.at, fault: gap(place.strip.id, place.at, widthMm, random.between(-0.25, 0.25)) };
}

function drawNeck(sound: Build, random: Random): Drawn | undefined {
  const place = placeOnStrip(sound, random);
  if (!place) return undefined;
  const widthMm = place.strip.widthMm * random.between(0.15, 0.28);
  return { at: place.at, fault: neck(place.strip.id, place.at, widthMm) };
}

/** A scrap between two neighbouring beams, all the way across or not quite. */
function betweenBeams(random: Random, across: boolean): Drawn {
  const left = random.pick([1, 2, 3, 4]);
  const x = 20 + 12 * (left - 1);
  const y = random.between(42, 98);
  const widthMm = random.between(0.8, 3);
  if (across) {
    const fault = bridge([x, y], [x + 12, y + random.between(-1, 1)], widthMm, [
      `beam-${left}`,
      `beam-${left + 1}`,
    ]);
    return { at: [x + 6, y], fault };
  }
  const leftMm = random.pick([0.4, 0.6, 0.8]);
  const end = x + 10.5 - leftMm;
  return {
    at: [x + 10.5 - leftMm / 2, y],
    fault: tight([x, y], [end, y], widthMm, leftMm, [x + 10.5 - leftMm / 2, y]),
  };
}

function ofLamp(sound: Build, random: Random, fault: (id: string) => Fault): Drawn {
  const lamp = random.pick(sound.lamps);
  return { at: lamp.at, fault: fault(lamp.id) };
}

/** Beside its strips: W3 lies between two level rails, the others between upright strips. */
const aside = (id: string, mm: number): Point => (id === 'W3' ? [0.4, 2.2] : [mm, 0.4]);

/** A piece of tape on bare paper, where it can be found. */
function drawExtra(sound: Build, random: Random): Drawn | undefined {
  for (let tries = 0; tries < 60; tries++) {
    const at: Point = [random.between(8, 97), random.between(10, 140)];
    const turn = random.between(0, Math.PI);
    const half = random.between(4, 9);
    const [ux, uy] = [half * Math.cos(turn), half * Math.sin(turn)];
    const widthMm = random.between(2, 4);
    const ends: Point[] = [-1, -0.5, 0, 0.5, 1].map((t) => [at[0] + t * ux, at[1] + t * uy]);
    if (!ends.every((p) => isBare(sound, p, widthMm / 2 + 2))) continue;
    return { at, fault: extraTape(ends[0], ends[4], widthMm) };
  }
  return undefined;
}

function isBare({ strips, lamps, cell, patch, base }: Build, p: Point, clearMm: number): boolean {
  if (Math.min(p[0], p[1], base.width_mm - p[0], base.height_mm - p[1]) < clearMm) return false;
  if (strips.some((s) => toStrip(s, p) < clearMm) || inside(patch.ring, ...p)) return false;
  return lamps.every((l) => away(l.at, p) > 4 + clearMm) && away(cell.at, p) > 11 + clearMm;
}

/** A place on a strip where nothing else lies on it or ends at it. */
function placeOnStrip(sound: Build, random: Random): { strip: BuiltStrip; at: Point } | undefined {
  const strip = random.pick(sound.strips.filter(({ id }) => !id.startsWith('P-beam')));
  const k = Math.floor(random.between(0, strip.path.length - 1));
  const at = middle(strip.path[k], strip.path[k + 1], random.between(0.05, 0.95));
  const others = sound.strips.filter((other) => other !== strip);
  const clear =
    strip.path.every((p) => away(p, at) > 6) &&
    others.every((other) => toStrip(other, at) > 3.5) &&
    sound.lamps.every((lamp) => away(lamp.at, at) > 8.5) &&
    sound.contacts.every((contact) => away(contact.at, at) > 7) &&
    away(sound.cell.at, at) > 14 &&
    away(middle(sound.patch.ring[0], sound.patch.ring[2], 0.5), at) > 12;
  return clear ? { strip, at } : undefined;
}

/** Distance of a place from a strip's border, mm. */
function toStrip({ path, widthMm }: BuiltStrip, p: Point): number {
  const to = (a: Point, b: Point): number => {
    const length = away(a, b);
    const along = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / length ** 2;
    return away(middle(a, b, Math.min(1, Math.max(0, along))), p);
  };
  return Math.min(...path.slice(1).map((b, k) => to(path[k], b))) - widthMm / 2;
}

const away = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
const middle = (a: Point, b: Point, t: number): Point => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
