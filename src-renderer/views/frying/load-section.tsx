import type { LoadLimit, LoadPlan } from '../../../shared/frying';
import type { Plan } from '../../../shared/plan';
import type { Names } from '../../../shared/sheets';
import type { PlainWordId } from '../../../shared/words';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { Fact, Facts, ViewSection } from '../../parts/view-page';
import { SupplyPicture } from './supply-picture';
import styles from './frying.module.css';

const limitWords: Readonly<Record<LoadLimit, PlainWordId>> = {
  space: 'view.frying.limit.space', dip: 'view.frying.limit.dip', heat: 'view.frying.limit.heat', oilRatio: 'view.frying.limit.oilRatio', rim: 'view.frying.limit.rim',
};
const limitOrder: readonly LoadLimit[] = ['space', 'dip', 'heat', 'oilRatio', 'rim'];

/** One dish in one pan: how many at once and why not more, then its batches against what is wanted. */
export function LoadSection({ load, plan, names }: { readonly load: LoadPlan; readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  const title = t('view.frying.loadTitle', { dish: names.dish(load.dish), pan: names.thing(load.pan), station: names.thing(load.station) });
  const first = plan.frying.loads.find((l) => l.dish === load.dish) === load;
  return (
    <ViewSection title={title} lane="frying">
      <Facts>
        <Fact name={t('view.frying.atOnce')} note={t('view.frying.limitedBy', { limit: t(limitWords[load.limitedBy]) })}>
          <FigureButton size="large" figure={load.pieces} title={t('view.sheets.figureOf', { of: title, what: t('view.frying.atOnce') })} />
        </Fact>
        <Fact name={t('view.frying.cycle')} note={t('view.frying.fry', { minutes: load.recipeMinutes })}><FigureButton size="large" figure={load.cycleMinutes} title={t('view.sheets.figureOf', { of: title, what: t('view.frying.cycle') })} /></Fact>
        <Fact name={t('view.frying.dip')}><FigureButton size="large" figure={load.dipC} title={t('view.sheets.figureOf', { of: title, what: t('view.frying.dip') })}>{t.formats.degreesDifference(load.dipC.value)}</FigureButton></Fact>
        <Fact name={t('view.frying.kgPerHour')}><FigureButton size="large" figure={load.kgPerHour} title={t('view.sheets.figureOf', { of: title, what: t('view.frying.kgPerHour') })} /></Fact>
      </Facts>
      <p className={styles['key']}>{t('view.frying.otherLimits')}</p>
      <Facts>
        {limitOrder.filter((limit) => limit !== load.limitedBy).map((limit) => (
          <Fact key={limit} name={t(limitWords[limit])}>
            {Number.isFinite(load.limits[limit].value) && <FigureButton figure={load.limits[limit]} title={t('view.sheets.figureOf', { of: title, what: t(limitWords[limit]) })} />}
          </Fact>
        ))}
      </Facts>
      {load.remedies.length > 0 && <><p className={styles['key']}>{t('view.frying.lifts')}</p><ul className={styles['remedies']}>{load.remedies.map((r) => <li key={r.id}>{t.message(r)}</li>)}</ul></>}
      {first && <SupplyPicture dish={load.dish} plan={plan} name={names.dish(load.dish)} />}
    </ViewSection>
  );
}
