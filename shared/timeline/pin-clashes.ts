import { lengthOf, type Laid, type Placed } from './job';
import type { Resources } from './resources';
import type { Overload } from './types';
import type { Message } from '../words';

interface Clashing { readonly ids: readonly string[]; readonly job: Message; readonly more: number }

const spans = (p: Placed): { readonly id: string; readonly name: Message; readonly from: number; readonly to: number; readonly attention: number; readonly things: readonly string[] }[] => {
  let from = p.start;
  return p.job.stretches.map((s) => {
    const span = { id: s.id, name: s.name, from, to: from + s.minutes, attention: s.attention, things: p.things ? s.needs.map((n) => n.thing) : [] };
    from = span.to;
    return span;
  });
};

const overlap = (a: { from: number; to: number }, b: { from: number; to: number }): boolean => a.from < b.to - 1e-9 && b.from < a.to - 1e-9;
const kindOf = (thing: string): string => thing.split(':')[0] ?? thing;
/** Somebody at the oil does nothing else, whatever share a single job of theirs takes. */
const hold = (p: Placed): boolean => p.job.kind === 'watchOil' || p.job.kind === 'heatOil';

function told(found: readonly { readonly id: string; readonly name: Message }[]): Clashing | null {
  const [first] = found;
  return first === undefined ? null : { ids: [...new Set(found.map((s) => s.id))], job: first.name, more: new Set(found.map((s) => s.id)).size - 1 };
}

/** Jobs of a helper at the time of this one. */
const ofHelper = (who: string, p: Placed, placed: readonly Placed[]): Clashing | null => told(placed.filter((o) => o !== p && o.who === who)
  .flatMap((o) => spans(o).filter((s) => (s.attention > 0 || hold(o)) && spans(p).some((own) => own.attention > 0 && overlap(own, s)))));

const ofThings = (p: Placed, placed: readonly Placed[]): Clashing | null => {
  const wanted = p.job.stretches.flatMap((s) => s.needs.map((n) => kindOf(n.thing)));
  return told(placed.filter((o) => o !== p).flatMap((o) => spans(o).filter((s) => s.things.some((t) => wanted.includes(kindOf(t))) && spans(p).some((own) => overlap(own, s)))));
};

const anybody = (p: Placed, placed: readonly Placed[]): Clashing | null => told(placed.filter((o) => o !== p && o.who !== null)
  .flatMap((o) => spans(o).filter((s) => s.attention > 0 && spans(p).some((own) => own.attention > 0 && overlap(own, s)))));

/** Tasks of jobs that this one waits for and that end after it starts. */
const before = (p: Placed, byId: ReadonlyMap<string, Placed>): Clashing | null => told(p.job.after.flatMap((id) => {
  const o = byId.get(id);
  return o !== undefined && o.start + lengthOf(o.job) > p.start + 1e-9 ? spans(o).slice(-1) : [];
}));
const after = (p: Placed, placed: readonly Placed[]): Clashing | null => told(placed.filter((o) => o.job.after.includes(p.job.id) && o.start < p.start + lengthOf(p.job) - 1e-9).flatMap((o) => spans(o).slice(0, 1)));

/** Whoever it was given to does not do it: why. */
function notGiven(resources: Resources, p: Placed, { who, at, held }: Laid, placed: readonly Placed[]): { readonly message: Message; readonly clash: Clashing | null } | null {
  const person = resources.helpers.find((h) => h.person.id === who)?.person;
  if (person === undefined || p.who === who || !p.job.stretches.some((s) => s.attention > 0)) return null;
  const clash = ofHelper(person.id, p, placed);
  if (clash === null) return { clash, message: at === undefined ? { id: 'timeline.pin.assignedAway', params: { person: person.name, from: person.from, to: person.to } } : { id: 'timeline.pin.away', params: { held, at, person: person.name, from: person.from, to: person.to } } };
  const { job, more } = clash;
  return { clash, message: at === undefined ? { id: 'timeline.pin.assigned', params: { person: person.name, job, more } } : { id: 'timeline.pin.person', params: { held, at, person: person.name, job, more } } };
}

function clashOf(resources: Resources, p: Placed, laid: Laid, placed: readonly Placed[], byId: ReadonlyMap<string, Placed>): { readonly message: Message; readonly clash: Clashing | null } | null {
  const { at, held } = laid;
  const given = notGiven(resources, p, laid, placed);
  if (given !== null || at === undefined) return given;
  if (p.start !== at) return { clash: null, message: { id: 'timeline.pin.moved', params: { held, at, now: p.start } } };
  const things = p.things ? null : ofThings(p, placed);
  if (things !== null) return { clash: things, message: { id: 'timeline.pin.thing', params: { held, at, job: things.job, more: things.more } } };
  const nobody = p.who === null && p.job.stretches.some((s) => s.attention > 0) ? anybody(p, placed) : null;
  if (nobody !== null) return { clash: nobody, message: { id: 'timeline.pin.nobody', params: { held, at, job: nobody.job, more: nobody.more } } };
  const early = before(p, byId);
  if (early !== null) return { clash: early, message: { id: 'timeline.pin.before', params: { held, at, job: early.job, more: early.more } } };
  const late = after(p, placed);
  if (late !== null) return { clash: late, message: { id: 'timeline.pin.after', params: { held, at, job: late.job, more: late.more } } };
  if (p.start + lengthOf(p.job) > p.job.latest + 1e-9) return { clash: null, message: { id: 'timeline.pin.late', params: { held, at, by: p.job.latest } } };
  if (p.start + lengthOf(p.job) < p.job.notDoneBefore - 1e-9) return { clash: null, message: { id: 'timeline.pin.early', params: { held, at, from: p.job.notDoneBefore } } };
  return null;
}

/** What stands in the way of jobs that the cook pinned or gave to somebody, each with the jobs it clashes with. */
export function pinClashes(resources: Resources, placed: readonly Placed[]): Overload[] {
  if (!placed.some((p) => p.job.laid !== undefined)) return [];
  const byId = new Map(placed.map((p) => [p.job.id, p]));
  return placed.flatMap((p): Overload[] => {
    const { laid } = p.job;
    const found = laid === undefined ? null : clashOf(resources, p, laid, placed, byId);
    return found === null ? [] : [{ task: p.job.stretches[0]?.id ?? p.job.id, lateMinutes: 0, message: found.message, also: found.clash?.ids ?? [] }];
  });
}
