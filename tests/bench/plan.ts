/** `npm run bench`: how long `plan()` and its rooms take, by the clock and by processor time. Percentiles of single calls after warm-up, and each room as a share of the whole. */
import { performance } from 'node:perf_hooks';
import { needsOfMenu, planBuying } from '../../shared/buying';
import { planCooking } from '../../shared/cooking';
import { drinksNeeds, planDrinks } from '../../shared/drinks';
import type { Event } from '../../shared/event';
import { fryingNeeds, planFrying } from '../../shared/frying';
import { planGuests } from '../../shared/guests';
import { planKitchen } from '../../shared/kitchen';
import { planMenu } from '../../shared/menu';
import { plan } from '../../shared/plan';
import { planSafety } from '../../shared/safety';
import { planDay } from '../../shared/timeline';
import { referenceEvent } from './reference-event';

interface Spread { readonly p50: number; readonly p95: number; readonly p99: number }
/** By the clock on the wall, and by processor time of this process alone (all its threads): on a busy machine only the second says something about the program. */
interface Took { readonly clock: Spread; readonly processor: Spread }

function time(runs: number, warm: number, work: (i: number) => unknown): Took {
  for (let i = 0; i < warm; i += 1) work(i);
  const clock: number[] = [];
  const processor: number[] = [];
  for (let i = 0; i < runs; i += 1) {
    const used = process.cpuUsage();
    const start = performance.now();
    work(i);
    clock.push(performance.now() - start);
    const { user, system } = process.cpuUsage(used);
    processor.push((user + system) / 1000);
  }
  return { clock: spread(clock), processor: spread(processor) };
}

function spread(took: number[]): Spread {
  took.sort((a, b) => a - b);
  const at = (share: number) => took[Math.min(took.length - 1, Math.floor(share * took.length))] ?? Number.NaN;
  return { p50: at(0.5), p95: at(0.95), p99: at(0.99) };
}

const spell = ({ p50, p95, p99 }: Spread) => `p50 ${p50.toFixed(2).padStart(7)}   p95 ${p95.toFixed(2).padStart(7)}   p99 ${p99.toFixed(2).padStart(7)} ms`;

// A different headcount in every call, so that nothing can be answered from a memory of the last one.
const vary = (event: Event, i: number): Event => ({ ...event, guests: { ...event.guests, headcount: { adults: Math.round(eventSize(event) * 0.8) + (i % 20), children: null } } });
const eventSize = (event: Event): number => event.guests.waves.reduce((n, w) => n + Object.values(w.counts).reduce<number>((a, b) => a + (typeof b === 'number' ? b : 0), 0), 0);

function report(name: string, event: Event, runs: number): void {
  const whole = time(runs, Math.ceil(runs / 5), (i) => plan(vary(event, i)));
  const guests = planGuests(event), menu = planMenu(event, guests), kitchen = planKitchen(event);
  const frying = planFrying(event, menu, kitchen), drinks = planDrinks(event, menu, kitchen);
  const needs = [...needsOfMenu(event, menu), ...fryingNeeds(event, frying), ...drinksNeeds(drinks)];
  const buying = planBuying(event, needs);
  const cooking = planCooking(event, menu, drinks.rounds);
  const inputs = { guests, menu, buying, kitchen, frying, drinks, cooking };
  const day = planDay(event, inputs);
  const rooms: Record<string, Took> = {
    guests: time(runs, 20, (i) => planGuests(vary(event, i))),
    menu: time(runs, 20, () => planMenu(event, guests)),
    buying: time(runs, 20, () => planBuying(event, needs)),
    frying: time(runs, 20, () => planFrying(event, menu, kitchen)),
    drinks: time(runs, 20, () => planDrinks(event, menu, kitchen)),
    cooking: time(runs, 20, () => planCooking(event, menu, drinks.rounds)),
    timeline: time(runs, 20, () => planDay(event, inputs)),
    safety: time(runs, 20, () => planSafety(event, { ...inputs, day })),
  };
  console.log(`${name}: ${eventSize(event)} guests, ${event.guests.waves.length} waves, ${event.menu.dishes.length} dishes, ${frying.batches.length} batches, ${day.tasks.length} jobs`);
  const line = (label: string, t: Took, share = '') => console.log(`  ${label.padEnd(9)} clock ${spell(t.clock)}   processor ${spell(t.processor)}${share}`);
  line('plan()', whole);
  for (const [room, t] of Object.entries(rooms)) line(room, t, `   ${(100 * t.processor.p50 / whole.processor.p50).toFixed(0)} %`);
}

/** The whole first answer of the day for a reference event cut or grown to about 120 and 500 jobs, inputs given. */
function dayOfSize(name: string, event: Event, runs: number): void {
  const made = plan(event);
  const took = time(runs, Math.ceil(runs / 4), () => planDay(event, made));
  console.log(`${name}: ${made.day.tasks.length} jobs, ${made.day.overloads.length} that clash`);
  console.log(`  planDay() clock ${spell(took.clock)}   processor ${spell(took.processor)}`);
}
const few = referenceEvent(100);
dayOfSize('day of about 120 jobs', { ...few, menu: { ...few.menu, dishes: few.menu.dishes.slice(0, 3) } }, 200);
dayOfSize('day of about 500 jobs', referenceEvent(1700), 60);
report('reference event', referenceEvent(100), 300);
report('5,000 guests', referenceEvent(5000), 30);
