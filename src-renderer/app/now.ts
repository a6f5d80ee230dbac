import { useEffect, useState } from 'react';
import { infoArrived, useSession } from './session';
import { hostOffset, minutesSince, wallMinutes } from './wall-clock';

/** How often the clock is looked at, in milliseconds. Drawn anew only when the minute is another one. */
const lookEveryMs = 1000;
/** Until when the day of an event is "now", in minutes from its midnight: 6 in the morning after. */
const dayIsOver = 1800;

const minuteNow = (): number => Math.floor(wallMinutes(new Date()));

/** Whole minutes from the event's midnight to this moment, also on the days before (negative) and after; null until the host has said its day. */
export function useClock(day: string): number | null {
  const { info } = useSession();
  const [minute, setMinute] = useState(minuteNow);
  useEffect(() => {
    const look = (): void => setMinute(minuteNow());
    look();
    const timer = window.setInterval(look, lookEveryMs);
    // A hidden window's timers sleep, and the computer may have slept: look again at once.
    document.addEventListener('visibilitychange', look);
    window.addEventListener('focus', look);
    return () => {
      window.clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
      window.removeEventListener('focus', look);
    };
  }, []);
  return info === null ? null : minutesSince(day, minute + hostOffset(info, infoArrived()));
}

/** The same clock on the event's own day and the night after it; null on any other day. */
export function useNow(day: string): number | null {
  const clock = useClock(day);
  return clock !== null && clock >= 0 && clock < dayIsOver ? clock : null;
}
