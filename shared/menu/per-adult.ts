import type { BandId } from '../event';
import { divide, entered, figure, just, most, plus, times, worked, type Figure, type Term } from '../figure';
import { meanStayFigure, waveCountFigure, type GuestsPlan } from '../guests';
import { dimensionOf } from '../measure';
import { appetiteCurve, rolePortion, sharedAppetite } from '../reference';
import type { Table } from './courses';
import { drinkShare } from './drink-share';
import { foodOfBand, type BandValue } from './heads';
import { inForce, knownTerm, type Known } from './in-force';
import { cupsForStay } from './stay';
import type { Course } from './courses';

/**
 * Similar dishes of the menu, this one included: those of one appetite group that guests take from. A portion of one's own leaves
 * less appetite for the others too, but not where it is measured in another way: milk by the millilitre does not replace chutney by weight.
 */
function similar(table: Table, course: Course): number {
  const { group } = rolePortion(course.recipe.role);
  const measured = dimensionOf(course.recipe.yield.amount.unit);
  return table.courses.filter((c) => c.dish.served.kind !== 'fixed' && rolePortion(c.recipe.role).group === group
    && (!c.helping.own || dimensionOf(c.recipe.yield.amount.unit) === measured)).length;
}

function appetite(table: Table, course: Course): Known {
  const dishes = similar(table, course);
  const row = appetiteCurve.find((p) => p.dishes === dishes) ?? appetiteCurve.at(-1);
  return inForce(table.event, `appetite.${dishes}`, sharedAppetite(dishes), '', row?.source ?? 'common-practice');
}

const takeUpTerm = (course: Course): Term =>
  entered('takeUp', { word: 'menu.term.takeUp' }, course.dish.takeUp, '', `menu.dishes[${course.index}].takeUp`);

function foodPerAdult(table: Table, course: Course): Figure {
  const { helping, servedAs, dish } = course;
  const shared = helping.own ? null : appetite(table, course);
  const each = servedAs === 'piece' ? helping.amount.amount.toNumber() : 1;
  const value = each * (shared?.value ?? 1) * dish.takeUp;
  return figure(value, servedAs === 'piece' ? 'pieces' : 'portions', () => {
    const terms: Term[] = [];
    if (servedAs === 'piece') terms.push({ key: 'pieces', label: { word: 'menu.term.piecesPerAdult' }, value: each, unit: 'pieces', origin: helping.origin });
    if (shared !== null) terms.push(knownTerm('appetite', 'menu.term.appetite', shared, { dishes: similar(table, course) }));
    terms.push(takeUpTerm(course));
    return { rule: shared === null ? 'menu.ownPortion' : 'menu.sharedAppetite', terms, sum: terms.length === 1 ? just('takeUp') : times(...terms.map((t) => t.key)) };
  });
}

/** Stay of all waves together, weighted with their people. */
function usualStay(table: Table, guests: GuestsPlan): Figure {
  const { event } = table;
  const waves = guests.waves.map((w, i) => ({ count: waveCountFigure(event, i, w.counts), people: w.adults + w.children, stay: meanStayFigure(w.stay, `guests.waves[${i}]`), name: w.name }));
  const people = waves.reduce((sum, w) => sum + w.people, 0);
  const value = people === 0 ? 60 : waves.reduce((sum, w) => sum + w.people * w.stay.value, 0) / people;
  return figure(value, 'min', () => people === 0
    ? { rule: 'menu.usualStay', terms: [{ key: 'hour', label: { word: 'menu.term.hour' }, value: 60, unit: 'min', origin: { kind: 'definition' } }], sum: just('hour') }
    : {
      rule: 'menu.usualStay',
      terms: waves.flatMap((w, i) => [
        worked(`n${i}`, { word: 'menu.term.waveGuests', params: { wave: w.name } }, w.count),
        worked(`s${i}`, { word: 'menu.term.waveStay', params: { wave: w.name } }, w.stay),
      ]),
      sum: divide(plus(...waves.map((_, i) => times(`n${i}`, `s${i}`))), plus(...waves.map((_, i) => `n${i}`))),
    });
}

function fixedPerAdult(course: Course, portions: number, guests: GuestsPlan): Figure {
  const nobody = guests.planned.value <= 0;
  return figure(nobody ? 0 : portions / Math.max(1, guests.planned.value), unitOf(course), () => ({
    rule: 'menu.fixedPerAdult',
    terms: [
      entered('portions', { word: 'menu.term.fixedPortions' }, portions, unitOf(course), `menu.dishes[${course.index}].served.portions`),
      worked('people', { word: 'menu.term.plannedPeople' }, guests.planned),
    ],
    sum: nobody ? times('portions', 'people') : divide('portions', most(1, 'people')),
  }));
}

/** Unit of a dish's portions: pieces, cups or portions. */
export const unitOf = ({ servedAs }: Course): string => ({ piece: 'pieces', cup: 'cups', portion: 'portions' })[servedAs];

/** What one person of a band takes of a dish, an adult's share being 1 (food) or this drink's share of an adult's cups. Worked out once per band. */
export function bandValues(table: Table, course: Course): BandValue {
  const made = new Map<BandId, ReturnType<BandValue>>();
  const of: BandValue = course.servedAs === 'cup' ? (band) => ({ figure: drinkShare(table.event, table.drinks, course, band) }) : foodOfBand(table.event);
  return (band) => {
    const value = made.get(band) ?? of(band);
    made.set(band, value);
    return value;
  };
}

/** Portions of one adult after shared appetite: food for a stay of 90 minutes, drinks for the usual stay of all guests. */
export function perAdult(table: Table, course: Course, guests: GuestsPlan): Figure {
  if (course.dish.served.kind === 'fixed') return fixedPerAdult(course, course.dish.served.portions, guests);
  if (course.servedAs !== 'cup') return foodPerAdult(table, course);
  const cups = cupsForStay(table.event, usualStay(table, guests));
  const share = drinkShare(table.event, table.drinks, course, 'adult');
  return figure(cups.value * share.value, 'cups', () => ({
    rule: 'menu.drinkPerAdult',
    terms: [worked('cups', { word: 'menu.term.cups' }, cups), worked('share', { word: 'menu.term.drinkShare' }, share)],
    sum: times('cups', 'share'),
  }));
}

/** Portions of one person of a band, before stay length (food) or for the usual stay (drinks). */
export function perBand(course: Course, of: BandValue, adult: Figure, band: BandId): number {
  if (course.dish.served.kind === 'fixed') return adult.value;
  const [value, one] = [of(band), of('adult')].map((v) => ('known' in v ? v.known.value : v.figure.value));
  if (value === undefined || one === undefined || one === 0) return 0;
  return course.servedAs === 'cup' ? (adult.value * value) / one : adult.value * value;
}
