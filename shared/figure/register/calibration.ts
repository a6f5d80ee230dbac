/** Rules of the room `calibration`; the sentence of each is `rule.<id>` in the words. */
export const calibrationRules = [
  'trial.piece', 'trial.fry', 'trial.uptake', 'trial.waterLost', 'fry.waterLostTold', 'trial.load', 'trial.heat', 'trial.peak', 'trial.netByTime', 'trial.netByFall', 'trial.netByFallWhole', 'trial.useful', 'trial.share', 'trial.shareWindy',
] as const;
