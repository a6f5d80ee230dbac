import { describe, expect, it } from 'vitest';
import { makeFormats, say } from '../../../shared/words';

const formats = makeFormats({ locale: 'en-GB', clock: '24', day: '2026-12-12', currency: 'EUR', units: 'metric', showAmount: ({ amount, unit }) => [{ text: amount, unit }] });

describe('what is put aside for the bowls', () => {
  it('is said as the total of all bowls, never as what each bowl gets', () => {
    const text = say(formats, 'view.prep.bowls', { lines: '2.7 L water and 75 g salt', bowls: 16 });
    expect(text).toMatch(/in all/i);
    expect(text).toContain('16 bowls');
    expect(text).not.toMatch(/into each bowl/i);
  });

  it('knows one bowl', () => {
    expect(say(formats, 'view.prep.bowls', { lines: '170 ml water', bowls: 1 })).toContain('for 1 bowl: 170 ml');
  });
});
