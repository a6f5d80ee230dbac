import type { Burner, Event } from '../event';
import { entered, figure, times, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import type { BurnerState } from './types';

const shareRow: Readonly<Record<Burner['kind'], string>> = {
  gas: 'eta.gas', lpg: 'eta.lpg', electric: 'eta.coil', induction: 'eta.induction', outdoorGas: 'eta.outdoor',
};

/** A burner and what reaches the pan: rating times the measured share, or the usual share of its kind. Rule `burner.useful`. `at` = place in the event's list. */
export function burnerState(event: Event, burner: Burner, at: number): BurnerState {
  const usual = settle(event, shareRow[burner.kind]);
  const share: Term = burner.usefulShare === undefined
    ? settledTerm('share', usual)
    : entered('share', { word: 'kitchen.term.share' }, burner.usefulShare, '', `kitchen.burners[${at}].usefulShare`);
  const rated = entered('rated', { word: 'kitchen.term.rated' }, burner.ratedW, 'W', `kitchen.burners[${at}].ratedW`);
  return {
    burner,
    usefulW: figure(burner.ratedW * (burner.usefulShare ?? usual.value), 'W', () => ({ rule: 'burner.useful', terms: [rated, share], sum: times('rated', 'share') })),
  };
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
