/** Where a command writes. Results go to `out`, everything else to `err`, so that JSON can be piped. */
export interface Terminal {
  out(text: string): void;
  err(text: string): void;
}

/** The terminal this process was started from. */
export const processTerminal: Terminal = {
  out: (text) => void process.stdout.write(`${text}\n`),
  err: (text) => void process.stderr.write(`${text}\n`),
};

/** How a command ends. */
export const exits = { ok: 0, stop: 1, badInput: 2, toolMissing: 3 } as const;

/** One command of the command line. `run` answers the exit code. */
export interface Command {
  readonly usage: string;
  run(args: readonly string[], terminal: Terminal): Promise<number>;
}

/** What was given cannot be used: told to the person, and exit code 2. */
export class BadInput extends Error {
  override readonly name = 'BadInput';
}
