// Outside check of the calibration: a kitchen of its own, integrated second by second with other formulas than the core's. Its pieces take heat
// through a crust that grows (heat flow h·A·(oil − 100 °C), h falling with time), so heat and water lost come out of the run and are not put in;
// its pan loses heat by convection and radiation. Physical constants: water 4.19 kJ/kgK and 2257 kJ/kg (steam tables), oil 2.4 kJ/kgK hot
// (Choi and Okos), steel 0.5 kJ/kgK, Stefan and Boltzmann. Sizes, film and crust: made up, of a kind seen in fritters.
import { describe, expect, it } from 'vitest';
import { calibrate } from '../../shared/calibration';
import * as edit from '../../shared/edit';
import { newEvent, type Event, type Trial } from '../../shared/event';
import { loadInputs } from '../../shared/frying';
import { planKitchen } from '../../shared/kitchen';
import { plan } from '../../shared/plan';

interface Truth { readonly usefulW: number; readonly pieceG: number; readonly fryMinutes: number; readonly uptake: number; readonly oilLitres: number; readonly panKg: number; readonly water: number }
interface Run { readonly lowestC: number; readonly backMinutes: number; readonly cycleMinutes: number; readonly afterG: number }

const boltzmann = 5.67e-8;
/** Into a piece without a crust yet, W/m²K; half of it is left after a minute. */
const film = 500;
/** One batch in the true kitchen: put in, lifted after the fry time, the next put in once the oil is back and a minute of handling is over. */
function fryTruly(t: Truth, pieces: number, startC: number): Run {
  const oil = t.oilLitres * 0.92 * 2400 + t.panKg * 500;
  const radius = ((3 * t.pieceG * 1.3e-6) / (4 * Math.PI)) ** (1 / 3);
  const area = 4 * Math.PI * radius ** 2;
  const toBoil = (t.pieceG / 1000) * (t.water * 4190 + (1 - t.water) * 1700) * (100 - 15);
  let [celsius, lowest, taken, seconds] = [startC, startC, 0, 0];
  for (;;) {
    const through = seconds < t.fryMinutes * 60 ? film / (1 + seconds / 60) : 0;
    const flow = through * area * (celsius - 100);
    const loss = 0.9 * (celsius - 21) + 0.12 * 0.6 * boltzmann * ((celsius + 273) ** 4 - 294 ** 4) * 0.7;
    taken += flow;
    celsius += (t.usefulW - loss - flow * pieces) / oil;
    lowest = Math.min(lowest, celsius);
    seconds += 1;
    if (celsius >= startC && seconds > 20) break;
    if (seconds > 7200) throw new Error('never back');
  }
  // Heat that goes in later, when the oil was back before the pieces were lifted, still boils water off.
  for (let later = seconds; later < t.fryMinutes * 60; later += 1) taken += (film / (1 + later / 60)) * area * (startC - 100);
  const lost = Math.max(0, taken - toBoil) / 2_257_000;
  return { lowestC: lowest, backMinutes: seconds / 60, cycleMinutes: Math.max(t.fryMinutes + 1, seconds / 60), afterG: pieces * (t.pieceG - lost * 1000 + t.uptake * t.pieceG) };
}

const rated = 6000;
/** What the table believes of a gas burner, and a burner a quarter weaker than that. */
const truth: Truth = { usefulW: rated * 0.4 * 0.75, pieceG: 27, fryMinutes: 4, uptake: 0.14, oilLitres: 9, panKg: 2.5, water: 0.62 };

const must = (r: edit.EditResult): Event => {
  if ('problem' in r) throw new Error(`${r.path}: ${r.problem.id}`);
  return r.event;
};
function kitchen(oilLitres = 9): Event {
  const steps: ((e: Event) => edit.EditResult)[] = [
    (e) => edit.changeBurner(e, 'burner-1', { kind: 'gas', ratedW: rated, place: 'indoor', portable: false }),
    (e) => edit.addPan(e, { id: 'pot', name: 'Wide pot', shape: 'straight', rimMm: 400, depthMm: 220, massKg: 2.5, material: 'steel', oilLitres, burner: 'burner-1' }),
    (e) => edit.addRecipe(e, { id: 'fritters', name: 'Fritters', role: 'friedSnack', yield: { amount: { amount: '100', unit: 'piece' }, portions: 25 }, ingredients: [{ ingredient: 'salt', amount: { amount: '1', unit: 'tsp' } }], frying: { pieceBatterG: 25, fryMinutes: 4, waterFraction: 0.62 } }),
    (e) => edit.addDish(e, { id: 'fritters', recipe: 'fritters', portion: { amount: '8', unit: 'piece' } }),
    (e) => edit.addStation(e, { id: 'fry', name: 'Fry place', pans: ['pot'], dishes: ['fritters'] }),
    (e) => edit.setHeadcount(e, 60, 0),
  ];
  return steps.reduce((event, step) => must(step(event)), newEvent({ id: 'sim', title: 'Simulated', day: '2026-12-12' }));
}

const loadOf = (event: Event) => {
  const [load] = plan(event).frying.loads;
  if (load === undefined) throw new Error('nothing is fried');
  return load;
};
/** Minutes the burner needs for the heat of so many pieces, as the event believes. */
function heatMinutes(event: Event, pieces: number): number {
  const [state] = planKitchen(event).pans;
  const recipe = event.recipes.find((r) => r.id === 'fritters');
  if (state === undefined || recipe?.frying === undefined) throw new Error('no pan');
  const i = loadInputs(event, state, recipe.frying, recipe.id, 1);
  return (pieces * i.pieceKg.value * i.heat.value) / i.netKw.value / 60;
}
const off = (believed: number, real: number): number => Math.abs(believed - real) / real;

/** The card as a cook fills it in: scales to 5 g, thermometer to a degree, clock to a quarter of a minute. */
function cardOf(t: Truth, pieces: number, what: { readonly thermometer: boolean; readonly back: boolean }): Trial {
  const startC = 177;
  const run = fryTruly(t, pieces, startC);
  return {
    id: 'first', dish: 'fritters', pan: 'pot', pieces, beforeG: Math.round((pieces * t.pieceG) / 5) * 5, afterG: Math.round(run.afterG / 5) * 5, minutes: t.fryMinutes,
    ...(what.thermometer ? { startC, lowestC: Math.round(run.lowestC) } : {}), ...(what.back ? { backMinutes: Math.round(run.backMinutes * 4) / 4 } : {}),
  };
}
const afterCard = (event: Event, card: Trial): Event => must(edit.takeTrial(must(edit.setTrial(event, card)), card.id));

describe('a kitchen whose burner is a quarter weaker than rated', () => {
  const before = kitchen();
  const planned = loadOf(before);
  const pieces = planned.pieces.value;

  it('is planned more than a fifth wrong', () => {
    const real = fryTruly(truth, pieces, 177).cycleMinutes;
    expect(off(planned.cycleMinutes.value, real)).toBeGreaterThan(0.2);
    expect(off(heatMinutes(before, pieces), real)).toBeGreaterThan(0.2);
  });

  it.each([[true, true], [false, true]])('is planned to within a twentieth after one card (thermometer: %s)', (thermometer, back) => {
    const after = afterCard(before, cardOf(truth, pieces, { thermometer, back }));
    // The same batch as before, as the event now believes it.
    expect(off(heatMinutes(after, pieces), fryTruly(truth, pieces, 177).backMinutes)).toBeLessThan(0.05);
    // And what is now planned.
    const now = loadOf(after);
    expect(now.pieces.value).toBeLessThan(pieces);
    expect(off(now.cycleMinutes.value, fryTruly(truth, now.pieces.value, 177).cycleMinutes)).toBeLessThan(0.05);
  });

  it('is nearer, though less sure, by the lowest temperature alone', () => {
    const card = cardOf(truth, pieces, { thermometer: true, back: false });
    const after = afterCard(before, card);
    const real = fryTruly(truth, pieces, 177).backMinutes;
    expect(off(heatMinutes(after, pieces), real)).toBeLessThan(off(heatMinutes(before, pieces), real) / 2);
    expect(calibrate(before, card).settings.find((s) => s.told === 'usefulShare')?.rough).toBe(true);
  });

  it('tells the power itself to a twentieth', () => {
    const told = calibrate(before, cardOf(truth, pieces, { thermometer: true, back: true }));
    expect(off(told.usefulW?.value ?? 0, truth.usefulW)).toBeLessThan(0.05);
    const share = told.settings.find((s) => s.told === 'usefulShare');
    expect([share?.before, share?.after]).toEqual([0.4, expect.closeTo(0.3, 1)]);
  });
});

describe('other kitchens', () => {
  it('with little oil, where the first card was filled in with far too many pieces, come right with the second', () => {
    const t = { ...truth, oilLitres: 6 };
    let event = kitchen(6);
    const errors = [1, 2].map(() => {
      const n = loadOf(event).pieces.value;
      const wrong = off(loadOf(event).cycleMinutes.value, fryTruly(t, n, 177).cycleMinutes);
      event = afterCard(event, cardOf(t, n, { thermometer: true, back: true }));
      return wrong;
    });
    errors.push(off(loadOf(event).cycleMinutes.value, fryTruly(t, loadOf(event).pieces.value, 177).cycleMinutes));
    expect(errors[0]).toBeGreaterThan(0.15);
    expect(errors[1]).toBeLessThan(0.08);
    expect(errors[2]).toBeLessThan(0.05);
  });

  it('whose oil was back before the pieces were out are told, but marked as less sure', () => {
    const card = cardOf({ ...truth, usefulW: 2400 }, 14, { thermometer: true, back: true });
    expect(card.backMinutes).toBeLessThan(card.minutes ?? 0);
    const told = calibrate(kitchen(), card);
    expect(told.settings.find((s) => s.told === 'usefulShare')?.rough).toBe(true);
    expect(told.notes.map((n) => n.id)).toContain('trial.rough.early');
  });

  it.each([
    ['stronger than rated', { ...truth, usefulW: 6000 * 0.46 }, 44],
    ['half as strong', { ...truth, usefulW: 6000 * 0.2 }, 14],
    ['small pieces', { ...truth, pieceG: 18, fryMinutes: 3 }, 44],
    ['large pieces, fried longer', { ...truth, pieceG: 38, fryMinutes: 5.5 }, 20],
  ] as const)('%s: the time the oil needs is told to a twentieth, and to a tenth with a fifth more pieces', (_name, t, pieces) => {
    const after = afterCard(kitchen(), cardOf(t, pieces, { thermometer: true, back: true }));
    for (const [n, within] of [[pieces, 0.05], [Math.round(pieces * 1.2), 0.1]] as const) {
      const run = fryTruly(t, n, 177);
      expect(run.backMinutes).toBeGreaterThan(t.fryMinutes);
      expect(off(heatMinutes(after, n), run.backMinutes), `${n} pieces`).toBeLessThan(within);
    }
  });
});
