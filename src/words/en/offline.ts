/** Megabytes of 10^6 bytes, whole. */
const mb = (bytes: number) => `${Math.ceil(bytes / 1e6)} MB`;

/** What the page says about working without a network. */
export const offlineWords = {
  fetching: (bytes: number) =>
    `First visit: up to ${mb(bytes)} are fetched once, so that everything works without a network from then on.`,
  ready: 'Kept on this device: works without a network.',
  newer: 'A newer Foilproof is here. The card is kept; the page is loaded anew when you say so.',
  take: 'Load it now',
};
