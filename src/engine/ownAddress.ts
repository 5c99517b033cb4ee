/** The address of one of our own files, as the build names it to a script or worker of ours. */
export function ownAddress(path: string): string {
  return new URL(path, import.meta.url).href;
}
