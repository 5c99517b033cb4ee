import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { sniff } from '../../src/photo/index.ts';

const picture = () => sharp({ create: { width: 321, height: 123, channels: 3, background: '#a86' } });

describe('sniff', () => {
  // The files are written by libvips, an independent encoder.
  it.each([
    ['jpeg', () => picture().jpeg().toBuffer()],
    [
      'jpeg',
      () => picture().jpeg({ progressive: true, quality: 20 }).withMetadata({ orientation: 6 }).toBuffer(),
    ],
    ['png', () => picture().png().toBuffer()],
    ['webp', () => picture().webp().toBuffer()],
    ['webp', () => picture().webp({ lossless: true }).toBuffer()],
    ['webp', () => picture().webp().withMetadata({ orientation: 3 }).toBuffer()],
    ['avif', () => picture().avif({ effort: 0 }).toBuffer()],
  ] as const)('reads kind and size of a %s (%#)', async (kind, make) => {
    expect(sniff(await make())).toEqual({ kind, width: 321, height: 123 });
  });

  it('knows other kinds by their first bytes', async () => {
    expect(sniff(await picture().gif().toBuffer())?.kind).toBe('gif');
    expect(sniff(await picture().tiff().toBuffer())?.kind).toBe('tiff');
    expect(sniff(new TextEncoder().encode('%PDF-1.7 and so on'))?.kind).toBe('pdf');
  });

  it('knows an HEIC photograph by its brand (ISO/IEC 23008-12)', () => {
    const bytes = new Uint8Array(64);
    bytes.set(new TextEncoder().encode('ftypheic'), 4);
    bytes.set(new TextEncoder().encode('ispe'), 30);
    new DataView(bytes.buffer).setUint32(38, 4032);
    new DataView(bytes.buffer).setUint32(42, 3024);
    expect(sniff(bytes)).toEqual({ kind: 'heic', width: 4032, height: 3024 });
  });

  it('gives nothing for text', () => {
    expect(sniff(new TextEncoder().encode('not a picture at all'))).toBeUndefined();
  });
});
