import { useEffect, useRef, useState } from 'react';
import { serialiseEvent, type Event } from '../../../shared/event';
import type { ClashRemedies } from '../../../shared/timeline';
import type { BetterAnswer, FoundDay, ImproveQuestion, WaysAnswer } from '../../app/improve-worker';
import { ownWorker } from '../../app/own-script';
// The build answers this import with the address of the worker's own file.
// oxlint-disable-next-line import/default
import workerUrl from '../../app/improve-worker?worker&url';

/** An event that has stood still so long is worth a search, in milliseconds. */
const restMs = 600;
/** The search is the same whenever it is made: its start number, and how many days it lays out. */
const look = { startNumber: 7, budget: 90 };

/** What was found for the event as it stands; `better` is null while it is looked for. `ways` are those found last: of this very event only when `fresh`. */
export interface DaySearch {
  readonly ways: readonly ClashRemedies[];
  readonly fresh: boolean;
  readonly better: { readonly found: FoundDay | null } | null;
}
const nothingYet: DaySearch = { ways: [], fresh: false, better: null };

/** Ways out of what does not fit, and a better day, looked for beside the page once the event stands still. A search that an edit has overtaken is ended at once. */
export function useDaySearch(event: Event, off: boolean): DaySearch {
  const [found, setFound] = useState<{ readonly event: Event; readonly search: DaySearch } | null>(null);
  const turn = useRef(0);
  useEffect(() => {
    if (off) return;
    turn.current += 1;
    const mine = turn.current;
    let worker: Worker | null = null;
    const rest = setTimeout(() => {
      worker = ownWorker(workerUrl);
      worker?.addEventListener('message', ({ data }: MessageEvent<WaysAnswer | BetterAnswer>) => {
        if (data.turn !== mine) return;
        setFound((had) => {
          const search = had?.event === event ? had.search : nothingYet;
          return { event, search: data.kind === 'ways' ? { ...search, ways: data.ways, fresh: true } : { ...search, better: { found: data.better } } };
        });
        if (data.kind === 'better') worker?.terminate();
      });
      const question: ImproveQuestion = { turn: mine, event: serialiseEvent(event), ...look };
      // A worker's message has one receiver; only a window's needs an address.
      // oxlint-disable-next-line unicorn/require-post-message-target-origin
      worker?.postMessage(question);
    }, restMs);
    return () => { clearTimeout(rest); worker?.terminate(); };
  }, [event, off]);
  if (found === null) return nothingYet;
  return found.event === event ? found.search : { ways: found.search.ways, fresh: false, better: null };
}
