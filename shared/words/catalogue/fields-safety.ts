/** Names of the fields of a real batch and of the precautions, as the cook knows them; sentences about a wrong entry begin with them. */
export const safetyFieldNames: Readonly<Record<string, string>> = {
  trials: 'first batch', pan: 'pan', pieces: 'pieces', beforeG: 'batter weighed', afterG: 'fried and drained', lowestC: 'oil at its lowest', backMinutes: 'minutes until the oil is back', topUpMl: 'oil poured in to the mark', taken: 'taken',
  precautions: 'precautions', lidAtHand: 'lid beside the pan', extinguisher: 'extinguisher', outdoorPlace: 'ground of the outdoor burner', wallMetres: 'metres to the nearest wall', flameCm: 'nearest other flame',
  thermometer: 'thermostat or thermometer', childLine: 'line children stay behind', friedDry: 'wet food dried before frying', oilSigns: 'signs of spent oil', coAlarm: 'carbon monoxide alarm', air: 'window or hood',
  cylinderCm: 'from cylinder to burner', leakTested: 'soap test of the gas hose', extensionCord: 'extension cord', protectedSockets: 'protected sockets', carryMetres: 'furthest carry', carrySteps: 'steps on the way',
  lifters: 'people to lift a pot', flaskTableCm: 'height of the table for flasks', flaskTableSteady: 'steady table for flasks', adultsPour: 'adults pour hot drinks', tongs: 'tongs for every dish', openFoodThrown: 'open food thrown away',
  cutForChildren: 'food cut for children', handwash: 'place to wash hands', ill: 'somebody ill', occasion: 'kind of occasion', venue: 'kind of place', caterer: 'hired caterer',
  eggsChilled: 'eggs in the fridge', cookedC: 'how hot it leaves the heat', coolTrays: 'trays to cool a dish in (0: in its pot)', coolTrayLongCm: 'length of a tray', coolTrayWideCm: 'width of a tray', reheatIn: 'what food is warmed up in',
  platesChanged: 'small platters, changed', picklePh: 'pH of the pickle', pickleTested: 'tested recipe for the pickle',
  address: 'address', emergencyNumber: 'emergency number', contact: 'somebody to ring', injectors: 'who carries an injector', printInjectors: 'print who carries an injector',
};
