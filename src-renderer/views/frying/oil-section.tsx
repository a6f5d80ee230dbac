import { pauseWords, type Names } from '../../../shared/sheets';
import type { Plan } from '../../../shared/plan';
import type { Figure } from '../../../shared/figure';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { Fact, Facts } from '../../parts/view-page';
import { OilPicture } from './oil-picture';
import { Pause } from './pause';
import styles from './frying.module.css';

/** Oil of each pan: its temperature over the day, how much goes in, when to top up or change it, its pauses, and what becomes of it. */
export function OilSection({ plan, names }: { readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  const { frying } = plan;
  return frying.oil.map((oil) => {
    const pan = names.thing(oil.pan);
    const end = frying.oilEnds.find((e) => e.pan === oil.pan);
    const fact = (name: string, figure: Figure, text?: string) => (
      <Fact name={name}><FigureButton figure={figure} title={t('view.sheets.figureOf', { of: pan, what: name })}>{text}</FigureButton></Fact>
    );
    return (
      <div key={oil.pan} className={styles['pan']}>
        <h4>{t('view.frying.oilOf', { pan })}</h4>
        {end !== undefined && <OilPicture end={end} plan={plan} pan={pan} />}
        <Facts>
          {fact(t('view.frying.fill'), oil.fillLitres)}
          {fact(t('view.frying.uptake'), oil.uptakeLitres)}
          {fact(t('view.frying.heatUp'), oil.heatUpMinutes)}
          {fact(t('view.frying.share'), oil.loadedFillShare, t.formats.percent(oil.loadedFillShare.value))}
          {fact(t('view.frying.rim'), oil.loadedFreeRimMm)}
          {end !== undefined && fact(t('view.frying.work'), end.batterPerLitre)}
          {end !== undefined && fact(t('view.frying.left'), end.leftLitres)}
          {end !== undefined && fact(t('view.frying.cools'), end.coolMinutes)}
        </Facts>
        <ul>
          {frying.sessions.filter((s) => s.pan === oil.pan).map((s) => <li key={s.heatOnAt}>{t('view.frying.session', { on: s.heatOnAt, ready: s.readyAt, off: s.heatOffAt })}</li>)}
          {oil.topUps.map((u) => <li key={u.afterBatch}>{t('view.frying.topUp', { after: u.afterBatch, litres: t.formats.figure(Math.round(u.litres * 20) / 20, 'L') })}</li>)}
          {end?.changeAfter.map((after) => <li key={`change ${after}`}>{t('sheets.fry.change', { pan, after })}</li>)}
          {end !== undefined && <li>{t('view.frying.movable', { at: end.movableAt, hours: plan.event.kitchen.oilRestHours })} {t('sheets.fry.signs')} {t('sheets.fry.where')}</li>}
        </ul>
        {frying.pauses.filter((p) => p.pan === oil.pan).map((p) => <Pause key={p.from} pause={p} pan={pan} words={pauseWords(plan, t.formats, names, p)} />)}
      </div>
    );
  });
}
