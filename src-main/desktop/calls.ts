import { ipcMain } from 'electron';
import type { WebContents } from 'electron';
import { desktopChannels } from '../../shared/host';
import type { Handle } from '../answer';
import { isOwnSender } from './sender';

/** Answers the calls of our own page and of nobody else. */
export function answerCalls(handle: Handle, own: () => WebContents | undefined): void {
  ipcMain.handle(desktopChannels.call, (event, method: unknown, input: unknown) => {
    if (!isOwnSender(event, own())) throw new Error('refused');
    return handle(method, input);
  });
}
