import { useEffect, useRef, type RefObject } from 'react';
import { useSpeaker } from '../app/speak';
import { useTimeScale } from './time-scale';
import styles from './clock-lines.module.css';

/** The dotted line under the pointer and, on the day itself, the line of now; both run through every lane. `lanes` is what the pointer moves over. */
export function ClockLines({ lanes, now, left }: { readonly lanes: RefObject<HTMLElement | null>; readonly now: number | null; readonly left: number }) {
  const t = useSpeaker();
  const scale = useTimeScale();
  const line = useRef<HTMLDivElement>(null);
  const label = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    const area = lanes.current;
    if (area === null) return undefined;
    const move = (e: PointerEvent): void => {
      if (line.current === null || label.current === null) return;
      const x = e.clientX - area.getBoundingClientRect().left - left;
      const inside = x >= 0 && x <= scale.width;
      line.current.hidden = !inside;
      if (!inside) return;
      line.current.style.transform = `translateX(${x + left}px)`;
      label.current.textContent = t.formats.clock(Math.round(scale.x.invert(x)));
    };
    const leave = (): void => { if (line.current !== null) line.current.hidden = true; };
    area.addEventListener('pointermove', move);
    area.addEventListener('pointerleave', leave);
    return () => {
      area.removeEventListener('pointermove', move);
      area.removeEventListener('pointerleave', leave);
    };
  }, [lanes, scale, left, t]);
  return (
    <>
      <div ref={line} hidden className={styles['line']} aria-hidden="true"><span ref={label} className={styles['label']} /></div>
      {now !== null && now >= scale.from && now <= scale.to && (
        <div className={`${styles['line']} ${styles['now']}`} style={{ transform: `translateX(${scale.x(now) + left}px)` }} data-now-line>
          <span className={styles['label']}>{t.formats.clock(Math.floor(now))}</span>
        </div>
      )}
    </>
  );
}
