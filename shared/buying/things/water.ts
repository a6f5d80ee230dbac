import { shoppingOf, type Event } from '../../event';
import { divide, plus, roundUp, times, worked, type Term } from '../../figure';
import type { GuestsPlan } from '../../guests';
import { settle, settledTerm } from '../../household';
import { convertFood } from '../../measure';
import { ingredient } from '../../reference';
import type { Need, ThingNeed } from '../types';
import { needOfThing, summed } from './count';

const noWeights = { gramsPerMl: null, gramsPer: {} };

/** Where there is no tap: all water of recipes and drinks, and some for each guest; up to the next tenth of a litre. Unit: L. Nothing where there is a tap. */
export function waterNeeds(event: Event, guests: GuestsPlan, needs: readonly Need[], nameOf: (origin: string) => Term['label']): ThingNeed[] {
  if (!shoppingOf(event).carriesWater) return [];
  const byOrigin = new Map<string, number>();
  for (const need of needs) {
    const row = ingredient(need.ingredient);
    if (row?.section !== 'tap') continue;
    const litres = convertFood(need.amount, 'L', row) ?? convertFood(need.amount, 'L', noWeights);
    byOrigin.set(need.origin, (byOrigin.get(need.origin) ?? 0) + (litres?.amount.toNumber() ?? 0));
  }
  const terms = [...byOrigin].map(([origin, litres], i): Term => ({ key: `l${i}`, label: nameOf(origin), value: litres, unit: 'L', origin: { kind: 'recipe', recipe: origin } }));
  return needOfThing('carried-water', 'L', 'no-tap', summed('L', 'things.water', [
    ...terms, worked('people', { word: 'buying.term.people' }, guests.planned), settledTerm('each', settle(event, 'things.waterPerGuest')),
  ], divide(roundUp(times(plus(...terms.map((t) => t.key), times('people', 'each')), 10)), 10)));
}
