import { eventSchema, formatsFor } from '../../shared/event';

/** Formats of an event with every preference left as it is: for sentences that belong to no event. */
export const plainFormats = formatsFor(eventSchema.shape.preferences.parse({}), '2026-01-01');
