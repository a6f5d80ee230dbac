import { basename } from 'node:path';

/** Title and day of an event file for a list, without judging the rest: a damaged file still has a name to show. */
export function titleOf(text: string, path: string): { title: string; day: string } {
  const named = basename(path).replace(/\.brimful(\.bak)?$/i, '');
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return { title: named, day: '' };
    const title = 'title' in value && typeof value.title === 'string' && value.title.trim() !== '' ? value.title : named;
    const day = 'day' in value && typeof value.day === 'string' ? value.day : '';
    return { title, day };
  } catch {
    return { title: named, day: '' };
  }
}
