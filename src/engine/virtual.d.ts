/** Made by openCvPlugin.ts: OpenCV's glue as a module, and the address of its split-out WebAssembly. */
declare module 'virtual:opencv' {
  type Build = (
    process: undefined,
    require: undefined,
    importScripts: () => void,
    self: { location: { href: string } },
    embind: typeof import('./embindCallers.ts').embindCallers,
  ) => import('./openCvSource.ts').OpenCvFactory;
  const build: Build;
  export default build;
  export const wasmUrl: string;
}
