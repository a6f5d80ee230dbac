import { describe, expect, it } from 'vitest';
import { killWhileSaving } from './kill-loop';
import { numbered, versionIn } from './numbered-text';

const rounds = 60;

describe('killing the program while it saves', () => {
  it('sees a torn text when there is one', () => {
    const text = numbered(3, 1);
    expect(versionIn(text)).toBe(3);
    expect([text.slice(0, -1), '', text.replace('3', '4'), `${text} `].map(versionIn)).toEqual([null, null, null, null]);
  });

  it(`leaves the old version or the new one, whole, in ${rounds} of ${rounds} kills`, async () => {
    const { leftovers, ...count } = await killWhileSaving(rounds, 20_261_212);
    expect(count).toEqual({ kills: rounds, torn: 0, lost: 0, tornBackups: 0, strayBackups: 0, unswept: 0 });
    // Kills that fell into a save leave its temporary file. Without them the rest would show nothing.
    expect(leftovers).toBeGreaterThanOrEqual(rounds / 10);
  }, 300_000);
});
