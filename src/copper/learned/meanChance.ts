let table: Uint8Array | undefined;

/** Mean of two maps of chances 0..255 by their log-odds, so that a sure answer outweighs a doubtful one. */
export function meanChance(a: Uint8Array, b: Uint8Array): Uint8Array {
  table ??= means();
  const out = new Uint8Array(a.length);
  for (let k = 0; k < out.length; k++) out[k] = table[(a[k] << 8) | b[k]];
  return out;
}

function means(): Uint8Array {
  const odds = Float64Array.from({ length: 256 }, (_, v) => Math.log((v + 0.5) / (255.5 - v)));
  return Uint8Array.from(
    { length: 65536 },
    (_, k) => 255 / (1 + Math.exp(-(odds[k >> 8] + odds[k & 255]) / 2)) + 0.5,
  );
}
