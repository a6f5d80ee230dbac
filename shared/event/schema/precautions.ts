import * as z from 'zod';
import { foodCareFields } from './food-care';

const yesNo = z.boolean().optional();

/**
 * Plain facts about the place and the day that only the household knows, for the rules of safety. What is absent is not known: the rules that need
 * it say so. Metres, centimetres; ticks are true when the cook has said yes and false when she has said no.
 */
export const precautionsSchema = z.looseObject({
  // Fire
  /** A lid or baking sheet that covers each frying pan lies beside it. */
  lidAtHand: yesNo,
  /** Best extinguisher in reach of the oil: wet chemical is the kind for cooking oil (class F in Europe, K in the United States). */
  extinguisher: z.enum(['none', 'wetChemical', 'powder', 'foam', 'carbonDioxide', 'water']).optional(),
  /** Ground an outdoor burner stands on. */
  outdoorPlace: z.enum(['openGround', 'deck', 'underRoof', 'garage']).optional(),
  /** From an outdoor burner to the nearest wall. */
  wallMetres: z.number().min(0).max(100).optional(),
  /** From a frying pan to the nearest other open flame. */
  flameCm: z.number().min(0).max(1000).optional(),
  /** An electric fryer or plate has a thermostat, or a thermometer is clipped to the pan. */
  thermometer: yesNo,
  /** Nobody but who fries comes within a metre of the oil and of the table with hot drinks; the line is marked. */
  childLine: yesNo,
  /** Washed, frozen or soaked food is drained and patted dry before it is fried. */
  friedDry: yesNo,
  /** Signs of spent oil seen: dark, thick, foaming, smelling, smoking while it fries. */
  oilSigns: z.number().int().min(0).max(5).optional(),
  // Gas
  coAlarm: yesNo,
  air: z.enum(['none', 'window', 'hood']).optional(),
  cylinderCm: z.number().min(0).max(2000).optional(),
  leakTested: yesNo,
  // Electricity
  /** A heating appliance is plugged into an extension cord or a strip. */
  extensionCord: yesNo,
  /** Sockets outdoors and near water cut off by themselves (residual current). */
  protectedSockets: yesNo,
  // Carrying
  /** Furthest a full pot, flask or urn is carried. */
  carryMetres: z.number().min(0).max(500).optional(),
  carrySteps: yesNo,
  /** How many lift a full pot together. */
  lifters: z.number().int().min(1).max(4).optional(),
  // Table
  /** Height of the table the flasks stand on. */
  flaskTableCm: z.number().min(0).max(200).optional(),
  /** It is steady, away from the edge and the queue. */
  flaskTableSteady: yesNo,
  /** An adult pours hot drinks. */
  adultsPour: yesNo,
  /** A spoon or tongs for every dish. */
  tongs: yesNo,
  /** What lay out in the open is thrown away, not kept. */
  openFoodThrown: yesNo,
  /** Food cut small for children: halved, no whole nuts, no hard pieces. */
  cutForChildren: yesNo,
  // Hands
  handwash: yesNo,
  /** Somebody who is to handle food was ill (vomiting, diarrhoea) in the last two days. */
  ill: yesNo,
  // The event
  occasion: z.enum(['private', 'regular', 'paid', 'public']).optional(),
  venue: z.enum(['home', 'hall', 'park']).optional(),
  caterer: z.enum(['none', 'instructed', 'uninstructed']).optional(),
  // Food
  ...foodCareFields,
  // Emergency card
  address: z.string().max(300).optional(),
  emergencyNumber: z.string().max(60).optional(),
  /** Somebody to ring besides: name and number. */
  contact: z.string().max(200).optional(),
  /** Who carries an adrenaline injector and where it is; printed only when asked for. */
  injectors: z.string().max(300).optional(),
  printInjectors: yesNo,
});
/** What the household knows of place and day, for the rules of safety. */
export type Precautions = z.infer<typeof precautionsSchema>;
