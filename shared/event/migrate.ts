/** Number of the format this program writes. */
export const currentVersion = 1;

/** A document of an older format, before the schema has seen it. */
export type RawEvent = Readonly<Record<string, unknown>>;

/** One step from a format to the next. Pure; unknown fields go through untouched. */
export interface Migration {
  /** Number of the format it starts from; it ends at the next. */
  readonly from: number;
  readonly apply: (raw: RawEvent) => RawEvent;
}

/** Every step ever needed, in any order. None yet: the first format is the current one. */
export const migrations: readonly Migration[] = [];

/** Number of a format name, `brimful-event/3` -> 3; null when it is no event format. */
export function versionOf(format: unknown): number | null {
  const match = typeof format === 'string' ? /^brimful-event\/(\d{1,4})$/.exec(format) : null;
  return match === null ? null : Number(match[1]);
}

/**
 * Brings a document to the current format, step by step. A document of the current or a newer format comes back as it is.
 * @returns null when a step is missing, so that the format cannot be read any more.
 */
export function migrate(raw: RawEvent, steps: readonly Migration[] = migrations, to: number = currentVersion): RawEvent | null {
  let version = versionOf(raw['format']);
  let value = raw;
  while (version !== null && version < to) {
    const from = version;
    const step = steps.find((s) => s.from === from);
    if (step === undefined) return null;
    version = from + 1;
    value = { ...step.apply(value), format: `brimful-event/${version}` };
  }
  return version === null ? null : value;
}
