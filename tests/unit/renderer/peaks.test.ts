import { describe, expect, it } from 'vitest';
import { peaksOf } from '../../../src-renderer/views/board/peaks';

const hump = (at: number, height: number, width: number) => (minute: number): number => height * Math.max(0, 1 - Math.abs(minute - at) / width);
const day = (...humps: ((m: number) => number)[]): number[] => Array.from({ length: 600 }, (_, m) => humps.reduce((sum, h) => sum + h(m), 0));

describe('peaks of a curve', () => {
  it('finds each separate hump with its height', () => {
    expect(peaksOf(600, day(hump(100, 47, 80), hump(300, 27, 60), hump(480, 19, 50)))).toEqual([{ at: 700, value: 47 }, { at: 900, value: 27 }, { at: 1080, value: 19 }]);
  });
  it('labels a ripple on a hump once, at its highest', () => {
    expect(peaksOf(0, day(hump(200, 40, 120), hump(275, 3, 10))).map((p) => p.at)).toEqual([200]);
  });
  it('says nothing of a day with nobody', () => expect(peaksOf(0, day())).toEqual([]));
  it('labels a flat top once', () => expect(peaksOf(0, [0, 5, 5, 5, 0])).toHaveLength(1));
});
