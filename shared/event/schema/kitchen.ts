import * as z from 'zod';
import { amountSchema, decimalSchema, idSchema, minuteSchema, nameSchema, noteSchema } from './parts';

/** A frying pan: shape and size in millimetres, mass in kilograms, oil in litres, and the burner it stands on. */
export const panSchema = z.looseObject({
  id: idSchema, name: nameSchema,
  shape: z.enum(['round', 'flatWok', 'straight', 'rectangular']),
  /** Across the rim (round, wok, straight) in millimetres. */
  rimMm: z.number().min(100).max(1200).optional(),
  depthMm: z.number().min(20).max(600),
  /** Flat bottom of a wok. */
  bottomMm: z.number().min(20).max(1200).optional(),
  lengthMm: z.number().min(80).max(1500).optional(),
  widthMm: z.number().min(80).max(1500).optional(),
  massKg: z.number().min(0.1).max(60).default(1.8),
  material: z.enum(['steel', 'iron', 'aluminium', 'brass']).default('steel'),
  oilLitres: z.number().min(0.2).max(60),
  burner: idSchema,
});
/** Water brought to the boil on a burner, lid on: litres, its temperature before, minutes to the boil, weight of the pot. Says what reaches the pan better than any rating. */
export const boilTestSchema = z.looseObject({ litres: z.number().min(0.5).max(60), fromC: z.number().min(1).max(60), minutes: z.number().min(1).max(180), potKg: z.number().min(0).max(60).default(1.5) });
/** Hot water left to stand in a closed, full vessel: temperature at first and after so many minutes, and of the room. */
export const coolTestSchema = z.looseObject({ startC: z.number().min(30).max(100), endC: z.number().min(20).max(100), minutes: z.number().min(10).max(1440), roomC: z.number().min(-20).max(45) }).refine((t) => t.startC >= t.endC && t.endC > t.roomC, { message: 'coolTestOrder', path: ['endC'] });
/** A burner: its rating in watts, where it stands, what it runs on. */
export const burnerSchema = z.looseObject({
  id: idSchema, name: nameSchema,
  kind: z.enum(['gas', 'lpg', 'electric', 'induction', 'outdoorGas']),
  ratedW: z.number().min(100).max(60000),
  /** Measured share of the rating that reaches the pan; the kind's reference value when absent. */
  usefulShare: z.number().min(0.05).max(1).optional(),
  /** Measured with water; taken where no share is entered. */
  boilTest: boilTestSchema.optional(),
  /** Air about an outdoor flame; calm when absent. */
  wind: z.enum(['calm', 'breeze', 'wind']).optional(),
  /** Gas cylinder it draws from. */
  cylinder: idSchema.optional(),
  place: z.enum(['indoor', 'outdoor']).default('indoor'),
  portable: z.boolean().default(false),
  circuit: idSchema.optional(),
});
/** A pot for boiling and brewing. Litres to the rim; kilograms empty. */
export const potSchema = z.looseObject({ id: idSchema, name: nameSchema, litres: z.number().min(0.3).max(200), massKg: z.number().min(0.1).max(60).default(1.5) });
/** A flask, urn or jug that holds a drink: litres, kilograms empty, how it keeps the temperature. */
export const dispenserSchema = z.looseObject({
  id: idSchema, name: nameSchema,
  litres: z.number().min(0.2).max(200), massKg: z.number().min(0.1).max(60).default(4),
  insulation: z.enum(['foam', 'vacuum', 'none', 'heated']),
  /** Measured loss of temperature: share of the difference to the room per hour; the class's reference value when absent. */
  coolingPerHour: z.number().min(0.001).max(3).optional(),
  /** Measured by letting hot water stand; taken before the two above. */
  coolTest: coolTestSchema.optional(),
  /** A brewing urn or percolator makes the drink in itself, with this electric power; absent for what is only filled. Watts. */
  brewsW: z.number().min(200).max(20000).optional(),
  circuit: idSchema.optional(),
  /** Made for milk drinks; insulated plastic mostly is not (rule ED-08). */
  fitForMilk: z.boolean().default(false),
  /** Menu dish it holds. */
  dish: idSchema.optional(),
});
/** A place where somebody fries: one or more pans, the dishes fried there. */
export const stationSchema = z.looseObject({ id: idSchema, name: nameSchema, pans: z.array(idSchema).min(1).max(6), dishes: z.array(idSchema).default([]) });
/** The kitchen: pans, burners, pots, dispensers, fry lines, room, power and gas. Temperatures in Celsius, height in metres. */
export const kitchenSchema = z.looseObject({
  pans: z.array(panSchema).max(20).default([]),
  burners: z.array(burnerSchema).max(30).default([]),
  pots: z.array(potSchema).max(60).default([]),
  dispensers: z.array(dispenserSchema).max(40).default([]),
  stations: z.array(stationSchema).max(10).default([]),
  roomC: z.number().min(-20).max(50).default(21),
  waterC: z.number().min(1).max(40).default(15),
  altitudeM: z.number().min(-400).max(5000).default(0),
  bowlLitres: z.number().min(0.5).max(60).default(5),
  ovens: z.number().int().min(0).max(10).default(1),
  counterPlaces: z.number().int().min(1).max(40).default(3),
  /** Size of the tubs of ice that cold drinks stand in; absent when they are chilled in a fridge. Litres. */
  iceTubLitres: z.number().min(2).max(500).optional(),
  hotHoldC: z.number().min(30).max(120).nullable().default(null),
  fridgeC: z.number().min(-5).max(20).nullable().default(null),
  /** Room for cold food in fridges and cool boxes; a quarter of it stays free for the air (rule CH-06). */
  coldLitres: z.number().min(0).max(5000).nullable().default(null),
  circuits: z.array(z.looseObject({ id: idSchema, name: nameSchema, volts: z.number().min(50).max(480), amps: z.number().min(1).max(200), otherWatts: z.number().min(0).max(100000).default(0) })).default([]),
  cylinders: z.array(z.looseObject({ id: idSchema, name: nameSchema.optional(), gasKg: z.number().min(0.1).max(100), place: z.enum(['indoor', 'outdoor']) })).default([]),
  /** Kind of frying oil: an id of the table of frying oils, or the words of a cook whose oil the table does not know. */
  oilKind: z.string().max(60).default('sunflower-refined'),
  /** Hours the oil stands after the last batch before anybody moves it. */
  oilRestHours: z.number().min(0).max(72).default(12),
});
/** A frying pan, defaults filled in. */
export type Pan = z.infer<typeof panSchema>;
/** What was measured with water on a burner. */
export type BoilTest = z.infer<typeof boilTestSchema>;
/** What was measured with hot water in a vessel. */
export type CoolTest = z.infer<typeof coolTestSchema>;
/** A burner, defaults filled in. */
export type Burner = z.infer<typeof burnerSchema>;
/** A pot, defaults filled in. */
export type Pot = z.infer<typeof potSchema>;
/** A flask, urn or jug, defaults filled in. */
export type Dispenser = z.infer<typeof dispenserSchema>;
/** A place where somebody fries. */
export type Station = z.infer<typeof stationSchema>;
/** The kitchen, defaults filled in. */
export type Kitchen = z.infer<typeof kitchenSchema>;

/** Somebody who helps: what they do and from when to when, in minutes from midnight of the day. */
export const personSchema = z.looseObject({
  id: idSchema, name: nameSchema,
  /** What they do: "cook", "fryer", "tea", "runner", or any word of the household. */
  roles: z.array(z.string().min(1).max(40)).min(1),
  from: minuteSchema, to: minuteSchema,
  /** Heaviest they should carry alone. */
  liftKg: z.number().min(1).max(60).optional(),
});
/** Somebody who helps. */
export type Person = z.infer<typeof personSchema>;

/** An amount of an ingredient that is in the house already. */
export const larderSchema = z.looseObject({ ingredient: idSchema, amount: amountSchema });
/** What an ingredient costs: money as a decimal string in the event's currency, per an amount. */
export const priceSchema = z.looseObject({ ingredient: idSchema, price: decimalSchema, per: amountSchema, note: noteSchema.optional() });
/** A household's own value instead of a reference value. `figure` is the reference key, e.g. `portion.friedSnack`; its range is `legalRange` of the reference, checked with the event as a whole. */
export const houseFigureSchema = z.looseObject({ figure: z.string().min(1).max(120), value: z.number(), unit: z.string().max(20).default(''), why: z.string().min(1).max(400), date: z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'day').optional() });
/** A value of this household in place of a reference value. */
export type HouseFigure = z.infer<typeof houseFigureSchema>;
