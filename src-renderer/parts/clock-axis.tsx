import { useSpeaker } from '../app/speak';
import { hoursOf, useTimeScale } from './time-scale';
import styles from './clock-axis.module.css';

/** The clock over the lanes. */
export function ClockAxis() {
  const t = useSpeaker();
  const scale = useTimeScale();
  const labelWidth = t.formats.clock(60).length * 8 + 12;
  return (
    <div className={styles['axis']} style={{ width: scale.width }} aria-hidden="true">
      {hoursOf(scale, labelWidth).map((at) => <span key={at} className={styles['hour']} style={{ left: scale.x(at) }}>{t.formats.clock(at)}</span>)}
    </div>
  );
}

/** Hairlines at the hours (and quarters where there is room) behind a lane's drawing. */
export function HourLines({ height }: { readonly height: number }) {
  const scale = useTimeScale();
  const quarters: number[] = [];
  if (scale.span(60) >= 96) for (let at = Math.ceil(scale.from / 15) * 15; at <= scale.to; at += 15) if (at % 60 !== 0) quarters.push(at);
  return (
    <g aria-hidden="true">
      {quarters.map((at) => <line key={at} x1={scale.x(at)} x2={scale.x(at)} y1={0} y2={height} className={styles['quarter']} />)}
      {hoursOf(scale).map((at) => <line key={at} x1={scale.x(at)} x2={scale.x(at)} y1={0} y2={height} className={styles['line']} />)}
    </g>
  );
}
