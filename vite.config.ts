import react from '@vitejs/plugin-react';
import { defaultClientConditions } from 'vite';
import { defineConfig } from 'vitest/config';
import { contentPolicy } from './src/bench/contentPolicy.ts';
import { demoLink } from './src/bench/demoLink.ts';
import { offline } from './src/bench/offline/offline.ts';
import { ocrPlugin } from './src/engine/ocrPlugin.ts';
import { openCvPlugin } from './src/engine/openCvPlugin.ts';
import { LongestFirst } from './tests/longestFirst.ts';

export default defineConfig({
  root: 'src/bench',
  publicDir: '../../public',
  base: './',
  plugins: [contentPolicy(), react(), openCvPlugin(), ocrPlugin(), demoLink(), offline()],
  // The nets' runner with its glue in a file of its own: that alone is what each of its threads loads.
  resolve: { conditions: ['onnxruntime-web-use-extern-wasm', ...defaultClientConditions] },
  worker: { format: 'es', plugins: () => [openCvPlugin()] },
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2022' },
  server: { open: false, fs: { allow: ['../..'] } },
  test: {
    root: '.',
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    pool: 'forks',
    // The files of one process share what they import: engine and nets are compiled once, not once a file.
    isolate: false,
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
  },
});
