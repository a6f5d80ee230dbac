import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseEvent } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { lookItems } from '../../../src-renderer/views/board/look-items';
import { idleFlasks } from '../../../src-renderer/views/drinks/idle-flasks';
import { troubles } from '../../../src-renderer/views/day/trouble';
import { daySpan } from '../../../src-renderer/views/board/span';

const planned = (name: string) => {
  const parsed = parseEvent(readFileSync(`assets/app/demo/${name}.brimful`, 'utf8'));
  if (!parsed.ok) throw new Error(`${name} does not open`);
  return plan(parsed.event);
};

describe('what the board shows', () => {
  it.each(['lantern-evening', 'school-fair-stall', 'freezer-sunday'])('%s: every stop and warning is listed, no caution is', (name) => {
    const made = planned(name);
    const findings = made.safety.findings.filter((f) => f.level !== 'caution').length;
    expect(lookItems(made)).toHaveLength(findings + made.frying.shortages.length + troubles(made).length + made.frying.problems.length + made.drinks.problems.length + idleFlasks(made).length);
    expect(new Set(lookItems(made).map((i) => i.key)).size).toBe(lookItems(made).length);
  });

  it.each(['lantern-evening', 'school-fair-stall', 'freezer-sunday'])('%s: what does not fit stands after the stops, once for each job, in order of time', (name) => {
    const made = planned(name);
    const told = troubles(made);
    expect(told.map((x) => x.at)).toEqual(told.map((x) => x.at).toSorted((a, b) => a - b));
    expect(told.reduce((n, x) => n + x.sentences.length, 0)).toBe(made.day.overloads.length);
    const stops = made.safety.findings.filter((f) => f.level === 'stop').length;
    expect(lookItems(made).slice(stops, stops + told.length).map((i) => i.key)).toEqual(told.map((x) => x.key));
  });

  it.each(['lantern-evening', 'school-fair-stall', 'freezer-sunday'])('%s: the clock runs over whole hours and holds the opening time and every batch', (name) => {
    const made = planned(name);
    const { from, to } = daySpan(made);
    expect([from % 60, to % 60]).toEqual([0, 0]);
    expect(from).toBeLessThanOrEqual(made.event.opensAt - 60);
    expect(to).toBeGreaterThanOrEqual(made.event.closesAt);
    for (const batch of made.frying.batches) {
      expect(batch.dropAt).toBeGreaterThanOrEqual(from);
      expect(batch.panFreeAt).toBeLessThanOrEqual(to);
    }
  });
});
