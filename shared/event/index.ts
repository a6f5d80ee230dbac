/** Public file of the room: the Event schema and its types; reading and writing event files. */
export * from './schema/parts';
export * from './schema/buying';
export * from './schema/guests';
export * from './schema/recipe';
export * from './schema/kitchen';
export * from './schema/trial';
export * from './schema/precautions';
export * from './schema/event';
export * from './formats';
export { pathText, type EventProblem, type FieldPath } from './problem';
export { problemsOf } from './issue-message';
export { checkEvent, deepestNesting, few, longestFile, parseEvent, readEvent, readJson, type ParsedEvent } from './parse';
export { clean, type Cleaned } from './clean';
export { quoted } from './where';
export { currentVersion, migrate, migrations, versionOf, type Migration, type RawEvent } from './migrate';
export { hasWritingPlace, serialiseEvent, written } from './serialise';
export { newEvent, type NewEvent } from './new-event';
