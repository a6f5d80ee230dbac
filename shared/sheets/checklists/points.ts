import { highest, lowest } from '../../measure';
import { isRice } from '../../menu';
import type { Plan } from '../../plan';
import { safetyRule } from '../../reference';
import { limitsOf, oilStopC } from '../../safety';
import type { Message } from '../../words';
import { leftovers } from '../labels/leftover';

/** One point of a checklist: one act, with its limit. `confirm` is read out and confirmed, `do` is done and ticked. `rule`: the safety rule its limit comes from. */
export interface CheckPoint {
  readonly kind: 'do' | 'confirm';
  readonly words: Message;
  readonly rule?: string;
}

/** A pause point: its points, when it is read and by whom as planned (null when nobody is). */
export interface Checklist {
  readonly id: 'day-before' | 'oil' | 'doors' | 'leftovers';
  readonly at: number | null;
  readonly who: readonly string[];
  readonly points: readonly CheckPoint[];
}

/** Most points a pause point may have: a longer list is not read to its end. */
export const mostPoints = 7;

const limit = (id: string): number => safetyRule(id).limit ?? 0;
const tell = (words: Message, rule?: string): CheckPoint => ({ kind: 'confirm', words, ...(rule === undefined ? {} : { rule }) });
const act = (words: Message, rule?: string): CheckPoint => ({ kind: 'do', words, ...(rule === undefined ? {} : { rule }) });

function dayBefore({ event, buying, day }: Plan): CheckPoint[] {
  const open = buying.lines.filter((l) => l.buy.amount.gt(0)).length;
  const begun = day.tasks.filter((t) => t.kind === 'step' && t.start < 0 && t.attention > 0);
  return [
    act({ id: 'sheets.check.bought', params: { n: open } }),
    tell({ id: 'sheets.check.fridge', params: { celsius: limitsOf(event).coldTarget } }, 'CH-01'),
    act(begun.length === 0 ? { id: 'sheets.check.nothingBegun' } : { id: 'sheets.check.begun', params: { n: begun.length } }),
    ...(day.gasNeed === null ? [] : [act({ id: 'sheets.check.gas', params: { kg: day.gasNeed.wantedKg.value } })]),
    tell({ id: 'sheets.check.helpers', params: { n: event.people.length, first: lowest(event.people.map((p) => p.from), event.opensAt) } }),
    tell({ id: 'sheets.check.well', params: { hours: limit('HY-03') } }, 'HY-03'),
    act({ id: 'sheets.check.printed' }),
  ];
}

function oil({ event, frying, day }: Plan): CheckPoint[] {
  const fill = frying.oil.map((o) => ({ pan: event.kitchen.pans.find((p) => p.id === o.pan)?.name ?? o.pan, litres: o.fillLitres.value }));
  const watch = day.tasks.find((t) => t.kind === 'watchOil' && t.who.length > 0);
  const person = event.people.find((p) => p.id === watch?.who[0])?.name;
  return [
    act({ id: 'sheets.check.fill', params: { pans: fill } }),
    tell({ id: 'sheets.check.rim', params: { mm: limit('DF-04a'), share: limit('DF-03b') } }, 'DF-04a'),
    act({ id: 'sheets.check.lid' }, 'DF-10'),
    act({ id: 'sheets.check.children', params: { metres: Math.ceil(limit('CD-08')) } }, 'CD-08'),
    tell({ id: 'sheets.check.dry' }),
    tell({ id: 'sheets.check.thermometer', params: { celsius: oilStopC(event) } }, 'DF-02'),
    tell(person === undefined || watch === undefined ? { id: 'sheets.check.nobodyStays' } : { id: 'sheets.check.stays', params: { person, until: watch.end } }, 'DF-12'),
  ];
}

function doors({ event, frying, drinks, menu }: Plan): CheckPoint[] {
  const limits = limitsOf(event);
  const full = lowest(drinks.fills.map((f) => f.at), Number.POSITIVE_INFINITY);
  const first = lowest(frying.batches.map((b) => b.liftAt), Number.POSITIVE_INFINITY);
  return [
    act({ id: 'sheets.check.hands', params: { seconds: limit('HY-01') } }, 'HY-01'),
    tell({ id: 'sheets.check.hot', params: { celsius: limits.hotTarget } }, 'HH-01'),
    tell({ id: 'sheets.check.cold', params: { celsius: limits.coldTarget } }, 'CH-01'),
    act({ id: 'sheets.check.labels', params: { n: menu.dishes.length } }),
    ...(Number.isFinite(full) ? [act({ id: 'sheets.check.flasks', params: { at: full } }, 'SC-03')] : []),
    ...(Number.isFinite(first) ? [tell({ id: 'sheets.check.firstBatch', params: { at: first } })] : []),
    act({ id: 'sheets.check.clock', params: { hours: limit('TC-01') } }, 'TC-01'),
  ];
}

function afterwards(plan: Plan): CheckPoint[] {
  const { event, frying } = plan;
  const rice = leftovers(plan).some((l) => isRice(l.dish));
  const cold = frying.oilEnds.map((e) => Number(e.movableAt));
  return [
    act({ id: 'sheets.check.thrown', params: { hours: limit('TC-01'), since: event.closesAt - limit('TC-01') * 60 } }, 'TC-01'),
    act({ id: 'sheets.check.shallow', params: { hours: limit('TC-01') } }, 'TC-01'),
    ...(rice ? [tell({ id: 'sheets.check.rice', params: { within: limit('PR-05a'), hours: limit('LO-03') } }, 'LO-03')] : []),
    act({ id: 'sheets.check.named' }, 'LO-01'),
    tell({ id: 'sheets.check.fridgeAfter', params: { celsius: limitsOf(event).coldTarget } }, 'CH-01'),
    ...(cold.length === 0 ? [] : [tell({ id: 'sheets.check.oilStands', params: { at: highest(cold) } }, 'DF-14')]),
    tell({ id: 'sheets.check.flames' }),
  ];
}

/** The pause points this event has, filled from its plan: at most seven points each. */
export function checklistsOf(plan: Plan): readonly Checklist[] {
  const one = (id: Checklist['id'], points: readonly CheckPoint[]): Checklist => {
    const task = plan.day.tasks.find((t) => t.id === `check/${id}`);
    return { id, points: points.slice(0, mostPoints), at: task === undefined ? null : task.start, who: task?.who ?? [] };
  };
  const guests = plan.menu.dishes.length > 0 && plan.event.menu.dishes.some((d) => d.served.kind !== 'fixed');
  const fried = plan.frying.batches.length > 0;
  return [
    ...(guests || fried ? [one('day-before', dayBefore(plan))] : []), ...(fried ? [one('oil', oil(plan))] : []),
    ...(guests ? [one('doors', doors(plan)), one('leftovers', afterwards(plan))] : []),
  ];
}
