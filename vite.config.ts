import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: 'src/bench',
  publicDir: '../../public',
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2022' },
  server: { open: false },
  test: {
    root: '.',
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 60_000,
    pool: 'forks',
    maxWorkers: 2,
  },
});
