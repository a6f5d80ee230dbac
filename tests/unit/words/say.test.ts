import { describe, expect, it } from 'vitest';
import { catalogue, isWordId, makeFormats, say, sayLoose, sayMessage } from '../../../shared/words';

const f = makeFormats({ locale: 'en-GB', clock: '24', day: '2026-12-12', currency: 'EUR', units: 'metric', showAmount: ({ amount, unit }) => [{ text: amount, unit }] });

describe('words', () => {
  it('says fixed text and sentences with parameters', () => {
    expect(say(f, 'unit.kg')).toBe('kg');
    expect(say(f, 'unit.cup', { count: 2 })).toBe('cups');
    expect(sayMessage(f, { id: 'unit.kg' })).toBe('kg');
    expect(sayMessage(f, { id: 'unit.cup', params: { count: 1 } })).toBe('cup');
  });
  it('says the sentences inside a sentence first', () => {
    expect(sayMessage(f, { id: 'change.task.gone', params: { name: { id: 'report.people', params: { adults: 2, children: 1 } } } })).toBe('Job falls away: 2 adults and 1 child');
  });
  it('says an id known only at run time, and shows a gap as it is', () => {
    expect(sayLoose(f, 'unit.cup', { count: 1 })).toBe('cup');
    expect(sayLoose(f, 'no.such.word')).toBe('no.such.word');
    expect(sayLoose(f, 'toString')).toBe('toString');
    expect(isWordId('constructor')).toBe(false);
  });
});

describe('the catalogue', () => {
  const entries: [string, unknown][] = Object.entries(catalogue);
  const idsWhere = (wrong: (entry: unknown, id: string) => boolean): string[] => entries.filter(([id, entry]) => wrong(entry, id)).map(([id]) => id);
  it('holds text or sentences only, none empty', () => {
    expect(entries.length).toBeGreaterThan(300);
    expect(idsWhere((entry) => typeof entry !== 'function' && (typeof entry !== 'string' || entry.trim() === ''))).toEqual([]);
  });
  it('keeps to the house words: no pleading, no double spaces', () => {
    expect(idsWhere((entry) => /\b(please|sorry|oops)\b/i.test(String(entry)))).toEqual([]);
    expect(idsWhere((entry, id) => typeof entry === 'string' && !id.startsWith('command.usage') && entry.includes('  '))).toEqual([]);
  });
});
