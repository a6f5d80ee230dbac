import type { Plan } from '../plan';
import { sayMessage, type Formats } from '../words';

/** The day as other programs read it. `attention`: share of each person named, 0 runs by itself, 1 fully busy. */
export interface DayJson {
  readonly tasks: readonly {
    readonly id: string; readonly name: string; readonly start: number; readonly end: number; readonly who: readonly string[]; readonly attention: number;
    readonly needs: readonly { readonly thing: string; readonly count: number }[];
  }[];
}

/** Every job of a plan, in order of start. */
export const dayJson = ({ day }: Plan, formats: Formats): DayJson => ({
  tasks: day.tasks.map(({ id, name, start, end, who, attention, needs }) => ({ id, name: sayMessage(formats, name), start, end, who, attention, needs })),
});
