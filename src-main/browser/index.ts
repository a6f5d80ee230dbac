export { hasDisplay, openAppWindow, windowArguments } from './app-window';
export type { AppWindow } from './app-window';
export { browserCandidates } from './candidates';
export { findBrowser, isProgram } from './find';
export { quietFlags, rootFlags, userId } from './flags';
export { isBoxed, writeStartPage } from './start-page';
