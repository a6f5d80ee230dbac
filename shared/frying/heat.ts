import type { Event } from '../event';
import { divide, entered, exponential, figure, logarithm, minus, plus, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { heatUpSeconds, meanCp } from '../kitchen';
import type { SizedLoad } from './load';

const targetTerm = (load: SizedLoad): Term => ({ key: 'target', label: { word: 'frying.term.targetC' }, value: load.inputs.frying.targetC, unit: 'degC', origin: load.inputs.fryTerm.origin ?? { kind: 'definition' } });
const roomTerm = (event: Event): Term => entered('room', { word: 'frying.term.room' }, event.kitchen.roomC, 'degC', 'kitchen.roomC');

/** Minutes from oil at some temperature (`from`, °C) to frying heat, with the loss to the room. */
export function heatUpFrom(event: Event, load: SizedLoad, from: Term): Figure {
  const [a, b, loss, metal] = [settle(event, 'oil.cp.a'), settle(event, 'oil.cp.b'), settle(event, 'loss.UA'), settle(event, `${load.inputs.state.pan.material}.cp`)];
  const i = load.inputs;
  const at = event.kitchen.pans.findIndex((p) => p.id === i.state.pan.id);
  const target = i.frying.targetC;
  const room = event.kitchen.roomC;
  const cold = Number(from.value);
  const net = i.netKw.value;
  const power = net + (loss.value * (target - room)) / 1000;
  const capacity = i.oilKg.value * meanCp(a.value, b.value, cold, target) + i.state.pan.massKg * metal.value;
  const value = heatUpSeconds({ heatCapacity: capacity, power, loss: loss.value / 1000, from: cold, to: target, room }) / 60;
  const perKw = divide('loss', 1000);
  const heat = plus(times('oil', plus('a', times('b', divide(plus('cold', 'target'), 2)))), times('pan', 'metal'));
  return figure(value, 'min', () => ({
    rule: 'fry.heatUp',
    terms: [worked('oil', { word: 'frying.term.oilKg' }, i.oilKg), settledTerm('a', a), settledTerm('b', b), { ...from, key: 'cold' }, settledTerm('metal', metal), settledTerm('loss', loss),
      worked('net', { word: 'frying.term.net' }, i.netKw), entered('pan', { word: 'frying.term.panKg' }, i.state.pan.massKg, 'kg', `kitchen.pans[${at}].massKg`), targetTerm(load)],
    sum: divide(times(divide(heat, perKw), logarithm(divide(plus('net', times(perKw, minus('target', 'cold'))), 'net'))), 60),
  }));
}

/** Temperature of the oil after so many minutes without heat (Newton's law; open pan), °C. */
export function cooledAfter(event: Event, load: SizedLoad, minutes: Term): Figure {
  const loss = settle(event, 'loss.UA');
  const { capacity, frying } = load.inputs;
  const room = event.kitchen.roomC;
  return figure(room + (frying.targetC - room) * Math.exp(((-60 * loss.value) / 1000) * (Number(minutes.value) / capacity.value)), 'degC', () => ({
    rule: 'fry.cooled', terms: [roomTerm(event), targetTerm(load), settledTerm('loss', loss), { ...minutes, key: 'minutes' }, worked('capacity', { word: 'frying.term.capacity' }, capacity)],
    sum: plus('room', times(minus('target', 'room'), exponential(divide(times(-60, 'loss', 'minutes'), times(1000, 'capacity'))))),
  }));
}

/** Minutes without heat until oil at frying heat has come down to a temperature (Newton's law; open pan). Still air cools a lidded or fuller pan slower: the least time. */
export function minutesToCool(event: Event, load: SizedLoad, to: Term): Figure {
  const loss = settle(event, 'loss.UA');
  const { capacity, frying } = load.inputs;
  const room = event.kitchen.roomC;
  const goal = Math.max(Number(to.value), room + 2);
  const goalTerm: Term = goal === Number(to.value) ? { ...to, key: 'to' } : { ...roomTerm(event), key: 'to', value: goal };
  return figure(((1000 * capacity.value) / (60 * loss.value)) * Math.log((frying.targetC - room) / (goal - room)), 'min', () => ({
    rule: 'fry.coolTime', terms: [worked('capacity', { word: 'frying.term.capacity' }, capacity), settledTerm('loss', loss), targetTerm(load), roomTerm(event), goalTerm],
    sum: times(divide(times(1000, 'capacity'), times(60, 'loss')), logarithm(divide(minus('target', 'room'), minus('to', 'room')))),
  }));
}

const rated = (event: Event, load: SizedLoad): Term => {
  const { burner } = load.inputs.state.burner;
  const at = event.kitchen.burners.findIndex((b) => b.id === burner.id);
  return at < 0 ? settledTerm('rated', settle(event, 'burner.assumedW')) : entered('rated', { word: 'kitchen.term.rated' }, burner.ratedW, 'W', `kitchen.burners[${at}].ratedW`);
};

/** Gas or current that keeps the oil at frying heat for some minutes: what the open pan loses to the room, over the share of the burner that reaches it. kWh. */
export function keepingHot(event: Event, load: SizedLoad, minutes: Term): Figure {
  const loss = settle(event, 'loss.UA');
  const { state, frying } = load.inputs;
  const power = rated(event, load);
  const room = event.kitchen.roomC;
  const value = (((loss.value * (frying.targetC - room)) / 1000) * (Number(minutes.value) / 60) * Number(power.value)) / state.burner.usefulW.value;
  return figure(value, 'kWh', () => ({
    rule: 'fry.keepHot', terms: [settledTerm('loss', loss), targetTerm(load), roomTerm(event), { ...minutes, key: 'minutes' }, power, worked('useful', { word: 'frying.term.useful' }, state.burner.usefulW)],
    sum: divide(times('loss', minus('target', 'room'), 'minutes', 'rated'), times(60_000, 'useful')),
  }));
}

/** Gas or current of heating again: the burner at full for so many minutes. kWh. */
export function heatingAgain(event: Event, load: SizedLoad, minutes: Figure): Figure {
  const power = rated(event, load);
  return figure((Number(power.value) * minutes.value) / 60_000, 'kWh', () => ({
    rule: 'fry.heatAgain', terms: [power, worked('minutes', { word: 'frying.term.reheat' }, minutes)], sum: divide(times('rated', 'minutes'), 60_000),
  }));
}

/** Kilograms of bottled gas that give so much heat (kWh); null where the burner runs on current or on gas from the main, which no cylinder has to hold. */
export function gasFor(event: Event, load: SizedLoad, energy: Figure): Figure | null {
  const { burner } = load.inputs.state.burner;
  if (burner.kind !== 'lpg' && burner.kind !== 'outdoorGas' && !(burner.kind === 'gas' && burner.cylinder !== undefined)) return null;
  const heat = settle(event, 'gas.lpgMJkg');
  return figure((energy.value * 3.6) / heat.value, 'kg', () => ({
    rule: 'fry.pauseGas', terms: [worked('energy', { word: 'frying.term.pauseEnergy' }, energy), settledTerm('heat', heat)], sum: divide(times('energy', 3.6), 'heat'),
  }));
}
