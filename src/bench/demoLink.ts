import type { Plugin } from 'vite';

/** Prints the address that opens the demo card, beside those of the page. */
export function demoLink(): Plugin {
  return {
    name: 'foilproof-demo-link',
    apply: 'serve',
    configureServer(server) {
      const print = server.printUrls.bind(server);
      server.printUrls = () => {
        print();
        for (const url of server.resolvedUrls?.local ?? [])
          server.config.logger.info(`  Demo card: ${url}?demo`);
      };
    },
  };
}
