import { scaleLinear } from 'd3-scale';
import { area, curveStepAfter, line } from 'd3-shape';
import type { DispenserPlan, Fill } from '../../../shared/drinks';
import { useSpeaker } from '../../app/speak';
import { ClockPicture } from '../../parts/clock-picture';
import { litresWords } from './litres-words';
import styles from './drinks.module.css';

const height = 170;
interface Minute { readonly at: number; readonly litres: number; readonly celsius: number }

/** How full a flask is (area, litres at the left) and how hot (line, degrees at the right) minute by minute; triangles mark fills. */
export function FlaskPicture({ flask, fills, roomC }: { readonly flask: DispenserPlan; readonly fills: readonly Fill[]; readonly roomC: number }) {
  const t = useSpeaker();
  const f = t.formats;
  const minutes: Minute[] = flask.litres.map((litres, i) => ({ at: flask.fromMinute + i, litres, celsius: flask.celsius[i] ?? roomC }));
  const to = flask.fromMinute + Math.max(1, flask.litres.length);
  const level = scaleLinear().domain([0, flask.capacityLitres]).range([height - 1, 34]);
  const cold = Math.min(0, ...flask.celsius);
  const heat = scaleLinear().domain([cold, 100]).range([height - 1, 6]);
  return (
    <ClockPicture from={flask.fromMinute} to={to} height={height} label={t('view.drinks.picture', { flask: flask.name })}>
      {(scale) => {
        const filled = area<Minute>().x((p) => scale.x(p.at)).y0(height - 1).y1((p) => level(p.litres)).curve(curveStepAfter);
        const hot = line<Minute>().x((p) => scale.x(p.at)).y((p) => heat(p.celsius)).defined((p) => p.litres > 0.05);
        return (
          <>
            {level.ticks(3).map((n) => <text key={n} x={-8} y={level(n)} dy="0.35em" textAnchor="end">{f.figure(n, 'L')}</text>)}
            {[20, 60, 100].map((n) => <text key={n} x={scale.width + 8} y={heat(n)} dy="0.35em" className={styles['heatText']}>{f.degrees(n)}</text>)}
            <path d={filled(minutes) ?? ''} className={styles['level']} />
            <path d={hot(minutes) ?? ''} className={styles['heat']} />
            {fills.map((fill) => (
              <path key={fill.at} d={`M${scale.x(fill.at)} ${height - 1} l-6 -11 h12 z`} className={styles['fill']}>
                <title>{t('view.drinks.fillMark', { at: fill.at, amount: litresWords(t, fill.litres) })}</title>
              </path>
            ))}
          </>
        );
      }}
    </ClockPicture>
  );
}
