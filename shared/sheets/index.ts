/** Public file of the room: printable sheets, one source for preview, print and PDF. */
export { sheetKinds } from './types';
export type { Paper, Sheet, SheetKind, SheetOptions } from './types';
export { sheetsOf } from './sheets-of';
export { sheetCss, sheetDocument, sheetPageCss, type DocumentOptions } from './document';
export { marginMm, paperMm } from './paper/page-css';
export { nextLetter, printsOf, versionOf, type Print, type SheetVersion } from './version';
export { namesOf, type Names } from './names';
export { shiftDay } from './calendar';
export { flaskFacts, type FlaskFacts } from './drinks/flask-facts';
export { fryRows, type FryRow } from './fry/rows';
export { sheetFace, sheetFontCss, sheetFontFiles } from './fonts';
export { foodName } from './food-name';
export { mustNotSlip } from './day/must-not-slip';
export { byDay, clockInDay } from './day/by-day';
export type { DayRow, DayRowKind } from './day/rows';
export { rowWords, type RowWords } from './day/row-words';
export { allWho } from './day/task-words';
export { isHouseholdDay, madeAhead, type AheadJob, type KeepingPlace } from './lists/ahead';
