import { grabCut, grabCutHint } from '../../src/engine/grabCut.ts';
import { loadOpenCv } from '../../src/engine/openCv.ts';
import { withMats } from '../../src/engine/withMats.ts';
import { cutOut } from '../../src/sheet/outline/cutOut.ts';
import { workPicture } from '../../src/sheet/outline/work.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';

/** Milliseconds of what the check does by OpenCV, and of OpenCV's call alone on a picture of the same size; medians of five. */
export interface DoorMs {
  stage: string;
  ours: number;
  alone: number;
}

const size = { width: 180, height: 240 };
const rounds = 3;

/** Every stage that OpenCV does: cutting the sheet out where its edges leave it in doubt, and the door to that call. */
export async function openCvDoors(photoPath: string): Promise<DoorMs[]> {
  const cv = await loadOpenCv();
  const work = workPicture(await decodePhoto(photoPath));
  const { rgb, hints } = picture();
  const alone = median(() =>
    withMats((own) => {
      const image = own(new cv.Mat(size.height, size.width, cv.CV_8UC3));
      const mask = own(new cv.Mat(size.height, size.width, cv.CV_8UC1));
      image.data.set(rgb);
      mask.data.set(hints);
      const [ground, object] = [own(new cv.Mat()), own(new cv.Mat())];
      const begun = performance.now();
      const whole = new cv.Rect(0, 0, size.width, size.height);
      cv.grabCut(image, mask, whole, ground, object, rounds, cv.GC_INIT_WITH_MASK);
      return performance.now() - begun;
    }),
  );
  const door = median(() => timed(() => grabCut(cv, rgb, size.width, size.height, hints, rounds)));
  const [whole, call] = await cutOutTimes(work);
  return [
    { stage: 'grabCut through its door', ours: door, alone },
    { stage: 'the sheet cut out of a photograph', ours: whole, alone: call },
  ];
}

/** `cutOut` as the outline calls it, and the part of it that OpenCV's grabCut took. */
async function cutOutTimes(work: ReturnType<typeof workPicture>): Promise<[number, number]> {
  const cv = await loadOpenCv();
  const own = cv.grabCut;
  let within = 0;
  const ours: number[] = [];
  const calls: number[] = [];
  // The overloads lie on the function itself.
  const watched: typeof own = (...given) => void (within = timed(() => own.apply(cv, given)));
  cv.grabCut = Object.assign(watched, own);
  for (let n = 0; n < 5; n++) {
    const begun = performance.now();
    await cutOut(work, undefined);
    ours.push(performance.now() - begun);
    calls.push(within);
  }
  cv.grabCut = own;
  return [middle(ours), middle(calls)];
}

/** A noisy light sheet on a noisy dark table, probably known. */
function picture(): { rgb: Uint8Array; hints: Uint8Array } {
  const { width, height } = size;
  const hints = new Uint8Array(width * height);
  const rgb = new Uint8Array(3 * width * height);
  for (let k = 0; k < hints.length; k++) {
    const [x, y] = [k % width, Math.floor(k / width)];
    const sheet = x > 40 && x < 140 && y > 50 && y < 190;
    const near = x > 30 && x < 150 && y > 40 && y < 200;
    hints[k] = near ? grabCutHint.probablyForeground : grabCutHint.background;
    rgb.fill((sheet ? 200 : 90) + ((k * 2654435761) >>> 27), 3 * k, 3 * k + 3);
  }
  return { rgb, hints };
}

function timed(work: () => unknown): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}

function median(once: () => number): number {
  return middle(Array.from({ length: 5 }, once));
}

const middle = (times: number[]): number => [...times].sort((a, b) => a - b)[times.length >> 1];
