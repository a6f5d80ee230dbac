const two = (n: number): string => String(n).padStart(2, '0');

/** The local calendar day and the minutes after its midnight. */
export function today(now: Date): { today: string; now: number } {
  return {
    today: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    now: now.getHours() * 60 + now.getMinutes(),
  };
}
