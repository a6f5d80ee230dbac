import type { Event } from '../event';
import { computed, figure, minus, sumOf, times, workingOf, worked, type Figure, type Term } from '../figure';
import { potMinutes } from './cookings';
import { potLitres } from './pot-litres';
import { usesPot } from './step-minutes';
import type { MenuPlan } from '../menu';
import type { CookingNote, DishCooking } from './types';

/** A pot in use by one cooking, all goes: when it is wanted for, and for how many minutes. */
interface Wanted {
  readonly for: number;
  readonly minutes: number;
}

const wantedOf = (event: Event, menu: MenuPlan, made: DishCooking): readonly Wanted[] => {
  const dish = menu.dishes.find((d) => d.id === made.dish);
  if (dish === undefined || !dish.recipe.steps.some(usesPot)) return [];
  return made.cookings.map((c) => ({ for: c.from, minutes: c.pots.length * potMinutes(event, dish, potLitres(event, dish, c.portions).value / c.pots.length) }));
};

const wantedFigure = (wanted: readonly Wanted[]): Figure => figure(wanted.reduce((n, w) => n + w.minutes, 0), 'min', () =>
  workingOf('cooking.potTime', [computed('each', { word: 'cooking.term.potEach' }, wanted.map((w) => w.minutes), 'min', 'cooking.method.potEach')], sumOf('each')));

/** Minutes from the first cooking, as early as it may begin, to the last serving, for all pots. */
function thereFigure(event: Event, from: number, until: number): Figure {
  const pots: Term = computed('pots', { word: 'cooking.term.pots' }, event.kitchen.pots.length, '', 'cooking.method.pots');
  const span = figure(until - from, 'min', () => workingOf('cooking.servedFor', [computed('until', { word: 'cooking.term.until' }, until, 'min', 'cooking.method.servings'), computed('from', { word: 'cooking.term.potFrom' }, from, 'min', 'cooking.method.potEach')], minus('until', 'from')));
  return figure(event.kitchen.pots.length * (until - from), 'min', () => workingOf('cooking.potThere', [pots, worked('span', { word: 'cooking.term.span' }, span)], times('pots', 'span')));
}

/**
 * Says that the meal wants its pots for longer than they are there, in one sentence for all dishes: the day cannot hold it then. Null where they suffice, or
 * where nothing is cooked again.
 */
export function potTimeNote(event: Event, menu: MenuPlan, dishes: readonly DishCooking[]): CookingNote | null {
  const wanted = dishes.flatMap((d) => wantedOf(event, menu, d));
  const [first] = dishes.filter((d) => d.pot !== null);
  if (first === undefined || wanted.length < 2 || event.kitchen.pots.length === 0) return null;
  const keeps = dishes.reduce((n, d) => (d.pot === null ? n : Math.max(n, d.keeps?.value ?? 0)), 0);
  const start = wanted.reduce((n, w) => Math.min(n, w.for - w.minutes), Number.POSITIVE_INFINITY) - keeps;
  const until = wanted.reduce((n, w) => Math.max(n, w.for), Number.NEGATIVE_INFINITY);
  const measured = wantedFigure(wanted);
  const limit = thereFigure(event, start, until);
  if (measured.value <= limit.value) return null;
  const pots = Math.ceil(measured.value / (until - start) - 1e-9);
  const names = dishes.filter((d) => d.pot !== null).map((d) => d.name);
  return {
    dish: first.dish, level: 'watch', measured, limit,
    message: { id: 'cooking.say.potTime', params: { dishes: names, wanted: measured.value, there: limit.value, pots: event.kitchen.pots.length } },
    ways: [{ id: 'cooking.way.pots', params: { more: Math.max(1, pots - event.kitchen.pots.length) } }, { id: 'cooking.way.shorter' }],
  };
}
