// A core of the pool: runs the TypeScript job loop with no build step.
import { register } from 'tsx/esm/api';

register();
await import('./worker.ts');
