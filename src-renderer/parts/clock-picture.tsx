import { useMemo, useRef, type ReactNode } from 'react';
import { ClockAxis, HourLines } from './clock-axis';
import { TimeScaleContext, timeScale, type TimeScale } from './time-scale';
import { useWidth } from './width';
import styles from './clock-picture.module.css';

interface ClockPictureProps {
  readonly from: number;
  readonly to: number;
  readonly height: number;
  /** What the drawing says, for those who do not see it. */
  readonly label: string;
  /** Room for the names of the other axis at the left and right, in pixels. */
  readonly gutter?: number;
  /** Room at the right where it is another. */
  readonly right?: number;
  readonly children: (scale: TimeScale) => ReactNode;
}

/** Narrowest hour in pixels: the axis then names every second or third hour, and the whole day stays in sight. */
const narrowHour = 26;

/** A drawing under a clock of its own, as wide as there is room. */
export function ClockPicture({ from, to, height, label, gutter = 64, right = gutter, children }: ClockPictureProps) {
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box, 900);
  const scale = useMemo(() => timeScale(from, to, Math.max(240, width - gutter - right), narrowHour), [from, to, width, gutter, right]);
  return (
    <div ref={box} className={styles['picture']}>
      <TimeScaleContext value={scale}>
        <div style={{ paddingLeft: gutter, width: scale.width + gutter + right }}>
          <ClockAxis />
          <svg width={scale.width} height={height} role="img" aria-label={label} className={styles['drawing']}>
            <HourLines height={height} />
            {children(scale)}
          </svg>
        </div>
      </TimeScaleContext>
    </div>
  );
}
