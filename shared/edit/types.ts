import type { Message } from '../words';

import type { Event } from '../event';

/** What an edit answers: the new event and the step's name for undo; or why it cannot be done. The event given is never changed. */
export type EditResult =
  | { readonly event: Event; readonly name: Message }
  /** `path` names the field the sentence belongs beside, e.g. `guests.waves[1].to`. The last sound event stays. */
  | { readonly problem: Message; readonly path: string };

/** Fields to change. A field that is `undefined` is taken out; fields not named stay. */
export type Patch<T> = { readonly [K in keyof T]?: T[K] | undefined };
