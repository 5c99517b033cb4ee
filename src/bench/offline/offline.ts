import { mkdir, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { PluginOption } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { gpuCache, gpuFileCount, gpuFiles } from '../../engine/gpuFiles.ts';
import { readerCache, readerFolder } from '../../engine/ocrFiles.ts';
import { drawIcons, icons } from './icons.ts';

/**
 * Makes the built page installable and lets it work without a network: a service worker that keeps every file of the
 * page at the first visit, a manifest with icons, and `offline.json` with the bytes that this takes.
 */
export function offline(): PluginOption[] {
  let folder = '';
  return [
    {
      name: 'foilproof-offline-folder',
      configResolved: ({ root, build }) => void (folder = resolve(root, build.outDir)),
    },
    drawIcons(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      manifest: {
        name: 'Foilproof',
        short_name: 'Foilproof',
        description: 'Proof-read a copper-tape circuit from a photograph before it is glued.',
        id: 'foilproof',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#efefeb',
        theme_color: '#efefeb',
        icons: icons.map(({ src, side, purpose }) => ({
          src,
          sizes: `${side}x${side}`,
          type: 'image/png',
          purpose,
        })),
      },
      workbox: {
        globPatterns: ['**/*.{html,js,mjs,css,wasm,onnx,gz,svg,png,jpg,ttf}'],
        // The label reader and the nets' runner on a graphics processor are large and for few: kept once they were asked for.
        globIgnores: ['isolate.js', `${readerFolder}/**`, ...gpuFiles.map((name) => `assets/${name}-*`)],
        runtimeCaching: [
          {
            urlPattern: new RegExp(`/${readerFolder}/`),
            handler: 'CacheFirst',
            options: { cacheName: readerCache },
          },
          {
            urlPattern: new RegExp(`/assets/(${gpuFiles.join('|')})-`),
            handler: 'CacheFirst',
            // Their names change with their contents: those of an earlier build go when the newer have come.
            options: { cacheName: gpuCache, expiration: { maxEntries: gpuFileCount } },
          },
        ],
        importScripts: ['isolate.js'],
        maximumFileSizeToCacheInBytes: 32e6,
        inlineWorkboxRuntime: true,
        cleanupOutdatedCaches: true,
        manifestTransforms: [
          async (manifest) => {
            const bytes = manifest.reduce((sum, { size }) => sum + size, 0);
            // After a build that failed there is no folder, and the failure itself is what should be told.
            await mkdir(folder, { recursive: true });
            await writeFile(join(folder, 'offline.json'), JSON.stringify({ bytes }));
            return { manifest };
          },
        ],
      },
    }),
  ];
}
