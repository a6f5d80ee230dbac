/** A wish to end, from the terminal or from the face. */
export interface Stopping {
  readonly promise: Promise<void>;
  stop(): void;
  isStopped(): boolean;
}

/** Settles at Ctrl+C, at a polite kill, when the terminal closes, or when `stop` is called. */
export function untilStopped(): Stopping {
  const controller = new AbortController();
  const stop = (): void => controller.abort();
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
  const promise = new Promise<void>((resolve) => {
    controller.signal.addEventListener('abort', () => resolve(), { once: true });
  });
  return { promise, stop, isStopped: () => controller.signal.aborted };
}
