import type { Event } from '../event';
import { withRemedy, type DayRemedy, type RemedyNames } from '../timeline';
import { settled } from './check';
import type { EditResult } from './types';

/** Makes one of the changes that end a clash of the day: a job moved, hours lengthened, a helper or a thing more, a dish left off. `names`: what a new helper or thing is called. */
export const takeRemedy = (event: Event, { change, message }: Pick<DayRemedy, 'change' | 'message'>, names: RemedyNames): EditResult =>
  settled(withRemedy(event, change, names), { id: 'day.edit.remedy', params: { remedy: message } });
