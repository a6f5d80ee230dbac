import { divide, entered, figure, times, worked, type Figure } from '../../figure';
import type { DishPlan } from '../../menu';
import type { Hit, Rule, Subject } from '../rule';
import { bigBatch, cookedAhead, kilograms } from './cooked-ahead';
import { needsFact } from './facts';

/** Food cools in trays no deeper than this, cm (rule CO-03, USDA; a state code allows 7.5 cm). */
const deepestCm = 5;
const cubicCmPerLitre = 1000;

interface Trays { readonly count: number; readonly longCm: number; readonly wideCm: number }
const areaOf = ({ longCm, wideCm }: Trays): number => longCm * wideCm;

/** How deep a dish lies when it is divided over the trays, cm. A kilogram counts as a litre. */
function depthOf(dish: DishPlan, t: Trays): Figure {
  const perUnit = dish.totalFigure.value === 0 ? 0 : (kilograms(dish) / dish.totalFigure.value) * cubicCmPerLitre;
  return figure((kilograms(dish) * cubicCmPerLitre) / (t.count * areaOf(t)), 'cm', () => ({
    rule: 'safety.trayDepth',
    terms: [
      worked('food', { text: dish.name }, dish.totalFigure),
      entered('trays', { word: 'safety.term.trays' }, t.count, '', 'precautions.coolTrays'),
      entered('long', { word: 'safety.term.trayLong' }, t.longCm, 'cm', 'precautions.coolTrayLongCm'),
      entered('wide', { word: 'safety.term.trayWide' }, t.wideCm, 'cm', 'precautions.coolTrayWideCm'),
    ],
    sum: divide(times('food', perUnit), times('trays', 'long', 'wide')),
  }));
}

/** What is weighed and has to be cooled. */
const weighed = (s: Subject): readonly DishPlan[] => cookedAhead(s).filter((d) => kilograms(d) > 0);

/** CO-03: cooked food cools no deeper than 5 cm. */
export const trayDepth: Rule = {
  id: 'CO-03', level: 'warn', title: { id: 'safety.title.CO-03' },
  judge(s) {
    const dishes = weighed(s);
    const { coolTrays, coolTrayLongCm, coolTrayWideCm } = s.event.precautions ?? {};
    if (dishes.length === 0 || coolTrays === 0) return { hits: [] };
    if (coolTrays === undefined) return { hits: [], needs: needsFact('coolTrays') };
    if (coolTrayLongCm === undefined || coolTrayWideCm === undefined) return { hits: [], needs: needsFact(coolTrayLongCm === undefined ? 'coolTrayLongCm' : 'coolTrayWideCm') };
    const trays: Trays = { count: coolTrays, longCm: coolTrayLongCm, wideCm: coolTrayWideCm };
    return {
      hits: dishes.flatMap((d): readonly Hit[] => {
        const depth = depthOf(d, trays);
        if (depth.value <= deepestCm) return [];
        const need = Math.ceil((kilograms(d) * cubicCmPerLitre) / (deepestCm * areaOf(trays)));
        return [{ value: depth.value, unit: 'cm', figure: depth, limit: { value: deepestCm, unit: 'cm' }, about: [d.id], message: { id: 'safety.say.CO-03', params: { dish: d.name, cm: depth.value, limit: deepestCm, need } } }];
      }),
    };
  },
};

/** CO-04: more than four litres never cool whole in their pot. */
export const wholePot: Rule = {
  id: 'CO-04', level: 'stop', title: { id: 'safety.title.CO-04' },
  judge(s) {
    const big = cookedAhead(s).filter((d) => kilograms(d) > bigBatch);
    const trays = s.event.precautions?.coolTrays;
    if (big.length === 0) return { hits: [] };
    if (trays === undefined) return { hits: [], needs: needsFact('coolTrays') };
    return {
      hits: trays > 0 ? [] : big.map((d): Hit => ({
        value: kilograms(d), unit: 'kg', ...(d.totalFigure.unit === 'kg' ? { figure: d.totalFigure } : {}), limit: { value: bigBatch, unit: 'kg' },
        about: [d.id], message: { id: 'safety.say.CO-04', params: { dish: d.name, kg: kilograms(d), limit: bigBatch } },
      })),
    };
  },
};
