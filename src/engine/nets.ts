import { asFast } from './asFast.ts';
import type { Net, QuickRunner, Runner } from './net.ts';
import { sameAnswer } from './sameAnswer.ts';

export interface Nets {
  /** Opens a net once; later calls give the same one. */
  open(file: string): Promise<Net>;
  /**
   * Lets a quick runner take over each net, open by now or later, once it has answered as the sure one does, and no slower. At its first
   * failure, of whatever kind, it is given up for good, and what it failed in is asked of the sure one.
   * @returns whether it has taken over all that is open
   */
  quicken(start: () => Promise<QuickRunner | undefined>): Promise<boolean>;
}

/** A net as the sure runner has it. */
interface Opened {
  file: string;
  sure: Net;
}

/** A quick runner, the nets that it was asked to take over, and those that it has. */
interface Lead {
  runner: QuickRunner;
  asked: Map<Opened, Promise<void>>;
  taken: Map<Opened, Net>;
}

/**
 * Nets on a runner that is sure, and on a quick one while that holds good.
 * @param weightsOf reads a file of weights
 * @param now a clock, ms
 */
export function netsOn(
  sureRunner: Runner,
  weightsOf: (file: string) => Promise<Uint8Array>,
  now: () => number = () => performance.now(),
): Nets {
  const nets = new Map<string, Promise<Opened>>();
  let lead: Lead | undefined;

  async function openSure(file: string): Promise<Opened> {
    const net = { file, sure: await sureRunner.open(await weightsOf(file)) };
    if (lead) void takeOver(net, lead);
    return net;
  }

  function takeOver(net: Opened, by: Lead): Promise<void> {
    const asked = by.asked.get(net) ?? openQuick(net, by);
    by.asked.set(net, asked);
    return asked;
  }

  async function openQuick(net: Opened, by: Lead): Promise<void> {
    try {
      const quick = await by.runner.open(await weightsOf(net.file));
      await sameAnswer(quick, net.sure);
      if (!by.runner.untimed) await asFast(quick, net.sure, now);
      by.taken.set(net, quick);
    } catch {
      giveUp(by);
    }
  }

  async function run(net: Opened, picture: Parameters<Net['run']>): Promise<Float32Array> {
    const by = lead;
    const quick = by?.taken.get(net);
    if (!by || !quick) return net.sure.run(...picture);
    try {
      return ofNumbers(await quick.run(...picture));
    } catch {
      giveUp(by);
      return net.sure.run(...picture);
    }
  }

  function giveUp(failed: Lead): void {
    if (lead !== failed) return;
    lead = undefined;
    failed.runner.close().catch(() => undefined);
  }

  return {
    async open(file) {
      const opened = nets.get(file) ?? openSure(file);
      nets.set(file, opened);
      try {
        const net = await opened;
        return { run: (...picture) => run(net, picture) };
      } catch (error) {
        nets.delete(file);
        throw error;
      }
    },
    async quicken(start) {
      const runner = await start().catch(() => undefined);
      if (!runner) return false;
      const mine: Lead = { runner, asked: new Map(), taken: new Map() };
      lead = mine;
      for (const opened of nets.values()) {
        const net = await opened.catch(() => undefined);
        if (net && lead === mine) await takeOver(net, mine);
      }
      return lead === mine;
    },
  };
}

/** @throws Error where a single value is no number, as where a sum has run over */
function ofNumbers(maps: Float32Array): Float32Array {
  let sum = 0;
  for (let k = 0; k < maps.length; k++) sum += maps[k];
  if (!Number.isFinite(sum)) throw new Error('The answer holds what is no number.');
  return maps;
}
