import { allergenIds, type AllergenId } from '../../../shared/event';
import { setAllergy } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { NumberField } from '../../parts/number-field';
import { ViewSection } from '../../parts/view-page';
import styles from './guests.module.css';

/** Who must not have what, and where it is on the menu. */
export function Allergies() {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const nameOf = (id: string): string => plan.menu.dishes.find((d) => d.id === id)?.name ?? id;
  const rest = allergenIds.filter((a) => !event.guests.allergies.some((x) => x.allergen === a));
  return (
    <ViewSection title={t('view.guests.allergies')} lead={t('view.guests.allergiesLead')}>
      <ul className={styles['grid']}>
        {event.guests.allergies.map(({ allergen, people, note }) => {
          const cover = plan.menu.allergies.find((a) => a.allergen === allergen);
          return (
            <li key={allergen}>
              <NumberField label={t(`allergen.${allergen}`)} value={people} min={0} max={20000} onCommit={(n) => edit(setAllergy(event, allergen, n))} />
              {cover !== undefined && <p className={styles['note']}>{t('view.guests.allergyIn', { n: cover.containing.length, dishes: t.formats.list(cover.containing.map(nameOf)) })}</p>}
              {note !== undefined && note !== '' && <p className={styles['note']}>{note}</p>}
            </li>
          );
        })}
        {rest.length > 0 && (
          <li>
            <Choice<AllergenId | ''> label={t('view.guests.addAllergy')} value="" options={[{ value: '', text: t('view.guests.choose') }, ...rest.map((a) => ({ value: a, text: t(`allergen.${a}`) }))]}
              onCommit={(allergen) => (allergen === '' ? null : edit(setAllergy(event, allergen, 1)))} />
          </li>
        )}
      </ul>
    </ViewSection>
  );
}
