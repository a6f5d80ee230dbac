import { useState } from 'react';
import { takeDayOrder } from '../../../shared/edit';
import { dayOf } from '../../../shared/event';
import type { FoundDay } from '../../app/improve-worker';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import type { DaySearch } from './use-day-search';
import styles from './day.module.css';

/** Orders that were waved away, as texts, by event: they are not offered again while the program is open. */
const wavedAway = new Map<string, Set<string>>();
const keyOf = (found: FoundDay): string => JSON.stringify(found.order);

/** One line above the lanes, always as high: a better day that was found, in words, to be taken by one press or waved away; or that there is none. */
export function BetterDay({ search }: { readonly search: DaySearch }) {
  const t = useSpeaker();
  const { event, edit, readOnly } = useDocument();
  const [, setWaved] = useState(0);
  const away = wavedAway.get(event.id) ?? new Set<string>();
  const found = search.better?.found ?? null;
  const said = (): string => {
    if (found === null) return '';
    const [gains, costs] = [found.gains, found.costs].map((list) => t.formats.list(list.map(t.message)));
    return t('view.day.better.offer', { gains: gains ?? '', costs: costs ?? '', jobs: found.moved });
  };
  const wave = (was: FoundDay, gone: boolean): void => {
    const next = new Set(away);
    if (gone) next.add(keyOf(was));
    else next.delete(keyOf(was));
    wavedAway.set(event.id, next);
    setWaved((n) => n + 1);
  };
  const taken = dayOf(event).order !== undefined;
  const offered = found !== null && !away.has(keyOf(found)) && !readOnly;
  const state = search.better === null ? 'looking' : offered ? 'offer' : found !== null && !readOnly ? 'away' : taken ? 'taken' : 'none';
  return (
    <div className={styles['better']} data-better={state}>
      <p role="status">{state === 'offer' ? said() : t(`view.day.better.${state}`)}</p>
      <div className={styles['buttons']}>
        {state === 'offer' && found !== null && (
          <>
            <Button onPress={() => { edit(takeDayOrder(event, found.order)); }}>{t('view.day.better.take')}</Button>
            <Button onPress={() => wave(found, true)}>{t('view.day.better.leave')}</Button>
          </>
        )}
        {state === 'away' && found !== null && <Button kind="link" onPress={() => wave(found, false)}>{t('view.day.better.again')}</Button>}
        {state === 'taken' && !readOnly && <Button kind="link" onPress={() => { edit(takeDayOrder(event, null)); }}>{t('view.day.better.plain')}</Button>}
      </div>
    </div>
  );
}
