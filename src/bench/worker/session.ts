import type { Card } from '../../card/index.ts';
import { brush, firstStage, renewFrom, unbrush, type Checked } from '../../check/index.ts';
import { giveBack } from '../../engine/giveBack.ts';
import { quickenNets } from '../../engine/onnx.ts';
import { decodePhotoInBrowser } from '../../photo/decodeBrowser.ts';
import { measurePhoto, type Photo } from '../../photo/index.ts';
import { findIdCard } from '../../sheet/index.ts';
import { chooseLanguage } from '../../words/language.ts';
import { measureAs } from '../../words/lengths.ts';
import { classCheck } from './classCheck.ts';
import { sheetsOf } from './sheetsOf.ts';
import { strokeChange } from './strokeChange.ts';
import type { Progress } from './client.ts';
import { overlayOf, pictureOf } from './pictures.ts';
import { warmCheck } from './warmCheck.ts';
import { warmEngines } from './warmEngines.ts';
import { isPlanCall } from './planCalls.ts';
import { readingOf, stopReading } from './reading.ts';
import type { Ask, Calls, RenewableStage, Renewed } from './protocol.ts';

interface Answered {
  given: Calls[keyof Calls]['answer'];
  transfer: Transferable[];
}

let photo: Photo | undefined;
/** Further shots of the same sheet. */
let again: Photo[] = [];
let checked: Checked | undefined;
/** Whether the page has asked for anything but to make ready. */
let asked = false;
/** What to tell of the photograph itself. */
let cautions: string[] = [];

/** Does one call. The photograph and the check stay here between calls. */
export async function answer({ call, ask }: Ask, progress: Progress): Promise<Answered> {
  asked ||= call !== 'warm' && call !== 'speak';
  if (call === 'open') return { given: await open(ask as Calls['open']['ask']), transfer: [] };
  if (call === 'again') return { given: await openAgain(ask as Calls['again']['ask']), transfer: [] };
  if (call === 'renew') return renew(ask as Calls['renew']['ask'], progress);
  if (call === 'speak') {
    await chooseLanguage((ask as Calls['speak']['ask']).language);
    return { given: null, transfer: [] };
  }
  if (call === 'classCheck')
    return { given: await classCheck(ask as Calls['classCheck']['ask']), transfer: [] };
  if (call === 'measureByCard')
    return { given: measureByCard(ask as Calls['measureByCard']['ask']), transfer: [] };
  if (call === 'read') {
    if (!checked) throw new Error('No photograph is checked.');
    const given = await readingOf(checked, (ask as Calls['read']['ask']).card, progress.onShare);
    return { given, transfer: [] };
  }
  if (call === 'stopReading') {
    stopReading();
    return { given: null, transfer: [] };
  }
  if (isPlanCall(call)) return (await import('./planWork.ts')).planWork[call](ask as never);
  await warmEngines(progress.onShare);
  void quickenNets();
  void warmCheck(() => !asked).catch(() => undefined);
  return { given: null, transfer: [] };
}

function measureByCard({ corners }: Calls['measureByCard']['ask']): Calls['measureByCard']['answer'] {
  return (photo && findIdCard(photo, corners)?.baseMm) ?? null;
}

async function open({ name, file }: Calls['open']['ask']): Promise<Calls['open']['answer']> {
  const opened = await decodePhotoInBrowser(file, name);
  for (const { rgba } of photo ? [photo, ...again] : again) giveBack(rgba);
  photo = opened;
  again = [];
  checked = undefined;
  return { width: photo.width, height: photo.height };
}

async function openAgain({ shots }: Calls['again']['ask']): Promise<null> {
  const opened: Photo[] = [];
  for (const { name, file } of shots) opened.push(await decodePhotoInBrowser(file, name));
  again = opened;
  return null;
}

async function renew({ from, card, outline }: Calls['renew']['ask'], progress: Progress): Promise<Answered> {
  if (!photo) throw new Error('No photograph is open.');
  measureAs(card);
  const first: RenewableStage = checked ? firstStage(from, checked, card) : 'square';
  const options = { outline: known(card, outline), depth: 'states', ...progress } as const;
  const stroked = first === 'trace' && checked ? strokeBy(checked, card) : undefined;
  const sheets = first === 'square' ? await sheetsOf(card) : [];
  checked = stroked ?? (await renewFrom(first, { photo, again, sheets, card, before: checked }, options));
  return shown(checked, first);
}

/** An outline kept from before stands, unless the maker has dragged corners. */
function known(card: Card, outline: Calls['renew']['ask']['outline']) {
  return card.corners_px ? undefined : outline;
}

async function shown(now: Checked, from: RenewableStage): Promise<Answered> {
  const { rgb: _rgb, seen: _seen, ...sheet } = now.sheet;
  const picture = from === 'square' || (from === 'copper' && now.joined) ? pictureOf(now.sheet) : undefined;
  if (from === 'square' && photo) cautions = measurePhoto(photo, sheet.photoPxPerMm).say;
  const overlay = from === 'net' ? undefined : overlayOf(now.mask);
  const given: Renewed = {
    outline: now.outline,
    sheet,
    picture,
    overlay,
    traced: from === 'net' ? undefined : now.traced,
    suggested: now.suggested,
    scale: now.scale,
    netlist: now.netlist,
    compared: now.compared,
    verdict: now.verdict,
    timingsMs: now.timingsMs,
    cautions,
    readable: now.mask.readable,
    troubles: now.mask.troubles,
    shots: now.shots,
    joined: now.joined,
  };
  return { given, transfer: [picture, overlay].filter((each) => each !== undefined) };
}

/** One stroke more or less than before goes the short way: only what it touches is traced anew. */
function strokeBy(before: Checked, card: Card): Checked | undefined {
  const change = strokeChange(before.card.touch_up, card.touch_up);
  if (change === undefined) return undefined;
  const now = { ...before, card: { ...card, touch_up: before.card.touch_up } };
  return change === 'taken back' ? unbrush(now) : brush(now, change);
}
