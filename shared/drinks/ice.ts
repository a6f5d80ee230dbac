import type { Event } from '../event';
import { computed, divide, entered, figure, minus, plus, roundUp, sumOf, times, worked, type Figure } from '../figure';
import { settle, settledTerm } from '../household';
import type { DrinkLine } from './drink-line';
import type { DrinkTotal, IcePlan } from './types';

/**
 * Ice for cold drinks that stand in tubs: what takes them from the tap or the room to their serving temperature, and more for standing.
 * Null when the kitchen has no tub, or nothing is served cold. Rules `ice.mass`, `drinks.ice`, `drinks.tubs`.
 */
export function icePlan(event: Event, lines: readonly DrinkLine[], totals: readonly DrinkTotal[]): IcePlan | null {
  const tub = event.kitchen.iceTubLitres;
  if (tub === undefined) return null;
  const drinks = lines.flatMap((line) => {
    const total = totals.find((t) => t.drink === line.dish.id);
    if (line.brewing.hot || total === undefined || total.brewed.value <= 0) return [];
    return [{ drink: line.dish.id, litres: total.brewed, kg: iceFigure(event, line, total.brewed) }];
  });
  if (drinks.length === 0) return null;
  const each = drinks.map((d) => d.kg.value);
  const litres = drinks.map((d) => d.litres.value);
  const kg = figure(each.reduce((a, b) => a + b, 0), 'kg', () => ({ rule: 'drinks.ice', terms: [computed('each', { word: 'drinks.term.iceEach' }, each, 'kg', 'drinks.method.iceEach')], sum: sumOf('each') }));
  const all = litres.reduce((a, b) => a + b, 0);
  return {
    drinks: drinks.map(({ drink, kg: own }) => ({ drink, kg: own })), kg,
    tubs: figure(Math.ceil((all + kg.value) / tub - 1e-9), '', () => ({
      rule: 'drinks.tubs',
      terms: [computed('litres', { word: 'drinks.term.coldLitres' }, litres, 'L', 'drinks.method.rounds'), worked('ice', { word: 'drinks.term.ice' }, kg), entered('tub', { word: 'drinks.term.tub' }, tub, 'L', 'kitchen.iceTubLitres')],
      sum: roundUp(divide(plus(sumOf('litres'), 'ice'), 'tub')),
    })),
  };
}

function iceFigure(event: Event, { brewing }: DrinkLine, litres: Figure): Figure {
  const [latent, c, standing, cold] = [settle(event, 'ice.latent'), settle(event, 'water.cMass'), settle(event, 'ice.standing'), settle(event, 'drink.coldC')];
  const fromTap = brewing.method === 'water';
  const from = fromTap ? event.kitchen.waterC : event.kitchen.roomC;
  const rise = Math.max(0, from - cold.value);
  const plain = (litres.value * c.value * rise) / (latent.value + c.value * cold.value);
  return figure(plain * (1 + standing.value), 'kg', () => ({
    rule: 'ice.mass',
    terms: [worked('litres', { word: 'drinks.term.coldLitres' }, litres), settledTerm('c', c), entered('from', { word: fromTap ? 'drinks.term.tap' : 'drinks.term.testRoom' }, Math.max(from, cold.value), 'degC', fromTap ? 'kitchen.waterC' : 'kitchen.roomC'),
      settledTerm('cold', cold), settledTerm('latent', latent), settledTerm('standing', standing)],
    sum: times(divide(times('litres', 'c', minus('from', 'cold')), plus('latent', times('c', 'cold'))), plus(1, 'standing')),
  }));
}
