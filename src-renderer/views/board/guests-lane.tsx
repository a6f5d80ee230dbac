import { area, curveMonotoneX, line } from 'd3-shape';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Lane } from '../../parts/lane';
import { useTimeScale } from '../../parts/time-scale';
import { useDensity } from './density';
import { peaksOf } from './peaks';
import { rowsOf } from './rows';
import { WaveBlocks } from './wave-blocks';
import styles from './board.module.css';

const step = 3;

/** People here through the day: the middle line, the band of 8 days in 10, its peaks, and the waves to drag. */
export function GuestsLane({ onDrag }: { readonly onDrag: (dragging: boolean) => void }) {
  const t = useSpeaker();
  const { plan } = useDocument();
  const scale = useTimeScale();
  const { curve: curveHeight, curveTop: topRoom, block: blockRow } = useDensity();
  if (plan.guests.waves.length === 0) return null;
  const { presence, waves } = plan.guests;
  const top = Math.max(1, ...presence.p90);
  const y = (people: number): number => topRoom + (curveHeight - topRoom) * (1 - people / top);
  const points = presence.expected.map((expected, i) => ({ at: presence.fromMinute + i, expected, low: presence.p10[i] ?? 0, high: presence.p90[i] ?? 0 })).filter((_, i) => i % step === 0);
  const band = area<(typeof points)[number]>().x((p) => scale.x(p.at)).y0((p) => y(p.low)).y1((p) => y(p.high)).curve(curveMonotoneX)(points);
  const middle = line<(typeof points)[number]>().x((p) => scale.x(p.at)).y((p) => y(p.expected)).curve(curveMonotoneX)(points);
  const peaks = peaksOf(presence.fromMinute, presence.expected);
  const rows = rowsOf(waves.map((w) => ({ start: w.from, end: Math.max(w.to, w.from + 20), id: w.id })), 5);
  const rowCount = Math.max(1, ...rows.map((r) => r.row + 1));
  const hasBand = presence.p90.some((high, i) => high - (presence.p10[i] ?? 0) > 0.5);
  return (
    <Lane
      kind="guests" title={t('lane.guests')} notes={hasBand ? [t('board.peopleHere'), t('board.bandNote')] : [t('board.peopleHere')]}
      height={curveHeight + 5 + rowCount * blockRow}
      summary={t('board.guestsSummary', { most: Math.round(plan.guests.peak.value), at: plan.guests.peakAt, waves: waves.length })}
      over={<WaveBlocks top={curveHeight + 5} rowHeight={blockRow} rows={new Map(rows.map((r) => [r.item.id, r.row]))} onDrag={onDrag} />}
    >
      {band !== null && <path d={band} className={styles['band']} />}
      {middle !== null && <path d={middle} className={styles['middle']} />}
      <line x1={0} x2={scale.width} y1={y(0)} y2={y(0)} className={styles['ground']} />
      {peaks.map((peak) => (
        <text key={peak.at} x={scale.x(peak.at)} y={y(presence.p90[peak.at - presence.fromMinute] ?? peak.value) - 6} textAnchor="middle" className={styles['peak']}>{t.formats.number(Math.round(peak.value))}</text>
      ))}
    </Lane>
  );
}
