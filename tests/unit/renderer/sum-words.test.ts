import { describe, expect, it } from 'vitest';
import { formatsFor, preferencesSchema } from '../../../shared/event';
import { countOf, divide, entered, exponential, figure, least, minus, plus, power, roundUp, sumOf, times, type Working } from '../../../shared/figure';
import { speakerOf } from '../../../src-renderer/app/speak';
import { sumNumber, sumWords, workingLine } from '../../../src-renderer/parts/sum-words';

const t = speakerOf(formatsFor(preferencesSchema.parse({}), '2026-12-12'));
const values = { a: 68, b: 4, c: 21, d: 2, list: [3, 4, 5] };

describe('a sum in words', () => {
  it('reads as on paper', () => expect(sumWords(t, plus(times('a', 'b'), times('c', 'd')), values)).toBe('68 × 4 + 21 × 2'));
  it('brackets what would be read wrongly, and only that', () => {
    expect(sumWords(t, times(plus('a', 'c'), 'b'), values)).toBe('(68 + 21) × 4');
    expect(sumWords(t, minus('a', minus('c', 'b')), values)).toBe('68 − (21 − 4)');
    expect(sumWords(t, divide('a', times('b', 'd')), values)).toBe('68 ÷ (4 × 2)');
    expect(sumWords(t, plus(plus('a', 'c'), 'b'), values)).toBe('68 + 21 + 4');
  });
  it('leaves out what adds or takes away nothing', () => {
    const some = { ...values, none: 0 };
    expect(sumWords(t, minus(times('a', 'b'), 'none'), some)).toBe('68 × 4');
    expect(sumWords(t, times(minus('a', 'none'), 'b'), some)).toBe('68 × 4');
    expect(sumWords(t, plus('a', 'none', 'c'), some)).toBe('68 + 21');
    expect(sumWords(t, minus('none', 'a'), some)).toBe('0 − 68');
  });
  it('names rounding, the smallest, powers and lists', () => {
    expect(sumWords(t, roundUp(divide('a', 'b')), values)).toBe('(68 ÷ 4), rounded up');
    expect(sumWords(t, times(roundUp(divide('a', 'b')), 'd'), values)).toBe('((68 ÷ 4), rounded up) × 2');
    expect(sumWords(t, least('a', 'c'), values)).toBe('the smallest of (68; 21)');
    expect(sumWords(t, power('b', 'd'), values)).toBe('4 to the power 2');
    expect(sumWords(t, exponential('d'), values)).toBe('e to the power (2)');
    expect(sumWords(t, sumOf('list'), values)).toBe('(3 + 4 + 5)');
    expect(sumWords(t, countOf('list'), values)).toBe('count of 3');
  });
  it('shortens a long list but keeps its ends', () => {
    expect(sumWords(t, sumOf('list'), { list: Array.from({ length: 40 }, (_, i) => i) })).toBe('(0 + 1 + 2 + 3 + 4 + 5 + … + 38 + 39)');
  });
  it('keeps four figures of a small number', () => {
    expect(sumNumber(t, 0.000123456)).toBe('0.0001235');
    expect(sumNumber(t, 12.3456)).toBe('12.346');
    expect(sumNumber(t, 0)).toBe('0');
  });
  it('ends with what it comes to, and does not repeat a lone number', () => {
    const made: Working = figure(314, 'pieces', () => ({ rule: 'x', terms: [entered('a', { text: 'adults' }, 68, 'people', 'a'), entered('b', { text: 'each' }, 4, 'pieces', 'b')], sum: times('a', 'b') })).working();
    expect(workingLine(t, made, '272 pieces')).toBe('68 × 4 = 272 pieces');
    const lone: Working = { rule: 'x', terms: [entered('a', { text: 'adults' }, 68, 'people', 'a')], sum: { op: 'term', key: 'a' } };
    expect(workingLine(t, lone, '68')).toBe('= 68');
  });
});
