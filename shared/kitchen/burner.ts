import type { BoilTest, Burner, Event } from '../event';
import { divide, entered, figure, minus, plus, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { boilingPoint } from './boiling';
import type { BurnerState } from './types';

const shareRow: Readonly<Record<Burner['kind'], string>> = {
  gas: 'eta.gas', lpg: 'eta.lpg', electric: 'eta.coil', induction: 'eta.induction', outdoorGas: 'eta.outdoor',
};

/**
 * A burner and what reaches the pan: rating times a share entered, what a boil test gave, or rating times the usual share of its kind; out of
 * doors less what the wind takes. Rules `burner.useful`, `burner.tested`, `burner.windy`. `at` = place in the event's list.
 */
export function burnerState(event: Event, burner: Burner, at: number): BurnerState {
  const calm = burner.usefulShare === undefined && burner.boilTest !== undefined ? testedPower(event, burner.boilTest, at) : ratedPower(event, burner, at);
  return { burner, usefulW: inWind(event, burner, calm) };
}

function ratedPower(event: Event, burner: Burner, at: number): Figure {
  const usual = settle(event, shareRow[burner.kind]);
  const share: Term = burner.usefulShare === undefined
    ? settledTerm('share', usual)
    : entered('share', { word: 'kitchen.term.share' }, burner.usefulShare, '', `kitchen.burners[${at}].usefulShare`);
  const rated = entered('rated', { word: 'kitchen.term.rated' }, burner.ratedW, 'W', `kitchen.burners[${at}].ratedW`);
  return figure(burner.ratedW * (burner.usefulShare ?? usual.value), 'W', () => ({ rule: 'burner.useful', terms: [rated, share], sum: times('rated', 'share') }));
}

/** Useful watts by a boil test: heat taken up by water and pot, over the time. The lid was on; what boiled away before the boil is left out. */
function testedPower(event: Event, test: BoilTest, at: number): Figure {
  const [water, metal, boil] = [settle(event, 'water.cRho'), settle(event, 'pot.cp'), boilingPoint(event)];
  const path = `kitchen.burners[${at}].boilTest`;
  const watts = (1000 * (test.litres * water.value + test.potKg * metal.value) * (boil.value - test.fromC)) / (test.minutes * 60);
  return figure(watts, 'W', () => ({
    rule: 'burner.tested',
    terms: [entered('litres', { word: 'kitchen.term.testLitres' }, test.litres, 'L', `${path}.litres`), settledTerm('c', water), entered('pot', { word: 'kitchen.term.testPot' }, test.potKg, 'kg', `${path}.potKg`), settledTerm('metal', metal),
      worked('boil', { word: 'kitchen.term.boilingPoint' }, boil), entered('from', { word: 'kitchen.term.testFrom' }, test.fromC, 'degC', `${path}.fromC`), entered('minutes', { word: 'kitchen.term.testMinutes' }, test.minutes, 'min', `${path}.minutes`)],
    sum: divide(times(1000, plus(times('litres', 'c'), times('pot', 'metal')), minus('boil', 'from')), times(60, 'minutes')),
  }));
}

function inWind(event: Event, burner: Burner, calm: Figure): Figure {
  if (burner.place !== 'outdoor' || burner.wind === undefined || burner.wind === 'calm') return calm;
  const lost = settle(event, burner.wind === 'breeze' ? 'wind.breeze' : 'wind.wind');
  return figure(calm.value * (1 - lost.value), 'W', () => ({ rule: 'burner.windy', terms: [worked('calm', { word: 'kitchen.term.calmPower' }, calm), settledTerm('lost', lost)], sum: times('calm', minus(1, 'lost')) }));
}

/** Stand-in for a burner a pan names and nobody entered: a middling gas burner, marked as assumed. */
export function assumedBurner(event: Event, id: string): BurnerState {
  const rated = settle(event, 'burner.assumedW');
  const share = settle(event, 'eta.gas');
  return {
    burner: { id, name: id, kind: 'gas', ratedW: rated.value, place: 'indoor', portable: false },
    usefulW: figure(rated.value * share.value, 'W', () => ({ rule: 'burner.useful', terms: [settledTerm('rated', rated), settledTerm('share', share)], sum: times('rated', 'share') })),
  };
}
