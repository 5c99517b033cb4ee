/** What is said about a photograph: why it cannot be read, and how well it can. */
export const photoWords = {
  empty: (name: string) => `${name} is empty (0 bytes). Choose the photograph again, or take it anew.`,
  notAnImage: (name: string) =>
    `${name} is not a photograph that can be read. Choose a JPEG, PNG or WebP picture.`,
  otherKind: (name: string, kind: string) =>
    `${name} is a ${kind.toUpperCase()} file, which is not read here. Export it as JPEG, PNG or WebP and choose that.`,
  heic: (name: string) =>
    `${name} is an HEIC photograph, which cannot be decoded here. Export it as JPEG ` +
    `(phone: share or camera settings, "most compatible"; desktop: open it and save as JPEG) and choose that.`,
  truncated: (name: string) =>
    `${name} breaks off before its end or is damaged. Copy it from the camera again, or take the photograph anew.`,
  tooSmall: (name: string, width: number, height: number) =>
    `${name} has only ${width} x ${height} pixels: too few to show a strip. Use the full-size photograph.`,
  tooLarge: (name: string, megapixels: number, limit: number) =>
    `${name} has ${megapixels} megapixels; at most ${limit} are read. Scale it down (10 pixels a mm are enough) and choose that.`,
  perMm: (pixels: string) => `${pixels} pixels a mm`,
  perInch: (pixels: string) => `${pixels} pixels an inch`,
  tooSoft: (gap: string) => `too soft to see a gap of ${gap} here`,
  noCanvas: 'This browser gives no canvas to read pictures with. Use a newer browser, or the command line.',
  blurred: 'The photograph is blurred: hold still, tap to focus on the tape and take it again.',
  tooDark: 'The photograph is very dark: add light and take it again.',
  burntOut: (percent: number) =>
    `${percent} % of the photograph is burnt out: turn the lamp or the sheet so that the paper does not glare, and take it again.`,
} as const;
