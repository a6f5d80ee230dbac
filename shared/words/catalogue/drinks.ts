import type { Entry, Formats } from '../formats';

/** Words of the subject `drinks`. */
export const drinksWords = {
  'rule.drinks.cooling': 'Share of the difference to the room that is lost in an hour, for a full vessel.',
  'rule.drinks.coolingTested': 'From two readings of hot water left to stand in the full vessel: the difference to the room shrinks by the same share every hour.',
  'rule.newton.sizeScaling': 'A larger vessel of the same build cools more slowly: the share goes down with the cube root of its size.',
  'rule.boil.rate': 'Water that boils away: it follows the heat and the minutes, not the size of the pot.',
  'rule.tea.waterForServed': 'Water to put in: what is to be served, more for straining and what boils away, more for what the leaf keeps, less the other liquids of the recipe.',
  'rule.drinks.noHeat': 'Nothing is heated.',
  'rule.water.heatTime': 'Heat for the liquid and the pot, up to the boil, divided by what the burner gives.',
  'rule.drinks.brewed': 'Litres of all rounds, ready to serve.',
  'rule.drinks.served': 'Cups times cup size, less what could not be served.',
  'rule.drinks.rounds': 'Number of rounds: as few as the vessels, the pots and the time a drink stays good allow.',
  'drinks.term.cooling': 'Measured loss in an hour', 'drinks.term.vesselLitres': 'Vessel', 'drinks.term.boilMinutes': 'Boiling with the lid off', 'drinks.term.useful': 'Burner into the pot',
  'drinks.term.testFirst': 'Reading at first', 'drinks.term.testLater': 'Reading later', 'drinks.term.testRoom': 'The room then', 'drinks.term.testMinutes': 'Between the readings',
  'drinks.term.ready': 'Ready to serve', 'drinks.term.strain': 'Lost in straining', 'drinks.term.boiledOff': 'Boiled away', 'drinks.term.dose': 'Leaf or grounds per litre', 'drinks.term.kept': 'Kept by each gram',
  'drinks.term.otherLiquids': 'Other liquids of the recipe', 'drinks.term.water': 'Water', 'drinks.term.potKg': 'Empty pot', 'drinks.term.tap': 'Water from the tap', 'drinks.term.roundLitres': 'Litres of each round',
  'drinks.term.cups': 'Cups', 'drinks.term.cupMl': 'Cup size', 'drinks.term.unmet': 'Could not be served',
  'drinks.method.rounds': 'From the rounds as planned.', 'drinks.method.round': 'As much as is wanted until the next filling, and the pot takes.', 'drinks.method.unmet': 'From serving minute by minute.',
  'drinks.note.madeAhead': (p: { drink: string; litres: number }, f: Formats) => `Pour ${f.figure(p.litres, 'L')} from what was made ahead: ${p.drink}.`,
  'drinks.problem.noVessel': (p: { drink: string }) => `There is nothing to serve ${p.drink} from. Add a flask, a jug or a pot to the kitchen.`,
  'drinks.problem.noPot': (p: { drink: string }) => `There is no pot to make ${p.drink} in. Add one to the kitchen.`,
  'drinks.problem.noBurner': (p: { drink: string }) => `There is no burner for ${p.drink} that is not under a frying pan. Add one to the kitchen.`,
  'drinks.problem.unmetFromPot': (p: { drink: string; litres: number; pot: string }, f: Formats) => `First say which flask or jug ${p.drink} is for: without one it is poured from ${p.pot}, and ${f.figure(p.litres, 'L')} cannot be made in time.`,
  'drinks.problem.coolFromPot': (p: { drink: string; pot: string; minutes: number; celsius: number }, f: Formats) => `First say which flask ${p.drink} is for: without one it is poured from ${p.pot}, where it is under ${f.figure(p.celsius, 'degC')} after ${f.duration(p.minutes)}.`,
  'drinks.problem.unmet': (p: { drink: string; litres: number }, f: Formats) => `${f.figure(p.litres, 'L')} of ${p.drink} cannot be made in time. Add a pot or a burner, or a larger flask filled earlier.`,
} as const satisfies Record<string, Entry>;
