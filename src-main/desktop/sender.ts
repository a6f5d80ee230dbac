import type { IpcMainInvokeEvent, WebContents } from 'electron';

/** Start of every address of our own page. */
export const ownPrefix = 'app://main/';

/**
 * True for a message from the main frame of our own window showing our own page.
 * The prefix is compared, not the origin: the origin of every address of a scheme of one's own is the text "null".
 */
export function isOwnSender(event: Pick<IpcMainInvokeEvent, 'sender' | 'senderFrame'>, own: WebContents | undefined): boolean {
  const frame = event.senderFrame;
  return own !== undefined && event.sender === own && frame !== null && frame === event.sender.mainFrame && frame.url.startsWith(ownPrefix);
}
