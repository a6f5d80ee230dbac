import type { Station } from '../../../shared/event';
import { changeStation, removeStation } from '../../../shared/edit';
import { useState } from 'react';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { TextField } from '../../parts/text-field';
import { Thing } from '../../parts/thing';
import { Tick } from '../../parts/tick';
import styles from './kitchen.module.css';

const toggled = (list: readonly string[], id: string, on: boolean): string[] => (on ? [...list, id] : list.filter((x) => x !== id));

/** Where somebody fries: its pans and the dishes fried there. */
export function StationThing({ station }: { readonly station: Station }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const [problem, setProblem] = useState<string | null>(null);
  const change = (patch: Parameters<typeof changeStation>[2]) => edit(changeStation(event, station.id, patch));
  const tick = (patch: Parameters<typeof changeStation>[2]): void => {
    const answer = change(patch);
    setProblem(answer === null ? null : t.message(answer));
  };
  const fried = plan.menu.dishes.filter((d) => d.recipe.frying !== undefined);
  return (
    <Thing name={station.name} removeText={t('view.kitchen.remove')} remove={() => removeStation(event, station.id)} fields={(
      <div className={styles['station']}>
        <TextField label={t('view.kitchen.name')} value={station.name} onCommit={(name) => change({ name })} />
        <div className={styles['ticks']} role="group" aria-label={t('view.kitchen.stationPans')}>
          <span className={styles['ticksName']}>{t('view.kitchen.stationPans')}</span>
          {event.kitchen.pans.map((pan) => <Tick key={pan.id} label={pan.name} checked={station.pans.includes(pan.id)} onChange={(on) => tick({ pans: toggled(station.pans, pan.id, on) })} />)}
        </div>
        <div className={styles['ticks']} role="group" aria-label={t('view.kitchen.stationDishes')}>
          <span className={styles['ticksName']}>{t('view.kitchen.stationDishes')}</span>
          {fried.map((dish) => <Tick key={dish.id} label={dish.name} checked={station.dishes.includes(dish.id)} onChange={(on) => tick({ dishes: toggled(station.dishes, dish.id, on) })} />)}
        </div>
        {problem !== null && <p role="alert" className={styles['problem']}>{problem}</p>}
      </div>
    )} />
  );
}
