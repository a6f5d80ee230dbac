import type { DispenserPlan } from '../../../shared/drinks';
import type { Plan } from '../../../shared/plan';
import { flaskFacts, type Names } from '../../../shared/sheets';
import { useSpeaker, type Speaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { Fact, Facts } from '../../parts/view-page';
import { firstHourLoss } from './first-hour';
import { FlaskPicture } from './flask-picture';
import styles from './drinks.module.css';

/** "loses about 3 degrees". */
function firstHourWords(t: Speaker, loss: number): string {
  if (Math.abs(loss) < 0.5) return t('view.drinks.keepsDegrees');
  return loss > 0 ? t('view.drinks.loses', { degrees: loss }) : t('view.drinks.warms', { degrees: -loss });
}

/** One flask: what it holds, how it cools, how full and how hot it is over the day. */
export function FlaskSection({ flask, plan, names }: { readonly flask: DispenserPlan; readonly plan: Plan; readonly names: Names }) {
  const t = useSpeaker();
  const { coolest, warmest, emptyAt } = flaskFacts(flask);
  const hot = plan.menu.dishes.find((d) => d.id === flask.drink)?.recipe.brewing?.hot ?? true;
  const notes = [
    ...(hot && coolest !== null ? [t('sheets.drinks.coolest', coolest)] : []),
    ...(!hot && warmest !== null ? [t('sheets.drinks.warmest', warmest)] : []),
    ...(emptyAt.length === 0 ? [] : [t('view.drinks.emptyAt', { at: t.formats.list(emptyAt.map((at) => t.formats.clock(at))) })]),
  ];
  const loss = firstHourLoss(flask, plan.event.kitchen.roomC);
  const held = plan.event.kitchen.dispensers.find((d) => d.id === flask.id)?.insulation === 'heated';
  return (
    <section className={styles['flask']}>
      <h4>{t('view.drinks.flaskOf', { flask: flask.name, drink: names.dish(flask.drink), litres: t.formats.figure(flask.capacityLitres, 'L') })}</h4>
      <Facts>
        {loss !== null && (
          <Fact name={t('view.drinks.firstHour')} note={notes.join('; ')}>
            {held ? t('view.drinks.held') : (
              <FigureButton figure={flask.coolingPerHour} title={t('view.sheets.figureOf', { of: flask.name, what: t('view.drinks.firstHour') })}>{firstHourWords(t, loss)}</FigureButton>
            )}
          </Fact>
        )}
      </Facts>
      <FlaskPicture flask={flask} fills={plan.drinks.fills.filter((f) => f.dispenser === flask.id)} roomC={plan.event.kitchen.roomC} />
    </section>
  );
}
