import { boardWords } from './catalogue/board';
import { buyingWords } from './catalogue/buying';
import { calendarWords } from './catalogue/calendar';
import { calibrationWords } from './catalogue/calibration';
import { commandWords } from './catalogue/command';
import { cookingWords } from './catalogue/cooking';
import { dayJobsWords } from './catalogue/day-jobs';
import { dayClashWords } from './catalogue/day-clash';
import { dayRemedyWords } from './catalogue/day-remedy';
import { drinksWords } from './catalogue/drinks';
import { editWords } from './catalogue/edit';
import { eventWords } from './catalogue/event';
import { fryingWords } from './catalogue/frying';
import { guestsWords } from './catalogue/guests';
import { hostWords } from './catalogue/host';
import { kitchenWords } from './catalogue/kitchen';
import { loanWords } from './catalogue/loans';
import { measuringWords, ownFigureWords } from './catalogue/measuring';
import { menuWords } from './catalogue/menu';
import { recipeWords } from './catalogue/recipe';
import { recipeFiguresWords } from './catalogue/recipe-figures';
import { reportWords } from './catalogue/report';
import { rulesWords } from './catalogue/rules';
import { safetyPlaceWords } from './catalogue/safety-place';
import { safetyWords } from './catalogue/safety';
import { sheetsCardsWords } from './catalogue/sheets-cards';
import { sheetsChecklistsWords } from './catalogue/sheets-checklists';
import { sheetsLabelsWords } from './catalogue/sheets-labels';
import { sheetsWords } from './catalogue/sheets';
import { shelfWords } from './catalogue/shelf';
import { shellWords } from './catalogue/shell';
import { timelineWords } from './catalogue/timeline';
import { unitsWords } from './catalogue/units';
import { viewFirstBatchWords } from './catalogue/view-first-batch';
import { viewPrecautionsWords } from './catalogue/view-precautions';
import { viewPrepWords } from './catalogue/view-prep';
import { viewRecipeEditWords } from './catalogue/view-recipe-edit';
import { viewRecipesWords } from './catalogue/view-recipes';

/** Every sentence and label on screen, on paper and in the terminal. One language today; a second one is a second object of this type. */
export const catalogue = {
  ...boardWords, ...buyingWords, ...calendarWords, ...calibrationWords, ...commandWords, ...cookingWords, ...dayClashWords, ...dayJobsWords, ...dayRemedyWords, ...drinksWords, ...editWords, ...eventWords, ...fryingWords, ...guestsWords,
  ...hostWords, ...kitchenWords, ...loanWords, ...measuringWords, ...ownFigureWords, ...menuWords, ...recipeWords, ...recipeFiguresWords, ...reportWords, ...rulesWords, ...safetyWords, ...safetyPlaceWords, ...sheetsWords, ...sheetsCardsWords, ...sheetsChecklistsWords, ...sheetsLabelsWords, ...shelfWords, ...shellWords,
  ...timelineWords, ...unitsWords, ...viewFirstBatchWords, ...viewPrecautionsWords, ...viewPrepWords, ...viewRecipesWords, ...viewRecipeEditWords,
} as const;
