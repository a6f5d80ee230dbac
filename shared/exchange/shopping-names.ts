import { useWord } from '../buying';
import type { Plan } from '../plan';
import { sections } from '../reference';
import { say, type Formats } from '../words';

/** What a line is for: the dish's name, or the word of its use. */
export function originText(plan: Plan, formats: Formats): (origin: string) => string {
  const dishes = new Map(plan.menu.dishes.map((d) => [d.id, d.name]));
  return (origin) => {
    const word = useWord(origin);
    return dishes.get(origin) ?? (origin === 'frying-oil' ? say(formats, 'report.fryingOil') : word === null ? origin : say(formats, word));
  };
}

/** Name of a section of the shop; its id where the table has none. */
export const sectionText = (id: string, formats: Formats): string => sections.find((s) => s.id === id)?.name ?? (id === 'other' ? say(formats, 'buying.section.other') : id);
