/** Why the copper in a photograph cannot be told well, and what to do. Keys are the mask's `troubles`. */
export const copperWords = {
  troubles: {
    'burnt-out':
      'Part of the sheet is burnt out to white, where tape and paper look alike. Move the lamp to one side or turn the exposure down, and photograph it again.',
    'too-dark':
      'Part of the sheet lies in shade too deep to tell tape from paper. Give it more light and photograph it again.',
    'odd-shapes':
      'What looks like copper here is not shaped like strips of tape: paint, a shadow or the light may be in the way. Tap the tape in two or three places to show what it looks like.',
    doubtful:
      'Much of what may be tape here cannot be told from paper for certain. Tap the tape in two or three places, or photograph it again in even light.',
    disagree:
      'Two ways of seeing the copper do not agree on this photograph. Look the mask over, correct it with the brush, or photograph it again in even light.',
    'no-copper':
      'No copper tape was found on this sheet. If there is some, tap it in two or three places, or photograph it again in even light.',
    'no-nets':
      'The trained nets could not be loaded, and the copper was told by its colour and shape alone: more may be called wrong than is. Reload the page where the network is there, or check that the models are complete, and check again.',
  },
  noShots: 'There is no photograph of this sheet to read.',
  shotsDiffer: 'The shots are not squared to one size. Set the same base size and margin for all of them.',
  shotLeftOut: {
    outline: 'its sheet could not be made out for certain',
    misfit: 'it does not fit over the first shot',
  },
  secondShot:
    'Tilt the lamp or the sheet a little and photograph it once more: glare moves away and a true gap stays.',
};
