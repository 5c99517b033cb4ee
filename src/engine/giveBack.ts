/**
 * Gives the memory of large arrays back at once, where the system can (ES2024, ArrayBuffer.prototype.transfer): the
 * collector sees only their small heads and lets hundreds of MB stand, too many for a phone. None may be used after.
 */
export function giveBack(...arrays: readonly { buffer: ArrayBufferLike }[]): void {
  for (const { buffer } of arrays) (buffer as { transfer?(length: number): unknown }).transfer?.(0);
}
