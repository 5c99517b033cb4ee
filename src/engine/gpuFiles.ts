/** How the built files begin that only a page with a graphics processor fetches; a mark of their contents follows. */
export const gpuFiles = ['onnxGpu', 'ort-wasm-simd-threaded.asyncify'] as const;

/** Script, glue and WebAssembly. */
export const gpuFileCount = 3;

/** Where the service worker keeps them once they were fetched. */
export const gpuCache = 'foilproof-gpu';
