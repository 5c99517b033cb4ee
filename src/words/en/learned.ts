/** Sentences about the trained nets. */
export const learned = {
  weightsNotLoaded: (file: string, why: string): string =>
    `The trained net ${file} could not be loaded (${why}); the check goes on without it. Reload the page, or check that public/models is complete.`,
} as const;
