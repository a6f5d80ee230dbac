import type { Entry, Formats } from '../formats';

/** Words of the subject `command`: what the command line says. */
export const commandWords = {
  'command.usage': `Usage: brimful <command> ...

  plan FILE [--adults N] [--children N] [--json]     everything that follows from an event
  sheets FILE --out DIR [--paper a4|letter] [--only fry,drinks,...]
                                                     the printed sheets, as PDF and as web pages
  export FILE --as calendar|table|text [--helper NAME] [--remind MINUTES]
                                                     the day for a calendar, a spreadsheet or a note
  check FILE                                         is the file sound, and what needs a look
  compare FILE FILE                                  what changed from one event to another
  convert 2.5 cup g --of "chickpea flour"            an amount in another measure
  scale RECIPE --portions N | --yield "3 kg" | --factor 3.48 [--units us|metric] [--json]
                                                     a recipe in another size, foreign ones too
  shelf list|show|import|export|join                 the household's recipes
  open FILE                                          the event in its window

brimful <command> --help tells more. Ends with 0 when all is well, 1 when something must not go on like this,
2 when what was given cannot be used, 3 when a tool is missing.`,
  'command.usage.plan': `Usage: brimful plan FILE [--adults N] [--children N] [--json]

Plans an event and prints what a cook needs to know on one page.
  --adults N     plan for N adults in all
  --children N   plan for N children in all
  --json         print the whole plan as JSON; times are minutes from the event day's midnight
Ends with 1 when there is a finding of level stop.`,
  'command.usage.sheets': `Usage: brimful sheets FILE --out DIR [--paper a4|letter] [--only fry,drinks,shopping,prep,day,helpers]

Writes the sheets of an event into DIR: a web page and a PDF of each.
  --paper        a4 or letter; without it, what the event says
  --only         some of the sheets, separated by commas
Ends with 3 when there is no browser that can make PDFs; the web pages are written all the same.`,
  'command.usage.export': `Usage: brimful export FILE --as calendar|table|text [--helper NAME] [--remind MINUTES] [--since OLD.ics]

Prints the jobs of the day, of everybody or of one helper.
  --as calendar  an iCalendar file (.ics); reading a later one into the same calendar moves the entries
  --as table     comma-separated values for a spreadsheet
  --as text      one line for each job
  --helper       the name of one helper
  --remind       the calendar reminds this many minutes before each job
  --since        the .ics file written last: what is the same stays so, what is another has a higher revision, what is gone is cancelled`,
  'command.export.since': (p: { readonly path: string }) => `${p.path} is no calendar file. After --since stands the .ics file that was written last.`,
  'command.export.as': 'Say what to write: --as calendar, --as table or --as text.',
  'command.export.remind': 'The minutes after --remind are a whole number from 0 to 1440.',
  'command.export.helper': (p: { readonly name: string; readonly names: readonly string[] }, f) => (p.names.length === 0 ? `There are no helpers in this event, so there is no ${p.name}.` : `There is no helper called ${p.name}. There are ${f.list(p.names)}.`),
  'command.usage.convert': `Usage: brimful convert AMOUNT UNIT UNIT [--of FOOD]

Turns an amount into another unit. Between weight and volume, and for counted things, it needs to know the food.
  brimful convert 2.5 cup g --of "chickpea flour"
Units: g kg oz lb ml L tsp tbsp floz cup pint quart gallon metricCup metricTbsp metricTsp piece bunch clove slice pinch`,
  'command.usage.check': `Usage: brimful check FILE

Says whether the file can be read, and what needs a look in its plan.
Ends with 1 when there is a finding of level stop.`,
  'command.usage.compare': `Usage: brimful compare FILE FILE

Says what changed in amounts, batches and rounds from the first event to the second.`,
  'command.usage.open': `Usage: brimful open FILE

Opens the event in its window.`,
  'command.unknown': (p: { name: string }) => `There is no command "${p.name}".`,
  'command.options': (p: { what: string }) => `${p.what}.`,
  'command.extra': (p: { given: string; most: number }, f: Formats) => `Leave "${p.given}" out: this takes ${f.plural(p.most, 'one name', `${f.number(p.most)} names`)}.`,
  'command.needs-file': 'Name the event file.',
  'command.needs-two-files': 'Name two event files.',
  'command.needs-out': 'Say with --out into which folder the sheets go.',
  'command.whole-number': (p: { option: string; given: string; most: number }) => `--${p.option} is a whole number from 0 to ${p.most}, not "${p.given}".`,
  'command.paper': (p: { given: string }) => `--paper is a4 or letter, not "${p.given}".`,
  'command.only': (p: { given: string; known: string }) => `There is no sheet "${p.given}". The sheets are ${p.known}.`,
  'command.not-read': (p: { path: string }) => `${p.path} cannot be used:`,
  'command.problem': (p: { path: string; message: string }) => (p.path === '' ? `  ${p.message}` : `  ${p.path}: ${p.message}`),
  'command.sound': (p: { path: string }) => `${p.path} can be read and planned.`,
  'command.findings.none': 'Nothing needs a look.',
  'command.finding': (p: { level: string; rule: string; message: string }) => `${p.level} ${p.rule}: ${p.message}`,
  'command.level.stop': 'STOP',
  'command.level.warn': 'WARN',
  'command.level.caution': 'NOTE',
  'command.not-checked': (p: { count: number }, f: Formats) => `${f.plural(p.count, '1 rule', `${p.count} rules`)} could not be checked, for something is not known yet.`,
  'command.wrote': (p: { path: string }) => p.path,
  'command.no-sheets': 'This event has none of these sheets.',
  'command.convert.needs': (p: { example: string }) => `Give an amount, its unit and the unit wanted, such as ${p.example}.`,
  'command.convert.amount': (p: { given: string }) => `"${p.given}" is no amount. Write 2.5, 2 1/2 or ½.`,
  'command.convert.unit': (p: { given: string; known: string }) => `There is no unit "${p.given}". The units are ${p.known}.`,
  'command.convert.needs-food': (p: { from: string; to: string }) => `From ${p.from} to ${p.to} depends on the food. Name it with --of "chickpea flour".`,
  'command.convert.unknown-food': (p: { given: string; near: string }) => `The table has no food "${p.given}".${p.near === '' ? '' : ` Is it one of these: ${p.near}?`}`,
  'command.convert.no-figure': (p: { food: string; unit: string }) => `The table does not say what one ${p.unit} of ${p.food} weighs.`,
  'command.convert.answer': (p: { amount: string; from: string; result: string; isRounded: boolean; to: string; food: string }) =>
    `${p.amount} ${p.from}${p.food === '' ? '' : ` of ${p.food}`} = ${p.isRounded ? 'about ' : ''}${p.result} ${p.to}`,
  'command.convert.source': (p: { what: string; value: number; unit: string; source: string }) => `(${p.what}: ${p.value} ${p.unit}, ${p.source})`,
  'command.convert.density': 'density',
  'command.convert.weight-of-one': (p: { unit: string }) => `one ${p.unit}`,
} as const satisfies Record<string, Entry>;
