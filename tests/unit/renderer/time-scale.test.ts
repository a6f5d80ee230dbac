import { describe, expect, it } from 'vitest';
import { hoursOf, timeScale } from '../../../src-renderer/parts/time-scale';

describe('time scale', () => {
  it('puts minutes on pixels and back', () => {
    const scale = timeScale(600, 1200, 1000);
    expect(scale.x(900)).toBe(500);
    expect(scale.x.invert(250)).toBe(750);
    expect(scale.span(60)).toBe(100);
  });
  it('never lets an hour get narrower than 48 pixels', () => expect(timeScale(0, 1440, 300).width).toBe(24 * 48));
  it('labels every hour where there is room, every second where not', () => {
    expect(hoursOf(timeScale(600, 900, 600))).toEqual([600, 660, 720, 780, 840, 900]);
    expect(hoursOf(timeScale(600, 900, 600), 130)).toEqual([600, 720, 840]);
  });
  it('starts at the first whole hour inside', () => expect(hoursOf(timeScale(610, 700, 600))).toEqual([660]));
});
