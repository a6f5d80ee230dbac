import type { Formats } from '../../../shared/words';

const two = (n: number): string => String(n).padStart(2, '0');

/** The moment of printing: for the event file, and in words for the sheet. Read from this computer's clock. */
export function printedNow(f: Formats): { readonly at: string; readonly words: string } {
  const now = new Date();
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return { at: `${day}T${two(now.getHours())}:${two(now.getMinutes())}`, words: `${f.date(day)}, ${f.clock(now.getHours() * 60 + now.getMinutes())}` };
}

/** A moment of the event file in words. */
export function printedThen(f: Formats, at: string): string {
  const [day = '', time = ''] = at.split('T');
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return `${f.date(day)}, ${f.clock(hours * 60 + minutes)}`;
}
