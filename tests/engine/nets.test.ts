import { afterEach, describe, expect, test, vi } from 'vitest';
import { openNet } from '../../src/engine/onnx.ts';
import { watched, type GpuDevice } from '../../src/engine/gpuFaults.ts';
import { gpuHere } from '../../src/engine/gpuHere.ts';
import { oneByOne, turns } from '../../src/engine/inTurn.ts';
import type { Net, QuickRunner, Runner } from '../../src/engine/net.ts';
import { netsOn } from '../../src/engine/nets.ts';
import { farthest, height, picture, sameAnswer, width } from '../../src/engine/sameAnswer.ts';

const files = ['sheet.onnx', 'base.onnx'];
const planes = Float32Array.of(1, 2, 3);
const weightsOf = async (file: string) => new TextEncoder().encode(file);

/** A net that answers with its picture, each value plus `add`. */
const adding = (add: number): Net => ({ run: async (asked) => asked.map((value) => value + add) });
const sure: Runner = { open: async () => adding(0) };

/** A quick runner of these nets. That 0.01 lies within what runners may differ by shows which of the two has answered. */
function quickOf(open: () => Promise<Net>): QuickRunner & { closed: number } {
  const runner = { open, closed: 0, close: async () => void runner.closed++ };
  return runner;
}

async function opened(quick: QuickRunner) {
  const nets = netsOn(sure, weightsOf, () => 0);
  const [one, other] = await Promise.all(files.map(nets.open));
  const taken = await nets.quicken(async () => quick);
  return { nets, one, other, taken };
}

const fromQuick = planes.map((value) => value + 0.01);

describe('a quick runner', () => {
  test('takes over the nets that are open, and those opened later', async () => {
    const { nets, one, other, taken } = await opened(quickOf(async () => adding(0.01)));
    expect(taken).toBe(true);
    for (const net of [one, other]) expect(await net.run(planes, 1, 1)).toEqual(fromQuick);
    const later = await nets.open('later.onnx');
    await vi.waitFor(async () => expect(await later.run(planes, 1, 1)).toEqual(fromQuick));
  });

  test('is not missed where it cannot be started', async () => {
    const nets = netsOn(sure, weightsOf);
    const net = await nets.open('sheet.onnx');
    expect(await nets.quicken(() => Promise.reject(new TypeError('Failed to fetch')))).toBe(false);
    expect(await nets.quicken(async () => undefined)).toBe(false);
    expect(await net.run(planes, 1, 1)).toEqual(planes);
  });

  test.each<[string, () => Promise<Net>]>([
    ['refuses a session', () => Promise.reject(new Error('out of memory'))],
    ['reckons wrongly', async () => adding(0.2)],
    ['answers with what is no number', async () => adding(NaN)],
    ['answers in another size', async () => ({ run: async () => planes })],
  ])('that %s takes over nothing and is closed', async (_, open) => {
    const quick = quickOf(open);
    const { one, other, taken } = await opened(quick);
    expect(taken).toBe(false);
    for (const net of [one, other]) expect(await net.run(planes, 1, 1)).toEqual(planes);
    expect(quick.closed).toBe(1);
  });

  test.each([
    { itsMs: 30, first: 900, taken: true },
    { itsMs: 210, first: 210, taken: false },
  ])(
    'that takes $itsMs ms, at first $first, where the sure one takes 200 takes over: $taken',
    async (pace) => {
      let clock = 0;
      const lasting = (ms: () => number): Net => ({
        run: async (asked) => {
          // The small picture that the answers are compared on is not timed.
          if (asked.length > 3 * width * height) clock += ms();
          return asked;
        },
      });
      let asked = 0;
      const quick = quickOf(async () => lasting(() => (asked++ ? pace.itsMs : pace.first)));
      const nets = netsOn({ open: async () => lasting(() => 200) }, weightsOf, () => clock);
      await nets.open('sheet.onnx');
      expect(await nets.quicken(async () => quick)).toBe(pace.taken);
      expect(quick.closed).toBe(pace.taken ? 0 : 1);
    },
  );

  test('that is wanted however slow it is is not timed', async () => {
    const nets = netsOn(sure, weightsOf, () => Promise.reject(new Error('asked for the time')) as never);
    await nets.open('sheet.onnx');
    expect(await nets.quicken(async () => ({ ...quickOf(async () => adding(0)), untimed: true }))).toBe(true);
  });

  test.each<[string, Net['run']]>([
    ['is lost', () => Promise.reject(new Error('device lost'))],
    ['answers with what is no number', async (asked) => asked.map(() => NaN)],
  ])('that %s in a run is given up for good, and the run repeated', async (_, fail) => {
    let run = adding(0.01).run;
    let runs = 0;
    const quick = quickOf(async () => ({ run: (...asked) => (runs++, run(...asked)) }));
    const { one, other } = await opened(quick);
    run = fail;
    runs = 0;
    expect(await one.run(planes, 1, 1)).toEqual(planes);
    run = adding(0.01).run;
    for (const net of [one, other, one]) expect(await net.run(planes, 1, 1)).toEqual(planes);
    expect(runs).toBe(1);
    expect(quick.closed).toBe(1);
  });
});

test('the picture that runners are compared by shows the nets something: their answers to it are far from flat', async () => {
  for (const file of files) {
    const net = await openNet(file);
    const maps = await net.run(picture(), height, width);
    const nothing = await net.run(new Float32Array(3 * height * width), height, width);
    expect(farthest(maps, nothing)).toBeGreaterThan(2);
    const spread = maps.slice(0, height * width).sort();
    expect(spread[spread.length - 1] - spread[0]).toBeGreaterThan(4);
    await sameAnswer(net, net);
  }
});

test('a runner is asked one thing at a time, and goes on after a failure', async () => {
  let running = 0;
  const inTurn = turns();
  const net = oneByOne(
    {
      async run(asked) {
        if (++running > 1) throw new Error('two at once');
        await new Promise((resolve) => setTimeout(resolve, 1));
        running--;
        if (asked.length === 0) throw new Error('nothing asked');
        return asked;
      },
    },
    inTurn,
  );
  const asked = [planes, new Float32Array(0), planes].map((each) => net.run(each, 1, 1));
  const told = await Promise.allSettled(asked);
  expect(told.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
});

/** What a device complains of in its next run. */
function device(complaints: (string | null)[]): GpuDevice & { lose(message: string): void; open: number } {
  let lose: (message: string) => void = () => undefined;
  const lost = new Promise<{ message: string }>((resolve) => (lose = (message) => resolve({ message })));
  return {
    lost,
    lose: (message) => lose(message),
    open: 0,
    pushErrorScope() {
      this.open++;
    },
    async popErrorScope() {
      this.open--;
      const message = complaints.shift() ?? null;
      return message === null ? null : { message };
    },
    destroy: () => undefined,
  };
}

describe('a net on a graphics processor', () => {
  test('answers where nothing is complained of', async () => {
    const quiet = device([]);
    expect(await watched(adding(1), quiet).run(planes, 1, 1)).toEqual(planes.map((value) => value + 1));
    expect(quiet.open).toBe(0);
  });

  test('fails where its device complains, though the run itself ends well', async () => {
    const short = device([null, 'out of memory', null]);
    await expect(watched(adding(1), short).run(planes, 1, 1)).rejects.toThrow('out of memory');
  });

  test('fails where its device is lost in the middle of a run that never ends', async () => {
    const going = device([]);
    const asked = watched({ run: () => new Promise(() => undefined) }, going).run(planes, 1, 1);
    going.lose('unplugged');
    await expect(asked).rejects.toThrow('unplugged');
  });
});

describe('a graphics processor is taken', () => {
  afterEach(() => vi.unstubAllGlobals());
  const withAdapter = (adapter: object | null, more: object = {}) =>
    vi.stubGlobal('navigator', { gpu: { requestAdapter: async () => adapter }, ...more });

  test('where there is one', async () => {
    withAdapter({ info: { isFallbackAdapter: false } });
    expect(await gpuHere()).toBe(true);
    withAdapter({ info: {}, isFallbackAdapter: false });
    expect(await gpuHere()).toBe(true);
  });

  test('not where it is played by software, unless a test asks for it', async () => {
    withAdapter({ info: { isFallbackAdapter: true } });
    expect(await gpuHere()).toBe(false);
    expect(await gpuHere({ played: true })).toBe(true);
    withAdapter({ isFallbackAdapter: true });
    expect(await gpuHere()).toBe(false);
  });

  test('not where there is none, or where the maker saves data', async () => {
    withAdapter(null);
    expect(await gpuHere()).toBe(false);
    vi.stubGlobal('navigator', {});
    expect(await gpuHere()).toBe(false);
    withAdapter({ info: {} }, { connection: { saveData: true } });
    expect(await gpuHere()).toBe(false);
  });
});
