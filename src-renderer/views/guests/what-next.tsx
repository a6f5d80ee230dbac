import { useDocument } from '../../app/document';
import { sessionStore } from '../../app/session';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import styles from './guests.module.css';

/** What the kitchen lacks before a dish can be fried or a drink brewed at all. */
const lacking = new Set<string>(['frying.problem.noStation', 'frying.problem.noHeat', 'drinks.problem.noVessel', 'drinks.problem.noPot', 'drinks.problem.noBurner']);

/** On a new event: which views to fill in, each until there is something in it; then what the kitchen still lacks for a dish. */
export function WhatNext() {
  const t = useSpeaker();
  const { event, plan } = useDocument();
  const { pans, pots, dispensers, stations } = event.kitchen;
  const open = [
    ...(plan.guests.adults.value + plan.guests.children.value === 0 && event.guests.waves.length > 0 ? [{ view: 'guests', text: t('next.guests') }] : []),
    ...(event.menu.dishes.length === 0 ? [{ view: 'menu', text: t('next.menu') }] : []),
    ...([pans, pots, dispensers, stations, event.people].every((list) => list.length === 0)
      ? [{ view: 'kitchen', text: t('next.kitchen') }]
      : [...plan.frying.problems, ...plan.drinks.problems].filter((p) => lacking.has(p.id)).map((p) => ({ view: 'kitchen', text: t('next.lacks', { what: t.message(p) }) }))),
  ];
  if (open.length === 0) return null;
  return (
    <section className={styles['next']} aria-labelledby="what-next" data-what-next>
      <h3 id="what-next">{t('next.title')}</h3>
      <ol>{open.map(({ view, text }) => <li key={text}>{view === 'guests' ? text : <Button kind="link" onPress={() => sessionStore.show(view)}>{text}</Button>}</li>)}</ol>
    </section>
  );
}
