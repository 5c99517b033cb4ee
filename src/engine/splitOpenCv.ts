import { withoutEval } from './withoutEval.ts';

/** The published script in two parts: the JavaScript glue, and the WebAssembly that it embeds. */
export interface OpenCvParts {
  /** Body of a function that returns the factory: factory(options) starts an instance. */
  glue: string;
  wasm: Uint8Array;
}

const before = 'data:application/octet-stream;base64,AGFzbQ';
const head = 'var cv = (function() {';
const tail = "if (typeof exports === 'object' && typeof module === 'object')";

/**
 * Cuts the embedded WebAssembly out of OpenCV's script, so that it can be fetched, compiled and cached by itself.
 * @param script text of `@techstark/opencv-js`
 * @param decode base64 to bytes
 * @throws Error when the script is built otherwise than release 4.12 is
 */
export function splitOpenCv(script: string, decode: (base64: string) => Uint8Array): OpenCvParts {
  const data = script.indexOf(before);
  const from = data + before.length - 'AGFzbQ'.length;
  const to = script.indexOf('"', from);
  const start = script.indexOf(head);
  const end = script.lastIndexOf(tail);
  if (data < 0 || to < 0 || start < 0 || end < 0) {
    throw new Error(
      'The OpenCV script is laid out otherwise than expected: check its version (4.12.0-release.1).',
    );
  }
  const glue = `${script.slice(start, data)}opencv.wasm${script.slice(to, end)}\nreturn cv;`;
  return { glue: withoutEval(glue), wasm: decode(script.slice(from, to)) };
}
