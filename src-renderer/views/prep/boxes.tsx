import { containerLabels, keptThings, roomIn } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { Mark } from '../../parts/mark';
import { Fact, Facts } from '../../parts/view-page';

/** The room that boxes take in the fridge and the freezer when they are most, beside what there is; and how many labels there are to print. */
export function Boxes() {
  const t = useSpeaker();
  const { plan } = useDocument();
  if (keptThings(plan).length === 0) return null;
  const [cold, freezer] = [roomIn(plan, 'cold'), roomIn(plan, 'freezer')];
  const space = plan.event.kitchen.coldLitres;
  const labels = containerLabels(plan);
  const coldNote = cold === null ? '' : space === null ? t('view.prep.roomUnknown') : cold.value > space ? t('view.prep.roomShort', { litres: space }) : t('view.prep.roomOf', { litres: space });
  return (
    <Facts>
      {cold !== null && <Fact name={t('view.prep.room.cold')} note={<>{space !== null && cold.value > space && <Mark kind="watch" />} {coldNote}</>}><FigureButton figure={cold} title={t('view.prep.room.cold')} size="large" /></Fact>}
      {freezer !== null && <Fact name={t('view.prep.room.freezer')}><FigureButton figure={freezer} title={t('view.prep.room.freezer')} size="large" /></Fact>}
      <Fact name={t('view.prep.labels')} note={t('view.prep.labelsNote', { leftOver: labels.leftOver })}>{t.formats.number(labels.total)}</Fact>
    </Facts>
  );
}
