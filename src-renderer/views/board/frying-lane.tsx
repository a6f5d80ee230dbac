import { memo } from 'react';
import { useLaneDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Lane } from '../../parts/lane';
import { useTimeScale } from '../../parts/time-scale';
import { useDensity } from './density';
import { rowsOf } from './rows';
import styles from './board.module.css';

const barTop = 2;
const narrowestBowl = 17;

/** Each pan: heating up, its batches; under it the bowls of batter they take from. */
export const FryingLane = memo(function FryingLane() {
  const t = useSpeaker();
  const { plan, changes } = useLaneDocument();
  const scale = useTimeScale();
  const { panTop: firstRow, panBar: barHeight, panNumbers: numberRoom, bowl: bowlHeight } = useDensity();
  const panHeight = barTop + barHeight + numberRoom;
  const { batches, bowls, sessions, shortages } = plan.frying;
  const pans = [...new Set([...sessions.map((s) => s.pan), ...batches.map((b) => b.pan)])];
  const oldDrops = new Set(changes === null ? [] : batches.map((b) => `${b.pan} ${b.dropAt}`));
  const ghosts = changes === null ? [] : changes.before.frying.batches.filter((b) => pans.includes(b.pan) && !oldDrops.has(`${b.pan} ${b.dropAt}`));
  const before = new Set(changes?.before.frying.batches.map((b) => `${b.pan} ${b.dropAt}`));
  const placed = rowsOf(bowls.map((b) => ({ start: b.readyAt, end: Math.max(b.useBy, b.readyAt + 60 * (narrowestBowl / scale.span(60))), bowl: b })));
  const bowlRows = Math.max(0, ...placed.map((p) => p.row + 1));
  const bowlTop = firstRow + pans.length * panHeight + 5;
  const height = Math.max(56, bowlTop + bowlRows * bowlHeight);
  const panName = (id: string): string => plan.event.kitchen.pans.find((p) => p.id === id)?.name ?? id;
  const loadOf = (pan: string): number => Math.max(0, ...plan.frying.loads.filter((l) => l.pan === pan).map((l) => Math.round(l.pieces.value)));
  const numbersOnly = bowls.some((b) => scale.span(b.useBy - b.readyAt) < 58);
  if (pans.length === 0) return null;
  return (
    <Lane
      legend={ghosts.length > 0 ? t('board.fryingKeyChanged') : t('board.fryingKey')}
      kind="frying" title={t('lane.frying')} height={height}
      rows={[
        ...pans.map((pan, i) => ({ name: panName(pan), note: t('board.inThePan', { n: loadOf(pan) }), y: firstRow + i * panHeight + barTop + 20 })),
        ...(bowls.length === 0 ? [] : [{ name: t('board.bowls'), y: bowlTop + 11 }]),
      ]}
      summary={t('board.fryingSummary', { batches: batches.length, bowls: bowls.length })}
    >
      <defs>
        <pattern id="hatch-heat" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" x2="0" y1="0" y2="6" className={styles['hatch']} /></pattern>
      </defs>
      {shortages.map((s) => <rect key={`${s.dish} ${s.from}`} x={scale.x(s.from)} width={Math.max(3, scale.span(s.to - s.from))} y={firstRow} height={pans.length * panHeight - numberRoom + 5} className={styles['short']}><title>{t('board.shortFrom', { from: s.from, to: s.to, n: Math.round(s.unmet) })}</title></rect>)}
      {sessions.map((s) => {
        const top = firstRow + pans.indexOf(s.pan) * panHeight + barTop;
        return (
          <g key={`${s.pan} ${s.heatOnAt}`}>
            <rect x={scale.x(s.heatOnAt)} y={top} width={scale.span(s.readyAt - s.heatOnAt)} height={barHeight} fill="url(#hatch-heat)" className={styles['heat']}><title>{t('board.heatTitle', { pan: panName(s.pan), from: s.heatOnAt, to: s.readyAt })}</title></rect>
            <line x1={scale.x(s.readyAt)} x2={scale.x(s.heatOffAt)} y1={top + barHeight} y2={top + barHeight} className={styles['hot']} />
            {scale.x(s.heatOnAt) > 60 && <text x={scale.x(s.heatOnAt) - 6} y={top + 11} textAnchor="end" className={styles['soft']}><tspan>{t('board.heat')}</tspan><tspan x={scale.x(s.heatOnAt) - 6} dy={16}>{t.formats.duration(s.readyAt - s.heatOnAt)}</tspan></text>}
          </g>
        );
      })}
      {ghosts.map((b) => <rect key={`was ${b.number}`} x={scale.x(b.dropAt)} y={firstRow + pans.indexOf(b.pan) * panHeight + barTop} width={Math.max(3, scale.span(b.liftAt - b.dropAt))} height={barHeight} className={styles['was']} />)}
      {batches.map((b) => {
        const fresh = changes !== null && !before.has(`${b.pan} ${b.dropAt}`);
        return (
          <rect key={b.number} x={scale.x(b.dropAt)} y={firstRow + pans.indexOf(b.pan) * panHeight + barTop} width={Math.max(3, scale.span(b.liftAt - b.dropAt))} height={barHeight} className={fresh ? styles['newBatch'] : styles['batch']} data-batch={b.number}>
            <title>{t('board.batchTitle', { number: b.number, pieces: b.pieces, drop: b.dropAt, lift: b.liftAt, eatBy: b.eatBy })}</title>
          </rect>
        );
      })}
      {pans.map((pan, i) => numbersOf(batches.filter((b) => b.pan === pan).map((b) => ({ x: scale.x((b.dropAt + b.liftAt) / 2), text: String(b.number) }))).map((n) => <text key={`${pan} ${n.text}`} x={n.x} y={firstRow + i * panHeight + barTop + barHeight + 15} textAnchor="middle" className={styles['small']}>{n.text}</text>))}
      {placed.map(({ item: { bowl }, row }) => {
        const x = scale.x(bowl.readyAt);
        const width = Math.max(8, scale.span(bowl.useBy - bowl.readyAt));
        const y = bowlTop + row * bowlHeight;
        const label = t('board.bowl', { n: bowl.number });
        return (
          <g key={bowl.number}>
            <title>{t('board.bowlTitle', { n: bowl.number, ready: bowl.readyAt, useBy: bowl.useBy, kg: bowl.batterKg })}</title>
            <path d={`M${x},${y + 6} V${y} H${x + width} V${y + 6}`} className={styles['bracket']} />
            <text x={x + width / 2} y={y + 17} textAnchor="middle" className={styles['small']}>{numbersOnly ? String(bowl.number) : label}</text>
          </g>
        );
      })}
    </Lane>
  );
});

/** Labels that do not run into each other, first come first kept. */
function numbersOf(labels: readonly { readonly x: number; readonly text: string }[]): { readonly x: number; readonly text: string }[] {
  let last = Number.NEGATIVE_INFINITY;
  return labels.filter((label) => {
    if (label.x - last < 26) return false;
    last = label.x;
    return true;
  });
}
