import '../../jitless';
import type { Event } from '../../../shared/event';
import { fryOffers, type FryOffer } from '../../../shared/frying';

/** What the page sends. */
export interface OffersAsked {
  readonly turn: number;
  readonly event: Event;
}
/** What comes back: the offers of the event of that turn. */
export interface OffersFound {
  readonly turn: number;
  readonly offers: readonly FryOffer[];
}

// Beside the page: a search of some tens of milliseconds must not stand in the way of a slider.
globalThis.addEventListener('message', ({ data }: MessageEvent<OffersAsked>) => {
  const found: OffersFound = { turn: data.turn, offers: fryOffers(data.event) };
  // A worker's message has one receiver; only a window's needs an address.
  // oxlint-disable-next-line unicorn/require-post-message-target-origin
  globalThis.postMessage(found);
});
