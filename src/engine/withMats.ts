interface Deletable {
  delete(): void;
}

/** Takes charge of a matrix (or vector): it is freed when the surrounding `withMats` ends. */
export type Own = <T extends Deletable>(mat: T) => T;

/**
 * Runs `work` and then frees every matrix that it handed to `own`, whether it ended well or threw.
 * WebAssembly memory is not garbage collected, so no matrix lives outside such a call.
 */
export function withMats<R>(work: (own: Own) => R): R {
  const owned: Deletable[] = [];
  try {
    return work((mat) => {
      owned.push(mat);
      return mat;
    });
  } finally {
    for (const mat of owned.reverse()) mat.delete();
  }
}
