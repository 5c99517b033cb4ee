import { runJob } from './job.ts';
import type { Job } from './job.ts';
import { speakAsAsked } from './speakAsAsked.ts';

await speakAsAsked(process.argv.slice(2));

process.on('message', (job: Job) => {
  void runJob(job).then((answer) => process.send?.(answer));
});
process.on('disconnect', () => process.exit(0));
