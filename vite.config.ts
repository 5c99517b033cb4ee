import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { contentPolicy } from './src/bench/contentPolicy.ts';
import { demoLink } from './src/bench/demoLink.ts';
import { offline } from './src/bench/offline/offline.ts';
import { ocrPlugin } from './src/engine/ocrPlugin.ts';
import { openCvPlugin } from './src/engine/openCvPlugin.ts';

export default defineConfig({
  root: 'src/bench',
  publicDir: '../../public',
  base: './',
  plugins: [react(), openCvPlugin(), ocrPlugin(), demoLink(), contentPolicy(), offline()],
  worker: { format: 'es', plugins: () => [openCvPlugin()] },
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2022' },
  server: { open: false, fs: { allow: ['../..'] } },
  test: {
    root: '.',
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    pool: 'forks',
    maxWorkers: 2,
  },
});
