/** The page was laid out anew: the hand goes back to where it was. */
export function backTo(id: string): void {
  document.getElementById(id)?.focus();
}
