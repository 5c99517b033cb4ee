import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Net, Netlist } from '../net/index.ts';
import type { Piece, Traced } from '../trace/index.ts';
import { jointRanges } from './joints.ts';
import { lampDiode } from './lampTable.ts';
import { contactPads, padPlaces } from './pads.ts';
import { partings } from './partings.ts';
import { seamsAcross, seamsOf } from './seams.ts';
import { tapeGraph, type Anchor, type TapeRun } from './tapeGraph.ts';
import type { Diode, JointKind } from './types.ts';

/** A joint between two nodes. */
export interface Joint {
  id: string;
  kind: JointKind;
  a: string;
  b: string;
  ohm: number;
  at?: Point;
}

/** A card's copper as conductors, before any contact is closed. */
export interface LaidCircuit {
  tape: TapeRun[];
  joints: Joint[];
  lamps: { id: string; plus: string; minus: string; diode: Diode; seriesOhm: number }[];
  /** Node and net of each pad that lies on copper. */
  padNode: Map<string, string>;
  netOf: Record<string, string>;
  /** A node of each net, for what joins nets at no known place. */
  netNode: Map<string, string>;
  contacts: { id: string; pads: string[]; at: Point | undefined }[];
}

export interface Touch {
  key: string;
  piece: number;
  at: Point;
  across: boolean;
}

/**
 * Lays a netlist's copper out as tape, seams and lamp pads. States then only close contacts on it.
 * @param netlist nets and pads
 * @param traced pieces with their centre-lines, whose width and length give the tape's resistance
 */
export function layCircuit(netlist: Netlist, traced: Traced, card: Card): LaidCircuit {
  const pieces = new Map(traced.pieces.map((piece) => [piece.id, piece]));
  const places = padPlaces(card);
  const nets = new Map(netlist.nets.map((net) => [net.id, net]));
  const seams = netlist.nets.flatMap((net) => seamsOf(net, traced, card));
  const across = seamsAcross(traced, card);
  const touches: Touch[] = [
    ...Object.entries(netlist.netOf).flatMap(([pad, net]) =>
      padTouch(pad, nets.get(net), places.get(pad), traced),
    ),
    ...seams.flatMap(({ id, a, b, atA, atB }) => [
      { key: `${id} a`, piece: a, at: atA, across: false },
      { key: `${id} b`, piece: b, at: atB, across: false },
    ]),
    ...across.map(({ id, piece, at }) => ({ key: id, piece, at, across: true })),
    ...partings(netlist, card, places, (pad, at) => nearestPiece(nets.get(netlist.netOf[pad]), at, traced)),
  ];
  const tape: TapeRun[] = [];
  const anchors = new Map<string, Anchor>();
  for (const [id, own] of byPiece(touches)) {
    const piece = pieces.get(id);
    if (!piece) continue;
    const laid = tapeGraph(piece, own);
    tape.push(...laid.runs);
    own.forEach(({ key }, i) => anchors.set(key, laid.anchors[i] as Anchor));
  }
  const node = (key: string) => anchors.get(key)?.before;
  const padNode = new Map(
    Object.keys(netlist.netOf).map((pad) => [pad, node(pad) ?? `net ${netlist.netOf[pad]}`]),
  );
  return {
    tape,
    joints: [
      ...seams.map(({ id, atA, ohm }) => seamJoint(id, node(`${id} a`), node(`${id} b`), ohm, atA)),
      ...across.map(({ id, at, ohm }) =>
        seamJoint(id, anchors.get(id)?.before, anchors.get(id)?.after, ohm, at),
      ),
    ].filter(({ a, b }) => a !== b),
    lamps: lampsOn(card, padNode),
    padNode,
    netOf: netlist.netOf,
    netNode: netNodes(netlist, padNode),
    contacts: card.contacts.map(({ id }) => ({
      id,
      pads: contactPads(id, netlist.netOf),
      at: places.get(`${id}a`),
    })),
  };
}

/** A pad of no known place (a third side of a contact, a flap's copper) is taken to sit in the middle of its net's first piece. */
function padTouch(pad: string, net: Net | undefined, place: Point | undefined, traced: Traced): Touch[] {
  const at = place ?? middle(traced.pieces.find(({ id }) => id === net?.pieces[0]));
  if (!net || !at) return [];
  const piece = nearestPiece(net, at, traced);
  return piece === undefined ? [] : [{ key: pad, piece, at, across: false }];
}

function middle(piece: Piece | undefined): Point | undefined {
  return piece && [(piece.box.x0 + piece.box.x1) / 2, (piece.box.y0 + piece.box.y1) / 2];
}

/** The piece of a net that lies nearest to a place, by its box: pads lie on their piece, so this only has to choose. */
function nearestPiece(net: Net | undefined, at: Point, traced: Traced): number | undefined {
  const pieces = net?.pieces ?? [];
  if (pieces.length < 2) return pieces[0];
  const away = (id: number): number => {
    const piece = traced.pieces.find((candidate) => candidate.id === id);
    if (!piece) return Infinity;
    const onLines = piece.lines.flatMap(({ path }) => path.map(([x, y]) => Math.hypot(x - at[0], y - at[1])));
    const { x0, y0, x1, y1 } = piece.box;
    const offBox = Math.hypot(Math.max(x0 - at[0], 0, at[0] - x1), Math.max(y0 - at[1], 0, at[1] - y1));
    return onLines.length > 0 ? Math.min(...onLines) : offBox;
  };
  return [...pieces].sort((p, q) => away(p) - away(q))[0];
}

function byPiece(touches: Touch[]): Map<number, Touch[]> {
  const groups = new Map<number, Touch[]>();
  for (const touch of touches) {
    const group = groups.get(touch.piece);
    if (group) group.push(touch);
    else groups.set(touch.piece, [touch]);
  }
  return groups;
}

function seamJoint(id: string, a: string | undefined, b: string | undefined, ohm: number, at: Point): Joint {
  return { id, kind: 'seam', a: a ?? id, b: b ?? id, ohm, at };
}

function lampsOn(card: Card, padNode: Map<string, string>): LaidCircuit['lamps'] {
  return card.lamps.flatMap((lamp) => {
    const plus = padNode.get(`${lamp.id}+`);
    const minus = padNode.get(`${lamp.id}-`);
    if (!plus || !minus) return [];
    const seriesOhm = lamp.series_ohm + 2 * jointRanges['lamp-leg'].usual;
    return [{ id: lamp.id, plus, minus, diode: lampDiode(lamp), seriesOhm }];
  });
}

function netNodes({ nets, netOf }: Netlist, padNode: Map<string, string>): Map<string, string> {
  const nodes = new Map(nets.map(({ id, pieces }) => [id, pieces.length > 0 ? undefined : `net ${id}`]));
  for (const [pad, net] of Object.entries(netOf)) if (!nodes.get(net)) nodes.set(net, padNode.get(pad));
  return new Map([...nodes].map(([id, node]) => [id, node ?? `net ${id}`]));
}
