import { describe, expect, it } from 'vitest';
import { withMats } from '../../src/engine/withMats.ts';

/** The module once more, nothing loaded yet: test files of one process share the modules that they import. */
const fresh = '../../src/engine/openCv.ts?fresh';
const { loadOpenCv } = (await import(fresh)) as typeof import('../../src/engine/openCv.ts');

const faults = ['unhandledRejection', 'uncaughtException'];
const handlers = () => faults.flatMap((fault) => process.listeners(fault as NodeJS.Signals));
const before = handlers();

describe('loadOpenCv', () => {
  it('gives one working instance and tells its progress', async () => {
    const shares: number[] = [];
    const cv = await loadOpenCv((share) => shares.push(share));
    expect(shares.at(-1)).toBe(1);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(await loadOpenCv()).toBe(cv);
    const sum = withMats((own) => {
      const m = own(new cv.Mat(2, 3, cv.CV_8UC1, new cv.Scalar(7)));
      return [...m.data].reduce((a, b) => a + b);
    });
    expect(sum).toBe(42);
  });

  it('leaves the process error handlers alone', async () => {
    await loadOpenCv();
    expect(handlers()).toEqual(before);
  });
});

describe('withMats', () => {
  it('frees what it owns when the work throws', async () => {
    const cv = await loadOpenCv();
    let kept: InstanceType<typeof cv.Mat> | undefined;
    expect(() =>
      withMats((own) => {
        kept = own(new cv.Mat(2, 2, cv.CV_8UC1));
        throw new Error('stop');
      }),
    ).toThrow('stop');
    expect(kept?.isDeleted()).toBe(true);
  });
});
