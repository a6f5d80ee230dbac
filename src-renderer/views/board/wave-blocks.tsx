import { useRef, type PointerEvent } from 'react';
import type { WavePlan } from '../../../shared/guests';
import { useDocument } from '../../app/document';
import { changeWave, moveWave } from '../../../shared/edit';
import { useSpeaker } from '../../app/speak';
import { documentStore } from '../../app/store';
import { useFrame } from '../../parts/frame';
import { useTimeScale } from '../../parts/time-scale';
import { fitted } from './rows';
import styles from './wave-blocks.module.css';

interface WaveBlocksProps {
  readonly top: number;
  readonly rowHeight: number;
  /** Row of each wave by id. */
  readonly rows: ReadonlyMap<string, number>;
  readonly onDrag: (dragging: boolean) => void;
}

type Part = 'whole' | 'from' | 'to';
const snap = (minutes: number): number => Math.round(minutes / 5) * 5;
let stroke = 0;

/** Where a wave would stand after moving a part of it by some minutes. */
function moved(wave: { readonly from: number; readonly to: number }, part: Part, by: number): { readonly from: number; readonly to: number } {
  if (part === 'whole') { const from = snap(wave.from + by); return { from, to: from + (wave.to - wave.from) }; }
  return part === 'from' ? { from: Math.min(snap(wave.from + by), wave.to), to: wave.to } : { from: wave.from, to: Math.max(snap(wave.to + by), wave.from) };
}

/** The waves as blocks on the clock: drag one to move it, drag an end to make its arrivals longer or shorter; the arrow keys do the same. */
export function WaveBlocks({ top, rowHeight, rows, onDrag }: WaveBlocksProps) {
  const { plan, changes } = useDocument();
  const scale = useTimeScale();
  const before = new Map(changes?.before.guests.waves.map((w) => [w.id, w]));
  return (
    <>
      {plan.guests.waves.map((wave, at) => {
        const y = top + (rows.get(wave.id) ?? 0) * rowHeight;
        const was = before.get(wave.id);
        const next = plan.guests.waves.filter((w) => w.id !== wave.id && (rows.get(w.id) ?? 0) === (rows.get(wave.id) ?? 0) && w.from > wave.from).map((w) => w.from);
        const room = scale.x(Math.min(scale.to, ...next)) - scale.x(wave.from) - 6;
        return (
          <div key={wave.id}>
            {was !== undefined && (was.from !== wave.from || was.to !== wave.to) && <span className={styles['ghost']} style={{ left: scale.x(was.from), width: Math.max(12, scale.span(was.to - was.from)), top: y }} aria-hidden="true" />}
            <WaveBlock wave={wave} y={y} room={room} number={at} onDrag={onDrag} />
          </div>
        );
      })}
    </>
  );
}

function WaveBlock({ wave, y, room, number, onDrag }: { readonly wave: WavePlan; readonly y: number; readonly room: number; readonly number: number; readonly onDrag: (dragging: boolean) => void }) {
  const t = useSpeaker();
  const { edit } = useDocument();
  const scale = useTimeScale();
  const drag = useRef<{ readonly part: Part; readonly x: number; readonly start: { from: number; to: number }; readonly merge: string } | null>(null);
  const apply = (to: { readonly from: number; readonly to: number }, merge: string): void => {
    const base = documentStore.base(merge);
    const start = base.guests.waves.find((w) => w.id === wave.id);
    if (start === undefined) return;
    const kept = to.to - to.from === start.to - start.from;
    edit(kept ? moveWave(base, wave.id, to.from - start.from) : changeWave(base, wave.id, to), merge);
  };
  const onFrame = useFrame((next: { to: { from: number; to: number }; merge: string }) => apply(next.to, next.merge));
  const grab = (part: Part) => (e: PointerEvent<HTMLElement>): void => {
    if (e.button !== 0) return;
    e.stopPropagation();
    e.currentTarget.setPointerCapture(e.pointerId);
    stroke += 1;
    drag.current = { part, x: e.clientX, start: { from: wave.from, to: wave.to }, merge: `wave-${wave.id}-${stroke}` };
    onDrag(true);
  };
  const pull = (e: PointerEvent<HTMLElement>): void => {
    const held = drag.current;
    if (held === null) return;
    const minutes = ((e.clientX - held.x) / scale.width) * (scale.to - scale.from);
    onFrame({ to: moved(held.start, held.part, minutes), merge: held.merge });
  };
  const drop = (): void => {
    if (drag.current === null) return;
    drag.current = null;
    onDrag(false);
  };
  const left = scale.x(wave.from);
  const width = Math.max(34, scale.span(wave.to - wave.from));
  const people = t('board.adultsAndChildren', { adults: wave.adults, children: wave.children });
  const name = t('board.waveBlock', { name: wave.name, people, from: wave.from, to: wave.to });
  return (
    <div className={styles['block']} style={{ left, width, top: y }} data-wave={wave.id}>
      <button
        type="button" className={styles['body']} aria-label={name} title={name} aria-describedby="wave-keys" aria-roledescription={t('board.waveBlockKind')}
        onPointerDown={grab('whole')} onPointerMove={pull} onPointerUp={drop} onPointerCancel={drop} onBlur={documentStore.closeGroup}
        onKeyDown={(e) => {
          const by = e.key === 'ArrowLeft' ? -5 : e.key === 'ArrowRight' ? 5 : 0;
          if (by === 0) return;
          e.preventDefault();
          apply(moved(wave, e.shiftKey ? 'to' : e.ctrlKey ? 'from' : 'whole', by), `wave-keys-${wave.id}-${number}`);
        }}
      >
        {t.formats.number(wave.adults + wave.children)}
      </button>
      <span className={`${styles['edge']} ${styles['edgeFrom']}`} aria-hidden="true" data-edge="from" onPointerDown={grab('from')} onPointerMove={pull} onPointerUp={drop} onPointerCancel={drop} />
      <span className={`${styles['edge']} ${styles['edgeTo']}`} aria-hidden="true" data-edge="to" onPointerDown={grab('to')} onPointerMove={pull} onPointerUp={drop} onPointerCancel={drop} />
      <span className={styles['name']} style={{ maxWidth: Math.max(room, width) }} aria-hidden="true">{fitted(wave.name, Math.max(room, width))}</span>
    </div>
  );
}
