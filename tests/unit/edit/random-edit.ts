import * as fc from 'fast-check';
import {
  addOwnJob, changeJob, changeOwnJob, holdJobs, letGoOfPrinted, removeOwnJob, removePerson, addBorrowed, addDish, addOwnLine, addPan, addPot, addWave, changeBorrowed, changeBurner, changeDish, changeKitchen, changePan, changePerson, changeRecipe, changeWave, freshId, markBought, markLater, moveWave, putBackIngredient, removeBurner, waveLoan, removeDish, removePan,
  removeOwnLine, removeRecipe, removeWave, setAllergy, setCarriesWater, setDay, setDiet, setHeadcount, setHigherRisk, setHouseFigure, setLarder, setOwnThing, setPreference, setPrice, setShopper, setTimes, setTitle, substitute, takeDayOrder, type EditResult,
} from '../../../shared/edit';
import { standIns } from '../../../shared/buying';
import { dayOf, type Event } from '../../../shared/event';
import { substitutions } from '../../../shared/reference';

/** An edit not yet done: `n` picks among the items of a list. */
export type RandomEdit = (event: Event) => EditResult;
const pick = (list: readonly { readonly id: string }[], n: number): string => list[n % Math.max(1, list.length)]?.id ?? 'nobody';

/** Edits of every kind, sound and unsound. */
export const randomEdit: fc.Arbitrary<RandomEdit> = fc.tuple(fc.nat(42), fc.nat(50), fc.integer({ min: -400, max: 2000 }), fc.string({ maxLength: 8 })).map(([kind, n, value, text]): RandomEdit => (event) => {
  const { guests, menu, kitchen, people, recipes } = event;
  switch (kind) {
    case 0: return setHeadcount(event, value, n);
    case 1: return changeWave(event, pick(guests.waves, n), { from: value });
    case 2: return changeWave(event, pick(guests.waves, n), { counts: { adult: value, age4to6: n } });
    case 3: return moveWave(event, pick(guests.waves, n), value);
    case 4: return addWave(event, { id: freshId(guests.waves, 'wave'), name: text, from: value, to: value + n, counts: { adult: n }, stay: { shortest: 20, usual: 40, longest: 60 } });
    case 5: return removeWave(event, pick(guests.waves, n));
    case 6: return setTitle(event, text);
    case 7: return setDay(event, `2026-${String((n % 14) + 1).padStart(2, '0')}-11`);
    case 8: return setTimes(event, value, value + n - 10);
    case 9: return setPreference(event, { units: n % 2 === 0 ? 'us' : 'metric', cover: value / 1000 });
    case 10: return addDish(event, { id: freshId(menu.dishes, 'dish'), recipe: pick(recipes, n) });
    case 11: return removeDish(event, pick(menu.dishes, n));
    case 12: return changeDish(event, pick(menu.dishes, n), { takeUp: value / 1000, portion: { amount: String(n), unit: 'piece' } });
    case 13: return changeDish(event, pick(menu.dishes, n), { name: undefined, portion: undefined });
    case 14: return changeRecipe(event, pick(recipes, n), { name: text });
    case 15: return changePan(event, pick(kitchen.pans, n), { oilLitres: value / 100 });
    case 16: return changeBurner(event, pick(kitchen.burners, n), { ratedW: value });
    case 17: return addPot(event, { id: freshId(kitchen.pots, 'pot'), name: text, litres: value / 10 });
    case 18: return addPan(event, { id: freshId(kitchen.pans, 'pan'), name: 'Pan', shape: 'round', rimMm: value, depthMm: 90, oilLitres: 2, burner: pick(kitchen.burners, n) });
    case 19: return removePan(event, pick(kitchen.pans, n));
    case 20: return removeBurner(event, pick(kitchen.burners, n));
    case 21: return removeRecipe(event, pick(recipes, n));
    case 22: return changePerson(event, pick(people, n), { from: value });
    case 23: return setLarder(event, 'salt', n % 3 === 0 ? null : { amount: String(n), unit: 'g' });
    case 24: return setPrice(event, 'sugar', n % 3 === 0 ? null : { price: '1.20', per: { amount: String(n), unit: 'kg' } });
    case 25: return setHouseFigure(event, 'fry.dw', n % 3 === 0 ? null : { value, why: text });
    case 26: return setDiet(event, 'vegan', n);
    case 27: return setAllergy(event, 'milk', n, text);
    case 28: return setHigherRisk(event, n % 2 === 0);
    case 29: return n % 2 === 0 ? addOwnLine(event, { id: `own-${n}`, name: text, amount: { amount: String(n), unit: 'piece' } }, n % 3 === 0 ? '1.20' : undefined) : removeOwnLine(event, `own-${n - 1}`);
    case 30: return n % 3 === 0 ? waveLoan(event, n % 2 === 0 ? { id: `idea-${n}`, name: text } : null) : n % 2 === 0 ? addBorrowed(event, { id: `lent-${n}`, name: text }) : changeBorrowed(event, `lent-${n - 1}`, { returned: true, count: value });
    case 31: return markBought(event, { key: 'salt', name: 'Salt' }, n % 3 === 0 ? null : { amount: String(value), unit: 'g' }, { amount: '5', unit: 'kg' });
    case 32: return markLater(event, { key: n % 2 === 0 ? 'salt' : 'sugar', name: 'Salt' }, n % 3 === 0);
    case 33: return setShopper(event, n % 2 === 0 ? { line: 'salt', name: 'Salt' } : { section: 'bread', name: 'Bread' }, n % 3 === 0 ? null : text);
    case 34: return n % 5 === 0 ? setCarriesWater(event, n % 2 === 0) : setOwnThing(event, n % 2 === 0 ? 'plates' : text, n % 3 === 0);
    case 35: return substitute(event, substitutions[Math.abs(value) % substitutions.length]?.id ?? '');
    case 36: { const [pair] = standIns(event); return pair === undefined ? setTitle(event, text) : putBackIngredient(event, pair); }
    case 37: return n % 2 === 0 ? addOwnJob(event, { id: `job-${n}`, name: text, minutes: value }) : removeOwnJob(event, `job-${n - 1}`);
    case 38: return changeOwnJob(event, pick(dayOf(event).ownJobs, n), { from: value, to: n % 3 === 0 ? undefined : value + n, needs: [{ thing: 'counter', count: 1 }] });
    case 39: return changeJob(event, { key: ['step/boil/rice', 'clean/kitchen', 'fry/1', 'brew/2', `own/job-${n}`][n % 5] ?? '', name: text }, n % 4 === 0 ? { at: undefined, off: n % 8 === 0 } : n % 4 === 1 ? { at: value } : n % 4 === 2 ? { who: pick(people, n) } : { minutes: value, parts: n });
    case 40: return n % 3 === 0 ? letGoOfPrinted(event) : n % 3 === 1 ? holdJobs(event, [{ job: 'clean/kitchen', at: value }, { job: 'set-up/tables', at: n }], 'printed') : removePerson(event, pick(people, n));
    case 41: return takeDayOrder(event, n % 3 === 0 ? null : { setUpFirst: n % 2 === 0, restsFirst: false, relief: 'early', nudges: [{ job: 'step/boil/rice', by: value }] });
    default: return n % 2 === 0 ? setTitle(event, text) : changeKitchen(event, { roomC: value / 10 });
  }
});
