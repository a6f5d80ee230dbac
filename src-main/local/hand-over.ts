import * as z from 'zod';
import type { Holder } from './holder';

/** What the running program answers a second start: an address that opens once, and whether a window is there to show the file. */
export const handedSchema = z.object({ address: z.string(), shown: z.boolean() });
/** Answer to a second start. `gone`: nobody of ours is there. `silent`: somebody listens and does not answer. */
export type Handed = z.infer<typeof handedSchema> | 'gone' | 'silent';

/** What a second start sends. */
export const handOverInput = z.object({ path: z.string().min(1).max(4096).nullable() });

/** Hands a file to the program that holds the lock, and so finds out whether it is there at all: a process number may belong to another program by now. */
export async function askHolder(holder: Holder, path: string | null, timeoutMs = 3000): Promise<Handed> {
  try {
    const response = await fetch(`${holder.address}/hand-over`, {
      method: 'POST',
      redirect: 'error',
      headers: { authorization: `Bearer ${holder.secret}`, 'content-type': 'application/json' },
      body: JSON.stringify({ path }),
      signal: AbortSignal.timeout(timeoutMs),
    });
    const answer = handedSchema.safeParse(response.ok ? await response.json() : null);
    return answer.success ? answer.data : 'gone';
  } catch (error) {
    return error instanceof Error && error.name === 'TimeoutError' ? 'silent' : 'gone';
  }
}
