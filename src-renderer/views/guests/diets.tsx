import { dietIds } from '../../../shared/event';
import { setDiet } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { NumberField } from '../../parts/number-field';
import { ViewSection } from '../../parts/view-page';
import styles from './guests.module.css';

/** How many keep which diet, and which dishes are open to them. */
export function Diets() {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const nameOf = (id: string): string => plan.menu.dishes.find((d) => d.id === id)?.name ?? id;
  return (
    <ViewSection title={t('view.guests.diets')} lead={t('view.guests.dietsLead')}>
      <ul className={styles['grid']}>
        {dietIds.map((diet) => {
          const people = event.guests.diets.find((d) => d.diet === diet)?.people ?? 0;
          const cover = plan.menu.diets.find((d) => d.diet === diet);
          return (
            <li key={diet}>
              <NumberField label={t(`diet.${diet}`)} value={people} min={0} max={20000} onCommit={(n) => edit(setDiet(event, diet, n))} />
              {people > 0 && cover !== undefined && <p className={cover.open.length === 0 ? styles['none'] : styles['note']}>{t('view.guests.openTo', { n: cover.open.length, dishes: t.formats.list(cover.open.map(nameOf)) })}</p>}
            </li>
          );
        })}
      </ul>
    </ViewSection>
  );
}
