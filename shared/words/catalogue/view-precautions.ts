import type { Entry } from '../formats';

/** Labels of the section Precautions in the view Kitchen. */
export const viewPrecautionsWords = {
  'view.precautions': 'Precautions',
  'view.precautions.lead': 'What only you can know of the place and the day. Nothing has to be answered; what is answered is checked, and the emergency card is filled in with it.',
  'view.precautions.notKnown': 'not said', 'view.precautions.yes': 'yes', 'view.precautions.no': 'no',
  'view.precautions.fire': 'Frying and fire', 'view.precautions.gas': 'Gas, air and electricity', 'view.precautions.carry': 'Carrying and hot drinks', 'view.precautions.hands': 'Hands and food', 'view.precautions.event': 'The occasion', 'view.precautions.emergency': 'Emergency card',
  'view.precautions.lidAtHand': 'Lid or baking sheet beside each pan', 'view.precautions.thermometer': 'Thermostat, or thermometer in the oil', 'view.precautions.friedDry': 'Wet food dried before frying', 'view.precautions.childLine': 'Line that children stay behind',
  'view.precautions.flameCm': 'Nearest other flame', 'view.precautions.oilSigns': 'Signs of spent oil (dark, thick, foam, smell, smoke)', 'view.precautions.wallMetres': 'Outdoor burner to the nearest wall',
  'view.precautions.extinguisher': 'Extinguisher by the oil', 'view.precautions.extinguisher.none': 'none', 'view.precautions.extinguisher.wetChemical': 'for cooking oil (class F or K)', 'view.precautions.extinguisher.powder': 'powder', 'view.precautions.extinguisher.foam': 'foam', 'view.precautions.extinguisher.carbonDioxide': 'carbon dioxide', 'view.precautions.extinguisher.water': 'water',
  'view.precautions.outdoorPlace': 'Ground of the outdoor burner', 'view.precautions.outdoorPlace.openGround': 'open, level ground', 'view.precautions.outdoorPlace.deck': 'wooden deck or balcony', 'view.precautions.outdoorPlace.underRoof': 'under a roof or tent', 'view.precautions.outdoorPlace.garage': 'garage',
  'view.precautions.coAlarm': 'Carbon monoxide alarm, tested', 'view.precautions.air': 'Fresh air by the hob', 'view.precautions.air.none': 'neither', 'view.precautions.air.window': 'open window', 'view.precautions.air.hood': 'hood vented outside',
  'view.precautions.leakTested': 'Gas hose tested with soap', 'view.precautions.cylinderCm': 'Cylinder to burner', 'view.precautions.extensionCord': 'Heating appliance on an extension cord', 'view.precautions.protectedSockets': 'Sockets outdoors cut off by themselves',
  'view.precautions.carryMetres': 'Furthest carry of a full pot or flask', 'view.precautions.carrySteps': 'Steps on the way', 'view.precautions.lifters': 'People to lift a full pot', 'view.precautions.flaskTableCm': 'Table for flasks, height', 'view.precautions.flaskTableSteady': 'Steady, away from edge and queue', 'view.precautions.adultsPour': 'Adults pour hot drinks',
  'view.precautions.handwash': 'Running water, soap, towel near', 'view.precautions.tongs': 'Tongs or spoon for every dish', 'view.precautions.ill': 'A helper was ill in the last two days', 'view.precautions.openFoodThrown': 'What lay open is thrown away', 'view.precautions.cutForChildren': 'Food cut small for children',
  'view.precautions.occasion': 'Occasion', 'view.precautions.occasion.private': 'private, now and then', 'view.precautions.occasion.regular': 'regular', 'view.precautions.occasion.paid': 'paid or ticketed', 'view.precautions.occasion.public': 'open to the public',
  'view.precautions.venue': 'Place', 'view.precautions.venue.home': 'at home', 'view.precautions.venue.hall': 'hall, school or place of worship', 'view.precautions.venue.park': 'park or street',
  'view.precautions.caterer': 'Food brought by a caterer', 'view.precautions.caterer.none': 'none', 'view.precautions.caterer.instructed': 'with times and temperatures in writing', 'view.precautions.caterer.uninstructed': 'without',
  'view.precautions.address': 'Address to tell', 'view.precautions.emergencyNumber': 'Emergency number', 'view.precautions.contact': 'Somebody to ring besides', 'view.precautions.injectors': 'Who carries an injector, and where it is', 'view.precautions.printInjectors': 'Print that on the emergency card',
} as const satisfies Record<string, Entry>;
