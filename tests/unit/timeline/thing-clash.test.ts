import { expect, test } from 'vitest';
import { planDay } from '../../../shared/timeline';
import { formatsFor } from '../../../shared/event';
import { sayMessage } from '../../../shared/words';
import { dayEvent, inputsOf, type TestDay } from './make-day';

const boil = (id: string) => ({ id, at: 760, steps: [{ id: 'boil', active: 2, passive: 28, needs: [{ thing: 'burner', count: 1 }], endsBefore: { earliest: 2, latest: 0 } }] });
const people = ['ann', 'bo', 'cy', 'di'].map((id) => ({ id, roles: ['cook'], from: 400, to: 1400 }));

function dayWith(dishes: readonly string[], burners: number) {
  const day: TestDay = { people, burners, dishes: dishes.map(boil) };
  const event = dayEvent(day);
  return { plan: planDay(event, inputsOf(day, event)), formats: formatsFor(event.preferences, event.day) };
}

test('three jobs need a burner at once and there are two: all three are named, with the minutes and the burners', () => {
  const { plan, formats } = dayWith(['rice', 'tea', 'beans'], 2);
  const clash = plan.overloads.find((o) => o.clash !== undefined)?.clash;
  expect(clash?.tasks.map((t) => t.split('/')[2]).toSorted().filter((x, i, all) => all.indexOf(x) === i)).toEqual(['beans', 'rice', 'tea']);
  expect(sayMessage(formats, clash!.message)).toMatch(/^Between 12:\d\d and 12:\d\d 3 jobs need a burner and there are 2: .*\.$/);
});
test('with one of the named jobs less, or one burner more, there is no clash', () => {
  for (const dishes of [['rice', 'tea'], ['rice', 'beans'], ['tea', 'beans']]) expect(dayWith(dishes, 2).plan.overloads.filter((o) => o.clash !== undefined || o.message.id === 'timeline.overload.thing')).toEqual([]);
  expect(dayWith(['rice', 'tea', 'beans'], 3).plan.overloads.filter((o) => o.clash !== undefined)).toEqual([]);
});
