/** Rules of the room `kitchen` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const kitchenRules = [
  'pan.curve', 'pan.curveHeight', 'pan.wall', 'pan.wallSides', 'pan.full', 'pan.depth', 'pan.brimful', 'pan.surface', 'pan.surfaceWall', 'pan.share', 'pan.rim',
  'burner.useful', 'burner.tested', 'burner.windy', 'air.pressure', 'boil.altitude', 'boil.measured', 'oil.density', 'oil.hotVolume',
] as const;
