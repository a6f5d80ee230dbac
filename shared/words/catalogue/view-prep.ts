import type { Entry, Formats } from '../formats';

/** Labels of the view Prep. */
export const viewPrepWords = {
  'view.prep': 'Prep',
  'view.prep.lead': (p: { n: number }, f: Formats) => `${f.number(p.n)} ${f.plural(p.n, 'job', 'jobs')} before the guests come, by day and by where the result is kept.`,
  'view.prep.leadHousehold': (p: { n: number }, f: Formats) => `${f.number(p.n)} ${f.plural(p.n, 'job', 'jobs')}, by day and by where the result is kept.`,
  'view.prep.emptyTitle': 'Nothing to make ahead yet',
  'view.prep.empty': 'Choose dishes in Menu; what their recipes do before the guests come appears here.',
  'view.prep.show': 'Jobs of',
  'view.prep.everybody': 'Everybody',
  'view.prep.start': 'Start',
  'view.prep.job': 'Job',
  'view.prep.makes': 'Dish, in all',
  'view.prep.keeps': 'Keeps until',
  'view.prep.who': 'Who',
  'view.prep.place.counter': 'Kept on the counter',
  'view.prep.place.hot': 'Kept hot',
  'view.prep.place.cold': 'Kept cold',
  'view.prep.place.freezer': 'Kept in the freezer',
  'view.prep.place.on': 'Goes on to the next job',
  'view.prep.amounts': 'What to weigh and cut',
  'view.prep.amountsLead': 'Rounded for the scale.',
  'view.prep.amountsOf': (p: { dish: string }) => p.dish,
  'view.prep.bowls': (p: { lines: string }) => `Into each bowl as it is finished: ${p.lines}.`,
} as const satisfies Record<string, Entry>;
