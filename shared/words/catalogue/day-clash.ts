import type { Entry, Formats, Inner } from '../formats';

const things: Readonly<Record<string, readonly [string, string]>> = {
  burner: ['a burner', 'burners'], pot: ['a pot', 'pots'], pan: ['a pan', 'pans'], oven: ['an oven', 'ovens'], counter: ['a counter place', 'counter places'],
};

/** Words of the smallest set of jobs that clash. */
export const dayClashWords = {
  'timeline.clash.things': (p: { readonly thing: string; readonly has: number; readonly from: number; readonly to: number; readonly jobs: readonly Inner[] }, f: Formats) =>
    `Between ${f.clock(p.from)} and ${f.clock(p.to)} ${f.number(p.jobs.length)} jobs need ${things[p.thing]?.[0] ?? p.thing} and there ${f.plural(p.has, 'is', 'are')} ${f.number(p.has)}: ${f.list(p.jobs.map(String))}.`,
  'timeline.clash.hands': (p: { readonly from: number; readonly to: number; readonly job: Inner; readonly jobs: readonly Inner[]; readonly has: number; readonly away: readonly string[] }, f: Formats) => {
    const all = [String(p.job), ...p.jobs.map(String)];
    const there = f.plural(p.has, 'there is 1 helper', `there are ${f.number(p.has)} helpers`);
    const away = p.away.length === 0 ? '' : ` (not all the time: ${f.list(p.away)})`;
    return `Between ${f.clock(p.from)} and ${f.clock(p.to)} ${f.number(all.length)} jobs stand in each other's way and ${there}${away}: ${f.list(all)}.`;
  },
  'timeline.overload.circuit': (p: { readonly circuit: string; readonly watts: number; readonly carries: number; readonly from: number; readonly to: number }, f: Formats) =>
    `Too much for ${p.circuit} ${f.clock(p.from)}-${f.clock(p.to)}: this takes ${f.number(p.watts)} W, and the circuit carries ${f.number(Math.floor(p.carries))} W for all that runs together. Use a socket of another circuit, or do it at another time.`,
  'timeline.task.fullPot': (p: { readonly dish: string }) => `Pot of ${p.dish}, full until it is served or goes on`,
  'timeline.note.emptyPot': (p: { readonly from: number; readonly until: number }, f: Formats) => `Its pot is wanted: empty it into a bowl at ${f.clock(p.from)}; it would stand there until ${f.clock(p.until)}.`,
  'timeline.note.washLate': 'The pot stands longer than it should before anybody is free to wash it.',
  'timeline.note.unwashed': (p: { readonly dish: string; readonly from: number }, f: Formats) => `Nobody has time to wash the pot of ${p.dish} after ${f.clock(p.from)}: rinse it where it is wanted again, and leave it for the clean-up.`,
  'timeline.note.letGo': (p: { readonly job: Inner; readonly why: Inner; readonly now: number }, f: Formats) => `Cannot stay as printed, ${String(p.job)}: it is now at ${f.clock(p.now)}. ${String(p.why)}`,
} as const satisfies Record<string, Entry>;
