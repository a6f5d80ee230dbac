import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { recompute, ruleIds } from '../../../shared/figure';
import { sayMessage } from '../../../shared/words';
import { faultsOf } from '../menu/make-menu';
import { opened, unused, wrongEntries } from '../plan/workings';
import { buy, line, needOf, shopEvent } from './make-buying';

const marked = (need: number, mark: Readonly<Record<string, unknown>>, more: Readonly<Record<string, unknown>> = {}) =>
  line(buy([needOf('chickpea-flour', need, 'kg')], { shopping: { marks: [{ line: 'chickpea-flour', ...mark }] }, ...more }), 'chickpea-flour');
const kg = (amount: string) => ({ amount, unit: 'kg' });
const formats = formatsFor(shopEvent().preferences, '2026-12-12');
const carrots = (marks: readonly Readonly<Record<string, unknown>>[]) => line(buy([needOf('carrot', 4.4, 'kg')], { shopping: { marks } }), 'carrot').price.per.amount.toString();
const said = (l: ReturnType<typeof marked>): string => (l.note === null ? '' : sayMessage(formats, l.note).replaceAll('\u00a0', ' '));

describe('what is bought already', () => {
  it('lessens what is still to buy, in packs again', () => {
    const l = marked(3, { bought: kg('1'), asked: kg('3') });
    expect([l.state, l.bought.amount.toString(), l.buy.amount.toString()]).toEqual(['part', '1', '2']);
    expect(said(l)).toBe('1 kg bought; 2 kg still to buy.');
  });
  it('says plainly when all was bought and more is needed since', () => {
    const l = marked(3.4, { bought: kg('3'), asked: kg('3') });
    expect([l.state, l.buy.amount.toString()]).toEqual(['part', '0.5']);
    expect(said(l)).toBe('3 kg bought, all that was asked for then; 500 g more is needed now.');
  });
  it('asks for no pack more when less is missing than portions feel; the working keeps the difference', () => {
    const l = marked(3.01, { bought: kg('3'), asked: kg('3') });
    expect([l.state, l.buy.amount.toString(), l.packs.length, said(l)]).toEqual(['bought', '0', 0, '3 kg bought.']);
    const working = l.buyFigure.working();
    expect([working.rule, recompute(working)]).toEqual(['buying.covered', 0]);
    expect(Number(working.terms.find((term) => term.key === 'missing')?.value)).toBeCloseTo(0.01, 9);
    expect(faultsOf(l.buyFigure, ruleIds)).toEqual([]);
    expect(marked(3.04, { bought: kg('3'), asked: kg('3') }).buy.amount.toString()).toBe('0.5');
    expect(marked(3.04, { bought: kg('3'), asked: kg('3') }, { houseFigures: [{ figure: 'buy.shortWithin', value: 0.02, unit: 'share', why: 'ours', date: '2026-12-01' }] }).buy.amount.toString()).toBe('0');
    expect(marked(0.01, {}).buy.amount.gt(0)).toBe(true);
    expect(marked(3.01, {}, { larder: [{ ingredient: 'chickpea-flour', amount: kg('3') }] }).state).toBe('house');
  });
  it('keeps the pack a price is for when it is ticked', () => {
    const open = carrots([]);
    expect(carrots([{ line: 'carrot', bought: kg('5') }])).toBe(open);
    expect(carrots([{ line: 'carrot', bought: kg('4') }])).toBe(open);
  });
  it('is done when it covers the need, and says when less would do by now', () => {
    expect([marked(3, { bought: kg('3'), asked: kg('3') }).state, said(marked(3, { bought: kg('3'), asked: kg('3') }))]).toEqual(['bought', '3 kg bought.']);
    expect(said(marked(1, { bought: kg('3'), asked: kg('3') }))).toBe('3 kg bought; 1 kg would do now.');
    expect(said(marked(1, { bought: kg('3'), asked: kg('3') }, { larder: [{ ingredient: 'chickpea-flour', amount: kg('2') }] }))).toBe('3 kg bought; none of it is needed now.');
  });
  it('counts in another unit too, and not at all where none can be told', () => {
    expect(marked(3, { bought: { amount: '1000', unit: 'g' } }).buy.amount.toString()).toBe('2');
    const l = marked(3, { bought: { amount: '4', unit: 'piece' } });
    expect([l.state, l.bought.amount.toString(), l.buy.amount.toString(), l.note]).toEqual(['open', '0', '3', null]);
  });
  it('is neither bought nor open when the house has it', () => expect(marked(1, { later: true }, { larder: [{ ingredient: 'chickpea-flour', amount: kg('2') }] }).state).toBe('house'));
  it('may be left for later, bought in part or not', () => {
    expect([marked(3, { later: true }).state, marked(3, { later: true, bought: kg('1') }).state, marked(3, { later: true, bought: kg('3') }).state]).toEqual(['later', 'later', 'bought']);
    expect(marked(3, { later: true }).buy.amount.toString()).toBe('3');
  });
  it('opens its working, with what was entered where it was entered', () => {
    const more = { larder: [{ ingredient: 'chickpea-flour', amount: kg('0.5') }], prices: [{ ingredient: 'chickpea-flour', price: '3.10', per: kg('1') }], shopping: { marks: [{ line: 'chickpea-flour', bought: kg('1') }] } };
    const event = shopEvent(more);
    const l = line(buy([needOf('chickpea-flour', 3, 'kg')], more), 'chickpea-flour');
    for (const f of [l.buyFigure, l.costFigure]) {
      if (f === undefined) throw new Error('no cost');
      expect(faultsOf(f, ruleIds)).toEqual([]);
      const all = opened('x', f).filter((o) => o.working.rule !== 'buying.asPurchased');
      expect(all.flatMap(unused)).toEqual([]);
      // A price is kept as text, to the cent.
      expect(all.flatMap((o) => wrongEntries(event, o)).filter((fault) => !fault.includes('.price'))).toEqual([]);
    }
    expect([l.buyFigure.value, l.cost, l.costFigure?.value]).toEqual([1.5, '4.65', 4.65]);
  });
});

describe('cost', () => {
  it('never stands without what it leaves out', () => {
    const plan = buy([needOf('chickpea-flour', 1, 'kg'), needOf('salt', 1, 'kg'), needOf('carrot', 1, 'kg')], { prices: [{ ingredient: 'salt', price: '0.99', per: kg('1') }] });
    expect([plan.cost, plan.unpriced, plan.costFigure?.value]).toEqual(['0.99', 2, 0.99]);
    expect(faultsOf(plan.costFigure ?? plan.lines[0]!.needFigure, ruleIds)).toEqual([]);
  });
  it('leaves out what need not be bought any more', () => {
    const more = { prices: [{ ingredient: 'salt', price: '0.99', per: kg('1') }], larder: [{ ingredient: 'salt', amount: kg('2') }] };
    expect([buy([needOf('salt', 1, 'kg')], more).cost, buy([needOf('salt', 1, 'kg')], more).unpriced]).toEqual([null, 0]);
  });
  it('is to the cent, half a cent up, in the working too', () => {
    const l = line(buy([needOf('chickpea-flour', 1, 'kg')], { prices: [{ ingredient: 'chickpea-flour', price: '1.005', per: kg('1') }] }), 'chickpea-flour');
    expect(l.cost).toBe('1.01');
    expect(faultsOf(l.costFigure ?? l.needFigure, ruleIds)).toEqual([]);
  });
  it('asks for the price of a pack of the shop, or of one of what is sold loose', () => {
    expect(line(buy([needOf('chickpea-flour', 3.5, 'kg')]), 'chickpea-flour').price).toMatchObject({ price: null, per: { unit: 'kg' } });
    expect(line(buy([needOf('chickpea-flour', 3.5, 'kg')]), 'chickpea-flour').price.per.amount.toString()).toBe('2');
    expect(line(buy([needOf('grandmothers-mix', 323, 'g')]), 'grandmothers-mix').price.per.amount.toString()).toBe('323');
  });
});
