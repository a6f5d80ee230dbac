import { useDeferredValue, useMemo, useRef, useState, type CSSProperties } from 'react';
import { LaneDocument, useDocument, useOpenDocument } from '../../app/document';
import { useClock, useNow } from '../../app/now';
import { useSpeaker } from '../../app/speak';
import { useWorking } from '../../app/working';
import { ClockAxis } from '../../parts/clock-axis';
import { ClockLines } from '../../parts/clock-lines';
import { TimeScaleContext, timeScale } from '../../parts/time-scale';
import { useHeight, useWidth } from '../../parts/width';
import { WorkingPanel } from '../../parts/working-panel';
import { DensityContext, densityFor } from './density';
import { DrinksLane } from './drinks-lane';
import { FryingLane } from './frying-lane';
import { GuestsLane } from './guests-lane';
import { Headline } from './headline';
import { Look } from './look';
import { NextJobs } from './next-jobs';
import { useDaySpan } from './span';
import { HandsLane, MealLane } from './task-lanes';
import { WaveFields } from './wave-fields';
import styles from './board.module.css';

const laneHead = 172;
const rightRoom = 24;
const headWidth: CSSProperties = { ['--lane-head' as string]: `${laneHead}px` };

/** The clock board: headcount on top, five lanes on one clock, what needs a look beside it. */
export function Board() {
  const t = useSpeaker();
  const { plan, event } = useDocument();
  const late = useDeferredValue(useOpenDocument());
  const [dragging, setDragging] = useState(false);
  const now = useNow(event.day);
  const clock = useClock(event.day);
  const scroll = useRef<HTMLDivElement>(null);
  const lanes = useRef<HTMLDivElement>(null);
  const width = useWidth(scroll, 900);
  const density = densityFor(useHeight(scroll, 720));
  const span = useDaySpan(plan, dragging);
  const scale = useMemo(() => timeScale(span.from, span.to, width - laneHead - rightRoom), [span, width]);
  const covered = useWorking() !== null;
  return (
    <div className={styles['board']}>
      <Headline />
      <LaneDocument value={late}>
      <div className={styles['body']}>
        <div className={styles['scroll']} ref={scroll}>
          <div className={styles['lanes']} ref={lanes} style={{ ...headWidth, width: scale.width + laneHead + rightRoom }}>
            <DensityContext value={density}><TimeScaleContext value={scale}>
              <div className={styles['axisRow']}><ClockAxis /></div>
              <ClockLines lanes={lanes} now={now} left={laneHead} />
              <p id="wave-keys" hidden>{t('board.waveKeys')}</p>
              <GuestsLane onDrag={setDragging} />
              <FryingLane />
              <DrinksLane />
              <MealLane />
              <HandsLane />
            </TimeScaleContext></DensityContext>
          </div>
          <WaveFields />
        </div>
        <WorkingPanel />
        {!covered && (
          <aside className={styles['aside']} aria-label={t('board.beside')}>
            <Look />
            <NextJobs now={clock} />
          </aside>
        )}
      </div>
      </LaneDocument>
    </div>
  );
}
