import type { Entry } from '../formats';
import { sheetsPaperWords } from './sheets-paper';
import { viewDayWords } from './view-day';
import { viewDrinksWords } from './view-drinks';
import { viewFryingWords } from './view-frying';
import { viewSheetsWords } from './view-sheets';
import { viewShoppingWords } from './view-shopping';

/** Words of the sheets, and of the views shopping, frying, drinks, day and sheets. */
export const sheetsWords = {
  ...sheetsPaperWords, ...viewShoppingWords, ...viewFryingWords, ...viewDrinksWords, ...viewDayWords, ...viewSheetsWords,
} as const satisfies Record<string, Entry>;
