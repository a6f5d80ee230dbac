import { describe, expect, it } from 'vitest';
import { formatsFor, preferencesSchema } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { rules } from '../../../shared/safety/rules';
import { sayMessage, type Message } from '../../../shared/words';
import { demo, demoNames } from '../demo/demo';
import { dish, judge, recipe } from './subject';

const formats = formatsFor(preferencesSchema.parse({}), '2026-12-12');
const fahrenheit = formatsFor(preferencesSchema.parse({ units: 'us', locale: 'en-US', clock: '12' }), '2026-12-12');
const said = (m: Message) => sayMessage(formats, m);

describe('the words of safety', () => {
  it('has a short heading in sentence case for every rule', () => {
    for (const r of rules) {
      const title = said(r.title);
      expect(title.length).toBeLessThan(40);
      expect(title).toMatch(/^[A-Z][^A-Z]*$/);
    }
  });

  it('says what is wrong and what to do, in whole sentences without gaps', () => {
    const messages = demoNames.flatMap((n) => plan(demo(n)).safety.findings.map((f) => said(f.message)));
    expect(messages.length).toBeGreaterThan(5);
    for (const m of messages) {
      expect(m).not.toMatch(/undefined|NaN|null|kelvin|please|sorry|invalid/i);
      expect(m).toMatch(/[.]$/);
    }
  });

  it('names the temperature in the cook’s scale', () => {
    const [hot] = judge({ dishes: [dish(recipe('stew', ['potato']))], holding: { stew: { place: 'hot', temperatureC: 50 } } }).findings;
    if (hot === undefined) throw new Error('too cool is a finding');
    expect(said(hot.message)).toContain('50');
    expect(sayMessage(fahrenheit, hot.message)).toContain('122'); // 50 C = 122 F
  });

  it('says what it needs, with the first dish by name', () => {
    const plan2 = judge({ dishes: [dish(recipe('stew', ['potato'])), dish(recipe('soup', ['potato']))], holding: { stew: { place: 'hot' }, soup: { place: 'hot' } } });
    const needs = plan2.notChecked.find((n) => n.rule === 'HH-01');
    if (needs === undefined) throw new Error('it needs the temperature');
    expect(said(needs.needs)).toBe('Not checked: needs the temperature at which hot food waits (Dish stew and 1 other dish).');
  });
});
