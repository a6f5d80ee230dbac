import type { Entry, Formats } from '../formats';
import { partWords, type CookingPart } from './cooking';

/** Who is where when nobody is free: parameters of the overload sentence, minutes from midnight and counts of helpers. */
export interface Hands {
  readonly from: number;
  readonly to: number;
  readonly atOil: number;
  readonly busy: number;
  readonly away: number;
}
const things: Readonly<Record<string, readonly [string, string]>> = {
  burner: ['burner', 'burners'], pot: ['pot', 'pots'], pan: ['pan', 'pans'], oven: ['oven', 'ovens'], counter: ['counter place', 'counter places'],
};
const many = (thing: string): string => things[thing]?.[1] ?? thing;
const span = (p: { readonly from: number; readonly to: number }, f: Formats): string => `${f.clock(p.from)}-${f.clock(p.to)}`;
const hands = (p: Hands, f: Formats): string => f.list([
  ...(p.atOil > 0 ? [`${f.number(p.atOil)} at the oil`] : []),
  ...(p.busy > 0 ? [`${f.number(p.busy)} busy with other jobs`] : []),
  ...(p.away > 0 ? [`${f.number(p.away)} not there`] : []),
]);

/** Words of the subject `timeline`. */
export const timelineWords = {
  'rule.gas.burner': 'Minutes at full flame, and a share of the minutes in which oil is kept hot, times the rating, divided by the heat in a kilogram of gas.',
  'rule.gas.need': 'What the burners burn in the day, added up.',
  'rule.gas.wanted': 'What the day burns, divided by the share of a cylinder that is counted on; up to the next tenth of a kilogram.',
  'rule.gas.lasts': 'Gas in the cylinder, without the last share that comes too slowly, times its heat, divided by what its burners take full on.',
  'timeline.term.gasIn': 'Gas in the cylinder', 'timeline.term.ratings': 'Ratings of its burners', 'timeline.term.burnerOn': 'At full flame', 'timeline.term.oilHot': 'Oil kept hot', 'timeline.term.gasUsed': 'Burned in the day', 'timeline.method.burnerOn': 'From the pans of oil, rounds of drinks and pots of the day; minutes that two share count once. A step that names no burner stands on the first that is free.', 'timeline.method.spells': 'Stretches of the day with something to do.',
  'rule.timeline.busy': 'Busy minutes: all stretches with something to do, added up.',
  'timeline.term.spells': 'stretches with something to do',
  'timeline.task.step': (p: { step: string; dish: string; of?: CookingPart }, f: Formats) => `${p.dish}: ${p.step}${partWords(p.of, f)}`,
  'timeline.task.stepPart': (p: { step: string; dish: string; part: number; parts: number; of?: CookingPart }, f: Formats) => `${p.dish}: ${p.step}${partWords(p.of, f)} (part ${f.number(p.part)} of ${f.number(p.parts)})`,
  'timeline.task.byItself': (p: { step: string; dish: string; of?: CookingPart }, f: Formats) => `${p.dish}: ${p.step}${partWords(p.of, f)}, runs by itself`,
  'timeline.task.heatOil': (p: { pan: string; station: string }) => `Heat the oil in ${p.pan} (${p.station})`,
  'timeline.task.watchOil': (p: { pan: string; station: string }) => `Stay at the hot oil: ${p.pan} (${p.station})`,
  'timeline.task.fry': (p: { batch: number; pieces: number; dish: string }, f: Formats) => `Batch ${f.number(p.batch)}: ${p.dish}, ${f.plural(p.pieces, '1 piece', `${f.number(p.pieces)} pieces`)}`,
  'timeline.task.bowl': (p: { bowl: number; dish: string }, f: Formats) => `Finish bowl ${f.number(p.bowl)}: ${p.dish}`,
  'timeline.task.brewStart': (p: { round: number; drink: string }, f: Formats) => `Start round ${f.number(p.round)}: ${p.drink}`,
  'timeline.task.brewHeat': (p: { round: number; drink: string }, f: Formats) => `Round ${f.number(p.round)}: ${p.drink}, runs by itself`,
  'timeline.task.brewShort': (p: { round: number; drink: string }, f: Formats) => `Make round ${f.number(p.round)}: ${p.drink}`,
  'timeline.task.pourAhead': (p: { round: number; drink: string }, f: Formats) => `Pour round ${f.number(p.round)} from what was made ahead: ${p.drink}`,
  'timeline.task.brewStand': (p: { round: number; drink: string }, f: Formats) => `Round ${f.number(p.round)}: ${p.drink}, stands off the heat`,
  'timeline.task.brewEnd': (p: { round: number; drink: string }, f: Formats) => `Finish and strain round ${f.number(p.round)}: ${p.drink}`,
  'timeline.task.fill': (p: { dispenser: string; litres: number; round: number }, f: Formats) => `Fill ${p.dispenser} with ${f.amount({ amount: p.litres.toFixed(2), unit: 'L' })} of round ${f.number(p.round)}`,
  'timeline.task.shopEarly': (p: { items: number }, f: Formats) => `Buy what keeps (${f.plural(p.items, '1 thing', `${f.number(p.items)} things`)})`,
  'timeline.task.shopFresh': (p: { items: number }, f: Formats) => `Buy what is best fresh (${f.plural(p.items, '1 thing', `${f.number(p.items)} things`)})`,
  'timeline.task.shopOn': (p: { items: number }, f: Formats) => `Buy what is set for this day (${f.plural(p.items, '1 thing', `${f.number(p.items)} things`)})`,
  'timeline.task.setUpTables': 'Set up tables, plates and cups',
  'timeline.task.setUpDrinks': 'Set up the drinks table',
  'timeline.task.setUpStation': (p: { station: string }) => `Set up ${p.station}: dry pan, oil, thermometer, lid and blanket at hand`,
  'timeline.task.serve': 'Bring out, wipe, clear',
  'timeline.task.putOut': (p: { dishes: readonly string[] }, f: Formats) => `Put the meal on the table: ${f.list(p.dishes)}`,
  'timeline.task.coolRice': (p: { dish: string }) => `Put what is left of ${p.dish} into shallow boxes and the fridge, within the hour`,
  'timeline.task.cool': (p: { dish: string }) => `Cool or put away what is left of ${p.dish}`,
  'timeline.task.cleanKitchen': 'Clean the kitchen',
  'timeline.task.cleanRoom': 'Clear and clean the room',
  'timeline.task.oilAway': (p: { pan: string }) => `Strain and put away the oil of ${p.pan}, now cold`,
  'timeline.note.household': 'Outside the hours of the day; the household does it, or somebody it asks.',
  'timeline.note.noBreak': (p: { person: string; from: number; to: number; at: number }, f: Formats) => `${p.person} works ${span(p, f)} without a break. Let somebody take over for a while about ${f.clock(p.at)}.`,
  'timeline.note.oilNoBreak': (p: { person: string; from: number; to: number; at: number }, f: Formats) => `${p.person} is at the hot oil ${span(p, f)} without a break. Let somebody take over about ${f.clock(p.at)}, between two batches.`,
  'timeline.overload.nobody': (p: Hands, f: Formats) => `Nobody yet ${span(p, f)}: ${hands(p, f)}. Ask one more helper for this time, or move another job.`,
  'timeline.overload.oil': (p: Hands, f: Formats) => `Nobody can stay at the hot oil ${span(p, f)}: ${hands(p, f)}. Ask one more helper, or close this fry station.`,
  'timeline.overload.noHelpers': (p: { jobs: number }, f: Formats) => `There are no helpers in the list, so ${f.plural(p.jobs, '1 job has', `${f.number(p.jobs)} jobs have`)} nobody. Add the helpers with their hours.`,
  'timeline.overload.outside': (p: { jobs: number; from: number; to: number }, f: Formats) => `${f.plural(p.jobs, '1 job lies', `${f.number(p.jobs)} jobs lie`)} outside the hours of all helpers (${span(p, f)}). Lengthen the hours of a helper, or agree who does it.`,
  'timeline.overload.thing': (p: { thing: string; wanted: number; has: number; from: number; to: number }, f: Formats) =>
    p.wanted > p.has
      ? `This needs ${f.number(p.wanted)} ${f.plural(p.wanted, things[p.thing]?.[0] ?? p.thing, many(p.thing))} and the kitchen lists ${f.number(p.has)}. Add what there is to the kitchen, or change the recipe step.`
      : `All ${many(p.thing)} it could use are taken ${span(p, f)}. Move another job, or find one more.`,
  'timeline.overload.early': (p: { minutes: number }, f: Formats) => `It is done ${f.duration(p.minutes)} before its time, because no hands or no place on the stove are free later. Ask one more helper or find one more burner to keep it fresh.`,
  'timeline.overload.room': (p: { minutes: number }, f: Formats) => `There is no room for its ${f.duration(p.minutes)} between the jobs before and after it. Widen its times in the recipe, or ask one more helper.`,
} as const satisfies Record<string, Entry>;
