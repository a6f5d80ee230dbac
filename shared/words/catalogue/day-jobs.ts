import type { Entry, Formats, Inner } from '../formats';

const more = (n: number, f: Formats): string => (n === 0 ? '' : ` and ${f.plural(n, '1 more job', `${f.number(n)} more jobs`)}`);
const because = { pinned: 'Pinned to', started: 'Started at', printed: 'Printed for' } as const;
/** A job that stands at its minute, and the first job in its way. */
export interface Clash {
  readonly held: keyof typeof because;
  readonly at: number;
  readonly job: Inner;
  readonly more: number;
}
const stands = (p: { readonly held: keyof typeof because; readonly at: number }, f: Formats): string => `${because[p.held]} ${f.clock(p.at)}`;

/** Words of own jobs, of changes to jobs, and of what the plan makes of them. */
export const dayJobsWords = {
  'day.edit.off': (p: { name: string }) => `${p.name} switched off`,
  'day.edit.on': (p: { name: string }) => `${p.name} switched on again`,
  'day.edit.pin': (p: { name: string; at: number }, f: Formats) => `${p.name} pinned to ${f.clock(p.at)}`,
  'day.edit.free': (p: { name: string }) => `${p.name} no longer pinned`,
  'day.edit.assign': (p: { name: string }) => `${p.name} given to somebody`,
  'day.edit.anybody': (p: { name: string }) => `${p.name} for whoever is free`,
  'day.edit.minutes': (p: { name: string; minutes: number | null }, f: Formats) => (p.minutes === null ? `${p.name} takes as long as worked out` : `${p.name} takes ${f.duration(p.minutes)}`),
  'day.edit.parts': (p: { name: string; parts: number | null }, f: Formats) => (p.parts === null ? `${p.name} in one go` : `${p.name} in ${f.number(p.parts)} parts`),
  'day.edit.change': (p: { name: string }) => `${p.name} changed`,
  'day.edit.hold': (p: { jobs: number; held: 'started' | 'printed' }, f: Formats) => `${f.plural(p.jobs, '1 job', `${f.number(p.jobs)} jobs`)} held as ${p.held}`,
  'day.edit.order': 'the better day taken',
  'day.edit.plainOrder': 'the day as it was laid out at first',
  'day.edit.remedy': (p: { remedy: Inner }) => String(p.remedy).replace(/\.$/, ''),
  'day.edit.holdTooMany': (p: { jobs: number; most: number }, f: Formats) => `With these, ${f.number(p.jobs)} jobs would be held or changed, and at most ${f.number(p.most)} can be. Give jobs that are done back to the plan first.`,
  'day.edit.letGo': 'jobs no longer held for their paper',
  'day.edit.oilStays': (p: { name: string }) => `${p.name} keeps the minute of the fry plan, and somebody stays at hot oil. Change it in Frying, or the helpers who fry in Kitchen.`,
  'day.edit.planStays': (p: { name: string }) => `${p.name} keeps the minute and length of the fry plan or the drinks plan. Change it in Frying or Drinks.`,

  'timeline.task.own': (p: { name: string }) => p.name,
  'timeline.task.part': (p: { job: Inner; part: number; parts: number }, f: Formats) => `${String(p.job)} (part ${f.number(p.part)} of ${f.number(p.parts)})`,
  'timeline.task.break': 'Break',
  'timeline.task.meal': 'Sit down and eat',
  'timeline.task.relief': (p: { pan: string; station: string }) => `Take over at the hot oil: ${p.pan} (${p.station})`,
  'timeline.task.wash': 'Wash up: pots, bowls, spoons',
  'timeline.task.washPot': (p: { dish: string }) => `Wash the pot of ${p.dish}`,
  'timeline.task.dirty': (p: { dish: string }) => `Pot of ${p.dish}, stands until it is washed`,
  'timeline.task.bins': 'Empty the bins',
  'timeline.task.store': (p: { dishes: readonly string[] }, f: Formats) => `Close, label and store what has cooled: ${f.list(p.dishes)}`,
  'timeline.task.checkDayBefore': 'Read aloud: checklist of the day before',
  'timeline.task.checkOil': 'Read aloud: checklist before the oil is heated',
  'timeline.task.checkDoors': 'Read aloud: checklist before the doors open',
  'timeline.task.checkLeftovers': 'Read aloud: checklist before leftovers are put away',

  'timeline.note.slid': (p: { planned: number }, f: Formats) => `Planned for ${f.clock(p.planned)}; later because nobody is free then. It is still in time.`,
  'timeline.note.noRest': (p: { person: string; from: number; to: number }, f: Formats) => `No room for a break of ${p.person} between ${f.clock(p.from)} and ${f.clock(p.to)}. Let somebody take over for a while.`,
  'timeline.note.noMeal': (p: { person: string; from: number; to: number }, f: Formats) => `No room for ${p.person} to sit down and eat between ${f.clock(p.from)} and ${f.clock(p.to)}. Keep a plate aside, and let somebody take over.`,
  'timeline.off.step': (p: { job: Inner }) => `Switched off: ${String(p.job)}. The plan goes on as if it had been done; nobody is told to do it.`,
  'timeline.off.check': (p: { job: Inner }) => `Switched off: ${String(p.job)}. Its points are not read out; nothing else checks them.`,
  'timeline.off.shop': (p: { job: Inner }) => `Switched off: ${String(p.job)}. Nobody is told to buy what is on that list.`,
  'timeline.off.brew': (p: { job: Inner }) => `Switched off: ${String(p.job)}. The drinks plan still counts on it; take the drink off the menu if it is not to be made.`,
  'timeline.off.clean': (p: { job: Inner }) => `Switched off: ${String(p.job)}. It stays undone at the end of the day.`,
  'timeline.off.serve': (p: { job: Inner }) => `Switched off: ${String(p.job)}. Nobody is told to bring it out or clear.`,
  'timeline.off.rest': (p: { job: Inner; person: string }) => `Switched off: ${String(p.job)} of ${p.person}. They work through.`,

  'timeline.pin.person': (p: Clash & { person: string }, f: Formats) => `${stands(p, f)} for ${p.person}, who then has: ${String(p.job)}${more(p.more, f)}. Move one of them, or give one to somebody else.`,
  'timeline.pin.away': (p: { held: Clash['held']; at: number; person: string; from: number; to: number }, f: Formats) => `${stands(p, f)} for ${p.person}, who is here ${f.clock(p.from)} to ${f.clock(p.to)}. Move it, or lengthen the hours.`,
  'timeline.pin.assigned': (p: { person: string; job: Inner; more: number }, f: Formats) => `Given to ${p.person}, who then has: ${String(p.job)}${more(p.more, f)}. Somebody else does it, if anybody can; move one of them, or choose somebody else.`,
  'timeline.pin.assignedAway': (p: { person: string; from: number; to: number }, f: Formats) => `Given to ${p.person}, who is here ${f.clock(p.from)} to ${f.clock(p.to)} and cannot do it in its time. Move it, or choose somebody else.`,
  'timeline.pin.nobody': (p: Clash, f: Formats) => `${stands(p, f)}, when nobody is free: ${String(p.job)}${more(p.more, f)}. Move one of them, or ask one more helper.`,
  'timeline.pin.thing': (p: Clash, f: Formats) => `${stands(p, f)}, when what it needs is taken: ${String(p.job)}${more(p.more, f)}. Move one of them.`,
  'timeline.pin.before': (p: Clash, f: Formats) => `${stands(p, f)}, before this is done: ${String(p.job)}${more(p.more, f)}. Pin it later.`,
  'timeline.pin.after': (p: Clash, f: Formats) => `${stands(p, f)}, too late for: ${String(p.job)}${more(p.more, f)}. Pin it earlier.`,
  'timeline.pin.late': (p: { held: Clash['held']; at: number; by: number }, f: Formats) => `${stands(p, f)}, but it is to be done by ${f.clock(p.by)}. Pin it earlier, or make it shorter.`,
  'timeline.pin.early': (p: { held: Clash['held']; at: number; from: number }, f: Formats) => `${stands(p, f)}, so it is done before ${f.clock(p.from)}, sooner than it keeps. Pin it later.`,
  'timeline.pin.moved': (p: { held: Clash['held']; at: number; now: number }, f: Formats) => `${stands(p, f)}, but the household does it at ${f.clock(p.now)}.`,
} as const satisfies Record<string, Entry>;
