import type { Entry } from '../formats';

/** Labels of the block First batch in the view Frying. */
export const viewFirstBatchWords = {
  'view.trial': 'First batch',
  'view.trial.lead': 'Fry one batch, on the day or on a trial day before you shop, with as many pieces as you mean to put in at once, the pan alone on its burner and the flame full until the oil is back. Write down what you see; leave empty what you do not know. Without a thermometer let a drop of batter tell: it rises at once when the oil is hot enough.',
  'view.trial.of': (p: { dish: string }) => `First batch of ${p.dish}`,
  'view.trial.add': 'Write down a batch', 'view.trial.addMore': 'Write down another batch', 'view.trial.remove': 'Take out',
  'view.trial.pieces': 'Pieces', 'view.trial.beforeG': 'Batter, all pieces', 'view.trial.afterG': 'Fried and drained', 'view.trial.minutes': 'Put in to lift out',
  'view.trial.startC': 'Oil before', 'view.trial.lowestC': 'Oil at its lowest', 'view.trial.backMinutes': 'Until the oil is back', 'view.trial.topUpMl': 'Oil to the mark again',
  'view.trial.told': 'What this batch tells', 'view.trial.value': 'What it tells', 'view.trial.before': 'Planned with', 'view.trial.now': 'This batch', 'view.trial.rough': 'less sure', 'view.trial.sure': 'How sure',
  'view.trial.told.pieceBatterG': 'Batter of one piece', 'view.trial.told.fryMinutes': 'Time in the oil', 'view.trial.told.waterLostKgPerKg': 'Water boiled off', 'view.trial.told.oilUptakeKgPerKg': 'Oil taken up', 'view.trial.told.usefulShare': 'Heat that reaches the pan',
  'view.trial.would': 'If you plan with these figures:', 'view.trial.wouldNot': 'Planning with these figures moves nothing you would notice.',
  'view.trial.take': 'Plan with these figures', 'view.trial.isTaken': 'The plan uses these figures.',
} as const satisfies Record<string, Entry>;
