import { parseShelf } from '../../shared/household';
import { sayMessage } from '../../shared/words';
import { HostProblem, plainFormats } from '../problem';
import type { Store } from '../store';
import type { Answers } from './answers';

/** The calls about the household's recipes. */
export const shelfCalls = (store: Store): Pick<Answers, 'shelf.read' | 'shelf.write'> => ({
  'shelf.read': async () => {
    const { text, modified } = await store.shelf.read();
    return { text, modified };
  },
  'shelf.write': async ({ text, expect }) => {
    const read = parseShelf(text);
    const [wrong] = read.ok ? [] : read.problems;
    if (wrong !== undefined) throw HostProblem.of('host.no-shelf-text', { what: sayMessage(plainFormats, wrong.message) });
    return { modified: await store.shelf.write(text, expect ?? 'no-file') };
  },
});
