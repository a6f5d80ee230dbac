import { namesOf } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { sessionStore } from '../../app/session';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { EmptyState } from '../../parts/empty-state';
import { Problem } from '../../parts/problem';
import { ViewPage, ViewSection } from '../../parts/view-page';
import { DecafOffers } from './decaf-offers';
import { FlaskSection } from './flask-section';
import { idleFlasks } from './idle-flasks';
import { IceLine } from './ice-line';
import { RoundTable } from './round-table';
import { SugarChoices } from './sugar-choices';
import { TotalTable } from './total-table';

/** The view Drinks: how much of each, every round, every flask over the day. */
export function Drinks() {
  const t = useSpeaker();
  const { plan, formats } = useDocument();
  const { drinks } = plan;
  const names = namesOf(plan, formats);
  const idle = idleFlasks(plan);
  const problems = (
    <>
      {[...drinks.problems, ...drinks.advice].map((p) => <Problem key={t.message(p)} message={t.message(p)} level="watch" />)}
      {idle.length > 0 && <p data-idle-flasks>{idle.map((d) => t('view.drinks.idle', { flask: d.name })).join(' ')} <Button kind="link" onPress={() => sessionStore.show('kitchen')}>{t('view.drinks.toKitchen')}</Button></p>}
    </>
  );
  if (drinks.rounds.length === 0 && drinks.totals.length === 0) {
    return <ViewPage title={t('view.drinks')}>{problems}<EmptyState title={t('view.drinks.emptyTitle')}>{t('view.drinks.empty')}</EmptyState></ViewPage>;
  }
  const used = drinks.dispensers.filter((d) => d.litres.some((l) => l > 0));
  return (
    <ViewPage title={t('view.drinks')}>
      {problems}
      <ViewSection title={t('view.drinks.totals')}><TotalTable plan={plan} names={names} />{drinks.ice !== null && <IceLine ice={drinks.ice} />}<SugarChoices /><DecafOffers /></ViewSection>
      <ViewSection title={t('view.drinks.flasks')} lead={t('view.drinks.pictureKey')}>
        {used.map((flask) => <FlaskSection key={flask.id} flask={flask} plan={plan} names={names} />)}
      </ViewSection>
      <ViewSection title={t('view.drinks.roundTable')}><RoundTable plan={plan} names={names} /></ViewSection>
    </ViewPage>
  );
}
