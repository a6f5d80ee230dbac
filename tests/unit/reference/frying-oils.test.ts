import { describe, expect, it } from 'vitest';
import { fryingOil, fryingOils, ingredient, smokePoints, unknownOilId } from '../../../shared/reference';

const isFood = (id: string) => ingredient(id) !== undefined;

describe('frying oils', () => {
  it('has one row for every smoke point of the table', () => expect(fryingOils.map((o) => o.id).toSorted()).toEqual(smokePoints.map((p) => p.oil).toSorted()));

  it('agrees with the ingredient table where that has the oil', () => {
    const known = fryingOils.flatMap((o) => { const row = ingredient(o.ingredient); return row === undefined ? [] : [{ oil: o, row }]; });
    expect(known.length).toBeGreaterThanOrEqual(8);
    for (const { oil, row } of known) expect([...row.allergens]).toEqual(oil.allergens);
  });

  it('buys each kind under an id of its own', () => expect(new Set(fryingOils.map((o) => o.ingredient)).size).toBe(fryingOils.length));

  it.each([['peanut-refined', 'peanut-refined'], ['Peanut oil', 'peanut-refined'], ['SUNFLOWER-OIL', 'sunflower-refined'], ['palm', 'palm'], ['Olive oil, extra virgin', 'olive-extra-virgin']])('knows %s', (kind, id) => {
    expect(fryingOil(kind)?.id).toBe(id);
  });

  it.each(['groundnut oil', 'oil', '', '  ', 'sunflower', 'mystery', 'constructor'])('does not know "%s" and takes no other instead', (kind) => expect(fryingOil(kind)).toBeNull());

  it('does not know what a blend is made of', () => expect(fryingOil('vegetable-blend')?.allergens).toBeNull());

  it('gives an unknown oil an id of its own that is no other food', () => {
    expect(unknownOilId('Groundnut oil', isFood)).toBe('groundnut-oil');
    expect(unknownOilId('salt', isFood)).toBe('oil-salt');
    expect(unknownOilId('油', isFood)).toBe('oil');
    expect(unknownOilId('x'.repeat(60), isFood)).toMatch(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/);
  });
});
