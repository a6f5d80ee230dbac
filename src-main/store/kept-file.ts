import { dirname } from 'node:path';
import type * as z from 'zod';
import { HostProblem } from '../problem';
import { saveAtomically } from './atomic-save';
import { diskCalls } from './file-calls';
import type { FileCalls } from './file-calls';
import { makeFolder } from './folder';
import { InTurn } from './in-turn';
import { readText } from './read-text';
import { withoutBadFields } from './without-bad-fields';

/** What a file holds, and whether all of it could be used. */
interface Look<T> {
  readonly value: T;
  readonly isWhole: boolean;
}

/**
 * A small JSON file of the data folder. A missing or damaged one reads as `fallback`, and so does each field that cannot be used:
 * it is a convenience, never the cook's work. A file of which something could not be used is kept aside as `.damaged` when it is written next.
 */
export class KeptFile<S extends z.ZodType> {
  private readonly turns = new InTurn();
  private readonly path: string;
  private readonly schema: S;
  private readonly fallback: z.output<S>;
  private readonly calls: FileCalls;

  constructor(path: string, schema: S, fallback: z.output<S>, calls: FileCalls = diskCalls) {
    this.path = path;
    this.schema = schema;
    this.fallback = fallback;
    this.calls = calls;
  }

  async read(): Promise<z.output<S>> {
    return (await this.look()).value;
  }

  /** Reads, changes, writes; changes asked for at the same time follow one another. @throws HostProblem */
  change(edit: (value: z.output<S>) => z.output<S>): Promise<z.output<S>> {
    return this.turns.run(this.path, async () => {
      const { value: before, isWhole } = await this.look();
      const value = edit(before);
      await makeFolder(dirname(this.path), this.calls);
      if (!isWhole) await this.calls.rename(this.path, `${this.path}.damaged`).catch(() => {});
      await saveAtomically(this.path, `${JSON.stringify(value, null, 2)}\n`, { calls: this.calls });
      return value;
    });
  }

  private async look(): Promise<Look<z.output<S>>> {
    try {
      const raw: unknown = JSON.parse((await readText(this.path)).text);
      const parsed = this.schema.safeParse(raw);
      if (parsed.success) return { value: parsed.data, isWhole: true };
      const mended = this.schema.safeParse(withoutBadFields(raw, parsed.error.issues));
      return { value: mended.success ? mended.data : this.fallback, isWhole: false };
    } catch (error) {
      return { value: this.fallback, isWhole: error instanceof HostProblem && error.problem.code === 'no-file' };
    }
  }
}
