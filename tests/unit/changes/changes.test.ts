import { describe, expect, it } from 'vitest';
import { changeKinds, changes, compareText, largestChanges, type Change } from '../../../shared/changes';
import { moveWave, removeDish, setHeadcount, setPreference, setTitle, type EditResult } from '../../../shared/edit';
import { formatsFor, type Event } from '../../../shared/event';
import { amountOf } from '../../../shared/measure';
import { plan, type Plan } from '../../../shared/plan';
import type { Finding } from '../../../shared/safety';
import { sayMessage } from '../../../shared/words';
import { demo } from '../exchange/demo';

const event = demo('lantern-evening');
const before = plan(event);
const formats = formatsFor(event.preferences, event.day);
const done = (result: EditResult): Event => {
  if ('problem' in result) throw new Error(sayMessage(formats, result.problem));
  return result.event;
};
const planOf = (result: EditResult): Plan => plan(done(result));
const saidOf = (list: readonly Change[]): string[] => list.map((c) => sayMessage(formats, c.message).replaceAll('\u00a0', ' '));
const more = planOf(setHeadcount(event, 120, 40));
const finding = (level: Finding['level'], about: string[] = ['wok']): Finding => ({
  rule: 'DF-02', level, measured: { value: 1, unit: '' }, limit: { value: 2, unit: '' }, message: { id: 'report.guests' }, title: { id: 'report.frying' }, source: 's', about,
});
const withFindings = (...findings: Finding[]): Plan => ({ ...before, safety: { ...before.safety, findings } });

describe('changes', () => {
  it('are none between equal plans, or when only the title changed', () => {
    expect(changes(before, before)).toEqual([]);
    expect(changes(before, plan(structuredClone(event)))).toEqual([]);
    expect(changes(before, planOf(setTitle(event, 'Another name')))).toEqual([]);
    expect(compareText(before, before, formats)).toBe('Nothing changes that you would notice.');
  });
  it('are told safety first, then what to buy, then times, then amounts; the largest first', () => {
    const list = changes(before, more);
    const kinds = list.map((c) => changeKinds.indexOf(c.kind));
    expect(kinds).toEqual(kinds.toSorted((a, b) => a - b));
    for (const kind of changeKinds) {
      const sizes = list.filter((c) => c.kind === kind).map((c) => c.size);
      expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
    }
    expect(compareText(before, more, formats).split('\n').length).toBe(list.length);
  });
  it('of a larger headcount are more to buy, more portions and more batches', () => {
    const list = changes(before, more);
    expect(saidOf(list)).toContain('68 to 120 adults');
    expect(saidOf(list)).toContain('21 to 40 children');
    expect(list.filter((c) => c.kind === 'buy').length).toBeGreaterThan(5);
    expect(list.filter((c) => c.kind === 'buy').map((c) => c.effect).filter((e) => e !== 'more' && e !== 'new')).toEqual([]);
    expect(list.find((c) => c.about === 'batches')?.effect).toBe('more');
  });
  it('go the other way when the plans are swapped', () => {
    const there = changes(before, more).filter((c) => c.kind === 'amounts');
    const back = changes(more, before).filter((c) => c.kind === 'amounts');
    expect(back.map((c) => c.about).toSorted()).toEqual(there.map((c) => c.about).toSorted());
    for (const c of there) expect(back.find((b) => b.about === c.about && (b.message.id === c.message.id || b.effect === 'new' || b.effect === 'gone'))).toMatchObject({ before: c.after, after: c.before });
  });
  it('of a moved wave are earlier or later by minutes, and no amount to buy is invented', () => {
    const list = changes(before, planOf(moveWave(event, event.guests.waves[0]?.id ?? '', -30)));
    const first = list.find((c) => c.message.id === 'change.frying.first');
    expect(first?.effect).toBe('earlier');
    expect(Number(first?.before) - Number(first?.after)).toBeGreaterThan(0);
  });
  it('name a dish that went', () => {
    const dish = event.menu.dishes.find((d) => d.recipe.includes('fritter')) ?? event.menu.dishes[0];
    const list = changes(before, planOf(removeDish(event, dish?.id ?? '')));
    expect(list.filter((c) => c.message.id === 'change.dish.gone').map((c) => c.about)).toEqual([dish?.id]);
    expect(list.some((c) => c.kind === 'buy' && c.effect !== 'more')).toBe(true);
  });
  it('are not made by other units of the same food', () => {
    const us = changes(before, planOf(setPreference(event, { units: 'us' })));
    // Packs of another country hold more or less, and so cost more or less; nothing that is cooked, fried, poured or done at its minute is another.
    expect(us.filter((c) => c.kind !== 'buy' && c.about !== 'cost')).toEqual([]);
    // No food comes or goes, and none is named whose two amounts are one and the same.
    expect(us.filter((c) => c.kind === 'buy' && (c.size < 0.01 || !['more', 'fewer'].includes(c.effect)))).toEqual([]);
    expect(us.filter((c) => c.kind === 'buy').length).toBeLessThan(before.buying.lines.length);
  });
});

describe('changes in what to buy', () => {
  const [line] = before.buying.lines;
  const withBuy = (amount: string, unit: 'g' | 'kg'): Plan => ({ ...before, buying: { ...before.buying, lines: line === undefined ? [] : [{ ...line, buy: amountOf(amount, unit) }] } });
  const two = (bunches: string, grams: string): Plan => ({ ...before, buying: { ...before.buying, lines: line === undefined ? [] : [
    { ...line, key: `${line.ingredient} bunch`, buy: amountOf(bunches, 'bunch') }, { ...line, key: `${line.ingredient} g`, buy: amountOf(grams, 'g') }] } });
  it('are none below kitchen rounding, and none for the same amount in another unit', () => {
    expect(changes(withBuy('2400', 'g'), withBuy('2400.2', 'g'))).toEqual([]);
    expect(changes(withBuy('2400', 'g'), withBuy('2.4', 'kg'))).toEqual([]);
  });
  it('compare across units of one dimension', () => {
    expect(changes(withBuy('900', 'g'), withBuy('1.2', 'kg')).map((c) => [c.effect, c.before, c.after])).toEqual([['more', '900 g', '1.2 kg']]);
    expect(changes(withBuy('900', 'g'), withBuy('0', 'kg')).map((c) => c.effect)).toEqual(['gone']);
    expect(changes(withBuy('0', 'g'), withBuy('1', 'kg')).map((c) => c.effect)).toEqual(['new']);
  });
  it('two lines of one ingredient are not taken for each other', () => {
    expect(changes(two('3', '400'), two('3', '400'))).toEqual([]);
    expect(changes(two('3', '400'), two('5', '400')).map((c) => [c.effect, c.before, c.after])).toEqual([['more', '3 bunch', '5 bunch']]);
    expect(changes(two('3', '400'), two('3', '0')).map((c) => [c.effect, c.before, c.after])).toEqual([['gone', '400 g', null]]);
  });
});

describe('changes in safety', () => {
  it.each([
    [[], [finding('stop')], 'new', 'New: stop: Frying'],
    [[finding('stop')], [], 'gone', 'In order now: Frying'],
    [[finding('caution')], [finding('warn')], 'more', 'More serious now (change it): Frying'],
    [[finding('stop')], [finding('caution')], 'fewer', 'Less serious now (keep an eye on it): Frying'],
  ] as const)('%#', (had, has, effect, sentence) => {
    const list = changes(withFindings(...had), withFindings(...has));
    expect(list.map((c) => c.effect)).toEqual([effect]);
    expect(saidOf(list)).toEqual([sentence]);
  });
  it('are told apart by what they are about, in any order', () => {
    expect(changes(withFindings(finding('warn', ['a', 'b'])), withFindings(finding('warn', ['b', 'a'])))).toEqual([]);
    expect(changes(withFindings(finding('warn', ['a'])), withFindings(finding('warn', ['b']))).map((c) => c.effect)).toEqual(['new', 'gone']);
  });
  it('never call the same finding new and in order, when it is about one thing more or less', () => {
    expect(changes(withFindings(finding('warn', ['a', 'b'])), withFindings(finding('warn', ['b'])))).toEqual([]);
    expect(changes(withFindings(finding('warn', ['b'])), withFindings(finding('stop', ['b', 'c']))).map((c) => c.effect)).toEqual(['more']);
  });
});

describe('the largest changes', () => {
  it('are at most three, in the order they are told, a new stop always among them', () => {
    const list = changes(before, { ...more, safety: { ...more.safety, findings: [...more.safety.findings, finding('stop', ['only here'])] } });
    const largest = largestChanges(list);
    expect(largest.length).toBe(3);
    expect(largest.some((c) => c.after === 'stop')).toBe(true);
    expect(largest).toEqual(list.filter((c) => largest.includes(c)));
    expect(largestChanges([])).toEqual([]);
  });
});
