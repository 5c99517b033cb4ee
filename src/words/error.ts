/** An error meant for the maker's eyes: one sentence that says what is wrong, where, and what to do. */
export class FoilproofError extends Error {
  override name = 'FoilproofError';
}
