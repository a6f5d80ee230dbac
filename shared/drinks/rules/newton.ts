/** Temperature after cooling towards the room, °C: Ta + (T0 − Ta) e^(−kt). Newton's law of cooling; k per hour, time in hours. */
export const cooled = (start: number, room: number, perHour: number, hours: number): number => room + (start - room) * Math.exp(-perHour * hours);

/** Cooling constant per hour from one test. */
export const coolingRate = (start: number, end: number, room: number, hours: number): number => Math.log((start - room) / (end - room)) / hours;

/** The constant of another size of the same build: the wall grows with V^(2/3), the contents with V. */
export const scaledRate = (perHour: number, litres: number, newLitres: number): number => perHour * (newLitres / litres) ** (-1 / 3);

/** Temperature at minute 0 from two readings of one exponential. */
export const backTo = (t1: number, minute1: number, t2: number, minute2: number, room: number): number => {
  const perMinute = Math.log((t1 - room) / (t2 - room)) / (minute2 - minute1);
  return room + (t1 - room) * Math.exp(perMinute * minute1);
};

/** Temperature after filling a vessel that is colder: heats of liquid and vessel mix. Litres, kJ/LK, kJ/K. */
export const mixed = (litres: number, liquid: number, cRho: number, vesselHeat: number, vessel: number): number =>
  (litres * cRho * liquid + vesselHeat * vessel) / (litres * cRho + vesselHeat);
