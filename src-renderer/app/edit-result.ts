import type { Event } from '../../shared/event';
import type { Message } from '../../shared/words';

/** Answer of a named edit: the event as it would be, with the step's name for undo; or what is wrong. */
export type EditResult =
  | { readonly ok: true; readonly event: Event; readonly name: Message }
  | { readonly ok: false; readonly problem: Message };
