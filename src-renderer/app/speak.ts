import { useMemo } from 'react';
import { formatsFor, preferencesSchema } from '../../shared/event';
import { say, sayLoose, sayMessage, type Formats, type Message, type WordId, type WordParams } from '../../shared/words';
import { useOpenDocument } from './document';

/** The words of the open event's language, bound to its ways of writing numbers and times. */
export interface Speaker {
  <K extends WordId>(id: K, ...params: WordParams<K> extends undefined ? [] : [WordParams<K>]): string;
  readonly message: (message: Message) => string;
  readonly loose: (id: string, params?: Readonly<Record<string, string | number>>) => string;
  readonly formats: Formats;
}

/** Before an event is open only dates and times are shown; any day does. */
export const startFormats = formatsFor(preferencesSchema.parse({}), '2026-01-01');

/** Binds the catalogue to formats. */
export function speakerOf(formats: Formats): Speaker {
  return Object.assign(
    <K extends WordId>(id: K, ...params: WordParams<K> extends undefined ? [] : [WordParams<K>]): string => say(formats, id, ...params),
    {
      message: (message: Message) => sayMessage(formats, message),
      loose: (id: string, params?: Readonly<Record<string, string | number>>) => sayLoose(formats, id, params),
      formats,
    },
  );
}

/** Words for the component: `const t = useSpeaker(); t('view.guests')`. */
export function useSpeaker(): Speaker {
  const formats = useOpenDocument()?.formats ?? startFormats;
  return useMemo(() => speakerOf(formats), [formats]);
}
