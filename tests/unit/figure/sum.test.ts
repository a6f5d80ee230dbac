import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  countOf, divide, evaluate, keysIn, exponential, just, least, logarithm, minus, most, plus, power, rounded, roundDown, roundUp, squareRoot, sumOf, times, type Sum,
} from '../../../shared/figure';

const number = fc.double({ min: -1000, max: 1000, noNaN: true });

describe('sums', () => {
  it.each([
    ['plus', plus('a', 'b', 2), 9], ['minus', minus('a', 'b'), 1], ['times', times('a', 'b', 2), 24], ['divide', divide('a', 'b'), 4 / 3], ['power', power('a', 2), 16],
    ['least', least('a', 'b'), 3], ['most', most('a', 'b', 11), 11], ['just', just('a'), 4], ['round', rounded(2.5), 3],
    ['exponential', exponential(0), 1], ['logarithm', logarithm(1), 0], ['squareRoot', squareRoot('a'), 2], ['nested', plus(times('a', 'b'), minus(1, 'b')), 10],
  ] as readonly (readonly [string, Sum, number])[])('%s', (_, sum, value) => expect(evaluate(sum, { a: 4, b: 3 })).toBeCloseTo(value, 12));

  it('rounds up and down past floating-point dust', () => {
    expect(evaluate(roundUp(19.0000000000001), {})).toBe(19);
    expect(evaluate(roundUp(19.001), {})).toBe(20);
    expect(evaluate(roundDown(18.99999999999), {})).toBe(19);
    expect(evaluate(roundDown(18.99), {})).toBe(18);
  });

  it('adds up and counts lists', () => {
    expect(evaluate(sumOf('batches'), { batches: [8, 8, 5] })).toBe(21);
    expect(evaluate(countOf('batches'), { batches: [8, 8, 5] })).toBe(3);
    expect(evaluate(countOf('batches'), { batches: [] })).toBe(0);
  });

  it('names what is missing, and refuses a list for a number and a number for a list', () => {
    expect(() => evaluate(plus('a', 'gone'), { a: 1 })).toThrow('"gone"');
    expect(() => evaluate(just('a'), { a: [1, 2] })).toThrow(RangeError);
    expect(() => evaluate(sumOf('a'), { a: 1 })).toThrow('list term');
  });

  it('knows the terms it uses, each once, and none for a plain number', () => {
    expect([...keysIn(plus(times('a', 'b'), minus('a', 3), countOf('list')))]).toEqual(['a', 'b', 'list']);
    expect(keysIn(just(4)).size).toBe(0);
  });

  it('agrees with plain arithmetic', () => {
    fc.assert(fc.property(number, number, number, (a, b, c) => {
      const values = { a, b, c };
      expect(evaluate(plus(times('a', 'b'), minus('c', 'a')), values)).toBe(a * b + (c - a));
      expect(evaluate(most(least('a', 'b'), 'c'), values)).toBe(Math.max(Math.min(a, b), c));
    }));
  });
});
