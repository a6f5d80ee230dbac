import { HostProblem } from '../problem';

/** What a writer last saw of a file: its modification time in milliseconds, that there was none, or nothing that counts: it is written whatever is there. */
export type Seen = number | 'no-file' | 'whatever';

/** True when a file is not as it was last seen. `there`: its modification time now; null when it is not there. */
export function isChanged(seen: Seen, there: number | null): boolean {
  if (seen === 'whatever') return false;
  return seen === 'no-file' ? there !== null : there !== seen;
}

/** @throws HostProblem `changed-outside` when a file that is there is not the one last seen, be it newer or older. */
export function refuseChanged(path: string, seen: Seen, there: number | null): void {
  if (there !== null && isChanged(seen, there)) throw HostProblem.of('host.changed-outside', { path });
}
