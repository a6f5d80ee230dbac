import type { IcePlan } from '../../../shared/drinks';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { Derived } from '../../parts/thing';

/** Ice for the cold drinks and the tubs it takes. */
export function IceLine({ ice }: { readonly ice: IcePlan }) {
  const t = useSpeaker();
  return (
    <p>
      <Derived name={t('view.drinks.ice')}><FigureButton figure={ice.kg} title={t('view.drinks.ice')} /></Derived>{' '}
      <Derived name={t('view.drinks.tubs')}><FigureButton figure={ice.tubs} title={t('view.drinks.tubs')} /></Derived>
    </p>
  );
}
