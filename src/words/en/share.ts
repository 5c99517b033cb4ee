/** What is said where things leave the device. */
export const shareWords = {
  share: 'Share the record',
  shared: (name: string) => `${name} is handed on.`,
  notFreed: (name: string) =>
    `${name} may tell where it was taken, and that cannot be taken out of this kind of file. Save the card file without the photograph, or use a JPEG, PNG or WebP picture.`,
};
