import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { needsOfMenu, planBuying } from '../../../shared/buying';
import { eventSchema } from '../../../shared/event';
import { ruleIds } from '../../../shared/figure';
import { convertFood } from '../../../shared/measure';
import { ingredient } from '../../../shared/reference';
import { faultsOf, menuOf, sum } from '../menu/make-menu';

const folder = new URL('../../../assets/app/demo/', import.meta.url);
const demos = readdirSync(folder).filter((f) => f.endsWith('.brimful'));
const load = (file: string, units: 'metric' | 'us') => {
  const raw: unknown = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
  const event = eventSchema.parse(raw);
  return { ...event, preferences: { ...event.preferences, units } };
};

describe.each(demos)('%s', (file) => {
  it.each(['metric', 'us'] as const)('in %s units: bought covers needed, origins add up, everything is known, workings hold', (units) => {
    const event = load(file, units);
    const menu = menuOf(event);
    for (const d of menu.dishes) {
      expect(sum(d.demand.values)).toBe(d.portions.value);
      expect([d.perAdult, d.portions, d.totalFigure].flatMap((f) => faultsOf(f, ruleIds))).toEqual([]);
      expect(d.factor).toBeGreaterThan(0);
    }
    const plan = planBuying(event, needsOfMenu(event, menu));
    expect(plan.unknown).toEqual([]);
    expect(plan.lines.length).toBeGreaterThan(5);
    for (const l of plan.lines) {
      expect(l.buy.amount.plus(l.larder.amount).gte(l.need.amount)).toBe(true);
      expect(l.origins.reduce((left, o) => left.minus(o.amount.amount), l.need.amount).eq(0)).toBe(true);
      expect(faultsOf(l.needFigure, ruleIds)).toEqual([]);
    }
  });

  it('needs the same food in both systems', () => {
    const [metric, us] = (['metric', 'us'] as const).map((units) => {
      const event = load(file, units);
      return planBuying(event, needsOfMenu(event, menuOf(event))).lines;
    });
    expect(metric?.map((l) => l.ingredient)).toEqual(us?.map((l) => l.ingredient));
    metric?.forEach((l, i) => {
      const row = ingredient(l.ingredient);
      const other = us?.[i];
      const back = row === undefined || other === undefined ? null : convertFood(other.need, l.need.unit, row);
      expect(back?.amount.toNumber()).toBeCloseTo(l.need.amount.toNumber(), 5);
    });
  });
});
