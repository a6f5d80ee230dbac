import type { Entry, Formats } from '../formats';

/** Labels of the view Day. */
export const viewDayWords = {
  'view.day': 'Day',
  'view.day.emptyTitle': 'No jobs yet',
  'view.day.empty': 'Choose dishes and drinks, and say in Kitchen who helps; their jobs appear here.',
  'view.day.overloads': 'Does not fit',
  'view.day.critical': 'What must not slip',
  'view.day.criticalLead': 'If one of these starts later, something is late for the guests.',
  'view.day.criticalFry': 'Every batch and bowl of the fry sheet, every round of the drinks sheet, and:',
  'view.day.lanes': 'Everybody on the clock',
  'view.day.lanesOf': (p: { day: string }) => `Everybody on the clock, ${p.day}`,
  'view.day.nobody': 'Nobody free',
  'view.day.byItself': 'By itself',
  'view.day.busyOf': (p: { name: string }) => `${p.name}, busy`,
  'view.day.listTitle': 'Jobs',
  'view.day.show': 'Jobs of',
  'view.day.everybody': 'Everybody',
  'view.day.start': 'Start',
  'view.day.until': 'Until',
  'view.day.job': 'Job',
  'view.day.who': 'Who',
  'view.day.with': 'With',
  'view.day.slack': 'May start later by',
  'view.day.noSlack': 'must not slip',
  'view.day.keySlip': 'A thick left edge marks a job that must not slip; a hatched block needs only a part of the attention.',
  'view.day.block': (p: { job: string; from: number; to: number }, f: Formats) => `${p.job}, ${f.clock(p.from)} to ${f.clock(p.to)}`,
} as const satisfies Record<string, Entry>;
