import { randomBytes, timingSafeEqual } from 'node:crypto';

/** A text nobody can guess. */
export const newSecret = (): string => randomBytes(32).toString('base64url');

/** Equal without telling by its duration how much of it was right. */
export function same(given: string, right: string): boolean {
  const a = Buffer.from(given);
  const b = Buffer.from(right);
  return a.length === b.length && timingSafeEqual(a, b);
}

/** How long a code that nobody used is good, in milliseconds: an hour to open a window, or to walk to the screen with the address. */
export const codeLifeMs = 3_600_000;
/** Most codes that wait to be used: nobody starts the program more often before a window is open. */
const mostCodes = 16;

/**
 * Who may come in. A start address carries a code that can be seen on a terminal and in a browser's list of pages;
 * so it is good once, for a cookie that only the window knows, and for an hour. Each start has its own: a second one must not shut the window out that the first is opening.
 */
export class Pass {
  private readonly codes = new Map<string, number>();
  private readonly cookie = newSecret();
  private readonly now: () => number;

  /** `now`: milliseconds that never go back. */
  constructor(now: () => number = () => performance.now()) {
    this.now = now;
  }

  /** A new code for a start address; those before stay good. */
  newCode(): string {
    const code = newSecret();
    this.codes.set(code, this.now() + codeLifeMs);
    const [oldest] = this.codes.keys();
    if (this.codes.size > mostCodes && oldest !== undefined) this.codes.delete(oldest);
    return code;
  }

  /** True once, for a right code that is not too old. */
  swap(given: string): boolean {
    let right: string | undefined;
    // Every code is compared, so that the time taken tells nothing.
    for (const code of this.codes.keys()) if (same(given, code)) right = code;
    if (right === undefined) return false;
    const until = this.codes.get(right) ?? 0;
    this.codes.delete(right);
    return this.now() <= until;
  }

  /** Browsers keep one cookie jar for all ports of an address: the port in the name keeps two programs apart. */
  static cookieName(port: number): string {
    return `brimful-${port}`;
  }

  setCookie(port: number): string {
    return `${Pass.cookieName(port)}=${this.cookie}; HttpOnly; SameSite=Strict; Path=/`;
  }

  /** True when a request's cookie header holds the cookie of this start. */
  admits(header: string | undefined, port: number): boolean {
    const name = `${Pass.cookieName(port)}=`;
    return (header ?? '').split(';').map((part) => part.trim()).some((part) => part.startsWith(name) && same(part.slice(name.length), this.cookie));
  }
}
