#!/usr/bin/env node
// Runs the TypeScript command line from a checkout, with no build step.
import { register } from 'tsx/esm/api';

register();
await import('./cli.ts');
