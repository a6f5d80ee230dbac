import { describe, expect, it } from 'vitest';
import { ruleIds } from '../../../shared/figure';
import { menuRules } from '../../../shared/figure/register/menu';
import { perHead } from '../../../shared/menu';
import { sourceTitle } from '../../../shared/reference';
import { isWordId } from '../../../shared/words';
import { adults, allFigures, dish, drinkOf, faultsOf, menuEvent, menuOf, piecesOf, recipeOf } from './make-menu';

const recipes = [
  piecesOf('frit', 'friedSnack'), piecesOf('frit2', 'friedSnack'), piecesOf('own', 'bread'), recipeOf('rice', 'grain'), recipeOf('cake', 'sweet'),
  drinkOf('tea', true, true), drinkOf('cocoa', true, false), drinkOf('water', false, false),
];
const dishes = [
  { id: 'frit', recipe: 'frit' }, { id: 'frit2', recipe: 'frit2', takeUp: 0.5 }, { id: 'own', recipe: 'own', portion: { amount: '1.5', unit: 'piece' } },
  { id: 'rice', recipe: 'rice', served: { kind: 'between', from: 740, to: 800 } }, { id: 'cake', recipe: 'cake', served: { kind: 'fixed', at: 900, portions: 30 } },
  { id: 'tea', recipe: 'tea' }, { id: 'cocoa', recipe: 'cocoa', takeUp: 0.2 }, { id: 'water', recipe: 'water' },
];
const waves = [
  adults(0, { counts: { adult: 31, age4to6: 7, age10to12: 5, olderAdult: 4 }, stay: { shortest: 45, usual: 70, longest: 200 } }),
  adults(60, { from: 800, to: 860, turnout: { kind: 'share', share: 0.5 } }),
  adults(30, { from: 860, to: 870, turnout: { kind: 'range', low: 22, likely: 25, high: 40 } }),
];
const figuresOf = (house: Readonly<Record<string, unknown>> = {}) => {
  const event = menuEvent(recipes, waves, house, dishes);
  const menu = menuOf(event);
  const head = perHead(event, menu);
  return [...menu.dishes.flatMap((d) => [d.perAdult, d.portions, d.totalFigure]), ...[head.food, head.drinks].filter((f) => f !== null)];
};

describe('figures of the menu', () => {
  it('every working recomputes to its value, has inputs and ends at an origin', () => {
    for (const f of figuresOf()) expect(faultsOf(f, ruleIds)).toEqual([]);
  });

  it('does so too with the household\u2019s own figures, and with nobody invited', () => {
    const house = { houseFigures: [{ figure: 'portion.friedSnack', value: 6, unit: 'piece', why: 'x' }, { figure: 'appetite.2', value: 0.7, why: 'x' }, { figure: 'band.age4to6.food', value: 0.4, why: 'x' }, { figure: 'food.cap', value: 1.2, why: 'x' }] };
    for (const f of figuresOf(house)) expect(faultsOf(f, ruleIds)).toEqual([]);
    for (const d of menuOf(menuEvent(recipes, [], {}, dishes)).dishes) {
      for (const f of [d.perAdult, d.portions, d.totalFigure]) expect(faultsOf(f, ruleIds)).toEqual([]);
    }
  });

  it('uses every rule of the register, and every rule and label has words', () => {
    const workings = [...figuresOf(), ...menuOf(menuEvent(recipes, [], {}, dishes)).dishes.map((d) => d.perAdult)].flatMap(allFigures).map((f) => f.working());
    expect(new Set(workings.map((w) => w.rule))).toEqual(new Set([...menuRules, ...workings.map((w) => w.rule).filter((r) => r.startsWith('guests.'))]));
    for (const w of workings.filter((x) => x.rule.startsWith('menu.'))) {
      expect(isWordId(`rule.${w.rule}`)).toBe(true);
      for (const t of w.terms) expect('text' in t.label || isWordId(t.label.word)).toBe(true);
    }
  });

  it('names only known sources', () => {
    const origins = figuresOf().flatMap(allFigures).flatMap((f) => f.working().terms).map((t) => t.origin);
    const sources = new Set(origins.flatMap((o) => (o?.kind === 'table' ? [o.source] : [])));
    expect(sources.size).toBeGreaterThan(5);
    expect([...sources].filter((id) => sourceTitle(id) === undefined)).toEqual([]);
  });

  it('shows the people and the portion of a single wave plainly', () => {
    const plan = dish(menuOf(menuEvent([piecesOf('a', 'friedSnack')], [adults(68)])), 'd-a');
    const [wave] = plan.portions.working().terms;
    const heads = wave?.figure?.working().terms.find((t) => t.key === 'heads');
    expect(heads?.value).toBe(68);
    expect(heads?.figure?.working().terms[0]?.origin).toEqual({ kind: 'entered', path: 'guests.waves[0].counts.adult' });
    expect(plan.portions.value).toBe(340);
  });
});
