/** A trained net with one picture in and one stack of maps out. */
export interface Net {
  /**
   * @param planes channel-major floats, channels * height * width
   * @returns channel-major floats of the same height and width
   */
  run(planes: Float32Array, height: number, width: number): Promise<Float32Array>;
}

/** What nets run on. */
export interface Runner {
  /** @throws Error when the runner cannot be started or does not take the weights */
  open(weights: Uint8Array): Promise<Net>;
}

/** A runner that can be given up; what it held is given back then. */
export interface QuickRunner extends Runner {
  /** It is wanted however slow it is: a test's. */
  untimed?: boolean;
  close(): Promise<void>;
}
