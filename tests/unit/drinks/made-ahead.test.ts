import { describe, expect, it } from 'vitest';
import { drinksNeeds, isMadeAhead } from '../../../shared/drinks';
import { formatsFor } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { sayMessage } from '../../../shared/words';
import { demo, demoNames } from '../demo/demo';

const event = demo('lantern-evening');
const made = plan(event);
const formats = formatsFor(event.preferences, event.day);
const barley = made.drinks.rounds.filter((r) => r.drink === 'barley-water');

describe('a drink that the recipe makes ahead', () => {
  it('is known by a step on the heat and one after it that chills or keeps, in a cold drink only', () => {
    const ahead = demoNames.flatMap((name) => demo(name).recipes).filter(isMadeAhead).map((r) => r.id);
    expect([...new Set(ahead)]).toEqual(['barley-water']);
    const recipe = event.recipes.find((r) => r.id === 'barley-water');
    if (recipe?.brewing === undefined) throw new Error('the demo has barley water');
    expect(isMadeAhead({ ...recipe, brewing: { ...recipe.brewing, method: 'infuse' } })).toBe(false);
    expect(isMadeAhead({ ...recipe, steps: recipe.steps.map((s) => (s.id === 'chill' ? { ...s, after: [] } : s)) })).toBe(false);
    expect(isMadeAhead({ ...recipe, steps: recipe.steps.map((s) => (s.id === 'boil' ? { ...s, does: 'simmer' as const, needs: [] } : s)) })).toBe(true);
    const circle = recipe.steps.map((s) => (s.id === 'chill' ? { ...s, after: ['squeeze'] } : s.id === 'squeeze' ? { ...s, after: ['chill'] } : s));
    expect(isMadeAhead({ ...recipe, steps: circle })).toBe(false);
  });
  it('is poured in its rounds: a note in place of raw ingredients', () => {
    expect(barley.length).toBeGreaterThan(0);
    for (const r of barley) {
      expect(r.madeAhead).toBe(true);
      expect(r.note && sayMessage(formats, r.note)).toMatch(/^Pour \d[\d.]*\sL from what was made ahead: Barley-lemon water\.$/);
    }
    expect(made.drinks.rounds.filter((r) => r.drink !== 'barley-water' && (r.madeAhead || r.note !== null))).toEqual([]);
  });
  it('is bought once: what its rounds take is all that shopping counts', () => {
    const grams = drinksNeeds(made.drinks).filter((n) => n.ingredient === 'pearl-barley').reduce((sum, n) => sum + n.amount.amount.toNumber(), 0);
    const origins = made.buying.lines.find((l) => l.ingredient === 'pearl-barley')?.origins ?? [];
    expect(origins.map((o) => o.dish)).toEqual(['barley-water']);
    expect(origins.reduce((sum, o) => sum + o.amount.amount.times(o.amount.unit === 'kg' ? 1000 : 1).toNumber(), 0)).toBeCloseTo(grams, 6);
  });
  it('is simmered and chilled before it is poured, and the day does not say make', () => {
    const chilled = made.day.tasks.filter((t) => t.id.startsWith('step/chill/barley-water')).map((t) => t.end);
    const squeezed = made.day.tasks.filter((t) => t.id === 'step/squeeze/barley-water').map((t) => t.end);
    const poured = made.day.tasks.filter((t) => t.kind === 'brew' && t.dish === 'barley-water');
    expect(Math.max(...chilled)).toBeLessThanOrEqual(Math.min(...poured.map((t) => t.start)));
    expect(Math.max(...squeezed)).toBeLessThanOrEqual(Math.min(...poured.map((t) => t.start)));
    for (const t of poured) expect(sayMessage(formats, t.name)).toMatch(/^Pour round \d+ from what was made ahead/);
  });
});
