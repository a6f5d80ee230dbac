import { HostProblem } from './host-problem';

/** The error code of a failed file call ("ENOSPC"), or an empty text. */
export const codeOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string' ? error.code : '';

/** The sentence for a failed file call. Problems already told pass through. */
export function diskProblem(error: unknown, path: string): HostProblem {
  if (error instanceof HostProblem) return error;
  switch (codeOf(error)) {
    case 'ENOSPC':
    case 'EDQUOT':
    case 'EFBIG':
      return HostProblem.of('host.full', { path });
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return HostProblem.of('host.read-only', { path });
    case 'ENOENT':
    case 'ENOTDIR':
      return HostProblem.of('host.no-folder', { path });
    case 'ENAMETOOLONG':
      return HostProblem.of('host.name-too-long', { path });
    case 'EISDIR':
      return HostProblem.of('host.not-a-file', { path });
    default:
      return HostProblem.of('host.disk', { path, code: codeOf(error) || String(error) });
  }
}
