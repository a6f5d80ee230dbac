/** Until the room of changes is there. */
export const fingerprint = (value: unknown): string => {
  let h = 5381;
  for (const c of JSON.stringify(value)) h = (h * 33 + (c.codePointAt(0) ?? 0)) % 4294967296;
  return h.toString(16);
};
