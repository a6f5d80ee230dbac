import type { Event } from '../event';
import { computed, divide, entered, figure, minus, plus, sumOf, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { minutes } from '../measure';
import { minutesToCool } from './heat';
import { batchUptake, heaviestLoad } from './oil';
import type { DishSchedule } from './schedule';
import { oilCurve } from './temperature';
import type { Batch, OilEnd, OilPlan, OilSession } from './types';

const schedule = 'frying.method.schedule';
const batterKgOf = (b: Batch, dishes: readonly DishSchedule[]): number => ((dishes.find((d) => d.dish.id === b.dish)?.frying.pieceBatterG ?? 0) * b.pieces) / 1000;

/** What becomes of each pan's oil: when it is changed, what is left, how long it takes to cool, how warm it is all day. */
export function oilEnds(event: Event, batches: readonly Batch[], oil: readonly OilPlan[], sessions: readonly OilSession[], dishes: readonly DishSchedule[]): OilEnd[] {
  return oil.flatMap((o): OilEnd[] => {
    const mine = batches.filter((b) => b.pan === o.pan);
    const load = heaviestLoad(mine, dishes)?.load;
    const hot = sessions.filter((s) => s.pan === o.pan);
    if (load === undefined) return [];
    const changes = changesOf(event, o, mine, dishes);
    const coolMinutes = minutesToCool(event, load, settledTerm('to', settle(event, 'oil.movableC')));
    const off = Math.max(...hot.map((s) => Number(s.heatOffAt)));
    return [{
      pan: o.pan, changeAfter: changes.after, batterPerLitre: changes.perLitre, leftLitres: leftOf(event, o, mine, dishes, changes.after), coolMinutes,
      movableAt: minutes(off + Math.max(Math.ceil(coolMinutes.value / 5 - 1e-9) * 5, event.kitchen.oilRestHours * 60)),
      get curve() {
        return oilCurve(event, load, hot, mine, dishes);
      },
    }];
  });
}

/** Fresh oil after the batch with which all that was poured has fried as much as the settled amount; never after the last. */
function changesOf(event: Event, o: OilPlan, mine: readonly Batch[], dishes: readonly DishSchedule[]): { after: number[]; perLitre: Figure } {
  const limit = settle(event, 'oil.batterPerLitre').value;
  const after: number[] = [];
  let [batter, poured] = [0, o.fillLitres.value];
  mine.forEach((b, i) => {
    batter += batterKgOf(b, dishes);
    poured += o.topUps.find((t) => t.afterBatch === b.number)?.litres ?? 0;
    if (i === mine.length - 1 || batter <= limit * poured) return;
    after.push(b.number);
    [batter, poured] = [0, o.fillLitres.value];
  });
  const kg = mine.map((b) => batterKgOf(b, dishes));
  const tops = o.topUps.map((t) => t.litres);
  const all = o.fillLitres.value * (1 + after.length) + tops.reduce((a, b) => a + b, 0);
  const perLitre = figure(kg.reduce((a, b) => a + b, 0) / all, 'kg/L', () => ({
    rule: 'fry.oilWork',
    terms: [computed('batter', { word: 'frying.term.batchKg' }, kg, 'kg', schedule), worked('fill', { word: 'frying.term.fill' }, o.fillLitres), computed('topUps', { word: 'frying.term.topUps' }, tops, 'L', schedule), computed('changes', { word: 'frying.term.changes' }, after.length, '', schedule)],
    sum: divide(sumOf('batter'), plus(times('fill', plus(1, 'changes')), sumOf('topUps'))),
  }));
  return { after, perLitre };
}

/** Oil left in the pan at the end: the last fill, with what was topped up since, less what the batches since took with them. */
function leftOf(event: Event, o: OilPlan, mine: readonly Batch[], dishes: readonly DishSchedule[], changeAfter: readonly number[]): Figure {
  const since = changeAfter.at(-1) ?? 0;
  const tops = o.topUps.filter((t) => t.afterBatch > since).map((t) => t.litres);
  const taken = mine.filter((b) => b.number > since).map((b) => batchUptake(event, b, dishes));
  const left = o.fillLitres.value + tops.reduce((a, b) => a + b, 0) - taken.reduce((a, b) => a + b, 0);
  return figure(left, 'L', () => ({
    rule: 'fry.oilLeft',
    terms: [worked('fill', { word: 'frying.term.fill' }, o.fillLitres), computed('topUps', { word: 'frying.term.topUps' }, tops, 'L', schedule), computed('taken', { word: 'frying.term.takenBatches' }, taken, 'L', schedule)],
    sum: minus(plus('fill', sumOf('topUps')), sumOf('taken')),
  }));
}

/** Litres for fresh fills during the day: each pan's fill as often as it is changed. */
export function changeTotal(event: Event, ends: readonly OilEnd[]): Figure | null {
  const changed = ends.filter((e) => e.changeAfter.length > 0);
  if (changed.length === 0) return null;
  const terms = changed.flatMap((e, i): Term[] => {
    const at = event.kitchen.pans.findIndex((p) => p.id === e.pan);
    return [entered(`fill${i}`, { word: 'kitchen.term.coldOil' }, event.kitchen.pans[at]?.oilLitres ?? 0, 'L', `kitchen.pans[${at}].oilLitres`), computed(`times${i}`, { word: 'frying.term.changes' }, e.changeAfter.length, '', schedule)];
  });
  const litres = changed.reduce((sum, e) => sum + (event.kitchen.pans.find((p) => p.id === e.pan)?.oilLitres ?? 0) * e.changeAfter.length, 0);
  return figure(litres, 'L', () => ({ rule: 'fry.oilChanges', terms, sum: plus(...changed.map((_, i) => times(`fill${i}`, `times${i}`))) }));
}
