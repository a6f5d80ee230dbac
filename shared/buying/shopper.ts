import { shoppingOf, type Event } from '../event';

/** Who buys a line: the one named for the line itself, else for its section; null when nobody is. A helper's id gives the helper's name. */
export function shopperOf(event: Event, key: string, section: string): string | null {
  const { shoppers } = shoppingOf(event);
  const who = (shoppers.find((s) => s.line === key) ?? shoppers.find((s) => s.line === undefined && s.section === section))?.who;
  return who === undefined ? null : (event.people.find((p) => p.id === who)?.name ?? who);
}
