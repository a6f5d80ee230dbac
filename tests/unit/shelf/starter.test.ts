import { describe, expect, it } from 'vitest';
import type { Recipe, RoleId, Step } from '../../../shared/event';
import { checkShelf, serialiseShelf } from '../../../shared/household';
import { ingredient } from '../../../shared/reference';
import { balance, gramsIn, gramsOut, shareLost } from './balance';
import { starter, starterShelf, starterText } from './starter';

const { recipes } = starterShelf;
const each = recipes.map((r) => [r.id, r] as const);
const withRoles = (...roles: readonly RoleId[]): readonly Recipe[] => recipes.filter((r) => roles.includes(r.role));
const minutes = (r: Recipe, does: Step['does']): number => r.steps.filter((s) => s.does === does).reduce((sum, s) => sum + s.passive.fixed, 0);
const lectin = recipes.filter((r) => r.ingredients.some((l) => l.ingredient === 'kidney-beans-dry' || l.ingredient === 'white-beans-dry'));
const frozen = recipes.filter((r) => r.steps.some((s) => s.does === 'freeze'));

describe('the starter shelf', () => {
  it('reads without a problem and is written back byte for byte', () => {
    expect(checkShelf(starterShelf)).toEqual([]);
    expect(serialiseShelf(starterShelf)).toBe(starterText);
  });

  it('has at least 48 recipes, each with its own id and name', () => {
    expect(recipes.length).toBeGreaterThanOrEqual(48);
    expect(new Set(recipes.map((r) => r.name)).size).toBe(recipes.length);
  });

  it.each([
    ['fried snacks', 6, withRoles('friedSnack', 'friedSide')], ['condiments', 6, withRoles('condiment')], ['hot drinks', 6, withRoles('hotDrink')],
    ['cold drinks', 5, withRoles('coldDrink')], ['rice and grains', 5, withRoles('grain')], ['beans and lentils', 6, withRoles('pulse')],
    ['vegetables', 5, withRoles('vegetable')], ['breads', 3, withRoles('bread')], ['sweets', 4, withRoles('sweet')], ['soups', 2, withRoles('soup')],
  ])('has enough %s: %i or more', (_what, least, found) => expect(found.length).toBeGreaterThanOrEqual(least));

  it('has what a household makes ahead: griddle cakes, soups, a spice blend, a relish, sprouts', () => {
    expect(frozen.map((r) => r.id)).toEqual(expect.arrayContaining(['freezer-griddle-cakes', 'freezer-flatbread', 'lentil-tomato-soup', 'pumpkin-soup', 'bean-barley-soup']));
    for (const r of frozen) expect(r.steps.at(-1)?.keeps).toMatchObject({ place: 'freezer' });
    expect(starter('spice-blend').needsTemperatureControl).toBe(false);
    expect(starter('sprouted-mung').steps.map((s) => s.does)).toEqual(['soak', 'sprout', 'other']);
  });

  it('has a mild bowl for children and something plain for the smallest', () => {
    const hot = ['chilli-powder', 'green-chilli', 'black-pepper', 'curry-powder', 'dried-chilli-flakes', 'mustard-seed'];
    const bowl = starter('mild-bowl');
    expect(bowl.ingredients.filter((l) => hot.includes(l.ingredient))).toEqual([]);
    expect(gramsIn(bowl.ingredients.find((l) => l.ingredient === 'salt') ?? { ingredient: 'salt', amount: { amount: '99', unit: 'g' } }) / gramsOut(bowl)).toBeLessThan(0.004);
    const plain = starter('plain-rice-carrot').ingredients.map((l) => l.ingredient);
    expect(plain).toEqual(['basmati-rice', 'water', 'carrot']); // no salt, no spice, none of the fourteen allergens
    expect(withRoles('plain').flatMap((r) => r.ingredients).filter((l) => l.ingredient === 'honey')).toEqual([]); // not under twelve months (rule CD-04)
  });
});

describe.each(each)('%s', (_id, r) => {
  it('is made of foods the table knows and can weigh', () => {
    expect(r.ingredients.map((l) => l.ingredient).filter((i) => ingredient(i) === undefined)).toEqual([]);
    expect(r.ingredients.filter((l) => !(gramsIn(l) > 0)).map((l) => l.ingredient)).toEqual([]);
  });

  it('yields what goes in, within 5 %', () => {
    expect(balance(r)).toBeGreaterThan(0.95);
    expect(balance(r)).toBeLessThan(1.05);
    expect(shareLost(r)).toBeLessThan(0.35);
  });

  it('has portions of a sensible size', () => {
    const portion = gramsOut(r) / r.yield.portions;
    expect(portion).toBeGreaterThanOrEqual(r.role === 'preserve' ? 15 : 20);
    expect(portion).toBeLessThan(350);
  });

  it('has complete steps in an order that can be kept', () => {
    expect(r.steps.length).toBeGreaterThan(0);
    const ids = r.steps.map((s) => s.id);
    for (const s of r.steps) {
      const all = s.active.fixed + s.active.perKg + s.active.perBatch + s.passive.fixed + s.passive.perKg;
      expect(all).toBeGreaterThan(0);
      expect(s.endsBefore?.earliest ?? -1).toBeGreaterThan(s.endsBefore?.latest ?? Infinity);
      // What is done early must keep until it is needed.
      expect(s.keeps?.minutes ?? Infinity).toBeGreaterThanOrEqual(s.endsBefore?.latest ?? 0);
      for (const before of r.steps.filter((x) => s.after.includes(x.id))) {
        expect(ids.indexOf(before.id)).toBeLessThan(ids.indexOf(s.id));
        expect(before.endsBefore?.latest ?? 0).toBeGreaterThanOrEqual((s.endsBefore?.latest ?? 0) + s.active.fixed + s.passive.fixed);
      }
    }
    expect(r.steps.at(-1)?.keeps, 'the last step says how long the dish keeps').toBeDefined();
  });

  it('says where its ratios come from', () => {
    expect(r.source).toMatch(/common practice, no source|armed forces|national food|federal|trade standard|handbook/);
  });

  it('has frying values with frying, brewing values with drinks', () => {
    expect(r.frying !== undefined).toBe(r.role === 'friedSnack' || r.role === 'friedSide');
    expect(r.brewing !== undefined).toBe(r.role === 'hotDrink' || r.role === 'coldDrink' || r.role === 'water');
  });
});

describe.each(each.filter(([, r]) => r.frying !== undefined))('%s, fried', (_id, r) => {
  it('is counted in pieces whose weight its frying values say', () => expect(r.yield.amount.unit).toBe('piece'));
});

describe.each(recipes.flatMap((r) => (r.brewing === undefined ? [] : [[r.id, r, r.brewing] as const])))('%s, brewed', (_id, r, brewing) => {
  it('is a volume, hot or cold as it is served', () => {
    expect(r.yield.amount.unit).toBe('L');
    expect(brewing.hot).toBe(r.serveHot);
    expect(r.yield.portions).toBeCloseTo((Number(r.yield.amount.amount) * 1000) / brewing.cupMl, -1);
  });

  it('doses the leaf, grounds or barley as its ingredient list does', () => {
    const litres = r.ingredients.reduce((s, { amount: { amount, unit } }) => s + (unit === 'L' ? Number(amount) : unit === 'ml' ? Number(amount) / 1000 : 0), 0);
    const dose = r.ingredients.filter((l) => l.ingredient === brewing.doseIngredient).reduce((s, l) => s + gramsIn(l), 0);
    expect(Math.abs(dose / litres - brewing.doseGPerL)).toBeLessThanOrEqual(0.05 * brewing.doseGPerL);
  });
});

describe('safety written into the recipes', () => {
  it('soaks kidney and white beans five hours, throws the water away and boils hard for thirty minutes', () => {
    // FDA Bad Bug Book as quoted: soak at least 5 h, boil in fresh water at least 30 min.
    expect(lectin.length).toBeGreaterThanOrEqual(3);
    for (const r of lectin) {
      expect(minutes(r, 'soak')).toBeGreaterThanOrEqual(300);
      expect(minutes(r, 'boil')).toBeGreaterThanOrEqual(30);
      const [soak, boil] = [r.steps.findIndex((s) => s.does === 'soak'), r.steps.findIndex((s) => s.does === 'boil')];
      expect(r.steps[boil]?.after).toContain(r.steps[soak]?.id);
      expect(r.ingredients.find((l) => l.ingredient.endsWith('beans-dry'))?.preparation).toMatch(/thrown away/);
    }
  });

  it('starts long soaks at an hour when somebody is awake, whenever from noon to seven the dish is served', () => {
    const long = recipes.flatMap((r) => r.steps.filter((s) => s.does === 'soak' && s.passive.fixed > 240).map((s) => ({ id: r.id, s })));
    expect(long.length).toBeGreaterThanOrEqual(6);
    const begins = long.flatMap(({ id, s }) => [720, 780, 900, 1020, 1140].map((at) => {
      const start = at - (s.endsBefore?.latest ?? 0) - s.passive.fixed - s.active.fixed;
      return { id, hour: (((start % 1440) + 1440) % 1440) / 60 };
    }));
    expect(begins.filter((b) => b.hour < 6)).toEqual([]);
  });

  it('keeps the relish in the fridge: its acidity was never measured', () => {
    const relish = starter('tomato-date-relish');
    expect(relish.steps.at(-1)?.keeps?.place).toBe('cold');
    expect(relish.notes).toMatch(/fridge/);
    expect(relish.notes).toMatch(/vinegar in proportion/);
    const vinegar = relish.ingredients.find((l) => l.ingredient === 'vinegar');
    expect(vinegar?.scaling.kind).toBe('linear'); // rule BO-05: the share of vinegar is never changed
  });

  it('cooks the sprouts before they are served', () => {
    expect(starter('sprouted-mung').steps.at(-1)?.name).toMatch(/Steam/);
    expect(starter('sprouted-mung').notes).toMatch(/cook them/);
  });

  it('cools soups in shallow trays before the freezer', () => {
    for (const r of withRoles('soup')) {
      const cool = r.steps.find((s) => s.does === 'cool');
      expect(cool?.name).toMatch(/shallow/);
      expect(r.steps.find((s) => s.does === 'freeze')?.after).toEqual([cool?.id]);
    }
  });

  it('keeps drinks with milk under temperature control', () => {
    const milky = recipes.filter((r) => r.brewing !== undefined && r.ingredients.some((l) => ingredient(l.ingredient)?.allergens.includes('milk') === true));
    expect(milky.map((r) => r.id)).toEqual(expect.arrayContaining(['spiced-milk-tea', 'cocoa', 'salted-yoghurt-drink']));
    for (const r of milky) expect(r.needsTemperatureControl).toBe(true);
  });

  it('stirs raising agents into each bowl of batter at its end', () => {
    const raised = recipes.filter((r) => r.frying !== undefined).flatMap((r) => r.ingredients.filter((l) => l.ingredient.startsWith('baking-')));
    expect(raised.length).toBeGreaterThanOrEqual(5);
    expect(raised.filter((l) => !l.perBowl)).toEqual([]);
  });
});
