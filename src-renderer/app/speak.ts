import { useMemo } from 'react';
import { formatsFor, preferencesSchema } from '../../shared/event';
import { say, sayLoose, sayMessage, type Formats, type Message, type WordId, type WordParams } from '../../shared/words';
import { useOpenDocument } from './document';
import { sessionStore, useSession, type Session } from './session';

/** The words of the open event's language, bound to its ways of writing numbers and times. */
export interface Speaker {
  <K extends WordId>(id: K, ...params: WordParams<K> extends undefined ? [] : [WordParams<K>]): string;
  readonly message: (message: Message) => string;
  readonly loose: (id: string, params?: Readonly<Record<string, string | number>>) => string;
  readonly formats: Formats;
}

/** Formats while no event is open: the ways of this computer, on the host's day. Before the host has said them nothing with a day is shown. */
export const startFormats = ({ info, settings }: Pick<Session, 'info' | 'settings'> = sessionStore.get()): Formats =>
  formatsFor(preferencesSchema.parse(settings === null ? {} : { units: settings.units, clock: settings.clock }), info?.today ?? notSaid);

const notSaid = '0001-01-01';

/** A sentence outside any component, in the ways of this computer. */
export const sayAtStart = <K extends WordId>(id: K, ...params: WordParams<K> extends undefined ? [] : [WordParams<K>]): string => say(startFormats(), id, ...params);

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
  const open = useOpenDocument()?.formats;
  const { info, settings } = useSession();
  const formats = useMemo(() => open ?? startFormats({ info, settings }), [open, info, settings]);
  return useMemo(() => speakerOf(formats), [formats]);
}
