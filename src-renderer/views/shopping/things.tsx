import { setCarriesWater, setOwnThing } from '../../../shared/edit';
import { shoppingOf } from '../../../shared/event';
import { amountText } from '../../../shared/measure';
import { things } from '../../../shared/reference';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { Tick } from '../../parts/tick';
import { ViewSection } from '../../parts/view-page';
import styles from './shopping.module.css';

/** Things the day wants that a household may have of its own: ticked, they are counted and not bought. */
export function OwnThings() {
  const t = useSpeaker();
  const { event, plan, edit, readOnly } = useDocument();
  const { ownThings, carriesWater } = shoppingOf(event);
  const wanted = things.filter((thing) => thing.own).flatMap((thing) => {
    const own = plan.buying.ownThings.find((o) => o.thing === thing.id);
    const line = own ?? plan.buying.lines.find((l) => l.ingredient === thing.id);
    return line === undefined ? [] : [{ thing, need: line.need, figure: line.needFigure, own: ownThings.includes(thing.id) }];
  });
  if (readOnly) return null;
  return (
    <ViewSection title={t('view.shopping.thingsTitle')} lead={t('view.shopping.thingsLead')}>
      <ul className={styles['things']}>
        {wanted.map(({ thing, need, figure, own }) => (
          <li key={thing.id}>
            <Tick label={thing.name} checked={own} onChange={(on) => { edit(setOwnThing(event, thing.id, on)); }} />
            {own && <FigureButton figure={figure} title={t('view.shopping.wantedOf', { thing: thing.name })}>{t.formats.amount(amountText(need))}</FigureButton>}
          </li>
        ))}
      </ul>
      <Tick label={t('view.shopping.carriesWater')} checked={carriesWater} onChange={(on) => { edit(setCarriesWater(event, on)); }} />
    </ViewSection>
  );
}
