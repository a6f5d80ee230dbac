import { randomUUID } from 'node:crypto';

/** Sheets waiting to be shown to a print window, by a key nobody can guess. */
export class PrintShelf {
  private readonly sheets = new Map<string, string>();

  put(html: string): string {
    const id = randomUUID();
    this.sheets.set(id, html);
    return id;
  }

  get(id: string): string | undefined {
    return this.sheets.get(id);
  }

  take(id: string): void {
    this.sheets.delete(id);
  }
}
