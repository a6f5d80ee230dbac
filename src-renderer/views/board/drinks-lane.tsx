import { area } from 'd3-shape';
import { memo } from 'react';
import type { Fill } from '../../../shared/drinks';
import { useLaneDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Lane } from '../../parts/lane';
import { useTimeScale } from '../../parts/time-scale';
import { useDensity } from './density';
import styles from './board.module.css';

const step = 2;

/** What is in each flask or urn, when it is filled, and how hot it still is. */
export const DrinksLane = memo(function DrinksLane() {
  const t = useSpeaker();
  const { plan } = useLaneDocument();
  const scale = useTimeScale();
  const { drinkTop: top, drink: rowHeight, legends } = useDensity();
  const levelHeight = rowHeight - 12;
  const dispensers = plan.drinks.dispensers.filter((d) => d.litres.some((l) => l > 0));
  if (dispensers.length === 0) return null;
  const drinkName = (id: string): string => plan.menu.dishes.find((d) => d.id === id)?.name ?? id;
  const recipeHot = (id: string): boolean => plan.menu.dishes.find((d) => d.id === id)?.recipe.brewing?.hot === true;
  return (
    <Lane
      kind="drinks" title={t('lane.drinks')} height={Math.max(48, top + dispensers.length * rowHeight)} rows={dispensers.map((d, i) => ({ name: d.name, y: top + (i + 1) * rowHeight - 12 }))}
      {...(legends ? { legend: t('board.drinksKey') } : {})}
      summary={t('board.drinksSummary', { rounds: plan.drinks.rounds.length, fills: plan.drinks.fills.length })}
    >
      {dispensers.map((d, i) => {
        const ground = top + (i + 1) * rowHeight - 2;
        const y = (litres: number): number => ground - levelHeight * Math.min(1, litres / d.capacityLitres);
        const points = d.litres.map((litres, m) => ({ at: d.fromMinute + m, litres })).filter((p, m) => p.at >= scale.from && p.at <= scale.to && (m % step === 0 || Math.abs(p.litres - (d.litres[m - 1] ?? 0)) > 0.3));
        const level = area<(typeof points)[number]>().x((p) => scale.x(p.at)).y0(ground).y1((p) => y(p.litres))(points);
        const fills = together(plan.drinks.fills.filter((f) => f.dispenser === d.id));
        const hot = recipeHot(d.drink);
        const last = d.litres.findLastIndex((l) => l > 0.05);
        const lastAt = d.fromMinute + last;
        const fillAts = fills.map((f) => f.at);
        return (
          <g key={d.id}>
            {level !== null && <path d={level} className={styles['level']}><title>{t('board.dispenserTitle', { name: d.name, drink: drinkName(d.drink), litres: d.capacityLitres })}</title></path>}
            <line x1={0} x2={scale.width} y1={ground} y2={ground} className={styles['drinkGround']} />
            {fills.map((f, n) => {
              const room = scale.x(Math.min(scale.to, ...fillAts.filter((at) => at > f.at))) - scale.x(f.at);
              const label = t('board.fill', { litres: f.litres });
              const celsius = d.celsius[Math.max(0, Math.round(f.at) - d.fromMinute + 1)];
              const warm = hot && celsius !== undefined ? t.formats.degrees(Math.round(celsius)) : '';
              const wide = (words: string): boolean => room > 16 + words.length * 8;
              const text = warm !== '' && wide(`${label}, ${warm}`) ? `${label}, ${warm}` : label;
              return (
                <g key={`${f.round} ${n} ${f.at}`}>
                  <path d={`M${scale.x(f.at) - 5},${y(f.litres) - 10} h10 l-5,8 z`} className={styles['fill']}><title>{t('board.fillTitle', { at: f.at, litres: f.litres, round: f.round })}</title></path>
                  {wide(text) && <text x={scale.x(f.at) + 9} y={y(f.litres) - 3} className={styles['small']}>{text}</text>}
                </g>
              );
            })}
            {hot && last > 0 && lastAt < scale.to - 20 && scale.x(lastAt) - scale.x(Math.max(0, ...fillAts)) > 190 && <text x={scale.x(lastAt) - 4} y={y(d.litres[last] ?? 0) - 6} textAnchor="end" className={styles['small']}>{t.formats.degrees(Math.round(d.celsius[last] ?? 0))}</text>}
          </g>
        );
      })}
    </Lane>
  );
});

/** Fills of the same minute as one: two rounds poured one after the other are one mark. */
function together(fills: readonly Fill[]): Fill[] {
  const found: Fill[] = [];
  for (const fill of fills) {
    const last = found.at(-1);
    if (last !== undefined && Math.abs(last.at - fill.at) < 1) found[found.length - 1] = { ...last, litres: last.litres + fill.litres };
    else found.push(fill);
  }
  return found;
}
