import type { Ask, CallName, Told } from './bench/worker/protocol.ts';
import { answer } from './bench/worker/session.ts';
import { FoilproofError } from './words/error.ts';

/** The worker: takes calls one after another, since each stage builds on the one before; warming and reading run beside them. */
let queue: Promise<void> = Promise.resolve();

const beside = new Set<CallName>(['warm', 'read', 'stopReading']);

self.onmessage = ({ data }: MessageEvent<Ask>) => {
  if (beside.has(data.call)) void handle(data);
  else queue = queue.then(() => handle(data));
};

async function handle(ask: Ask): Promise<void> {
  const tell = (told: Told, transfer: Transferable[] = []) => self.postMessage(told, { transfer });
  try {
    const { given, transfer } = await answer(ask, {
      onStage: (stage) => tell({ id: ask.id, is: 'stage', stage }),
      onShare: (share) => tell({ id: ask.id, is: 'share', share }),
    });
    tell({ id: ask.id, is: 'answer', answer: given }, transfer);
  } catch (error) {
    const sentence = error instanceof Error ? error.message : String(error);
    tell({ id: ask.id, is: 'error', sentence, forMaker: error instanceof FoilproofError });
  }
}
