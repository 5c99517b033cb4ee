import { runJob } from './job.ts';
import type { Job } from './job.ts';

process.on('message', (job: Job) => {
  void runJob(job).then((answer) => process.send?.(answer));
});
process.on('disconnect', () => process.exit(0));
