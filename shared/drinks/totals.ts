import { computed, countOf, divide, figure, minus, most, sumOf, times, worked } from '../figure';
import type { Message } from '../words';
import type { DrinkLine } from './drink-line';
import type { BrewRound, DrinkTotal } from './types';

/** Served, brewed and left of one drink. Brewed = served + left; what leaf and straining keep is in the water of each round. */
export function drinkTotal(line: DrinkLine, rounds: readonly BrewRound[], notes: readonly Message[]): DrinkTotal {
  const mine = rounds.filter((r) => r.drink === line.dish.id).map((r) => r.litres);
  const list = computed('rounds', { word: 'drinks.term.roundLitres' }, mine, 'L', 'drinks.method.rounds');
  const brewed = figure(mine.reduce((a, b) => a + b, 0), 'L', () => ({ rule: 'drinks.brewed', terms: [list], sum: sumOf('rounds') }));
  const { dish, brewing, unmetLitres } = line;
  const served = figure(Math.max(0, (dish.portions.value * brewing.cupMl) / 1000 - unmetLitres), 'L', () => ({
    rule: 'drinks.served',
    terms: [worked('cups', { word: 'drinks.term.cups' }, dish.portions), { key: 'cup', label: { word: 'drinks.term.cupMl' }, value: brewing.cupMl, unit: 'ml', origin: { kind: 'recipe', recipe: dish.recipe.id } },
      computed('unmet', { word: 'drinks.term.unmet' }, unmetLitres, 'L', 'drinks.method.unmet')],
    sum: most(0, minus(divide(times('cups', 'cup'), 1000), 'unmet')),
  }));
  return {
    drink: dish.id, served, brewed, rounds: figure(mine.length, 'rounds', () => ({ rule: 'drinks.rounds', terms: [list], sum: countOf('rounds') })),
    leftLitres: Math.max(0, brewed.value - served.value), unmetLitres, notes,
  };
}
