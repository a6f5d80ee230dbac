import { useMemo, useRef, useState, type CSSProperties } from 'react';
import { useDocument } from '../../app/document';
import { useNow } from '../../app/now';
import { ClockAxis } from '../../parts/clock-axis';
import { ClockLines } from '../../parts/clock-lines';
import { TimeScaleContext, timeScale } from '../../parts/time-scale';
import { useWidth } from '../../parts/width';
import { GuestsLane } from '../board/guests-lane';
import { useDaySpan } from '../board/span';
import styles from './guests.module.css';

const head = 172;
const right = 24;
const headWidth: CSSProperties = { ['--lane-head' as string]: `${head}px` };

/** People here through the day, with the waves to drag: the board's first lane by itself. */
export function PresencePicture() {
  const { plan, event } = useDocument();
  const [dragging, setDragging] = useState(false);
  const frame = useRef<HTMLDivElement>(null);
  const lanes = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 900);
  const span = useDaySpan(plan, dragging);
  const now = useNow(event.day);
  const scale = useMemo(() => timeScale(span.from, span.to, width - head - right), [span, width]);
  return (
    <div ref={frame} className={styles['picture']}>
      <div ref={lanes} className={styles['lanes']} style={{ ...headWidth, width: scale.width + head + right }}>
        <TimeScaleContext value={scale}>
          <div className={styles['axis']}><ClockAxis /></div>
          <ClockLines lanes={lanes} now={now} left={head} />
          <GuestsLane onDrag={setDragging} />
        </TimeScaleContext>
      </div>
    </div>
  );
}
