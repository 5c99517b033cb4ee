import { openNet, type Net } from '../../engine/onnx.ts';
import { loadOpenCv } from '../../engine/openCv.ts';

/**
 * Fetches and starts what the check runs on, while the maker still frames the photograph. What cannot be had is left
 * out: the check goes on without it.
 * @param onShare told shares 0..1 of the way
 */
export async function warmEngines(onShare: (share: number) => void = () => undefined): Promise<void> {
  const shares = [0, ...nets.map(() => 0)];
  const tell = (part: number, share: number) => {
    shares[part] = share;
    onShare(shares.reduce((sum, each) => sum + each, 0) / shares.length);
  };
  const starts = [
    ...nets.map((file, part) =>
      openNet(file)
        .then(runIn)
        .finally(() => tell(part, 1)),
    ),
    loadOpenCv((share) => tell(nets.length, share)),
  ];
  await Promise.allSettled(starts);
}

const nets = ['base.onnx', 'sheet.onnx'];

const blank = { side: 128, times: 3 };

/** Runs a net on a blank picture: the browser compiles WebAssembly for speed only once it has run for a while. */
async function runIn(net: Net): Promise<void> {
  const { side, times } = blank;
  for (let n = 0; n < times; n++) await net.run(new Float32Array(3 * side * side), side, side);
}
