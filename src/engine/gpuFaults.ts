import type { Net } from './net.ts';

/** What is needed of a GPUDevice. */
export interface GpuDevice {
  lost: Promise<{ message: string }>;
  pushErrorScope(fault: GpuFault): void;
  popErrorScope(): Promise<{ message: string } | null>;
  destroy(): void;
}

type GpuFault = 'validation' | 'out-of-memory' | 'internal';
const faults: GpuFault[] = ['validation', 'out-of-memory', 'internal'];

/**
 * A net whose run fails where its device was lost or complained of anything: by itself such a run may end well, with
 * numbers that mean nothing.
 * @source WebGPU (W3C), section 22: losing the device, error scopes
 */
export function watched(net: Net, device: GpuDevice): Net {
  const lost = device.lost.then(({ message }) => {
    throw new Error(`The graphics processor is gone: ${message}`);
  });
  lost.catch(() => undefined);
  return {
    async run(...picture) {
      for (const fault of faults) device.pushErrorScope(fault);
      const maps = await Promise.race([net.run(...picture), lost]);
      const told = await Promise.race([Promise.all(faults.map(() => device.popErrorScope())), lost]);
      const complaint = told.find((error) => error !== null);
      if (complaint) throw new Error(complaint.message);
      return maps;
    },
  };
}
