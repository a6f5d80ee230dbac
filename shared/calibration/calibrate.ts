import { burnerSchema, fryingSchema, type Event, type Trial } from '../event';
import type { Figure } from '../figure';
import { waterLostTold } from '../frying';
import type { Message } from '../words';
import { askedOf } from './heat';
import { netByFall, netByTime, usefulPower, usefulShare } from './power';
import { trialSubject, type TrialSubject } from './subject';
import { toldOrder, type Calibration, type Setting, type Told } from './types';
import { fryTime, pieceMass, uptake, waterLost } from './weights';

/** Decimals worth writing: a tenth of a gram over a batch, a second, a part in a thousand. */
const decimals: Readonly<Record<Told, number>> = { pieceBatterG: 1, fryMinutes: 2, oilUptakeKgPerKg: 3, waterLostKgPerKg: 3, usefulShare: 3 };
/** Power by the fall and by the time that differ by more than this factor do not describe one batch (common practice, no source). */
const apart = 1.5;

/** Within what the event may hold; water lost is at most the water there was. */
function legal(told: Told, value: number, s: TrialSubject): boolean {
  if (told === 'usefulShare') return burnerSchema.shape.usefulShare.safeParse(value).success;
  return fryingSchema.shape[told].safeParse(value).success && (told !== 'waterLostKgPerKg' || value <= s.frying.waterFraction);
}

function notFitting(told: Told, value: number, s: TrialSubject): Message {
  if (told === 'usefulShare') return { id: 'trial.misfit.usefulShare', params: { burner: s.state.burner.burner.name, share: value } };
  if (told === 'waterLostKgPerKg') return { id: 'trial.misfit.waterLostKgPerKg', params: { before: s.trial.beforeG ?? 0, after: s.trial.afterG ?? 0, more: value < 0 } };
  if (told === 'pieceBatterG') return { id: 'trial.misfit.pieceBatterG', params: { grams: value } };
  if (told === 'oilUptakeKgPerKg') return { id: 'trial.misfit.oilUptakeKgPerKg', params: { share: value } };
  return { id: 'trial.misfit.fryMinutes', params: { minutes: value } };
}

/** The oil was back before the pieces were lifted: they still took heat, and how much of it by then only the model says. */
const early = (s: TrialSubject): boolean => s.trial.backMinutes !== undefined && s.trial.backMinutes < (s.trial.minutes ?? s.frying.fryMinutes);

/** What is missing before the burner can be told, or why it cannot. */
function powerNotes(s: TrialSubject, byTime: Figure | null, byFall: Figure | null): readonly Message[] {
  const { startC, lowestC, backMinutes } = s.trial;
  const notes: Message[] = [];
  if (byTime === null && byFall === null) {
    if (startC !== undefined && lowestC !== undefined) notes.push(lowestC >= startC ? { id: 'trial.misfit.noFall', params: { start: startC, lowest: lowestC } } : { id: 'trial.misfit.fall', params: { start: startC, lowest: lowestC } });
    else notes.push({ id: 'trial.needs.power' });
  }
  if (byTime !== null && byFall !== null && Math.max(byTime.value / byFall.value, byFall.value / byTime.value) > apart) notes.push({ id: 'trial.misfit.apart', params: { fall: (startC ?? 0) - (lowestC ?? 0), minutes: backMinutes ?? 0 } });
  if (byTime !== null && startC === undefined) notes.push({ id: 'trial.rough.drop' });
  if (early(s)) notes.push({ id: 'trial.rough.early' });
  if (byTime === null && byFall !== null) notes.push({ id: 'trial.rough.fall' });
  return notes;
}

/**
 * What one real batch tells of the pieces, the frying and the burner, each with its working, and what does not fit. Only what lies within legal
 * ranges is offered; nothing is changed here. Pure; never throws for an event that `parseEvent` accepted.
 */
export function calibrate(event: Event, trial: Trial): Calibration {
  const s = trialSubject(event, trial);
  if (s === null) return { settings: [], usefulW: null, notes: [{ id: 'trial.gone' }] };
  const [piece, minutes, oil] = [pieceMass(s), fryTime(s), uptake(s)];
  const fits = (told: Told, f: Figure | null): Figure | null => (f !== null && legal(told, f.value, s) ? f : null);
  const lost = waterLost(s, fits('oilUptakeKgPerKg', oil));
  const asked = askedOf(s, fits('pieceBatterG', piece), fits('fryMinutes', minutes), fits('waterLostKgPerKg', lost));
  const [byTime, byFall] = [netByTime(s, asked), netByFall(s, asked)];
  const net = byTime ?? byFall;
  const usefulW = net === null ? null : usefulPower(s, net);
  const share = usefulW === null ? null : usefulShare(s, usefulW);
  const burner = event.kitchen.burners[s.burnerAt];
  const had: Readonly<Record<Told, { readonly of: string; readonly before: number; readonly figure: Figure | null }>> = {
    pieceBatterG: { of: s.recipe, before: s.frying.pieceBatterG, figure: piece }, fryMinutes: { of: s.recipe, before: s.frying.fryMinutes, figure: minutes },
    oilUptakeKgPerKg: { of: s.recipe, before: s.frying.oilUptakeKgPerKg, figure: oil }, waterLostKgPerKg: { of: s.recipe, before: s.frying.waterLostKgPerKg, figure: lost === null ? null : waterLostTold(event, s.frying, s.ofRecipe, lost) },
    usefulShare: { of: burner?.id ?? '', before: shareBefore(s), figure: share },
  };
  const told = toldOrder.flatMap((id) => { const { figure, ...rest } = had[id]; return figure === null ? [] : [{ told: id, figure, ...rest }]; });
  return {
    usefulW,
    settings: told.filter((t) => legal(t.told, t.figure.value, s)).map((t): Setting => ({ ...t, after: Number(t.figure.value.toFixed(decimals[t.told])), rough: t.told === 'usefulShare' && (byTime === null || trial.startC === undefined || early(s)) })),
    notes: [...told.filter((t) => !legal(t.told, t.figure.value, s)).map((t) => notFitting(t.told, t.figure.value, s)), ...powerNotes(s, byTime, byFall), ...weightNotes(trial)],
  };
}

/** Share in force in still air: useful power over rating, the wind's part given back. */
function shareBefore(s: TrialSubject): number {
  const { burner, usefulW } = s.state.burner;
  const useful = usefulShare(s, usefulW)?.value ?? 0;
  return burner.usefulShare ?? useful;
}

const weightNotes = (trial: Trial): readonly Message[] => [
  ...(trial.beforeG === undefined ? [{ id: 'trial.needs.before' } as const] : []),
  ...(trial.beforeG !== undefined && trial.afterG === undefined ? [{ id: 'trial.needs.after' } as const] : []),
  ...(trial.afterG !== undefined && trial.topUpMl === undefined ? [{ id: 'trial.assumes.uptake' } as const] : []),
];
