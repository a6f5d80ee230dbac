import type { Figure } from '../../figure';
import type { OilPause } from '../../frying';
import type { Plan } from '../../plan';
import { say, type Formats } from '../../words';
import type { Names } from '../names';

/** People at the oil of a station at some time within a stretch, in order of their watch, each once. */
export function atTheOil(plan: Plan, station: string, from: number, to: number): readonly string[] {
  const watches = plan.day.tasks.filter((t) => (t.kind === 'watchOil' || t.kind === 'heatOil') && t.station === station && t.start < to && t.end > from);
  return [...new Set(watches.flatMap((t) => t.who))];
}

/** A pause as a sentence: what happens to the heat, by whom, and what either way takes. */
export function pauseWords(plan: Plan, f: Formats, names: Names, pause: OilPause): string {
  const named = (from: number, to: number): string => {
    const who = atTheOil(plan, pause.station, from, to);
    return who.length === 0 ? say(f, 'sheets.fry.nobody') : f.list(who.map((p) => names.person(p)));
  };
  const stretch = { from: Number(pause.from), to: Number(pause.to), minutes: pause.to - pause.from };
  const energy = (kwh: number, gas: Figure | null): string => (gas === null ? f.figure(kwh, 'kWh') : say(f, 'sheets.fry.pauseGas', { gas: f.figure(gas.value, 'kg') }));
  const low = energy(pause.lowKwh.value, pause.lowKg);
  const off = energy(pause.offKwh.value, pause.offKg);
  if (pause.decision === 'low') return say(f, 'sheets.fry.pauseLow', { ...stretch, who: named(pause.from, pause.to), energy: low, off });
  return say(f, 'sheets.fry.pauseOff', {
    ...stretch, light: Number(pause.lightAt), who: named(pause.from - 1, pause.from), lighter: named(pause.lightAt, pause.lightAt + 1), reheat: Math.ceil(pause.reheatMinutes.value - 1e-9),
    energy: off, low,
  });
}
