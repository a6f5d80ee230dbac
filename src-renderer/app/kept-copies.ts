import type { Answer } from '../../shared/host';
import { call } from '../bridge';
import { serialiseEvent } from './event-text';
import { inTurn } from './in-turn';
import { sessionStore } from './session';
import type { DocumentState } from './store';

// Keeping and letting go follow one another: a keep that comes late must not revive a copy that was let go.
const turn = inTurn();
const there = new Set<string>();
let letGoOf: string | null = null;

type Work = Pick<DocumentState, 'openId' | 'event' | 'file'>;

const input = ({ openId, event, file }: Work) => ({ id: openId, path: file.path, modified: file.modified, text: serialiseEvent(event) });

/** Puts unsaved work aside, and says so in the window while that fails. */
export function keepCopy(work: Work): Promise<Answer<unknown>> {
  there.add(work.openId);
  return turn(async () => {
    const answer = await call('recovery.keep', input(work));
    sessionStore.set({ keepFault: answer.ok ? null : answer.problem });
    return answer;
  });
}

/** Puts unsaved work aside while the page is going away: at once, because a turn may never come. */
export function keepCopyNow(work: Work): void {
  there.add(work.openId);
  // Without line ends and indents, because the browser sends only a short text on behalf of a page that is gone.
  const text = JSON.stringify(JSON.parse(serialiseEvent(work.event)));
  void call('recovery.keep', { ...input(work), text }, { leaving: true });
}

/** Lets the copy of a document go, if there is one. */
export function dropCopy(openId: string): void {
  if (!there.delete(openId)) return;
  void turn(() => call('recovery.discard', { id: openId }));
}

/** A copy was taken up: it belongs to the document open under this name now. */
export const copyTaken = (openId: string): void => void there.add(openId);

/** The cook does not want this document's unsaved work. It goes when the document does: what follows may be called off. */
export function letGo(openId: string): void {
  letGoOf = openId;
}

/** The document is not open any more. */
export function documentLeft(openId: string): void {
  if (letGoOf === openId) dropCopy(openId);
  letGoOf = null;
}

/** The cook wants to keep this document's work after all. */
export function holdOn(): void {
  letGoOf = null;
}
