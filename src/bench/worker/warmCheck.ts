import { renewFrom } from '../../check/index.ts';
import { seeCopperLearned } from '../../copper/learned/index.ts';
import { measurePhoto } from '../../photo/index.ts';
import { drawnSheet } from './drawnSheet.ts';
import { overlayOf, pictureOf } from './pictures.ts';

/** After so many rounds the most is gained. */
const rounds = 2;

/**
 * Checks a drawn sheet a few times: the browser compiles a script for speed only once it has run for a while, and the
 * maker's first photographs would wait for that.
 * @param goOn asked before each round
 */
export async function warmCheck(goOn: () => boolean): Promise<void> {
  const { photo, card } = drawnSheet();
  for (let round = 0; round < rounds; round++) {
    await others();
    if (!goOn()) return;
    const { sheet, mask } = await renewFrom(
      'square',
      { photo: { ...photo }, card },
      { depth: 'states', learned },
    );
    measurePhoto(photo, sheet.photoPxPerMm);
    for (const picture of [pictureOf(sheet), overlayOf(mask)]) picture.close();
  }
}

const learned: typeof seeCopperLearned = async (sheet) => {
  await others();
  return seeCopperLearned(sheet);
};

/** Lets the worker do first what the page has asked meanwhile. */
const others = () => new Promise((resolve) => setTimeout(resolve));
