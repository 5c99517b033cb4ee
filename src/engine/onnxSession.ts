import type { InferenceSession, TensorConstructor } from 'onnxruntime-web/wasm';
import type { Net } from './net.ts';

/** A session as a net: the picture in, the first output out, and the runner's own memory of both given back. */
export function netOf(session: InferenceSession, Tensor: TensorConstructor): Net {
  const [input] = session.inputNames;
  const [output] = session.outputNames;
  return {
    async run(planes, height, width) {
      const channels = planes.length / (height * width);
      const picture = new Tensor('float32', planes, [1, channels, height, width]);
      try {
        const answer = (await session.run({ [input]: picture }))[output];
        const maps = (await answer.getData()) as Float32Array;
        answer.dispose();
        return maps;
      } finally {
        picture.dispose();
      }
    },
  };
}
