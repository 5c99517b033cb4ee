/** Names of the states that a card can be in. */
export const stateWords = {
  atRest: 'at rest',
  cellPressed: 'cell pressed',
  pressed: (contact: string) => `${contact} pressed`,
  stroke: (step: string) => `stroke ${step}`,
  everything: 'everything pressed',
};
