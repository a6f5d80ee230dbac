import { say } from '../../shared/words';
import type { WordId, WordParams } from '../../shared/words';
import { plainFormats } from '../problem';

/** Ids of the sentences of the command line. */
export type CommandWordId = Extract<WordId, `command.${string}`>;

/** A sentence of the command line that belongs to no event. */
export const tell = <K extends CommandWordId>(id: K, ...params: WordParams<K> extends undefined ? [] : [WordParams<K>]): string => say(plainFormats, id, ...params);
