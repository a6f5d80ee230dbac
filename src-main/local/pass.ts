import { randomBytes, timingSafeEqual } from 'node:crypto';

/** A text nobody can guess. */
export const newSecret = (): string => randomBytes(32).toString('base64url');

/** Equal without telling by its duration how much of it was right. */
export function same(given: string, right: string): boolean {
  const a = Buffer.from(given);
  const b = Buffer.from(right);
  return a.length === b.length && timingSafeEqual(a, b);
}

/**
 * Who may come in. The start address carries a code that can be seen on a terminal and in a browser's list of pages;
 * so it is good once, for a cookie that only the window knows, and then dead.
 */
export class Pass {
  private code: string | null = newSecret();
  private readonly cookie = newSecret();

  /** The code for the start address. */
  get startCode(): string {
    return this.code ?? '';
  }

  /** A new code for a second start; the one before is dead. */
  renew(): string {
    this.code = newSecret();
    return this.code;
  }

  /** True once, for the right code. */
  swap(given: string): boolean {
    if (this.code === null || !same(given, this.code)) return false;
    this.code = null;
    return true;
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
