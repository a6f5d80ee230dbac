import { numberIn, type RuleInputs, type RulesTable } from './inputs';
import { capRadius, roundVessel, segmentVolume, straightVessel, vesselArea, vesselDepth, vesselVolume, type Vessel } from './vessel';

const bowl = (inputs: RuleInputs): Vessel => roundVessel(numberIn(inputs, 'rimDiameter_m'), numberIn(inputs, 'depth_m'));
const diameter = (area: number): number => 2 * Math.sqrt(area / Math.PI);

/** The pan rules by id, with the keys of the rule register. */
export const panTable: RulesTable = {
  'pan.cap.radius': (i) => ({ sphereRadius_m: capRadius(numberIn(i, 'rimDiameter_m'), numberIn(i, 'depth_m')) }),
  'pan.cap.volume': (i) => {
    const m3 = vesselVolume(bowl(i), numberIn(i, 'oilDepth_m'));
    return { volume_m3: m3, volume_L: m3 * 1000 };
  },
  'pan.cap.state': (i) => {
    const oil = numberIn(i, 'oilDepth_m');
    const area = vesselArea(bowl(i), oil);
    return { volume_L: vesselVolume(bowl(i), oil) * 1000, surfaceDiameter_m: diameter(area), surfaceArea_m2: area };
  },
  'pan.cap.depthFromVolume': (i) => {
    const oil = vesselDepth(bowl(i), numberIn(i, 'volume_L') / 1000);
    return { oilDepth_m: oil, surfaceDiameter_m: diameter(vesselArea(bowl(i), oil)) };
  },
  'pan.segment.volume': (i) =>
    ({ volume_L: segmentVolume(numberIn(i, 'bottomDiameter_m') / 2, numberIn(i, 'surfaceDiameter_m') / 2, numberIn(i, 'oilDepth_m')) * 1000 }),
  'pan.straight.depthFromVolume': (i) => {
    const area = (Math.PI * numberIn(i, 'diameter_m') ** 2) / 4;
    const litres = numberIn(i, 'volume_L');
    // The register gives no rim: take one a metre above the liquid.
    return { oilDepth_m: vesselDepth(straightVessel(area, litres / 1000 / area + 1), litres / 1000) };
  },
  'pan.levelRise': (i) => ({
    rise_mm: levelRise(bowl(i), numberIn(i, 'oilVolume_L') / 1000, numberIn(i, 'floatingLoad_kg'), numberIn(i, 'oilDensity_kg_m3')) * 1000,
  }),
};

/** How far the level rises, m: a floating load displaces its own mass of oil (Archimedes). `oilVolume` m³, `load` kg, `density` kg/m³. */
export const levelRise = (v: Vessel, oilVolume: number, load: number, density: number): number =>
  vesselDepth(v, oilVolume + load / density) - vesselDepth(v, oilVolume);
