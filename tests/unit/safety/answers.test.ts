import { describe, expect, it } from 'vitest';
import { formatsFor, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { safetyRuleTable } from '../../../shared/reference';
import { rules } from '../../../shared/safety/rules';
import { sheetDocument, sheetsOf, type SheetKind } from '../../../shared/sheets';
import { demo } from '../demo/demo';

const lantern = demo('lantern-evening');
const printed = new Map<string, string>();
/** Words of a sheet of the demo without tags and hard spaces. */
function words(kind: SheetKind, profile: Event['preferences']['safetyProfile'] = 'household'): string {
  const key = `${kind} ${profile}`;
  const known = printed.get(key);
  if (known !== undefined) return known;
  const event = { ...lantern, preferences: { ...lantern.preferences, safetyProfile: profile } };
  const text = sheetsOf(plan(event), formatsFor(event.preferences, event.day), { paper: 'a4', printedAt: '9:05', only: [kind] }).map((s) => sheetDocument(s, { lang: 'en-GB' })).join('\n')
    .replaceAll(/<style>[\s\S]*?<\/style>/g, '').replaceAll(/<[^>]+>/g, ' ').replaceAll(/[\s\u00a0\u202f]+/g, ' ');
  printed.set(key, text);
  return text;
}

type Profile = Event['preferences']['safetyProfile'];
/** Rules that are told: on which sheet, and what it has to say. */
const told: Readonly<Record<string, readonly (readonly [sheet: SheetKind, says: string, profile?: Profile])[]>> = {
  'DF-06': [['fry', 'never water'], ['oil', 'never water'], ['emergency', 'Never water']],
  'DF-07': [['oil', 'heat off, nothing goes in'], ['emergency', 'Leave it covered and off until it is cold']],
  'DF-08': [['emergency', 'Slide a lid or baking sheet over it'], ['fry', 'Fire: lid on'], ['emergency', 'Slide a lid', 'eu'], ['emergency', 'Slide a lid', 'us']],
  'DF-09': [['emergency', 'Do not fight the fire', 'uk'], ['fry', 'everybody out, door closed, call 999', 'uk'], ['oil', 'call 999', 'uk'], ['firstBatch', 'call 999', 'uk']],
  'DF-16': [['oil', 'Skim crumbs out after every third batch'], ['oil', 'never down the drain']],
  'DF-17': [['fry', 'Handles turned in, children and sleeves away']],
  'SC-06': [['drinks', 'No child on the lap of who holds a hot cup']],
  'SC-08': [['emergency', 'Cool running water on it for 20 minutes']],
  'GC-03': [['emergency', 'Headache, dizziness or sickness in several people']],
  'PR-08': [['firstBatch', 'never raw batter']],
  'LO-05': [['boxes', 'left over In it Keep in the fridge Use by'], ['boxes', 'steaming all through, 74 °C'], ['cooling', 'Heat through to 74 °C']],
  'ED-06': [['drinks', 'Never top up milk tea or coffee: empty, rinse, refill']],
  'CX-04': [['fry', 'Guidance only'], ['drinks', 'Guidance only'], ['oil', 'Guidance only'], ['cooling', 'Guidance only'], ['checklists', 'Guidance only']],
};

/** Rules that state the reason for another, and the rule that judges for them. */
const behind: Readonly<Record<string, string>> = {
  'HH-04': 'HH-02', 'HH-06': 'HH-02', 'TC-03': 'TC-01', 'TC-04': 'TC-01', 'TC-05': 'TC-01', 'PR-06': 'LO-03', 'BO-02': 'BO-01', 'BO-03': 'BO-01', 'RH-03': 'HH-01',
  'SC-01': 'SC-03', 'SC-02': 'SC-03', 'SC-05': 'SC-04', 'CD-07': 'CD-05', 'AC-02': 'AC-01', 'LF-03': 'LF-01a', 'HY-04': 'HY-01',
};

const kind = (id: string): string => { const title: string = rules.find((r) => r.id === id)?.title.id ?? 'nobody'; return title.replace('safety.title.', ''); };
const ids = safetyRuleTable.map((r) => r.id);

describe('where each of the 143 rules is answered', () => {
  it('is judged under its own heading, told on a named sheet, or stands behind one that is judged', () => {
    const unanswered = ids.filter((id) => kind(id) !== id && !(kind(id) === 'told' && Object.hasOwn(told, id)) && !(kind(id) === 'behind' && Object.hasOwn(behind, id)));
    expect(unanswered).toEqual([]);
    expect(ids.length).toBe(143);
  });
  it('names nothing here that the product judges itself', () => {
    expect(Object.keys(told).filter((id) => kind(id) !== 'told')).toEqual([]);
    expect(Object.keys(behind).filter((id) => kind(id) !== 'behind')).toEqual([]);
  });
  it('stands behind judged rules only', () => expect(Object.values(behind).filter((id) => kind(id) !== id)).toEqual([]));
  it.each(Object.entries(told).flatMap(([id, all]) => all.map(([sheet, says, profile = 'household']) => ({ id, sheet, says, profile }))))('$id: the sheet $sheet says "$says" ($profile)', ({ sheet, says, profile }) => {
    expect(words(sheet, profile)).toContain(says);
  });
  it('tells nobody in the United Kingdom to put a lid on burning oil', () => {
    for (const sheet of ['fry', 'oil', 'firstBatch', 'emergency'] as const) expect(words(sheet, 'uk')).not.toMatch(/Fire: lid on|Slide a lid/);
  });
});
