/*
 * Part of the service worker, for servers that send no headers of their own: sends the page and its workers with the
 * headers that isolate them, so that the nets may run on several cores from the second visit on. Other files pass as they
 * are, so that the browser may keep what it has compiled of them.
 * Source: HTML Living Standard, sections 7.1.3 and 7.1.4 (cross-origin opener and embedder policies).
 */
const isolated = ['document', 'worker'];
const respondWith = FetchEvent.prototype.respondWith;

FetchEvent.prototype.respondWith = function (response) {
  const wanted = isolated.includes(this.request.destination);
  respondWith.call(this, wanted ? Promise.resolve(response).then(withHeaders) : response);
};

function withHeaders(response) {
  if (response.status === 0 || response.redirected) return response;
  const headers = new Headers(response.headers);
  headers.set('Cross-Origin-Opener-Policy', 'same-origin');
  headers.set('Cross-Origin-Embedder-Policy', 'require-corp');
  return new Response(response.body, { status: response.status, statusText: response.statusText, headers });
}
