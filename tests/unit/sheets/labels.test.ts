import { readFileSync } from 'node:fs';
import { assert, constantFrom, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatsFor, type Event } from '../../../shared/event';
import { recompute } from '../../../shared/figure';
import { parseShelf } from '../../../shared/household';
import { plan, type Plan } from '../../../shared/plan';
import { sourceTitle } from '../../../shared/reference';
import { containerLabels, contentsOfDish, isMild, keptThings, labelGroups, madeAhead, oilOf, roomIn, sheetDocument, sheetsOf, type SheetKind } from '../../../shared/sheets';
import { keptLines } from '../../../shared/menu';
import { demo } from '../demo/demo';
import { opened, unused } from '../plan/workings';
import { plainEvent } from '../shelf/plain-kitchen';

const demos = ['lantern-evening', 'school-fair-stall', 'freezer-sunday'] as const;
const textOf = (event: Event, only: SheetKind): string => {
  const sheets = sheetsOf(plan(event), formatsFor(event.preferences, event.day), { paper: 'a4', printedAt: '9:05', only: [only] });
  return sheetDocument(sheets, { lang: 'en-GB' }).replace(/<style>[\s\S]*?<\/style>/, '').replaceAll(/<[^>]+>/g, ' ').replaceAll(/[\s\u00a0]+/g, ' ');
};
const dishOf = (made: Plan, id: string) => {
  const found = made.menu.dishes.find((dish) => dish.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const shelf = ((): ReturnType<typeof demo>['recipes'] => {
  const read = parseShelf(readFileSync('assets/app/shelf/starter.brimful-shelf', 'utf8'));
  if (!read.ok) throw new Error('expected the starter shelf');
  return read.shelf.recipes;
})();

/** Pans of one station shared by a fritter of chickpea and one with wheat, egg and milk. */
const twoFried = (): Event => {
  const event = demo('lantern-evening');
  const corn = shelf.find((one) => one.id === 'courgette-corn-fritters');
  if (corn === undefined) throw new Error('expected the corn fritters');
  const stations = event.kitchen.stations.map((station) => ({ ...station, dishes: [...station.dishes, 'corn'] }));
  return { ...event, recipes: [...event.recipes, corn], kitchen: { ...event.kitchen, stations }, menu: { ...event.menu, dishes: [...event.menu.dishes, { id: 'corn', recipe: corn.id, takeUp: 0.5, served: { kind: 'throughout' } }] } };
};

/** Dry kidney beans for forty, soaked the evening before and kept. */
const beanDay = (): Event => {
  const beans = shelf.find((one) => one.id === 'kidney-bean-pot');
  if (beans === undefined) throw new Error('expected the kidney beans');
  return plainEvent(beans, 40);
};
const litresOf = (of: Event) => keptThings(plan(of)).find((thing) => thing.soaked)?.boxes.litres?.value;
const soup = (of: Event) => contentsOfDish(of, dishOf(plan(of), 'bean-soup'), []).contains;

describe('cards for the dishes', () => {
  it('name every dish that is served, and nobody who eats it', () => {
    const event = demo('lantern-evening');
    const words = textOf({ ...event, guests: { ...event.guests, allergies: [{ allergen: 'sesame', people: 3, note: 'Somebody in particular' }] }, preferences: { ...event.preferences, printAllergies: true } }, 'labels');
    for (const dish of plan(event).menu.dishes.filter((one) => one.role !== 'water')) expect(words).toContain(dish.name);
    expect(words).not.toContain('Somebody in particular');
    expect(words).not.toMatch(/\b3 (guests|people)/);
  });

  it('say what is in a dish, and that nothing listed is', () => {
    const words = textOf(demo('lantern-evening'), 'labels');
    expect(words).toMatch(/Green beans with sesame .{0,80}Contains sesame/);
    expect(words).toMatch(/Flatbread .{0,80}Contains gluten/);
    expect(words).toMatch(/Date-and-lime chutney .{0,90}None of the 14 listed allergens/);
  });

  it('name nine groups in the United States and fourteen elsewhere', () => {
    const event = demo('freezer-sunday');
    const us: Event = { ...event, preferences: { ...event.preferences, safetyProfile: 'us' } };
    expect([labelGroups(event).length, labelGroups(us).length]).toEqual([14, 9]);
    expect(soup(event)).toEqual(['gluten', 'celery']);
    expect(soup(us)).toEqual(['gluten']);
    expect(textOf({ ...demo('lantern-evening'), preferences: us.preferences }, 'labels')).toContain('None of the 9 listed allergens');
  });

  it('never call a dish free of anything while one of its foods has not been checked', () => {
    const event = demo('lantern-evening');
    const strange = { ...event, recipes: event.recipes.map((one) => (one.id === 'chutney' ? { ...one, ingredients: one.ingredients.map((line) => (line.ingredient === 'dates' ? { ...line, ingredient: 'moon-root' } : line)) } : one)) };
    const chutney = dishOf(plan(strange), 'chutney');
    expect(contentsOfDish(strange, chutney, [])).toEqual({ contains: [], unchecked: ['moon-root'], diets: [] });
    expect(isMild(chutney)).toBe(false);
    expect(textOf(strange, 'labels')).toMatch(/Date-and-lime chutney Not checked: moon[- ]root/);
  });

  it('warn of what the shared oil carries, and take back what it spoils', () => {
    const event = twoFried();
    const { menu } = plan(event);
    const fritters = dishOf(plan(event), 'fritters');
    const oil = oilOf(event, fritters, menu.dishes);
    expect(oil?.shared.find((one) => one.dish === dishOf(plan(event), 'corn').name)?.allergens).toEqual(['gluten', 'eggs', 'milk']);
    expect(oil?.against).toEqual(expect.arrayContaining(['glutenFree', 'lactoseFree', 'vegan']));
    expect(contentsOfDish(event, fritters, menu.dishes).diets).toEqual(['vegetarian', 'nutFree']);
    const before = demo('lantern-evening');
    expect(contentsOfDish(before, fritters, plan(before).menu.dishes).diets).toEqual(['vegan', 'glutenFree', 'nutFree']);
    expect(textOf(event, 'labels')).toMatch(/Spring-onion and spinach fritters .{0,120}Fried in the same oil as courgette and sweetcorn fritters: may carry gluten, eggs and milk/);
    expect(oilOf(event, dishOf(plan(event), 'rice'), menu.dishes)).toBeNull();
  });

  it('warn of the oil itself, and of an oil nobody knows', () => {
    const event = demo('lantern-evening');
    const withOil = (oilKind: string): string => textOf({ ...event, kitchen: { ...event.kitchen, oilKind } }, 'labels');
    expect(withOil('peanut-refined')).toContain('oil that is or may be of peanuts');
    expect(withOil('moon oil')).toContain('Frying oil not checked');
    expect(withOil('moon oil')).not.toMatch(/fritters Vegan [^C]{0,30}Nut-free/);
  });

  it('call mild what has nothing hot in it, and not a jug of milk', () => {
    const made = plan(demo('lantern-evening'));
    expect(['pulses', 'rice', 'plain-rice-carrot'].map((id) => isMild(dishOf(made, id)))).toEqual([true, true, true]);
    expect(['fritters', 'chutney', 'milk-jug', 'ginger-tea'].map((id) => isMild(dishOf(made, id)))).toEqual([false, false, false, false]);
    const bowl = plan(plainEvent(shelf.find((one) => one.id === 'mild-bowl') ?? shelf[0]!, 12)).menu.dishes[0];
    expect(bowl !== undefined && isMild(bowl)).toBe(true);
  });
});

describe('what is kept in boxes', () => {
  it.each(demos)('%s: every box is good when it is made, and each job that keeps something cold fills one', (name) => {
    const made = plan(demo(name));
    const things = keptThings(made);
    expect(things.length).toBeGreaterThan(2);
    for (const thing of things) {
      expect(thing.useBy).toBeGreaterThan(thing.madeAt);
      expect(thing.boxes.count.value).toBeGreaterThanOrEqual(1);
    }
    const covered = new Set(things.flatMap((thing) => thing.steps.map((step) => `${thing.dish.id}/${step}`)));
    const cold = madeAhead(made).filter(({ dish, step }) => dish !== undefined && (step?.keeps?.place === 'cold' || step?.keeps?.place === 'freezer') && step.does !== 'serve');
    expect(cold.filter(({ dish, step }) => !covered.has(`${dish?.id}/${step?.id}`)).map(({ step }) => step?.name)).toEqual([]);
  });

  it('tells a box once when what is in it is worked on again', () => {
    const things = keptThings(plan(demo('lantern-evening'))).filter((thing) => thing.dish.id === 'fritters' && thing.keeps.place === 'cold');
    expect(things.map((thing) => thing.foods)).toEqual([['spring-onion', 'spinach']]);
    expect(things[0]?.steps).toHaveLength(2);
  });

  it('puts soup for the freezer into litre boxes and flatbread into bags', () => {
    const things = keptThings(plan(demo('freezer-sunday')));
    const of = (id: string) => things.find((thing) => thing.dish.id === id && thing.keeps.place === 'freezer')?.boxes;
    // 24 portions of a 20-portion recipe of 6 kg are 7.2 kg: eight boxes of a litre, nine tenths full. 60 pieces, twelve in a bag.
    expect([of('bean-soup')?.boxLitres, of('bean-soup')?.count.value]).toEqual([1, 8]);
    expect([of('freezer-flatbread')?.boxLitres, of('freezer-flatbread')?.count.value]).toEqual([null, 5]);
  });

  it('keeps dry mix in a bag for each bowl, as its recipe and the bowl cards say', () => {
    const made = plan(demo('lantern-evening'));
    const mix = keptThings(made).find((thing) => thing.dish.id === 'fritters' && thing.keeps.place === 'counter');
    const bowls = made.frying.bowls.filter((bowl) => bowl.dish === 'fritters').length;
    expect(bowls).toBeGreaterThan(3);
    expect([mix?.boxes.boxLitres, mix?.boxes.count.value, mix?.boxes.count.unit]).toEqual([null, bowls, 'bags']);
    expect(textOf(demo('lantern-evening'), 'boxes')).toContain(`${bowls} of ${bowls}`);
  });

  it('tells the dry weight of soaked beans as such, and counts their boxes by what they weigh soaked', () => {
    const event = beanDay();
    const beans = keptThings(plan(event)).find((thing) => thing.soaked);
    if (beans === undefined) throw new Error('expected soaked beans');
    expect(textOf(event, 'boxes')).toMatch(/kidney beans.{0,120} g dry, soaked/i);
    const litres = beans.boxes.count.working().terms.find((term) => term.key === 'litres')?.value;
    expect(Number(litres)).toBeGreaterThan(beans.amount.amount.toNumber() / 1000 * 1.8);
    const washed = keptThings(plan(demo('lantern-evening'))).find((thing) => thing.dish.id === 'fritters' && thing.keeps.place === 'cold');
    expect(washed?.soaked).toBe(false);
  });

  it('takes soaked food to weigh what it weighs soaked when it is worked on again', () => {
    const event = beanDay();
    const again: Event = { ...event, recipes: event.recipes.map((recipe) => ({ ...recipe, steps: recipe.steps.flatMap((step) => (step.does === 'soak' && step.keeps !== undefined ? [step, { ...step, id: `${step.id}-drain`, name: step.name.replace(/^Soak/, 'Drain'), does: 'prepare' as const, after: [step.id] }] : [step])) })) };
    expect(litresOf(event)).toBeGreaterThan(0);
    expect(litresOf(again)).toBe(litresOf(event));
  });

  it('reads from the words of a step what is in the box', () => {
    const read = shelf.flatMap((recipe) => {
      const [dish] = plan(plainEvent(recipe, 12)).menu.dishes;
      return dish === undefined ? [] : recipe.steps.filter((step) => step.keeps !== undefined).map((step) => [step.name, keptLines(dish, step)?.map((line) => line.ingredient) ?? null] as const);
    });
    const of = (name: string) => read.find(([step]) => step === name)?.[1];
    expect(of('Cut the spinach and spring onions')).toEqual(['spring-onion', 'spinach']);
    expect(of('Peel the carrots and dice them small')).toEqual(['carrot']);
    expect(of('Scrub and slice the ginger')).toEqual(['ginger-root']);
    expect(of('Squeeze the lemons')).toEqual(['lemon-juice-fresh']);
    expect(of('Soak the chickpeas overnight in plenty of cold water; drain, keep in the fridge')).toEqual(['chickpeas-dry']);
    expect(of('Fill, label with the date and freeze')).toBeNull();
    expect(of('Dice the vegetables')).toEqual(expect.arrayContaining(['carrot', 'onion']));
  });

  it('needs no fewer boxes for more portions, and as many labels as boxes', () => {
    const event = demo('freezer-sunday');
    const sized = (portions: number): Event => ({ ...event, menu: { ...event.menu, dishes: event.menu.dishes.map((dish) => ({ ...dish, served: { kind: 'fixed', at: 1080, portions } })) } });
    assert(property(integer({ min: 1, max: 150 }), integer({ min: 1, max: 60 }), (portions, more) => {
      expect(containerLabels(plan(sized(portions + more))).madeAhead).toBeGreaterThanOrEqual(containerLabels(plan(sized(portions))).madeAhead);
    }), { numRuns: 12 });
  });

  it('the room in the cold is no more than all boxes and no less than the largest', () => {
    assert(property(constantFrom(...demos), constantFrom('cold' as const, 'freezer' as const), (name, place) => {
      const made = plan(demo(name));
      const litres = keptThings(made).filter((thing) => thing.keeps.place === place).map((thing) => thing.boxes.litres?.value ?? 0);
      const room = roomIn(made, place)?.value ?? 0;
      expect(room).toBeLessThanOrEqual(litres.reduce((sum, one) => sum + one, 0) + 1e-9);
      expect(room).toBeGreaterThanOrEqual(Math.max(0, ...litres));
    }), { numRuns: 6 });
  });

  it('every figure recomputes from inputs with a known source', () => {
    for (const name of demos) {
      const made = plan(demo(name));
      const figures = [...keptThings(made).flatMap(({ boxes }) => [boxes.count, ...(boxes.litres === null ? [] : [boxes.litres])]), roomIn(made, 'cold'), roomIn(made, 'freezer')].filter((one) => one !== null);
      const all = figures.flatMap((one) => opened(name, one)).filter(({ working }) => working.rule.startsWith('prep.'));
      expect(all.length).toBeGreaterThan(10);
      for (const one of figures) expect(Math.abs(recompute(one.working()) - one.value)).toBeLessThanOrEqual(1e-9 * Math.max(1, one.value));
      const inner = all.flatMap(({ working }) => working.terms.flatMap((term) => (term.figure === undefined ? [] : [{ value: Number(term.value), again: recompute(term.figure.working()) }])));
      for (const { value, again } of inner) expect(Math.abs(again - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, value));
      expect(all.flatMap(unused)).toEqual([]);
      expect(all.flatMap(({ working }) => working.terms.flatMap((term) => (term.origin?.kind === 'table' && sourceTitle(term.origin.source) === undefined ? [term.origin.source] : [])))).toEqual([]);
    }
  });
});

describe('labels for boxes', () => {
  it('are as many as the function for the shopping list says', () => {
    for (const name of demos) {
      const event = demo(name);
      const made = plan(event);
      const html = sheetDocument(sheetsOf(made, formatsFor(event.preferences, event.day), { paper: 'letter', printedAt: '9:05', only: ['boxes'] }), { lang: 'en-GB' });
      const count = containerLabels(made);
      expect([(html.match(/data-box=/g) ?? []).length, (html.match(/data-left=/g) ?? []).length]).toEqual([count.madeAhead, count.leftOver]);
      expect(count.total).toBe(count.madeAhead + count.leftOver);
    }
  });

  it.each(demos)('%s: the shopping list asks for as many boxes and labels as the sheet prints', (name) => {
    const made = plan(demo(name));
    const need = (thing: string) => made.buying.lines.find((line) => line.ingredient === thing)?.need.amount.toNumber() ?? 0;
    const { total } = containerLabels(made);
    expect(total).toBeGreaterThan(5);
    expect([need('food-boxes'), need('labels')]).toEqual([total, total]);
  });

  it('say what, how much, when it was made, where to keep it and until when', () => {
    const words = textOf(demo('freezer-sunday'), 'boxes');
    expect(words).toMatch(/Kidney bean and barley soup 1 of 8 In it about 900 g Made Sunday 18 October Keep in the freezer Use by Saturday 16 January Contains gluten and celery/);
    expect(words).toMatch(/Carrots, onions and 2 more .{0,110}in the fridge Use by Monday 19 October, \d\d:\d\d Contains celery/);
    expect(words).not.toContain('left over');
  });

  it('give left-over rice a day and the rest three', () => {
    const words = textOf(demo('lantern-evening'), 'boxes');
    expect(words).toMatch(/Boiled rice left over In it Keep in the fridge Use by Sunday 13 December, \d\d:\d\d Eat hot: steaming all through, 74 °C/);
    expect(words).toMatch(/Green beans with sesame left over In it Keep in the fridge Use by Tuesday 15 December/);
    expect(words).not.toMatch(/fritters left over|Ginger tea left over/);
  });
});
