import type { Connect, Plugin } from 'vite';

/**
 * What the built page may load and run: files of its own origin, no inline script or style, no eval. WebAssembly may
 * be compiled; pictures and films that the page makes itself have blob: and data: addresses.
 * @source Content Security Policy Level 3 (W3C), 'wasm-unsafe-eval' in its section 2.3.1
 */
const strict = {
  'default-src': "'none'",
  'script-src': "'self' 'wasm-unsafe-eval'",
  'style-src': "'self'",
  'img-src': "'self' blob: data:",
  'media-src': "'self' blob:",
  'font-src': "'self' data:",
  'connect-src': "'self' blob: data:",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

/** The development server renews modules by inline scripts and a web socket; no other origin there either. */
const whileDeveloping = {
  ...strict,
  'script-src': `${strict['script-src']} 'unsafe-inline'`,
  'style-src': `${strict['style-src']} 'unsafe-inline'`,
  'connect-src': `${strict['connect-src']} ws:`,
};

/**
 * Gives the page its Content-Security-Policy: in a build as a meta element, so that it holds on any server, and as
 * a header of the preview server, so that it binds the workers too and no other page can frame it. Both servers isolate
 * the page; elsewhere its own service worker does (`offline/isolate.js`). First among the plugins, so that what others
 * serve is sent with the same headers.
 */
export function contentPolicy(): Plugin {
  return {
    name: 'foilproof-content-policy',
    transformIndexHtml: {
      order: 'post',
      handler: (_html, { server }) =>
        server
          ? []
          : [
              {
                tag: 'meta',
                attrs: { 'http-equiv': 'Content-Security-Policy', content: told(strict) },
                injectTo: 'head-prepend',
              },
            ],
    },
    configureServer: ({ middlewares }) => void middlewares.use(sending(whileDeveloping)),
    configurePreviewServer: ({ middlewares }) => void middlewares.use(sending(strict)),
  };
}

/**
 * A page that shares nothing with other origins may share memory among its own workers: the nets run on several cores.
 * @source HTML Living Standard, sections 7.1.3 and 7.1.4 (cross-origin opener and embedder policies)
 */
const isolation = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
};

function told(policy: Record<string, string>): string {
  return Object.entries(policy)
    .map((entry) => entry.join(' '))
    .join('; ');
}

function sending(policy: Record<string, string>): Connect.NextHandleFunction {
  const headers = {
    ...isolation,
    'Content-Security-Policy': told({ ...policy, 'frame-ancestors': "'none'" }),
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'no-referrer',
  };
  return (_request, response, next) => {
    for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
    next();
  };
}
