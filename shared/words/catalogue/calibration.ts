import type { Entry, Formats } from '../formats';
import { whereText } from './fields';

/** Words of the subject `calibration`: one batch really fried, and what it tells. */
export const calibrationWords = {
  'rule.trial.piece': 'Weight of all pieces divided by their number.',
  'rule.trial.fry': 'Minutes from putting in to lifting out, as timed.',
  'rule.trial.uptake': 'The oil poured in to bring the pan back to its mark is what the pieces took: millilitres times density, over the weight of the batter.',
  'rule.trial.waterLost': 'Pieces lose water and gain oil: what the scales say they lost, over the batter, and the oil they gained.',
  'rule.trial.load': 'Pieces times the weight of one.',
  'rule.trial.heat': 'Heat into the batch: warming its water and its solids to the boil and boiling off the water lost, times its weight.',
  'rule.trial.peak': 'Pieces take most heat when they go in, then less and less. The first rush is all heat over the time it dies away with, less what is left when they are lifted.',
  'rule.trial.netByTime': 'From putting in until the oil is as hot as before, the burner gave just what the pieces took: that heat over that time.',
  'rule.trial.netByFall': 'The oil cooled by what the burner did not give. The power at which oil and pan fall just so far, found by trying; with a wrong one the sum would not come out at it.',
  'rule.trial.netByFallWhole': 'The oil still fell when the pieces were lifted: heat into them less what oil and pan gave, over the fry time.',
  'rule.trial.useful': 'What oil and pieces got, and what the hot pan loses to the room.',
  'rule.trial.share': 'Power into the pan divided by the rating of the burner.',
  'rule.trial.shareWindy': 'Power into the pan divided by the rating of the burner, as it would be in still air.',
  'trial.term.before': 'Batter weighed', 'trial.term.after': 'Fried and drained', 'trial.term.pieces': 'Pieces put in', 'trial.term.minutes': 'Put in to lift out', 'trial.term.topUp': 'Oil poured in to the mark',
  'trial.term.oil': 'Oil gained', 'trial.term.load': 'Weight put in', 'trial.term.heat': 'Heat into the batch', 'trial.term.peak': 'Heat taken at first', 'trial.term.back': 'Until the oil is back',
  'trial.term.start': 'Oil before', 'trial.term.lowest': 'Oil at its lowest', 'trial.term.net': 'Into oil and pieces', 'trial.term.tried': 'Power tried',
  'trial.method.tried': 'Found by repeating until it no longer changes.',

  'trial.gone': 'The dish or the pan of this batch is no longer in the event. Choose another, or take the batch out.',
  'trial.needs.before': 'Weigh the batter that goes in to know the weight of a piece.',
  'trial.needs.after': 'Weigh the pieces once they are drained to know how much water they lose.',
  'trial.needs.power': 'To know the burner, write down the minutes until the oil is as hot as before, or its lowest temperature.',
  'trial.assumes.uptake': 'The oil the pieces took is as the recipe has it. Fill the pan back to its mark by measure to know it.',
  'trial.rough.drop': 'The burner is told by a drop of batter, not by a thermometer: less sure. Check it with the next batch.',
  'trial.rough.early': 'The oil was back before the pieces were out: the burner is told less surely. Fry as many at once as are planned.',
  'trial.rough.fall': 'The burner is told by one lowest temperature: less sure than by the minutes until the oil is back.',
  'trial.misfit.pieceBatterG': (p: { grams: number }, f: Formats) => `A piece of ${f.number(p.grams, 1)} g is outside what can be planned. Weigh all the batter that goes in, and count the pieces again.`,
  'trial.misfit.fryMinutes': (p: { minutes: number }, f: Formats) => `${f.number(p.minutes, 1)} minutes of frying are outside what can be planned. Look at the time again.`,
  'trial.misfit.oilUptakeKgPerKg': (p: { share: number }, f: Formats) => `Oil of ${f.percent(p.share)} of the batter is more than pieces take. Fill to the same mark, at the same heat, and measure again.`,
  'trial.misfit.waterLostKgPerKg': (p: { before: number; after: number; more: boolean }, f: Formats) =>
    `${f.number(p.before)} g went in and ${f.number(p.after)} g came out: ${p.more ? 'more than water and oil can explain' : 'less than would be left with all water gone'}. Weigh again, without bowl or rack.`,
  'trial.misfit.usefulShare': (p: { burner: string; share: number }, f: Formats) =>
    `${p.burner} would put ${f.percent(p.share)} of its rating into the pan, which cannot be. Look at the rating, the minutes and the temperatures.`,
  'trial.misfit.noFall': (p: { start: number; lowest: number }, f: Formats) => `The oil went from ${f.degrees(p.start)} to ${f.degrees(p.lowest)}: it did not cool. Read it in the middle of the pan, every half minute.`,
  'trial.misfit.fall': (p: { start: number; lowest: number }, f: Formats) => `The oil fell from ${f.degrees(p.start)} to ${f.degrees(p.lowest)}, more than these pieces can cool it. Was the flame full, and is the oil in the pan as entered?`,
  'trial.misfit.apart': (p: { fall: number; minutes: number }, f: Formats) =>
    `The fall of ${f.degreesDifference(p.fall)} and the ${f.number(p.minutes, 1)} minutes until the oil is back do not belong together. The minutes are taken; read the lowest temperature again.`,

  'edit.precaution': (p: { field: string }) => `${whereText([{ key: p.field }]).toLowerCase()} changed`,
  'edit.trial': (p: { dish: string }) => `first batch of ${p.dish}`,
  'edit.trialOut': (p: { dish: string }) => `first batch of ${p.dish} taken out`,
  'edit.trialTaken': (p: { dish: string }) => `figures of the first batch of ${p.dish} taken`,
  'edit.trialNothing': 'This batch tells nothing yet that could be taken. Write down weights, minutes or temperatures.',
} as const satisfies Record<string, Entry>;
