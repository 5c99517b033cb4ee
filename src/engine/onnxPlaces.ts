/** Where the net runner's WebAssembly and the trained weights lie: our own origin in a page, the disk in Node. */
export interface OnnxPlaces {
  /** The runner's WebAssembly. */
  runner(): Promise<ArrayBuffer>;
  /** A file of public/models/. */
  model(file: string): Promise<Uint8Array>;
}
