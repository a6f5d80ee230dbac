import { describe, expect, it } from 'vitest';
import { ruleIds } from '../../../shared/figure';
import { catalogue } from '../../../shared/words';

describe('the register of rules', () => {
  const sentences = Object.keys(catalogue).filter((id) => id.startsWith('rule.')).map((id) => id.slice('rule.'.length));

  it('has a sentence in words for every rule, and no sentence without a rule', () => {
    expect([...sentences].sort()).toEqual([...ruleIds].sort());
  });
  it('names no rule twice', () => {
    expect(new Set(ruleIds).size).toBe(ruleIds.length);
  });
  it('is not empty', () => {
    expect(ruleIds.length).toBeGreaterThan(20);
  });
});

describe('the words', () => {
  const entries: readonly [string, unknown][] = Object.entries(catalogue);
  const texts = entries.flatMap(([id, text]): [string, string][] => (typeof text === 'string' ? [[id, text]] : []));

  it('use the words a cook uses', () => {
    const forbidden = /\b(lot|lots|leaven|drop at|dispenser|P10|P90|please|sorry|invalid|illegal|kelvin|JSON-LD)\b/i;
    const found = texts.filter(([, text]) => forbidden.test(text)).map(([id, text]) => `${id}: ${text}`);
    expect(found).toEqual([]);
  });
  it('leave no text empty', () => {
    expect(texts.filter(([, text]) => text.trim() === '').map(([id]) => id)).toEqual([]);
  });
});
