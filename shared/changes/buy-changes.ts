import type { BuyingPlan, ShoppingLine } from '../buying';
import { amountText, compareAmounts, convert, dimensionOf, kitchenAmount, plain, type Amount } from '../measure';
import { relative, type Change } from './change';

const shown = (amount: Amount, system: 'metric' | 'us'): string => kitchenAmount(amount, system).map((p) => `${p.text} ${p.unit}`).join(' ');
const written = (amount: Amount): string => `${plain(amount.amount)} ${amount.unit}`;
const comparable = (a: Amount, b: Amount): boolean => a.unit === b.unit || (dimensionOf(a.unit) === dimensionOf(b.unit) && dimensionOf(a.unit) !== 'count');

function cameOrWent(line: ShoppingLine, effect: 'new' | 'gone'): Change[] {
  if (line.buy.amount.lte(0)) return [];
  const { ingredient: about, name } = line;
  const text = written(line.buy);
  return [effect === 'new'
    ? { kind: 'buy', effect, message: { id: 'change.buy.new', params: { name, after: amountText(line.buy) } }, before: null, after: text, about, size: 1 }
    : { kind: 'buy', effect, message: { id: 'change.buy.gone', params: { name, before: amountText(line.buy) } }, before: text, after: null, about, size: 1 }];
}

function changed(then: ShoppingLine, now: ShoppingLine, system: 'metric' | 'us'): Change[] {
  // Below kitchen rounding there is nothing to do differently.
  if (shown(then.buy, system) === shown(now.buy, system)) return [];
  if (then.buy.amount.lte(0)) return cameOrWent(now, 'new');
  if (now.buy.amount.lte(0) || !comparable(then.buy, now.buy)) return [...cameOrWent(then, 'gone'), ...cameOrWent(now, 'new')];
  const effect = compareAmounts(now.buy, then.buy) > 0 ? 'more' : 'fewer';
  return [{
    kind: 'buy', effect, message: { id: effect === 'more' ? 'change.buy.more' : 'change.buy.fewer', params: { name: now.name, before: amountText(then.buy), after: amountText(now.buy) } },
    before: written(then.buy), after: written(now.buy), about: now.ingredient,
    size: relative(Number(convert(then.buy, now.buy.unit).amount), Number(now.buy.amount)),
  }];
}

/** What is to be bought in another amount, new, or no longer; told apart by kitchen rounding in the cook's units. Lines are paired by their key: one ingredient may have several. */
export function buyChanges(before: BuyingPlan, after: BuyingPlan, system: 'metric' | 'us'): Change[] {
  const had = new Map(before.lines.map((line) => [line.key, line]));
  const has = new Set(after.lines.map((line) => line.key));
  return [
    ...after.lines.flatMap((now) => {
      const then = had.get(now.key);
      return then === undefined ? cameOrWent(now, 'new') : changed(then, now, system);
    }),
    ...before.lines.filter((line) => !has.has(line.key)).flatMap((line) => cameOrWent(line, 'gone')),
  ];
}
