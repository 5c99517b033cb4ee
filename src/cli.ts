import { run } from './cli/run.ts';

// A reader that has seen enough (head, less) closes the pipe: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(process.exitCode ?? 0);
  throw error;
});
process.exitCode = await run(process.argv.slice(2));
