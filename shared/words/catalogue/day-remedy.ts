import type { Entry, Formats, Inner } from '../formats';

const borrowed: Readonly<Record<string, string>> = { ring: 'an electric ring', urn: 'an electric urn that heats its own water', pot: 'one more large pot', oven: 'the use of one more oven', counter: 'a folding table to work at' };

/** Words of what would make a day work that does not. */
export const dayRemedyWords = {
  'timeline.remedy.earlier': (p: { readonly job: Inner; readonly at: number; readonly to: number }, f: Formats) => `Start earlier: ${String(p.job)} at ${f.clock(p.to)} instead of ${f.clock(p.at)}.`,
  'timeline.remedy.later': (p: { readonly job: Inner; readonly at: number; readonly to: number }, f: Formats) => `Start later: ${String(p.job)} at ${f.clock(p.to)} instead of ${f.clock(p.at)}.`,
  'timeline.remedy.hours': (p: { readonly person: string; readonly from: number; readonly to: number }, f: Formats) => `Ask ${p.person} to be there ${f.clock(p.from)}-${f.clock(p.to)}.`,
  'timeline.remedy.helper': (p: { readonly from: number; readonly to: number; readonly role: string }, f: Formats) => `Ask one more helper for ${f.clock(p.from)}-${f.clock(p.to)}.`,
  'timeline.remedy.borrow': (p: { readonly thing: string }) => `Borrow ${borrowed[p.thing] ?? p.thing}.`,
  'timeline.remedy.drop': (p: { readonly dish: string }) => `Leave ${p.dish} off the menu.`,
  'timeline.remedy.helperName': 'One more helper', 'timeline.remedy.ringName': 'Borrowed ring', 'timeline.remedy.urnName': 'Borrowed urn', 'timeline.remedy.potName': 'Borrowed pot',
} as const satisfies Record<string, Entry>;
