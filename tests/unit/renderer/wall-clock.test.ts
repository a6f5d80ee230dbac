import { describe, expect, it } from 'vitest';
import { hostOffset, minutesSince, wallMinutes } from '../../../src-renderer/app/wall-clock';

describe('the clock', () => {
  const noon = new Date(2026, 11, 12, 12, 0, 0);

  it('counts minutes from the midnight of a day, also before and after it', () => {
    const at = wallMinutes(noon);
    expect(minutesSince('2026-12-12', at)).toBe(720);
    expect(minutesSince('2026-12-13', at)).toBe(-720);
    expect(minutesSince('2026-12-11', at)).toBe(2160);
    expect(minutesSince('2026-12-12', wallMinutes(new Date(2026, 11, 12, 12, 0, 30)))).toBe(720.5);
  });

  it('follows this computer when the host agrees, also when the minute turned on the way', () => {
    expect(hostOffset({ today: '2026-12-12', now: 720 }, noon)).toBe(0);
    expect(hostOffset({ today: '2026-12-12', now: 719 }, noon)).toBe(0);
  });

  it('follows a host in another zone or day', () => {
    expect(hostOffset({ today: '2026-12-12', now: 780 }, noon)).toBe(60);
    expect(hostOffset({ today: '2026-12-13', now: 0 }, noon)).toBe(720);
  });
});
