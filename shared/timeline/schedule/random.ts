/** A stream of numbers in [0, 1), the same for the same start number. */
export type Random = () => number;

/** Random numbers from a start number. Source: Mulberry32 of T. Ettinger, public domain (from memory); period 2^32, enough for a search. */
export function randomFrom(startNumber: number): Random {
  let state = startNumber >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A whole number from 0 to `below` - 1. */
export const pick = (random: Random, below: number): number => Math.floor(random() * below);
