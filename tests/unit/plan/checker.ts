/**
 * An independent checker over the JSON of `brimful plan --json`. It shares no code with the core: it reads the numbers as a
 * stranger would and lists every broken promise in a sentence. Used on the three demos and on many changed events.
 */
export interface Json {
  readonly guests: { adults: number; children: number; presence: { fromMinute: number; expected: number[]; p10: number[]; p90: number[] } };
  readonly menu: { dishes: { id: string; name: string; portions: number; total: Amount; demand: { fromMinute: number; portions: number[] } }[] };
  readonly shopping: { lines: { ingredient: string; need: Amount; buy: Amount; packs: { count: number; size: Amount }[]; origins: { dish: string; amount: Amount }[]; cost?: string }[] };
  readonly frying: {
    holdMinutes: number | Record<string, number>;
    batches: { number: number; station: string; pan: string; dish: string; bowls: number[]; dropAt: number; liftAt: number; panFreeAt: number; eatBy: number; pieces: number }[];
    bowls: { number: number; mixAt: number; readyAt: number; useBy: number; batterKg: number; pieces: number }[];
    served: { dish: string; fromMinute: number; portions: number[]; unmet: number[] }[];
    limits: { station: string; pieces: number; limitedBy: string; others: Record<string, number> }[];
    oil: { fillLitres: number; uptakeLitres: number; buyLitres: number };
  };
  readonly drinks: {
    rounds: { number: number; drink: string; pot: string; startAt: number; readyAt: number; litres: number; ingredients: { ingredient: string; amount: string; unit: string }[] }[];
    fills: { dispenser: string; at: number; litres: number; round: number }[];
    dispensers: { id: string; drink: string; capacityLitres: number; fromMinute: number; litres: number[]; celsius: number[] }[];
  };
  readonly day: { tasks: { id: string; name: string; start: number; end: number; who: string[]; attention: number; needs: { thing: string; count: number }[] }[] };
  readonly safety: { findings: { rule: string; level: string; message: string }[]; notChecked: { rule: string; needs: string }[] };
}
interface Amount { amount: string; unit: string }

/** What the kitchen of the event has, as the checker needs it. */
export interface Has { readonly burners: number; readonly pans: readonly string[]; readonly people: readonly string[]; readonly counterPlaces: number; readonly ovens: number; readonly pots: number }

const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);

/** Every broken promise of a plan, in sentences; empty when all is well. */
export function faults(json: Json, has: Has): string[] {
  return [...guestFaults(json), ...fryFaults(json), ...eatenFaults(json), ...drinkFaults(json), ...buyFaults(json), ...dayFaults(json, has)];
}

function guestFaults({ guests }: Json): string[] {
  const out: string[] = [];
  const { expected, p10, p90 } = guests.presence;
  if (expected.length !== p10.length || expected.length !== p90.length) out.push('presence arrays differ in length');
  expected.forEach((e, i) => {
    if (e < -1e-9 || (p10[i] ?? -1) < -1e-9) out.push(`presence below zero in minute ${i}`);
    if ((p10[i] ?? 0) > (p90[i] ?? 0) + 1e-9) out.push(`p10 above p90 in minute ${i}`);
  });
  return out;
}

function fryFaults({ frying }: Json): string[] {
  const out: string[] = [];
  const numbers = new Set(frying.batches.map((b) => b.number));
  if (numbers.size !== frying.batches.length) out.push('batch numbers are not unique');
  if (new Set(frying.bowls.map((b) => b.number)).size !== frying.bowls.length) out.push('bowl numbers are not unique');
  for (const pan of new Set(frying.batches.map((b) => b.pan))) {
    const ordered = frying.batches.filter((b) => b.pan === pan).toSorted((a, b) => a.dropAt - b.dropAt);
    ordered.forEach((b, i) => {
      const next = ordered[i + 1];
      if (next && next.dropAt < b.panFreeAt) out.push(`pan ${pan}: batch ${next.number} goes in while batch ${b.number} has the pan`);
      if (!(b.dropAt < b.liftAt && b.liftAt <= b.panFreeAt && b.liftAt < b.eatBy)) out.push(`batch ${b.number}: times out of order`);
      const limit = frying.limits.filter((l) => l.station === b.station).map((l) => l.pieces);
      if (limit.length > 0 && b.pieces > Math.max(...limit)) out.push(`batch ${b.number} has more pieces than fit`);
      if (b.pieces < 1) out.push(`batch ${b.number} is empty`);
    });
  }
  const bowls = new Map(frying.bowls.map((b) => [b.number, b]));
  for (const b of frying.batches) for (const n of b.bowls) {
    const bowl = bowls.get(n);
    if (!bowl) out.push(`batch ${b.number} takes from bowl ${n}, which is not there`);
    else if (b.dropAt < bowl.readyAt || b.dropAt > bowl.useBy) out.push(`batch ${b.number} goes in outside the life of bowl ${n}`);
  }
  out.push(...bowlCoverFaults(frying));
  return out;
}

/** Bowls must hold enough for the batches that draw on them (batches in put-in order, each from its bowls in order). */
function bowlCoverFaults(frying: Json['frying']): string[] {
  const left = new Map(frying.bowls.map((b) => [b.number, b.pieces]));
  const out: string[] = [];
  for (const b of frying.batches.filter((x) => x.bowls.length > 0).toSorted((a, c) => a.dropAt - c.dropAt)) {
    let want = b.pieces;
    for (const n of b.bowls) {
      const take = Math.min(want, left.get(n) ?? 0);
      left.set(n, (left.get(n) ?? 0) - take);
      want -= take;
    }
    if (want > 0) out.push(`batch ${b.number} lacks batter for ${want} pieces`);
  }
  return out;
}

/** served + unmet = demanded in each minute, and the served pieces can really come from the batches within their hold. */
function eatenFaults({ menu, frying }: Json): string[] {
  const out: string[] = [];
  for (const s of frying.served) {
    const dish = menu.dishes.find((d) => d.id === s.dish);
    if (!dish) { out.push(`served dish ${s.dish} is not on the menu`); continue; }
    const at = (minute: number) => dish.demand.portions[minute - dish.demand.fromMinute] ?? 0;
    s.portions.forEach((p, i) => {
      if (p < 0 || (s.unmet[i] ?? 0) < 0) out.push(`${s.dish}: negative portions`);
      if (p + (s.unmet[i] ?? 0) !== at(s.fromMinute + i)) out.push(`${s.dish}: served and unmet do not add up at minute ${s.fromMinute + i}`);
    });
    if (sum(s.portions) + sum(s.unmet) !== sum(dish.demand.portions)) out.push(`${s.dish}: totals do not add up`);
    // First made, first eaten is best for equal holds: if this match fails, no match exists.
    const batches = frying.batches.filter((b) => b.dish === s.dish).toSorted((a, b) => a.liftAt - b.liftAt).map((b) => ({ ...b, left: b.pieces }));
    s.portions.forEach((p, i) => {
      const minute = s.fromMinute + i;
      let want = p;
      for (const b of batches) {
        if (want === 0 || b.liftAt > minute) break;
        if (b.eatBy < minute) continue;
        const take = Math.min(want, b.left);
        b.left -= take;
        want -= take;
      }
      if (want > 0) out.push(`${s.dish}: ${want} pieces at minute ${minute} come from no batch within its hold`);
    });
  }
  for (const d of menu.dishes) {
    if (sum(d.demand.portions) !== d.portions) out.push(`${d.id}: demand over time is ${sum(d.demand.portions)}, portions ${d.portions}`);
  }
  return out;
}

function drinkFaults({ drinks }: Json): string[] {
  const out: string[] = [];
  const rounds = new Map(drinks.rounds.map((r) => [r.number, r]));
  if (rounds.size !== drinks.rounds.length) out.push('round numbers are not unique');
  for (const d of drinks.dispensers) {
    if (d.litres.length !== d.celsius.length) out.push(`${d.id}: level and temperature differ in length`);
    d.litres.forEach((l, i) => { if (l < -1e-6 || l > d.capacityLitres + 1e-6) out.push(`${d.id}: level ${l} at minute ${d.fromMinute + i}`); });
  }
  const drawn = new Map<number, number>();
  for (const f of drinks.fills) {
    const r = rounds.get(f.round);
    if (!r) { out.push(`a fill names round ${f.round}, which is not there`); continue; }
    if (f.at < r.readyAt) out.push(`fill at ${f.at} before round ${f.round} is ready`);
    drawn.set(f.round, (drawn.get(f.round) ?? 0) + f.litres);
  }
  for (const [n, l] of drawn) if (l > (rounds.get(n)?.litres ?? 0) + 1e-6) out.push(`round ${n} gives ${l} L but has ${rounds.get(n)?.litres}`);
  return out;
}

function buyFaults({ shopping }: Json): string[] {
  const out: string[] = [];
  for (const line of shopping.lines) {
    const need = Number(line.need.amount), buy = Number(line.buy.amount);
    if (line.need.unit !== line.buy.unit) out.push(`${line.ingredient}: need in ${line.need.unit}, bought in ${line.buy.unit}`);
    const packs = sum(line.packs.map((p) => p.count * Number(p.size.amount)));
    if (Math.abs(packs - buy) > 1e-6) out.push(`${line.ingredient}: packs hold ${packs}, buy says ${buy}`);
    const origins = sum(line.origins.map((o) => Number(o.amount.amount)));
    if (Math.abs(origins - need) > 1e-6 * Math.max(1, need)) out.push(`${line.ingredient}: origins ${origins}, need ${need}`);
  }
  return out;
}

/** `larder`: nothing is owned in a demo unless the event says so; the caller adds it when needed. */
export function shortBuys({ shopping }: Json, larder: ReadonlyMap<string, number>): string[] {
  return shopping.lines.filter((l) => Number(l.buy.amount) + (larder.get(l.ingredient) ?? 0) < Number(l.need.amount) - 1e-9)
    .map((l) => `${l.ingredient}: buys ${l.buy.amount} of ${l.need.amount} ${l.need.unit}`);
}

function dayFaults({ day }: Json, has: Has): string[] {
  const out: string[] = [];
  if (new Set(day.tasks.map((t) => t.id)).size !== day.tasks.length) out.push('task ids are not unique');
  const moments = [...new Set(day.tasks.map((t) => t.start))];
  for (const t of day.tasks) {
    if (t.end < t.start) out.push(`${t.id} ends before it starts`);
    for (const w of t.who) if (!has.people.includes(w)) out.push(`${t.id} names ${w}, who does not help`);
  }
  const capacity: Record<string, number> = { burner: has.burners, counter: has.counterPlaces, oven: has.ovens, pot: has.pots };
  for (const m of moments) {
    const now = day.tasks.filter((t) => t.start <= m && m < t.end);
    for (const person of has.people) {
      const load = sum(now.filter((t) => t.who.includes(person)).map((t) => t.attention));
      if (load > 1 + 1e-9) out.push(`${person} is booked ${load} at minute ${m}`);
    }
    const used = new Map<string, number>();
    for (const t of now) for (const n of t.needs) {
      used.set(n.thing, (used.get(n.thing) ?? 0) + n.count);
      const kind = n.thing.split(':')[0] ?? n.thing;
      if (kind !== n.thing) used.set(kind, (used.get(kind) ?? 0) + n.count);
    }
    for (const [thing, count] of used) {
      const cap = thing.includes(':') ? 1 : capacity[thing];
      if (cap !== undefined && count > cap) out.push(`${count} × ${thing} wanted at minute ${m}, there are ${cap}`);
    }
  }
  return out;
}
