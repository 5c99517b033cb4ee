/** What is said of a card file that cannot be taken. */
export const cardWords = {
  notJson: (name: string) =>
    `${name} is no card file: it is not JSON. Open it in a text editor, or save the card again.`,
  unknownKeys: (name: string, keys: string, where: string) =>
    `${name} has a key that no card knows: ${keys}${where}. Remove it or correct its spelling.`,
  wrong: (name: string, where: string, why: string) =>
    `${name} is wrong at ${where}: ${why}. Correct it and try again.`,
  wrongWhole: (name: string, why: string) => `${name} is no card file: ${why}.`,
  within: (where: string) => ` (in ${where})`,
  more: (count: number) => ` ${count} more such place${count === 1 ? '' : 's'} follow.`,
  notBase64: 'it is no base64 text',
  twice: (name: string, what: string, id: string) =>
    `${name} names two ${what} ${id}. Give each a name of its own.`,
  offBase: (name: string, what: string, at: string, base: string) =>
    `${name}: ${what} at ${at} lies off the base (${base} mm). Move it or set the base size.`,
};
