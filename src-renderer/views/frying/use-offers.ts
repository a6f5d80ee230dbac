import { useEffect, useRef, useState } from 'react';
import type { Event } from '../../../shared/event';
import type { FryOffer } from '../../../shared/frying';
import { ownWorker } from '../../app/own-script';
import type { OffersAsked, OffersFound } from './offers-worker';
// The build answers this import with the address of the worker's own file.
// oxlint-disable-next-line import/default
import workerUrl from './offers-worker?worker&url';

/** An event that has stood still so long is worth a search, in milliseconds. */
const restMs = 350;

/** Plans of the event's fried dishes in which pieces wait less, found beside the page; null while they are looked for. */
export function useOffers(event: Event): readonly FryOffer[] | null {
  const worker = useRef<Worker | null>(null);
  const [found, setFound] = useState<{ readonly event: Event; readonly offers: readonly FryOffer[] } | null>(null);
  const asked = useRef<{ turn: number; event: Event | null }>({ turn: 0, event: null });
  useEffect(() => {
    const own = ownWorker(workerUrl);
    worker.current = own;
    own?.addEventListener('message', ({ data }: MessageEvent<OffersFound>) => {
      const { turn, event: of } = asked.current;
      if (data.turn === turn && of !== null) setFound({ event: of, offers: data.offers });
    });
    return () => { own?.terminate(); worker.current = null; };
  }, []);
  useEffect(() => {
    const rest = setTimeout(() => {
      asked.current = { turn: asked.current.turn + 1, event };
      const message: OffersAsked = { turn: asked.current.turn, event };
      worker.current?.postMessage(message);
    }, restMs);
    return () => clearTimeout(rest);
  }, [event]);
  return found?.event === event ? found.offers : null;
}
