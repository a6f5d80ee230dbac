import type { Entry } from '../formats';

/** Words of the subject `calendar`: the day in a calendar, a table or plain text. */
export const calendarWords = {
  'calendar.who': (p: { readonly names: readonly string[] }, f) => `Who: ${f.list(p.names)}`,
  'calendar.with': (p: { readonly things: readonly string[] }, f) => `With: ${f.list(p.things)}`,
  'calendar.csv.day': 'Day',
  'calendar.csv.from': 'From',
  'calendar.csv.to': 'To',
  'calendar.csv.job': 'Job',
  'calendar.csv.who': 'Who',
  'calendar.csv.slack': 'Minutes it can slip',
} as const satisfies Record<string, Entry>;
