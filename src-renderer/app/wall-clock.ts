const minuteMs = 60_000;

/** Minutes of a wall clock from a fixed midnight; only differences mean something. */
export const wallMinutes = (at: Date): number =>
  (Date.UTC(at.getFullYear(), at.getMonth(), at.getDate(), at.getHours(), at.getMinutes(), at.getSeconds(), at.getMilliseconds())) / minuteMs;

const midnight = (day: string): number => Date.parse(`${day}T00:00:00Z`) / minuteMs;

/** What to add to this window's wall clock to get the host's, in whole minutes: 0 on one computer. `arrived`: this window's clock when the host's answer came. */
export function hostOffset(info: { readonly today: string; readonly now: number }, arrived: Date): number {
  const apart = midnight(info.today) + info.now - Math.floor(wallMinutes(arrived));
  // The minute may have turned while the answer was on its way.
  return Math.abs(apart) <= 1 ? 0 : apart;
}

/** Minutes from the midnight a day begins with; negative before it. */
export const minutesSince = (day: string, wall: number): number => wall - midnight(day);
