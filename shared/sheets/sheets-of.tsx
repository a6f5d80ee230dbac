import { renderToStaticMarkup } from 'react-dom/server';
import { fingerprint } from '../changes';
import type { Plan } from '../plan';
import { say, type Formats } from '../words';
import { emergencyDrafts } from './cards/emergency-card';
import { firstBatchDrafts } from './cards/first-batch-card';
import { oilDrafts } from './cards/oil-card';
import { checklistDrafts } from './checklists/checklists';
import { coolingDrafts } from './checklists/cooling';
import { dayDrafts, helperDrafts } from './day/day';
import { drinksDrafts } from './drinks/drinks';
import { fryDrafts } from './fry/fry';
import { boxDrafts } from './labels/box-labels';
import { dishLabelDrafts } from './labels/dish-labels';
import { prepDrafts } from './lists/prep';
import { shoppingDrafts } from './lists/shopping';
import { namesOf } from './names';
import { reprintOf } from './reprint';
import { SheetFrame } from './paper/frame';
import { sheetKinds, type Reprint, type Sheet, type SheetContext, type SheetDraft, type SheetKind, type SheetOptions } from './types';
import { versionOf, type SheetVersion } from './version';

const builders: Readonly<Record<SheetKind, (context: SheetContext) => readonly SheetDraft[]>> = {
  fry: fryDrafts, drinks: drinksDrafts, shopping: shoppingDrafts, prep: prepDrafts, day: dayDrafts, helpers: helperDrafts, labels: dishLabelDrafts, boxes: boxDrafts,
  firstBatch: firstBatchDrafts, oil: oilDrafts, checklists: checklistDrafts, cooling: coolingDrafts, emergency: emergencyDrafts,
};

const fileText = (text: string): string => text.normalize('NFKD').replaceAll(/[^A-Za-z0-9]+/g, '-').replaceAll(/^-+|-+$/g, '').toLowerCase();

/** The same words on paper give the same fingerprint; titles count (a station that got another name), head and foot do not. */
const contentFingerprint = (drafts: readonly SheetDraft[]): string =>
  fingerprint(drafts.map((d) => ({ title: d.title, note: d.note, content: renderToStaticMarkup(d.content) })));

function headcount(plan: Plan, formats: Formats): string {
  const adults = plan.guests.adults.value;
  const children = plan.guests.children.value;
  return adults + children === 0 ? say(formats, 'sheets.noGuests') : say(formats, 'sheets.headcount', { adults, children });
}

function finish(draft: SheetDraft, version: SheetVersion, print: string, context: SheetContext, options: SheetOptions): Sheet {
  const { plan, formats: f } = context;
  const replaces = version.replaces;
  const head = { draft, event: plan.event.title, day: f.date(plan.event.day), version: version.version, replaces, printedAt: options.printedAt, formats: f };
  return {
    kind: draft.kind, id: draft.id, title: draft.title, paper: options.paper, rows: draft.rows ?? [], fingerprint: print, issued: version.issued, version: version.version, replaces,
    fileName: fileText([plan.event.title, draft.kind === 'helpers' || draft.kind === 'fry' ? draft.title : draft.id, version.version].join(' ')),
    body: <SheetFrame {...head} />,
    margins: {
      running: `${plan.event.title}: ${draft.title}. ${say(f, 'sheets.versionOf', { version: version.version })}`,
      headcount: headcount(plan, f),
      printed: `${say(f, 'sheets.versionOf', { version: version.version })}, ${say(f, 'sheets.printedAt', { at: options.printedAt })}`,
      page: say(f, 'sheets.pageOf'),
      of: say(f, 'sheets.of'),
    },
  };
}

/** Every sheet of a plan that has something to say, in the order of `sheetKinds`. Pure: the same plan and options give the same sheets. */
export function sheetsOf(plan: Plan, formats: Formats, options: SheetOptions): readonly Sheet[] {
  const context: SheetContext = { plan, formats, names: namesOf(plan, formats) };
  return sheetKinds.filter((kind) => options.only?.includes(kind) ?? true).flatMap((kind) => {
    const plain = builders[kind](context);
    const ofKind = contentFingerprint(plain);
    // Bars and brackets of a reprint are not its content: the same plan has the same fingerprint whatever hung there before.
    const prints = new Map(plain.map((draft) => [draft.id, contentFingerprint([draft])]));
    const versionOfId = (id: string): SheetVersion => options.version === undefined
      ? versionOf(plan.event, { kind, id, fingerprint: prints.get(id) ?? '' }, ofKind)
      : { version: options.version, replaces: options.replaces ?? null, issued: false };
    const reprint = (id: string): Reprint | null => reprintOf(plan.event, { kind, id }, versionOfId(id).replaces);
    const drafts = plain.some((d) => reprint(d.id) !== null) ? builders[kind]({ ...context, reprintOf: reprint }) : plain;
    return drafts.map((draft) => finish(draft, versionOfId(draft.id), prints.get(draft.id) ?? '', context, options));
  });
}
