import type { Entry } from '../formats';

/** Words of the subject `kitchen`. */
export const kitchenWords = {
  'rule.pan.curve': 'A round or wok pan is part of a sphere. The centre of that sphere stands so high that the curve meets the edge of the flat bottom and the rim; a pan deeper than half a sphere has its centre at the widest place.',
  'rule.pan.curveHeight': 'The curved part of a pan ends at the rim, or where the wall becomes upright.',
  'rule.pan.wall': 'Area inside an upright round wall: 3.1416 times half the diameter squared.',
  'rule.pan.wallSides': 'Area inside an oblong wall: length times width.',
  'rule.pan.full': 'What the pan holds to the rim: the slice of the sphere, 3.1416 × height × (3 × bottom radius squared + 3 × surface radius squared + height squared) ÷ 6, and the upright part above it.',
  'rule.pan.depth': 'The depth at which the pan holds just this much oil, found by trying; the last correction is the oil too much divided by the surface.',
  'rule.pan.brimful': 'More oil than the pan holds: the oil stands at the rim.',
  'rule.pan.surface': 'Twice the radius of the oil surface at this depth in the curved part.',
  'rule.pan.surfaceWall': 'Across the oil between upright walls; for an oblong pan, of the round of equal area.',
  'rule.pan.share': 'Hot oil divided by what the pan holds.',
  'rule.pan.rim': 'Depth of the pan less depth of the oil.',
  'rule.burner.useful': 'Only a share of a burner’s rating reaches the pan: rating times that share.',
  'rule.air.pressure': 'Air grows thinner with height: pressure at sea level times (1 less fall of temperature × height ÷ temperature at sea level) to the power of the standard air.',
  'rule.boil.altitude': 'Water boils sooner in thinner air: the boiling point at sea level, less the difference of Antoine’s equation between the two pressures (7.50 millimetres of mercury to the kilopascal; 2.30 turns the logarithm).',
  'rule.boil.measured': 'The boiling point of the household’s own kitchen, as measured.',
  'rule.oil.density': 'Oil grows lighter as it warms: density at 20 degrees less the fall for each degree above.',
  'rule.oil.hotVolume': 'Hot oil takes more room: litres when cold times density when cold, divided by density when hot.',
  'kitchen.term.rim': 'Across the rim', 'kitchen.term.depth': 'Depth of the pan', 'kitchen.term.bottom': 'Half the flat bottom', 'kitchen.term.length': 'Length inside', 'kitchen.term.width': 'Width inside',
  'kitchen.term.centre': 'Height of the curve’s centre', 'kitchen.term.curved': 'Height of the curved part', 'kitchen.term.wall': 'Area inside the wall',
  'kitchen.term.oil': 'Oil, hot', 'kitchen.term.tried': 'Depth tried', 'kitchen.term.surface': 'Surface at that depth', 'kitchen.term.oilDepth': 'Depth of the hot oil',
  'kitchen.term.full': 'Pan filled to the rim', 'kitchen.term.share': 'Share that reaches the pan', 'kitchen.term.rated': 'Rating of the burner', 'kitchen.term.coldOil': 'Oil poured in',
  'kitchen.term.altitude': 'Height above the sea', 'kitchen.term.air': 'Pressure of the air here', 'kitchen.term.boilingPoint': 'Boiling point here',
  'kitchen.term.hotDensity': 'Density of the hot oil',
} as const satisfies Record<string, Entry>;
