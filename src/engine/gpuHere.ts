/** What is needed of the page's navigator; elsewhere than in newer browsers it has less. */
interface Navigator {
  gpu?: { requestAdapter(): Promise<Adapter | null> };
  connection?: { saveData?: boolean };
}

interface Adapter {
  info?: { isFallbackAdapter?: boolean };
  /** Where browsers told it first. */
  isFallbackAdapter?: boolean;
}

export interface GpuChoice {
  /** Takes a processor that is only played by software too: slower than WebAssembly, but of use to a test. */
  played?: boolean;
}

/** Whether there is a graphics processor to run on, and the maker has not asked to be spared what must be fetched for it. */
export async function gpuHere({ played = false }: GpuChoice = {}): Promise<boolean> {
  const { gpu, connection } = navigator as Navigator;
  if (!gpu || connection?.saveData) return false;
  const adapter = await gpu.requestAdapter();
  if (!adapter) return false;
  return played || !(adapter.info?.isFallbackAdapter ?? adapter.isFallbackAdapter ?? false);
}
