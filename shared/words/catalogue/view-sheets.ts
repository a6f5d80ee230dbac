import type { Entry, Formats } from '../formats';

/** Labels of the view Sheets. */
export const viewSheetsWords = {
  'view.sheets.figureOf': (p: { of: string; what: string }) => `${p.of}: ${p.what}`,
  'view.sheets': 'Sheets',
  'view.sheets.emptyTitle': 'Nothing to print yet',
  'view.sheets.empty': 'Once there are guests and dishes, every list the kitchen needs appears here as a page.',
  'view.sheets.lead': 'The pages as they will be printed. A sheet with nothing to say is not made.',
  'view.sheets.paper': 'Paper',
  'view.sheets.all': 'All sheets as one PDF',
  'view.sheets.pdf': 'PDF',
  'view.sheets.print': 'Print',
  'view.sheets.pdfOf': (p: { title: string }) => `PDF of ${p.title}`,
  'view.sheets.printOf': (p: { title: string }) => `Print ${p.title}`,
  'view.sheets.never': 'not printed yet',
  'view.sheets.matches': (p: { version: string; at: string }) => `version ${p.version}, printed ${p.at}, still matches the plan`,
  'view.sheets.stale': (p: { version: string; at: string; next: string }) => `version ${p.version}, printed ${p.at}, no longer matches: print version ${p.next}`,
  'view.sheets.written': (p: { path: string; pages: number }, f: Formats) => `PDF made: ${p.path}, ${f.plural(p.pages, '1 page', `${f.number(p.pages)} pages`)}`,
  'view.sheets.working': 'Making the PDF…',
  'view.sheets.allergies': 'Print who is allergic to what on the day plan',
  'view.sheets.picture': (p: { title: string; pages: number }, f: Formats) => `Picture of ${p.title}, ${f.plural(p.pages, '1 page', `${f.number(p.pages)} pages`)}`,
  'view.sheets.joint': 'all sheets',
} as const satisfies Record<string, Entry>;
