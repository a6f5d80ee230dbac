import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { sheetsOf, type SheetOptions } from '../../../shared/sheets';
import { issued } from '../../../src-renderer/views/sheets/issue';
import { printedThen } from '../../../src-renderer/views/sheets/printed-now';
import { lanternPlan } from '../sheets/lantern';

const options: SheetOptions = { paper: 'a4', printedAt: '9:05' };
const plan = lanternPlan();
const formats = formatsFor(plan.event.preferences, plan.event.day);
const sheets = sheetsOf(plan, formats, options);

describe('noting what was printed', () => {
  const result = issued(plan.event, sheets, '2026-12-10T09:05');

  it('writes one line for each sheet, with the station or helper it is of', () => {
    expect(result.issuedSheets.map((s) => `${s.sheet} ${s.id} ${s.version}`)).toEqual(sheets.map((s) => `${s.kind} ${s.id} A`));
    expect(new Set(result.issuedSheets.map((s) => s.sheet))).toEqual(new Set(['fry', 'drinks', 'shopping', 'prep', 'day', 'helpers', 'labels', 'boxes', 'firstBatch', 'oil', 'checklists', 'emergency']));
  });

  it('says nothing of a sheet that was not among those printed', () => {
    const [helper] = sheets.filter((s) => s.kind === 'helpers');
    const one = issued(plan.event, [helper!], '2026-12-10T09:05');
    const after = sheetsOf({ ...plan, event: one }, formats, options);
    expect(after.filter((s) => s.issued).map((s) => s.id)).toEqual([helper!.id]);
    expect(after.filter((s) => s.kind === 'helpers' && !s.issued).map((s) => s.id)).toEqual(sheets.filter((s) => s.kind === 'helpers').slice(1).map((s) => s.id));
  });

  it('leaves everything else of the event as it is', () => {
    expect({ ...result, issuedSheets: [] }).toEqual({ ...plan.event, issuedSheets: [] });
  });

  it('makes the sheets known as printed, and printing them again notes nothing', () => {
    const again = sheetsOf({ ...plan, event: result }, formats, options);
    expect(again.every((s) => s.issued && s.version === 'A')).toBe(true);
    const twice = issued(result, again, '2026-12-11T09:05');
    expect(twice).toBe(result);
  });

  it('gives the next letter, and says what it replaces, once the plan has changed', () => {
    const changed = lanternPlan({ batches: 30 });
    const fry = sheetsOf({ ...changed, event: { ...changed.event, issuedSheets: result.issuedSheets } }, formats, options).find((s) => s.kind === 'fry')!;
    expect([fry.version, fry.replaces, fry.issued]).toEqual(['B', 'A', false]);
    expect(fry.fileName.endsWith('-b')).toBe(true);
  });

  it('says the moment in words', () => {
    expect(printedThen(formats, '2026-12-10T09:05')).toBe('Thursday 10 December, 09:05');
  });
});
