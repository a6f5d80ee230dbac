import { describe, expect, it } from 'vitest';
import { parameters, sourceTitle } from '../../../shared/reference';

describe('titles of sources', () => {
  it('say in plain words what was remembered or read second-hand', () => {
    const titles = parameters.map((p) => sourceTitle(`parameter:${p.id}`)?.title ?? '');
    expect(titles.length).toBeGreaterThan(100);
    expect(titles.filter((t) => t === '' || /from memory|\(secondary\)|^definition$/i.test(t))).toEqual([]);
    expect(sourceTitle('from-memory')?.title).toBe('Remembered, not looked up');
  });
});
