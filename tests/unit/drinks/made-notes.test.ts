import { describe, expect, it } from 'vitest';
import { drinksNeeds } from '../../../shared/drinks';
import { changeRecipe, offerDecaf } from '../../../shared/edit';
import type { Event } from '../../../shared/event';
import { settle } from '../../../shared/household';
import { drinkEvent, drinksOf, flask, type DrinkChange } from './drink-event';

const milkTea: DrinkChange = {
  tea: { method: 'boilWithMilk', milkShare: 0.5, serveAboveC: null, goodForMinutes: 240 },
  teaLines: [{ ingredient: 'water', amount: { amount: '5', unit: 'L' } }, { ingredient: 'milk-whole', amount: { amount: '5', unit: 'L' } }, { ingredient: 'tea-leaf', amount: { amount: '98', unit: 'g' } }, { ingredient: 'sugar', amount: { amount: '400', unit: 'g' } }],
  dispensers: [{ ...flask, litres: 30 }], pots: [{ id: 'pot-60', name: 'Pot', litres: 60, massKg: 6 }],
};
const notes = (event: Event, drink = 'tea'): string[] => drinksOf(event).drinks.totals.find((t) => t.drink === drink)!.notes.map((n) => n.id);
const ages = (event: Event): number[] => {
  const { drinks } = drinksOf(event);
  // Minutes each filling stood with something in it that was still poured.
  return drinks.fills.map((f) => {
    const flaskOf = drinks.dispensers.find((d) => d.id === f.dispenser)!;
    const next = drinks.fills.filter((o) => o.at > f.at).map((o) => Number(o.at)).sort((a, b) => a - b)[0] ?? Number.POSITIVE_INFINITY;
    const poured = flaskOf.litres.flatMap((l, i) => (i > 0 && flaskOf.litres[i - 1]! > l && flaskOf.fromMinute + i <= next && flaskOf.fromMinute + i > f.at ? [flaskOf.fromMinute + i] : []));
    return Math.max(0, ...poured) - drinks.rounds.find((r) => r.number === f.round)!.readyAt;
  });
};
const sugarBought = (event: Event) => drinksNeeds(drinksOf(event).drinks).filter((n) => n.ingredient === 'sugar').reduce((sum, n) => sum + n.amount.amount.toNumber(), 0);
const sugarTold = (event: Event) => drinksOf(event).drinks.totals[0]!.notes.find((n) => n.id.includes('sugar'));
const set = (event: Event, sugar: 'in' | 'apart'): Event => {
  const answer = changeRecipe(event, 'tea', { brewing: { ...event.recipes[0]!.brewing!, sugar } });
  if (!('event' in answer)) throw new Error('refused');
  return answer.event;
};

describe('a hot drink with milk in it', () => {
  it('is poured at most the settled hour from ready, whatever its recipe allows', () => {
    expect(settle(drinkEvent(), 'drinks.milkMinutes').value).toBe(60);
    expect(Math.max(...ages(drinkEvent(milkTea)))).toBeLessThanOrEqual(60);
    expect(Math.max(...ages(drinkEvent({ ...milkTea, tea: { ...milkTea.tea, milkShare: 0 } })))).toBeGreaterThan(60);
  });
  it('follows a shorter time of its recipe, and the household’s own', () => {
    expect(Math.max(...ages(drinkEvent({ ...milkTea, tea: { ...milkTea.tea, goodForMinutes: 40 } })))).toBeLessThanOrEqual(40);
    expect(Math.max(...ages({ ...drinkEvent(milkTea), houseFigures: [{ figure: 'drinks.milkMinutes', value: 90, unit: 'min', why: 'a better flask' }] }))).toBeLessThanOrEqual(90);
  });
  it('is never served under the settled 60 °C', () => {
    const { drinks } = drinksOf(drinkEvent({ ...milkTea, dispensers: [{ ...flask, litres: 30, insulation: 'none' }] }));
    const [urn] = drinks.dispensers;
    const refilled = new Set(drinks.fills.map((f) => f.at - urn!.fromMinute));
    const pouredAt = urn!.celsius.filter((_, i) => !refilled.has(i + 1) && urn!.litres[i]! - (urn!.litres[i + 1] ?? 0) > 1e-9);
    expect(pouredAt.length).toBeGreaterThan(20);
    expect(Math.min(...pouredAt)).toBeGreaterThanOrEqual(60);
    expect(drinks.rounds.length).toBeGreaterThan(1);
  });
  it('says so, and that it is never topped up', () => {
    expect(notes(drinkEvent(milkTea))).toEqual(['drinks.note.strength', 'drinks.note.sugarIn', 'drinks.note.caffeine', 'drinks.note.milk']);
    expect(notes(drinkEvent())).toEqual(['drinks.note.strength', 'drinks.note.caffeine']);
  });
});

describe('sugar', () => {
  const boiled = set(drinkEvent(milkTea), 'in');
  const beside = set(drinkEvent(milkTea), 'apart');
  it('goes in or stands beside, and is bought either way, as much', () => {
    expect(sugarBought(beside)).toBe(sugarBought(boiled));
    expect(sugarBought(beside)).toBeGreaterThan(0);
    expect(drinksOf(boiled).drinks.rounds.every((r) => r.apart.length === 0)).toBe(true);
    expect(drinksOf(beside).drinks.rounds.every((r) => r.apart.join() === 'sugar')).toBe(true);
  });
  it('is told by weight: grams a cup, or in all where it stands beside', () => {
    const bought = drinksOf(boiled).drinks.rounds.flatMap((r) => r.ingredients).filter((i) => i.ingredient === 'sugar').reduce((sum, i) => sum + i.amount.amount.toNumber(), 0);
    const cups = drinksOf(boiled).menu.dishes[0]!.portions.value;
    expect(sugarTold(boiled)).toEqual({ id: 'drinks.note.sugarIn', params: { grams: Math.round((2 * bought) / cups) / 2 } });
    expect(sugarTold(beside)).toEqual({ id: 'drinks.note.sugarApart', params: { grams: Math.round(bought) } });
  });
});

describe('cups without caffeine', () => {
  it('are told with their share beside the drink they were offered for', () => {
    const answer = offerDecaf(drinkEvent(), 'tea', 0.25, 'Tea, no caffeine');
    if (!('event' in answer)) throw new Error('refused');
    const { totals } = drinksOf(answer.event).drinks;
    const [tea, without] = totals;
    const told = tea!.notes.find((n) => n.id === 'drinks.note.decafShare');
    expect(told).toBeDefined();
    expect(told).toHaveProperty('params.share', expect.closeTo(0.25, 1));
    expect(without!.notes.map((n) => n.id)).toContain('drinks.note.noCaffeine');
  });
});
