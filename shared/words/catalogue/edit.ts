import type { Entry, Inner } from '../formats';
import { whereText } from './fields';

/** Kinds of things an event has lists of. */
export type ThingWord = 'wave' | 'dish' | 'recipe' | 'pan' | 'burner' | 'pot' | 'dispenser' | 'station' | 'person' | 'circuit' | 'ownLine' | 'borrowed' | 'ownJob';
const things = {
  wave: 'wave', dish: 'dish', recipe: 'recipe', pan: 'pan', burner: 'burner', pot: 'pot', dispenser: 'flask or urn', station: 'fry station', person: 'helper', circuit: 'circuit',
  ownLine: 'line', borrowed: 'borrowed thing', ownJob: 'job',
} as const satisfies Record<ThingWord, string>;

/** " (until)": a field in the cook's words, nothing where it has none of its own. */
function inBrackets(field: string | null): string {
  const own: Readonly<Record<string, string>> = { counts: 'how many come', dish: 'what it holds', review: 'checked' };
  const words = field === null ? '' : (own[field] ?? whereText([{ key: field }]).toLowerCase());
  return words === '' ? '' : ` (${words})`;
}

/** A thing of the event with its own name. */
export interface NamedThing { readonly thing: ThingWord; readonly name: string }
/** Adults and children; null where the waves say. */
export interface HeadcountWords { readonly adults: number | null; readonly children: number | null }

/** Words of the subject `edit`: names of steps for undo and redo, and what keeps an edit from being done. */
export const editWords = {
  'edit.undo': 'Undo',
  'edit.redo': 'Redo',
  'edit.undoStep': (p: { readonly step: string }) => `Undo: ${p.step}`,
  'edit.redoStep': (p: { readonly step: string }) => `Redo: ${p.step}`,
  'edit.opened': 'opened',
  'edit.undone': (p: { readonly step: Inner }) => `Taken back: ${String(p.step)}`,
  'edit.redone': (p: { readonly step: Inner }) => `Done again: ${String(p.step)}`,
  'edit.addFor': (p: { readonly step: Inner; readonly to: string; readonly dishes: readonly string[] }, f) => `${String(p.step)}; ${p.to} is for ${f.list([...p.dishes])}`,
  'edit.withStation': (p: { readonly step: Inner; readonly name: string }) => `${String(p.step)}; ${p.name} is a fry station too`,
  'edit.holds': (p: { readonly name: string; readonly dish: string | null }) => (p.dish === null ? `${p.name}: for any drink` : `${p.name}: for ${p.dish}`),

  'edit.headcount': (p: { readonly before: { readonly adults: number; readonly children: number }; readonly after: { readonly adults: number; readonly children: number } }, f) => {
    const adults = p.before.adults === p.after.adults ? '' : `${f.number(p.before.adults)} to ${f.number(p.after.adults)} ${f.plural(p.after.adults, 'adult', 'adults')}`;
    const children = p.before.children === p.after.children ? '' : `${f.number(p.before.children)} to ${f.number(p.after.children)} ${f.plural(p.after.children, 'child', 'children')}`;
    return [adults, children].filter((text) => text !== '').join(', ') || 'headcount';
  },
  'edit.moveWave': (p: { readonly name: string; readonly from: number; readonly to: number }, f) => `${p.name} moved from ${f.clock(p.from)} to ${f.clock(p.to)}`,
  'edit.offerDecaf': (p: { drink: string }) => `${p.drink} offered without caffeine too`,
  'edit.add': (p: NamedThing) => `${things[p.thing]} ${p.name} added`,
  'edit.remove': (p: NamedThing) => `${things[p.thing]} ${p.name} taken out`,
  'edit.change': (p: NamedThing & { readonly field: string | null }) => `${things[p.thing]} ${p.name} changed${inBrackets(p.field)}`,
  'edit.title': (p: { readonly title: string }) => `title: ${p.title}`,
  'edit.day': (p: { readonly day: string }, f) => `day: ${f.date(p.day)}`,
  'edit.times': (p: { readonly opensAt: number; readonly closesAt: number }, f) => `open ${f.clock(p.opensAt)} to ${f.clock(p.closesAt)}`,
  'edit.preference': (p: { readonly field: string }) => `${whereText([{ key: p.field }]).toLowerCase()} changed`,
  'edit.kitchenValue': (p: { readonly field: string }) => `${whereText([{ key: p.field }]).toLowerCase()} changed`,
  'edit.larder': (p: { readonly ingredient: string }) => `in the house: ${p.ingredient}`,
  'edit.price': (p: { readonly ingredient: string }) => `price of ${p.ingredient}`,
  'edit.houseFigure': (p: { readonly figure: string }) => `house figure ${p.figure}`,
  'edit.diet': (p: { readonly people: number }, f) => `diet of ${f.number(p.people)} ${f.plural(p.people, 'guest', 'guests')}`,
  'edit.allergy': (p: { readonly people: number }, f) => `allergy of ${f.number(p.people)} ${f.plural(p.people, 'guest', 'guests')}`,
  'edit.helpersEat': 'helpers counted in',
  'edit.higherRisk': 'guests at higher risk',

  'edit.gone': (p: { readonly id: string }) => `"${p.id}" is not in the event any more. Choose another.`,
  'edit.lastOne': (p: { readonly thing: ThingWord }) => `This is the only ${things[p.thing]} left. Add another one first.`,
  'edit.inUse': (p: NamedThing & { readonly by: readonly string[] }, f) => `${p.name} is in use by ${f.list(p.by)}. Give ${p.by.length === 1 ? 'it' : 'them'} another ${things[p.thing]} first.`,
  'edit.needsWave': 'There is no wave yet. Add a wave, then set how many come.',
  'edit.full': (p: { readonly thing: ThingWord; readonly most: number }, f) => `There are ${f.number(p.most)} already, and no more fit. Take a ${things[p.thing]} out first.`,
} as const satisfies Record<string, Entry>;
