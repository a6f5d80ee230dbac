import { describe, expect, it } from 'vitest';
import { parameters, parameterSource, sourceIds, sourceTitle } from '../../../shared/reference';

/** The tables' shorthand as a reader is told it. */
const plain = (source: string): string => source.replaceAll('from memory', 'remembered, not looked up').replaceAll('seen (secondary)', 'read in a second-hand source').replace(/^definition$/, 'fixed by definition');

describe('titles of sources', () => {
  it('has every source once, with a title and how it was read', () => {
    expect(new Set(sourceIds).size).toBe(sourceIds.length);
    for (const id of sourceIds) {
      const s = sourceTitle(id);
      expect(s?.title.length).toBeGreaterThan(3);
      expect(s?.status.length).toBeGreaterThan(3);
    }
  });

  it('names what is nobody’s published figure as such', () => {
    expect(sourceTitle('common-practice')?.status).toBe('common practice, no source');
    expect(sourceTitle('from-memory')?.status).toBe('from memory');
  });

  it('answers for every starting value', () => {
    for (const p of parameters) expect(sourceTitle(parameterSource(p.id))).toEqual({ title: plain(p.source), publisher: '', year: '', status: p.status });
  });

  it('does not know what is not there', () => {
    expect(sourceTitle('nobody')).toBeUndefined();
    expect(sourceTitle('parameter:nobody')).toBeUndefined();
  });
});
