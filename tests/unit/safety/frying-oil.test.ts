import { describe, expect, it } from 'vitest';
import { plan } from '../../../shared/plan';
import { demo } from '../demo/demo';
import { stands } from './subject';

const lantern = demo('lantern-evening');
const friedIn = (oilKind: string) => plan({
  ...lantern, kitchen: { ...lantern.kitchen, oilKind }, guests: { ...lantern.guests, allergies: [{ allergen: 'peanuts', people: 2 }] },
});
const oilLines = (p: ReturnType<typeof plan>) => p.buying.lines.filter((l) => l.origins.some((o) => o.dish === 'frying-oil')).map((l) => [l.ingredient, l.name]);

describe('one oil from the kitchen to the shop and the allergy', () => {
  it('buys an oil nobody knows under its own name and calls nothing in order', () => {
    const p = friedIn('Groundnut oil');
    expect(oilLines(p)).toEqual([['groundnut-oil', 'Groundnut oil']]);
    expect(p.buying.unknown).toContainEqual({ ingredient: 'groundnut-oil', dishes: ['frying-oil'] });
    expect(['AL-07', 'DF-02'].map((r) => stands(p.safety, r))).toEqual(['needs', 'needs']);
  });
  it('buys an oil that only the table of smoke points has, and knows what it carries', () => {
    const p = friedIn('soybean');
    expect(oilLines(p)).toEqual([['soya-oil', 'Soya oil']]);
    expect(['AL-07', 'DF-02'].map((r) => stands(p.safety, r))).toEqual(['in order', 'in order']);
  });
  it('stops peanut oil for guests with a peanut allergy', () => expect(stands(friedIn('peanut-refined').safety, 'AL-07')).toBe('found'));
});
