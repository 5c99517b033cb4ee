/** A bar on standard error. */
export interface Progress {
  /** @param done so far, of the total */
  show(done: number, label: string): void;
  end(): void;
}

const barWidth = 24;
const plainEveryMs = 10_000;

/** A bar that redraws itself on a terminal; elsewhere (a log file) a line every ten seconds. */
export function progress(total: number, stream: NodeJS.WriteStream = process.stderr): Progress {
  let said = Date.now();
  let drawn = false;
  return {
    show(done, label) {
      if (stream.isTTY) {
        const filled = Math.round((barWidth * done) / total);
        stream.write(`\r[${'#'.repeat(filled)}${'.'.repeat(barWidth - filled)}] ${label}\x1b[K`);
        drawn = true;
        return;
      }
      if (Date.now() - said < plainEveryMs) return;
      said = Date.now();
      stream.write(`${label}\n`);
    },
    end() {
      if (drawn) stream.write('\r\x1b[K');
    },
  };
}
