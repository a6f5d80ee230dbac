import type { Store } from '../store';
import type { Answers } from './answers';

/** The calls about the household's recipes. */
export const shelfCalls = (store: Store): Pick<Answers, 'shelf.read' | 'shelf.write'> => ({
  'shelf.read': async () => {
    const { text, modified } = await store.shelf.read();
    return { text, modified };
  },
  'shelf.write': async ({ text, expect }) => ({ modified: await store.shelf.write(text, expect) }),
});
