const entities: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text made safe for HTML and SVG; characters that XML 1.0 forbids are dropped. */
export function escapeText(text: string): string {
  const allowed = text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');
  return allowed.replace(/[&<>"']/g, (letter) => entities[letter] ?? letter);
}
