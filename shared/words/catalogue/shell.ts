import type { Entry } from '../formats';

/** Words of the subject `shell`. */
export const shellWords = {
  'shell.hostAway': 'The program behind this window does not answer. Close the window and start it again; work of the last seconds is kept aside.',
  'shell.hostOdd': 'The program behind this window gave an answer that cannot be read. Close the window and start it again.',

  'view.board': 'Board',
  'view.guests': 'Guests',
  'view.menu': 'Menu',
  'view.kitchen': 'Kitchen',
  'group.now': 'Now',
  'group.who': 'Who and what',
  'group.howMuch': 'How much',
  'group.when': 'When',
  'group.paper': 'On paper',
} as const satisfies Record<string, Entry>;
