import type { Figure } from '../../../shared/figure';
import { setHeadcount } from '../../../shared/edit';
import type { Plan } from '../../../shared/plan';
import { useDocument } from '../../app/document';
import { useSpeaker, type Speaker } from '../../app/speak';
import { sessionStore } from '../../app/session';
import { documentStore } from '../../app/store';
import { Button } from '../../parts/button';
import { FigureButton } from '../../parts/figure-button';
import { Headcount } from '../../parts/headcount';
import { Mark } from '../../parts/mark';
import { lookItems } from './look-items';
import styles from './headline.module.css';

/** The old value in words when the last edit changed it by more than the shown rounding. */
function wasOf(t: Speaker, now: Figure, before: Figure | undefined): string | undefined {
  if (before === undefined) return undefined;
  const [a, b] = [t.formats.figure(before.value, before.unit), t.formats.figure(now.value, now.unit)];
  // The unit stands beside the new value already.
  return a === b ? undefined : (a.split(/\s/)[0] ?? a);
}

/** How many come, and the figures that follow from it. */
export function Headline() {
  const t = useSpeaker();
  const { plan, event, edit, changes } = useDocument();
  const before = changes?.before;
  const adults = Math.round(plan.guests.adults.value);
  const children = Math.round(plan.guests.children.value);
  const was = (pick: (p: Plan) => Figure): string | undefined => wasOf(t, pick(plan), before === undefined ? undefined : pick(before));
  const plainWas = (now: number, old: number | undefined): string | undefined => (old === undefined || Math.round(old) === now ? undefined : t.formats.number(Math.round(old)));
  const base = (merge: string | null) => (merge === null ? event : documentStore.base(merge));
  const overrideOf = (e: typeof event) => e.guests.headcount;
  const { frying, drinks } = plan;
  const toLook = lookItems(plan).length;
  const drinkName = (id: string): string => plan.menu.dishes.find((d) => d.id === id)?.name ?? id;
  return (
    <header className={styles['headline']} aria-label={t('board.headline')}>
      {event.guests.waves.length === 0 ? <div className={styles['nobody']}><p>{t('board.nobody')}</p><Button onPress={() => sessionStore.show('guests')}>{t('board.toGuests')}</Button></div> : (
      <div className={styles['counts']}>
        <Headcount label={t('board.adults')} value={adults} was={plainWas(adults, before?.guests.adults.value)}
          onChange={(value, merge) => { const e = base(merge); return edit(setHeadcount(e, value, overrideOf(e).children), merge); }} />
        <Headcount label={t('board.children')} value={children} was={plainWas(children, before?.guests.children.value)}
          onChange={(value, merge) => { const e = base(merge); return edit(setHeadcount(e, overrideOf(e).adults, value), merge); }} />
      </div>
      )}
      {toLook > 0 && <div className={styles['lookLink']}><Button kind="link" onPress={() => document.getElementById('look-title')?.scrollIntoView()}><Mark kind="watch" /> {t('board.lookCount', { n: toLook })}</Button></div>}
      <dl className={styles['figures']}>
        {event.guests.waves.length > 0 && <Key title={t('board.mostAtOnce')} figure={plan.guests.peak} shown={t.formats.number(Math.round(plan.guests.peak.value))} was={plainWas(Math.round(plan.guests.peak.value), before?.guests.peak.value)}
          under={t('board.hereAt', { at: plan.guests.peakAt })} />}
        {frying.batches.length > 0 && <Key title={t('board.pieces')} figure={frying.pieces} shown={t.formats.number(frying.pieces.value)} was={plainWas(frying.pieces.value, before?.frying.pieces.value)}
          under={<FigureButton title={t('board.batches')} figure={frying.batchCount} was={was((p) => p.frying.batchCount)} />} lead={t('board.piecesIn')} />}
        {frying.bowls.length > 0 && <Key title={t('board.batter')} figure={frying.batterKg} shown={t.formats.figure(frying.batterKg.value, frying.batterKg.unit)} was={was((p) => p.frying.batterKg)}
          under={<FigureButton title={t('board.bowls')} figure={frying.bowlCount} was={was((p) => p.frying.bowlCount)} />} lead={t('board.batterIn')} />}
        {drinks.totals.filter((total) => plan.menu.dishes.find((d) => d.id === total.drink)?.recipe.brewing?.method !== 'water').slice(0, 3).map((total) => {
          const old = before?.drinks.totals.find((d) => d.drink === total.drink);
          return (
            <Key key={total.drink} title={drinkName(total.drink)} figure={total.brewed} shown={t.formats.figure(total.brewed.value, total.brewed.unit)} was={wasOf(t, total.brewed, old?.brewed)}
              under={<FigureButton title={t('board.rounds', { drink: drinkName(total.drink) })} figure={total.rounds} was={wasOf(t, total.rounds, old?.rounds)} />} lead={t('board.drinkIn', { drink: drinkName(total.drink) })} />
          );
        })}
      </dl>
    </header>
  );
}

interface KeyProps {
  readonly title: string;
  readonly figure: Figure;
  readonly shown: string;
  readonly was: string | undefined;
  readonly lead?: string;
  readonly under: React.ReactNode;
}

function Key({ title, figure, shown, was, lead, under }: KeyProps) {
  return (
    <div className={styles['key']}>
      <dt className="unseen">{title}</dt>
      <dd><FigureButton size="large" title={title} figure={figure} was={was}>{shown}</FigureButton></dd>
      <dd className={styles['under']}>{lead !== undefined && <span>{lead} </span>}{under}</dd>
    </div>
  );
}
