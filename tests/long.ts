/** Whether the long form of the tests is asked for (`FOILPROOF_LONG=1 npx vitest run`): more seeds, more pictures. */
export const long = process.env.FOILPROOF_LONG !== undefined;
