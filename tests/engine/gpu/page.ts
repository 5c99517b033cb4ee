import type { Question, Told } from './protocol.ts';

/** Puts a question to a worker, as the page puts its own. */
window.compare = (question: Question) =>
  new Promise<Told>((resolve) => {
    const worker = new Worker(new URL('./bothRunners.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<Told>) => resolve(data);
    worker.onerror = ({ message }) => resolve({ failed: message });
    worker.postMessage(question);
  });
