import { namesOf } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { EmptyState } from '../../parts/empty-state';
import { FigureButton } from '../../parts/figure-button';
import { Problem } from '../../parts/problem';
import { Fact, Facts, ViewPage, ViewSection } from '../../parts/view-page';
import { BatchTable } from './batch-table';
import { FirstBatch } from './first-batch';
import { LoadSection } from './load-section';
import { Offers } from './offers';
import { OilSection } from './oil-section';
import { Shortages } from './shortages';

/** The view Frying: what limits each pan, the batches against what is wanted, bowls, oil. */
export function Frying() {
  const t = useSpeaker();
  const { plan, formats } = useDocument();
  const { frying } = plan;
  const names = namesOf(plan, formats);
  // Batches chosen for freshness are more than the fewest on purpose.
  const chosen = plan.event.menu.dishes.reduce((sum, d) => sum + (d.fryFresh?.moreBatches ?? 0), 0);
  const bound = frying.batchBound;
  const gap = Math.max(0, frying.batchCount.value - bound.value - chosen);
  const problems = frying.problems.map((p) => <Problem key={t.message(p)} message={t.message(p)} level="watch" />);
  if (frying.loads.length === 0 && frying.batches.length === 0) {
    return <ViewPage title={t('view.frying')}>{problems}<EmptyState title={t('view.frying.emptyTitle')}>{t('view.frying.empty')}</EmptyState></ViewPage>;
  }
  return (
    <ViewPage title={t('view.frying')}>
      {problems}
      <Facts>
        <Fact name={t('view.frying.batches')} note={gap === 0 && chosen === 0 ? t('view.frying.proven') : <>{t('view.frying.bound')} <FigureButton figure={bound} title={t('view.frying.bound')} /></>}><FigureButton size="large" figure={frying.batchCount} title={t('view.frying.batches')} /></Fact>
        <Fact name={t('view.frying.pieces')}><FigureButton size="large" figure={frying.pieces} title={t('view.frying.pieces')} /></Fact>
        <Fact name={t('view.frying.bowls')}><FigureButton size="large" figure={frying.bowlCount} title={t('view.frying.bowls')} /></Fact>
        <Fact name={t('view.frying.batter')}><FigureButton size="large" figure={frying.batterKg} title={t('view.frying.batter')} /></Fact>
        <Fact name={t('view.frying.buyOil')}><FigureButton size="large" figure={frying.buyLitres} title={t('view.frying.buyOil')} /></Fact>
      </Facts>
      {gap > 0 && <p>{t('view.frying.gap', { gap })}</p>}
      <Shortages plan={plan} names={names} />
      {frying.care.length > 0 && <ViewSection title={t('view.frying.care')}>{frying.care.map((m) => <p key={t.message(m)}>{t.message(m)}</p>)}</ViewSection>}
      {frying.loads.map((load) => <LoadSection key={`${load.station}-${load.pan}-${load.dish}`} load={load} plan={plan} names={names} />)}
      {frying.waits.length > 0 && <Offers names={names} />}
      <ViewSection title={t('view.frying.batchTable')}><BatchTable plan={plan} names={names} /></ViewSection>
      <FirstBatch names={names} />
      <ViewSection title={t('view.frying.oil')}><OilSection plan={plan} names={names} /></ViewSection>
    </ViewPage>
  );
}
