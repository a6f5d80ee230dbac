import type { Entry } from '../formats';
import { sheetsPaperWords } from './sheets-paper';

/** Words of the sheets, and of the views shopping, frying, drinks, day and sheets. */
export const sheetsWords = {
  ...sheetsPaperWords,
} as const satisfies Record<string, Entry>;
