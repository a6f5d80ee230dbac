import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import type * as z from 'zod';
import { saveAtomically } from './atomic-save';
import { InTurn } from './in-turn';
import { readText } from './read-text';

/** A small JSON file of the data folder. A missing or damaged one reads as `fallback`: it is a convenience, never the cook's work. */
export class KeptFile<S extends z.ZodType> {
  private readonly turns = new InTurn();
  private readonly path: string;
  private readonly schema: S;
  private readonly fallback: z.output<S>;

  constructor(path: string, schema: S, fallback: z.output<S>) {
    this.path = path;
    this.schema = schema;
    this.fallback = fallback;
  }

  async read(): Promise<z.output<S>> {
    try {
      const parsed = this.schema.safeParse(JSON.parse((await readText(this.path)).text));
      return parsed.success ? parsed.data : this.fallback;
    } catch {
      return this.fallback;
    }
  }

  /** Reads, changes, writes; changes asked for at the same time follow one another. */
  change(edit: (value: z.output<S>) => z.output<S>): Promise<z.output<S>> {
    return this.turns.run(this.path, async () => {
      const value = edit(await this.read());
      await mkdir(dirname(this.path), { recursive: true });
      await saveAtomically(this.path, `${JSON.stringify(value, null, 2)}\n`);
      return value;
    });
  }
}
