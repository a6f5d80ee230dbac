import { useEffect, useRef } from 'react';

/** Runs `act` at most once a frame with the newest value; what came between is skipped. */
export function useFrame<T>(act: (value: T) => void): (value: T) => void {
  const newest = useRef<{ value: T } | null>(null);
  const frame = useRef(0);
  const latestAct = useRef(act);
  useEffect(() => { latestAct.current = act; });
  useEffect(() => () => cancelAnimationFrame(frame.current), []);
  return (value) => {
    newest.current = { value };
    if (frame.current !== 0) return;
    frame.current = requestAnimationFrame(() => {
      frame.current = 0;
      const waiting = newest.current;
      newest.current = null;
      if (waiting !== null) latestAct.current(waiting.value);
    });
  };
}
