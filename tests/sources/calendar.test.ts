/** The calendar file against an independent reader of RFC 5545 (the package `ical.js`) and against the time-zone database (Intl). */
import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { eventSchema, formatsFor, type Event } from '../../shared/event';
import { changeJob } from '../../shared/edit';
import { dayCsv, dayText, planCalendar, readCalendar } from '../../shared/exchange';
import { contentLine, textValue } from '../../shared/exchange/calendar-text';
import { aheadOf, clockChanges, stampOf, wallOf, wallSeconds } from '../../shared/exchange/calendar-time';
import { plan } from '../../shared/plan';

const demo = (over: Partial<Event> = {}): Event => ({ ...eventSchema.parse(JSON.parse(readFileSync('assets/app/demo/lantern-evening.brimful', 'utf8'))), ...over });
const writtenAt = Date.UTC(2026, 10, 25, 12) / 1000;

function read(event: Event, wish: Parameters<typeof planCalendar>[2] = { writtenAt }) {
  const planned = plan(event);
  const text = planCalendar(planned, formatsFor(event.preferences, event.day), wish);
  const root = new ICAL.Component(ICAL.parse(text) as ConstructorParameters<typeof ICAL.Component>[0]);
  const zoneComponent = root.getFirstSubcomponent('vtimezone');
  const zone = zoneComponent === null ? null : new ICAL.Timezone(zoneComponent);
  if (zone !== null) ICAL.TimezoneService.register(zone);
  const entries = root.getAllSubcomponents('vevent').map((c) => new ICAL.Event(c));
  if (zone !== null) ICAL.TimezoneService.remove(zone.tzid);
  return { planned, text, root, zone, entries };
}

/** Whether an entry stands or is cancelled, and its revision. */
const stateOf = (e: ICAL.Event): string => `${String(e.component.getFirstPropertyValue('status'))} ${e.sequence}`;

const later = (text: string, more: Partial<Parameters<typeof planCalendar>[2]> = {}): Parameters<typeof planCalendar>[2] => ({ writtenAt: writtenAt + 3600, before: readCalendar(text)!, ...more });
const edited = (event: Event, job: string, patch: Parameters<typeof changeJob>[2]): Event => {
  const answer = changeJob(event, { key: job, name: job }, patch);
  if ('problem' in answer) throw new Error(answer.problem.id);
  return answer.event;
};
const key = (e: ICAL.Event): string => `${e.startDate.toICALString()} ${e.endDate.toICALString()} ${e.summary} ${e.description}`;
const stamp = (e: ICAL.Event): string => String(e.component.getFirstPropertyValue('dtstamp'));
const stateOfTables = (list: readonly ICAL.Event[]): string | undefined => list.filter((e) => e.uid.startsWith('set-up/tables')).map(stateOf)[0];

/** What a calendar holds that follows RFC 5546: of two entries with one id the higher revision, of equal ones the later stamp; cancelled ones are taken out. */
const calendar = (files: readonly (readonly ICAL.Event[])[]): Map<string, string> => {
  const held = new Map<string, ICAL.Event>();
  for (const e of files.flat()) {
    const was = held.get(e.uid);
    if (was === undefined || e.sequence > was.sequence || (e.sequence === was.sequence && stamp(e) >= stamp(was))) held.set(e.uid, e);
  }
  return new Map([...held].filter(([, e]) => e.component.getFirstPropertyValue('status') !== 'CANCELLED').map(([uid, e]) => [uid, key(e)]));
};

/** Minute of the day and day number as the time-zone database shows a moment. */
function shown(zone: string, at: Date): { day: string; time: string } {
  const parts = Object.fromEntries(new Intl.DateTimeFormat('en-CA', { timeZone: zone, hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit', second: '2-digit' }).formatToParts(at).map((p) => [p.type, p.value]));
  return { day: `${parts['year']}${parts['month']}${parts['day']}`, time: `${parts['hour']}${parts['minute']}${parts['second']}` };
}

describe('read by an independent parser', () => {
  test.each(['UTC', 'Europe/Berlin', 'America/New_York', 'Asia/Kathmandu', 'Australia/Lord_Howe', 'Pacific/Apia'])('%s: one entry for each job with something to do, with name and times', (timeZone) => {
    const { planned, entries, root } = read(demo({ timeZone }));
    const jobs = planned.day.tasks.filter((t) => t.attention > 0);
    expect(jobs.length).toBeGreaterThan(50);
    expect(entries).toHaveLength(jobs.length);
    expect(root.getFirstPropertyValue('version')).toBe('2.0');
    expect(new Set(entries.map((e) => e.uid)).size).toBe(jobs.length);
    for (const [i, e] of entries.entries()) {
      const stamp = stampOf(wallSeconds(planned.event.day, jobs[i]!.start));
      expect(e.startDate.toICALString().replace('Z', '')).toBe(stamp);
      // The same moment by the zone rules of the file and by the time-zone database.
      const { day, time } = shown(timeZone, e.startDate.toJSDate());
      expect(`${day}T${time}`).toBe(stamp);
      expect(e.duration.toSeconds()).toBeGreaterThanOrEqual(0);
    }
  });

  test('one helper gets their own jobs only, with a reminder', () => {
    const event = demo();
    const person = event.people[0]!.id;
    const { planned, entries } = read(event, { writtenAt, person, remindMinutes: 10 });
    expect(entries).toHaveLength(planned.day.tasks.filter((t) => t.attention > 0 && t.who.includes(person)).length);
    for (const e of entries) {
      const alarm = e.component.getFirstSubcomponent('valarm')!;
      expect(alarm.getFirstPropertyValue('action')).toBe('DISPLAY');
      expect(String(alarm.getFirstPropertyValue('trigger'))).toBe('-PT10M');
    }
  });

  test('a zone nobody knows is left out, times count where they are read', () => {
    const { entries, zone, text } = read(demo({ timeZone: 'Nowhere/Land' }));
    expect(zone).toBeNull();
    expect(text).not.toContain('TZID');
    expect(entries[0]!.startDate.zone.tzid).toBe('floating');
  });

  test('names with commas, semicolons, line ends and long ones come back as written; no line is longer than 75 bytes', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
      const clean = Array.from(text.replaceAll('\r\n', '\n')).filter((c) => c === '\n' || c.codePointAt(0)! >= 0x20).join('');
      const file = contentLine('BEGIN', 'VCALENDAR') + contentLine('BEGIN', 'VEVENT') + contentLine('SUMMARY', textValue(text)) + contentLine('END', 'VEVENT') + contentLine('END', 'VCALENDAR');
      for (const line of file.split('\r\n')) expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75);
      const root = new ICAL.Component(ICAL.parse(file) as ConstructorParameters<typeof ICAL.Component>[0]);
      expect(root.getFirstSubcomponent('vevent')!.getFirstPropertyValue('summary')).toBe(clean);
    }), { numRuns: 300 });
  });
});

describe('a file read into the same calendar again (RFC 5545, 3.8.7.4; RFC 5546, 2.1.4: ids stay, the revision rises with a change, what is gone is cancelled)', () => {
  test('nothing changed: byte for byte the same file, however much later', () => {
    const first = read(demo(), { writtenAt, remindMinutes: 10 });
    expect(read(demo(), later(first.text, { remindMinutes: 10 })).text).toBe(first.text);
    expect(first.entries.every((e) => e.sequence === 0)).toBe(true);
  });

  test('a job moved, one left out, one brought back: only these have a higher revision, and the calendar holds the plan of the day each time', () => {
    const event = demo({ timeZone: 'Europe/Berlin' });
    const versions = [event, edited(edited(event, 'set-up/tables', { at: 500 }), 'clean/kitchen', { off: true }), edited(event, 'set-up/tables', { at: 510 }), event];
    let text: string | null = null;
    const files: ICAL.Event[][] = [];
    const seen = new Map<string, { sequence: number; key: string; cancelled: boolean }>();
    for (const [k, version] of versions.entries()) {
      const file = read(version, text === null ? { writtenAt } : later(text, { writtenAt: writtenAt + 3600 * k }));
      for (const e of file.entries) {
        const was = seen.get(e.uid);
        const now = { key: key(e), cancelled: e.component.getFirstPropertyValue('status') === 'CANCELLED' };
        const other = was !== undefined && (was.key !== now.key || was.cancelled !== now.cancelled);
        expect(e.sequence).toBe(was === undefined ? 0 : was.sequence + (other ? 1 : 0));
        seen.set(e.uid, { sequence: e.sequence, ...now });
      }
      text = file.text;
      files.push([...file.entries]);
      const alone = read(version).entries;
      expect(calendar(files)).toEqual(new Map(alone.map((e) => [e.uid, key(e)])));
    }
    const kitchen = files.map((list) => list.find((e) => e.uid.startsWith('clean/kitchen'))!).map(stateOf);
    expect(kitchen).toEqual(['CONFIRMED 0', 'CANCELLED 1', 'CONFIRMED 2', 'CONFIRMED 2']);
  });

  test('a job given to somebody else is cancelled in the one calendar and new in the other, under ids of their own', () => {
    const event = demo();
    const job = plan(event).day.tasks.find((t) => t.id === 'set-up/tables')!;
    const [from, to] = [job.who[0]!, 'tea'];
    const moved = edited(event, 'set-up/tables', { who: to });
    const [first, second] = [read(event, { writtenAt, person: from }), read(event, { writtenAt, person: to })];
    const [gone, got] = [read(moved, later(first.text, { person: from })), read(moved, later(second.text, { person: to }))];
    expect([stateOfTables(gone.entries), stateOfTables(got.entries)]).toEqual(['CANCELLED 1', 'CONFIRMED 0']);
    expect(gone.entries.filter((e) => got.entries.some((o) => o.uid === e.uid))).toEqual([]);
    // Another helper's file, or another event's, is not this file's to cancel.
    expect(read(event, later(second.text, { person: from })).text).toBe(read(event, { writtenAt: writtenAt + 3600, person: from }).text);
    expect(read(demo({ id: 'other' }), later(first.text)).entries.every((e) => e.sequence === 0)).toBe(true);
  });

  test('a cancelled entry of another time zone keeps its moment: the file has the rules of both', () => {
    const first = read(demo({ timeZone: 'Asia/Kathmandu' }));
    const file = read(edited(demo({ timeZone: 'Europe/Berlin' }), 'clean/kitchen', { off: true }), later(first.text));
    const zones = file.root.getAllSubcomponents('vtimezone').map((z) => String(z.getFirstPropertyValue('tzid')));
    expect(zones.toSorted()).toEqual(['Asia/Kathmandu', 'Europe/Berlin']);
    const gone = file.entries.filter((e) => e.component.getFirstPropertyValue('status') === 'CANCELLED');
    expect(gone.length).toBeGreaterThan(0);
    for (const e of gone) expect((e.component.getFirstProperty('dtstart')!.getFirstParameter('tzid'))).toBe('Asia/Kathmandu');
  });

  test('what was written is read back as it was written; what is no calendar is none', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 90 }), (name) => {
      const event = demo();
      const person = event.people[0]!;
      const file = read({ ...event, people: [{ ...person, name: name.trim() === '' ? 'x' : name }, ...event.people.slice(1)] }, { writtenAt, remindMinutes: 5 });
      const back = readCalendar(file.text)!;
      expect(back.map((e) => [e.uid, e.sequence, e.trigger])).toEqual(file.entries.map((e) => [e.uid, e.sequence, ':-PT5M']));
      expect(planCalendar(file.planned, formatsFor(event.preferences, event.day), { writtenAt: writtenAt + 60, remindMinutes: 5, before: back })).toBe(file.text);
    }), { numRuns: 6 });
    expect(readCalendar('a,b,c')).toBeNull();
    expect(readCalendar('')).toBeNull();
    expect(readCalendar('BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:x\r\nEND:VEVENT\r\nEND:VCALENDAR')).toEqual([]);
    expect(wallOf(stampOf(wallSeconds('2028-02-29', 1439)))).toBe(wallSeconds('2028-02-29', 1439));
    expect(wallOf('2028')).toBeNull();
  });
});

describe('a day on which the clocks change', () => {
  // Dates of the changes: time-zone database, as Intl answers.
  test.each([
    ['Europe/Berlin', '2026-03-29', 1], ['Europe/Berlin', '2026-10-25', -1], ['America/New_York', '2026-11-01', -1], ['Australia/Lord_Howe', '2026-04-05', -0.5],
  ] as const)('%s on %s: jobs before and after it are at the moment the wall clock shows them', (timeZone, day, hours) => {
    const event = demo({ timeZone, day });
    const { entries, zone, root, planned } = read(event);
    expect(root.getFirstSubcomponent('vtimezone')!.getAllSubcomponents().length).toBeGreaterThanOrEqual(2);
    expect(zone!.tzid).toBe(timeZone);
    const ahead = aheadOf(timeZone)!;
    const noon = Date.parse(`${day}T12:00:00Z`) / 1000;
    const [change] = clockChanges(ahead, noon - 86_400, noon + 86_400);
    expect(change!.after - change!.before).toBe(hours * 3600);
    const jobs = planned.day.tasks.filter((t) => t.attention > 0);
    for (const [i, e] of entries.entries()) {
      const { day: d, time } = shown(timeZone, e.startDate.toJSDate());
      expect(`${d}T${time}`).toBe(stampOf(wallSeconds(day, jobs[i]!.start)));
    }
  });
  test('changes are found to the second, none where there are none', () => {
    const from = Date.UTC(2026, 0, 1) / 1000;
    const berlin = clockChanges(aheadOf('Europe/Berlin')!, from, from + 365 * 86_400);
    // European Union, directive 2000/84/EC: last Sundays of March and October, 01:00 UTC.
    expect(berlin.map((c) => new Date(c.at * 1000).toISOString())).toEqual(['2026-03-29T01:00:00.000Z', '2026-10-25T01:00:00.000Z']);
    expect(clockChanges(aheadOf('Asia/Kathmandu')!, from, from + 365 * 86_400)).toEqual([]);
    expect(aheadOf('Asia/Kathmandu')!(from)).toBe(5.75 * 3600);
    expect(aheadOf('No/Zone')).toBeNull();
  });
});

test('the day as a table and as text holds every job, and those of one helper only when asked', () => {
  const event = demo();
  const planned = plan(event);
  const f = formatsFor(event.preferences, event.day);
  const rows = dayCsv(planned, f).trimEnd().split('\r\n');
  expect(rows).toHaveLength(planned.day.tasks.length + 1);
  expect(rows[0]).toBe('Day,From,To,Job,Who,Minutes it can slip');
  for (const row of rows.slice(1)) expect(row).toMatch(/^\d{4}-\d\d-\d\d,\d\d:\d\d,\d\d:\d\d,/);
  const person = event.people[1]!.id;
  const own = planned.day.tasks.filter((t) => t.who.includes(person)).length;
  expect(dayCsv(planned, f, person).trimEnd().split('\r\n')).toHaveLength(own + 1);
  expect(dayText(planned, f, person).split('\n')).toHaveLength(own + 2);
});
