import type { Plan } from '../../../shared/plan';
import type { Names } from '../../../shared/sheets';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { Fact, Facts } from '../../parts/view-page';

/** Oil of each pan: how much goes in, how long it takes to heat, how full the pan is, when to top up. */
export function OilSection({ plan, names }: { readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  const { frying } = plan;
  return frying.oil.map((oil) => (
    <div key={oil.pan}>
      <h4>{t('view.frying.oilOf', { pan: names.thing(oil.pan) })}</h4>
      <Facts>
        <Fact name={t('view.frying.fill')}><FigureButton figure={oil.fillLitres} title={t('view.sheets.figureOf', { of: names.thing(oil.pan), what: t('view.frying.fill') })} /></Fact>
        <Fact name={t('view.frying.uptake')}><FigureButton figure={oil.uptakeLitres} title={t('view.sheets.figureOf', { of: names.thing(oil.pan), what: t('view.frying.uptake') })} /></Fact>
        <Fact name={t('view.frying.heatUp')}><FigureButton figure={oil.heatUpMinutes} title={t('view.sheets.figureOf', { of: names.thing(oil.pan), what: t('view.frying.heatUp') })} /></Fact>
        <Fact name={t('view.frying.share')}><FigureButton figure={oil.loadedFillShare} title={t('view.sheets.figureOf', { of: names.thing(oil.pan), what: t('view.frying.share') })}>{t.formats.percent(oil.loadedFillShare.value)}</FigureButton></Fact>
        <Fact name={t('view.frying.rim')}><FigureButton figure={oil.loadedFreeRimMm} title={t('view.sheets.figureOf', { of: names.thing(oil.pan), what: t('view.frying.rim') })} /></Fact>
      </Facts>
      <ul>
        {frying.sessions.filter((s) => s.pan === oil.pan).map((s) => <li key={s.heatOnAt}>{t('view.frying.session', { on: s.heatOnAt, ready: s.readyAt, off: s.heatOffAt })}</li>)}
        {oil.topUps.map((u) => <li key={u.afterBatch}>{t('view.frying.topUp', { after: u.afterBatch, litres: t.formats.figure(u.litres, 'L') })}</li>)}
      </ul>
    </div>
  ));
}
