import { useEffect, useState } from 'react';
import { useSession } from './session';

const started = performance.now();

/** Minutes from the event's midnight when today is its day, moving with the clock; null on any other day. */
export function useNow(day: string): number | null {
  const info = useSession().info;
  const [passed, setPassed] = useState(0);
  useEffect(() => {
    const timer = window.setInterval(() => setPassed((performance.now() - started) / 60000), 15000);
    return () => window.clearInterval(timer);
  }, []);
  return info !== null && info.today === day ? info.now + passed : null;
}
