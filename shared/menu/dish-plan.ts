import { Big } from 'big.js';
import { bandIds, type BandId, type Recipe } from '../event';
import { figure, times, worked, type Figure } from '../figure';
import type { GuestsPlan } from '../guests';
import { inProportion, type Amount, type Series } from '../measure';
import type { Course, Table } from './courses';
import { atOneMinute, servedSpan, wholeDemand } from './demand';
import { contentsOf } from './diets';
import { bandValues, perAdult, perBand } from './per-adult';
import { portionsOf, type EventPortions, type WaveFigures } from './portions';
import { scaleLine } from './scale';
import type { Grid, Shape } from './shapes';
import type { DishPlan, ScaledLine } from './types';

/** What the dishes of one event share while they are sized. */
export interface Sizing {
  readonly table: Table;
  readonly guests: GuestsPlan;
  readonly waves: readonly WaveFigures[];
  readonly grid: Grid;
  /** Shape of a dish's demand in the wave at this place of the list. */
  readonly shapeOf: (course: Course, wave: number) => Shape;
}

function demandOf(sizing: Sizing, course: Course, portions: EventPortions): Series {
  const { served } = course.dish;
  if (served.kind === 'fixed') return atOneMinute(served.at, portions.total.value);
  const streams = portions.waves.flatMap((w, i) => (w.figure.value > 0 ? [{ portions: w.figure.value + w.reserve, shape: sizing.shapeOf(course, i) }] : []));
  return wholeDemand(sizing.grid, streams, portions.total.value);
}

/** Pieces are their own amount; other portions are multiplied by their size. */
function totalOf(course: Course, portions: number): Amount {
  const { amount, unit } = course.helping.amount;
  return { amount: course.servedAs === 'piece' ? new Big(portions) : amount.times(portions), unit };
}

function totalFigure(course: Course, portions: Figure, total: Amount): Figure {
  const size = course.servedAs === 'piece' ? new Big(1) : course.helping.amount.amount;
  return figure(total.amount.toNumber(), total.unit, () => ({
    rule: 'menu.total',
    terms: [
      worked('portions', { word: 'menu.term.portions' }, portions),
      {
        key: 'size', label: { word: 'menu.term.portionSize' }, value: size.toNumber(), unit: total.unit,
        origin: course.servedAs === 'piece' ? { kind: 'definition' } : course.helping.origin,
      },
    ],
    sum: times('portions', 'size'),
  }));
}

function scaledLines(course: Course, factor: Big): ScaledLine[] {
  return course.recipe.ingredients.map((line) => ({
    ingredient: line.ingredient,
    amount: scaleLine(line, factor),
    ...(line.preparation === undefined ? {} : { preparation: line.preparation }),
    perBowl: line.perBowl,
    toTaste: line.toTaste,
  }));
}

/** Portions of one person of each band. */
function allBands(of: (band: BandId) => number): Record<BandId, number> {
  const [under1, age1to3, age4to6, age7to9, age10to12, age13to17, adult, olderAdult] = bandIds.map(of);
  return {
    under1: under1 ?? 0, age1to3: age1to3 ?? 0, age4to6: age4to6 ?? 0, age7to9: age7to9 ?? 0,
    age10to12: age10to12 ?? 0, age13to17: age13to17 ?? 0, adult: adult ?? 0, olderAdult: olderAdult ?? 0,
  };
}

/** What is known of a dish that somebody brings: what should be in it, not how it is made. */
function madeElsewhere({ frying: _frying, brewing: _brewing, ...recipe }: Recipe): Recipe {
  return { ...recipe, steps: [] };
}

/** Sizes one dish of the menu. */
export function planDish(sizing: Sizing, course: Course): DishPlan {
  const { table, guests } = sizing;
  const { dish, recipe } = course;
  const adult = perAdult(table, course, guests);
  const bands = bandValues(table, course);
  const portions = portionsOf(table, course, bands, adult, sizing.waves);
  const demand = demandOf(sizing, course, portions);
  const total = totalOf(course, portions.total.value);
  const factor = total.amount.div(new Big(recipe.yield.amount.amount).eq(0) ? 1 : recipe.yield.amount.amount);
  const shares = inProportion(portions.total.value, portions.waves.map((w) => w.figure.value + w.reserve));
  const { allergens, diets } = contentsOf(recipe);
  const span = servedSpan(demand);
  return {
    id: dish.id,
    name: dish.name ?? recipe.name,
    ...(dish.broughtBy === undefined ? {} : { broughtBy: dish.broughtBy }),
    recipe: dish.broughtBy === undefined ? recipe : madeElsewhere(recipe),
    role: recipe.role,
    servedAs: course.servedAs,
    perAdult: adult,
    perBand: allBands((band) => perBand(course, bands, adult, band)),
    portions: portions.total,
    ...(portions.reserve === null || portions.reserve.value <= 0 ? {} : { reserve: portions.reserve }),
    total,
    totalFigure: totalFigure(course, portions.total, total),
    demand,
    byWave: portions.waves.map((w, i) => ({ wave: w.wave.id, portions: shares[i] ?? 0 })),
    factor: factor.toNumber(),
    lines: dish.broughtBy === undefined ? scaledLines(course, factor) : [],
    allergens,
    diets,
    firstServed: span.first,
    lastServed: span.last,
  };
}
