import type { Entry, Formats } from '../formats';

const allergens: Readonly<Record<string, string>> = {
  gluten: 'gluten', crustaceans: 'crustaceans', eggs: 'egg', fish: 'fish', peanuts: 'peanut', soya: 'soya', milk: 'milk', nuts: 'nuts',
  celery: 'celery', mustard: 'mustard', sesame: 'sesame', sulphites: 'sulphites', lupin: 'lupin', molluscs: 'molluscs',
};
const named = (allergen: string): string => allergens[allergen] ?? allergen;
const counted = (n: number, one: string, other: string, f: Formats): string => `${f.number(n)} ${f.plural(n, one, other)}`;
const guests = (people: number, f: Formats): string => counted(people, 'guest', 'guests', f);
const hours = (h: number, f: Formats): string => f.duration(Math.round(h * 60));
const others = (dishes: number, first: string, f: Formats): string => (dishes > 1 ? `${first} and ${counted(dishes - 1, 'other dish', 'other dishes', f)}` : first);

/** Names of a few; of many the first three and how many more. */
const some = (names: readonly string[], f: Formats): string => (names.length <= 4 ? f.list(names) : f.list([...names.slice(0, 3), `${f.number(names.length - 3)} more`]));

/** Words of the subject `safety`. */
export const safetyWords = {
  'safety.level.stop': 'Stop',
  'safety.level.warn': 'Change this',
  'safety.level.caution': 'Keep an eye on it',
  'safety.guidance': 'Guidance only. Local food, fire, gas and electrical rules and licensed practice come first.',
  'safety.notYet': 'Not checked yet: judge this one yourself.',

  'safety.title.HH-01': 'Hot food too cool',
  'safety.say.HH-01': (p: { dish: string; celsius: number; limit: number }, f: Formats) =>
    `${p.dish} is to wait at ${f.degrees(p.celsius)}. Keep it at ${f.degrees(p.limit)} or hotter, or serve it within two hours.`,
  'safety.title.HH-02': 'Hot food without a margin',
  'safety.say.HH-02': (p: { dish: string; celsius: number; limit: number }, f: Formats) =>
    `${p.dish} is to wait at ${f.degrees(p.celsius)}, which is just enough. Set the warmer to ${f.degrees(p.limit)} or hotter.`,
  'safety.title.CH-02': 'Fridge at its edge',
  'safety.say.CH-02': (p: { dish: string; celsius: number; limit: number }, f: Formats) => `${p.dish} is to wait at ${f.degrees(p.celsius)}. Turn the fridge down a little, to ${f.degrees(Math.floor(p.limit))}.`,
  'safety.title.CH-01': 'Cold food too warm',
  'safety.say.CH-01': (p: { dish: string; celsius: number; limit: number }, f: Formats) =>
    `${p.dish} is to wait at ${f.degrees(p.celsius)}. Keep it at ${f.degrees(p.limit)} or colder: on ice, or in the fridge until it is served.`,
  'safety.title.HH-03': 'Hot food below 63 degrees too long',
  'safety.say.HH-03': (p: { dish: string; celsius: number; limit: number }, f: Formats) =>
    `${p.dish} waits for two hours or more at ${f.degrees(p.celsius)}. United Kingdom rules allow less than ${f.degrees(p.limit)} once and for under two hours: keep it hotter, or throw it away.`,
  'safety.title.CH-03': 'Cold food above 8 degrees too long',
  'safety.say.CH-03': (p: { dish: string; celsius: number; limit: number }, f: Formats) =>
    `${p.dish} waits for four hours or more at ${f.degrees(p.celsius)}. United Kingdom rules allow more than ${f.degrees(p.limit)} once and for under four hours: chill it, or throw it away.`,
  'safety.title.CH-06': 'Too little cold space',
  'safety.say.CH-06': (p: { litres: number; space: number; limit: number }, f: Formats) =>
    `What is made ahead takes ${f.number(p.litres)} litres of cold, and of ${f.number(p.space)} litres only ${f.number(p.limit)} can be filled. Add a cool box with ice, or cook some of it later.`,
  'safety.title.PR-07': 'Hot rice too cool',
  'safety.say.PR-07': (p: { dish: string; celsius: number; limit: number }, f: Formats) =>
    `${p.dish} is to wait at ${f.degrees(p.celsius)}. Keep rice at ${f.degrees(p.limit)} or hotter and cook it as late as you can.`,
  'safety.title.ED-08': 'Milk in a flask not made for it',
  'safety.say.ED-08': (p: { dispenser: string; drink: string }) =>
    `${p.dispenser} holds ${p.drink}, which has milk in it. Insulated plastic dispensers are not made for milk: take one that is, fill it for a short time and wash tap and seals at once, or serve the milk apart.`,
  'safety.title.EL-04': 'More than a plug carries',
  'safety.say.EL-04': (p: { burner: string; watts: number; limit: number }, f: Formats) =>
    `${p.burner} takes ${f.number(p.watts)} W; a plug carries ${f.number(p.limit)} W. Look at how it is wired and at the fuse board.`,
  'safety.title.AL-02': 'Allergen that labels need not name',
  'safety.say.AL-02': (p: { allergen: string; people: number }, f: Formats) =>
    `${guests(p.people, f)} listed ${named(p.allergen)}, which labels in the United States need not name. Read the whole list of ingredients of everything bought, or ask the maker.`,
  'safety.title.CX-05': 'Guests at higher risk',
  'safety.title.TC-01': 'Out too long',
  'safety.say.TC-01': (p: { dish: string; hours: number }, f: Formats) =>
    `${p.dish} stands out for ${hours(p.hours, f)}; two hours is the limit. Put out small bowls one after the other, on ice, or keep it hot.`,
  'safety.title.TC-02': 'Out too long on a hot day',
  'safety.say.TC-02': (p: { dish: string; hours: number }, f: Formats) =>
    `${p.dish} stands out for ${hours(p.hours, f)} in more than ${f.degrees(32)}; one hour is the limit. Put out small bowls, on ice.`,
  'safety.title.TC-06': 'Fried too long ago',
  'safety.say.TC-06': (p: { batch: number; hours: number; by: number }, f: Formats) =>
    `The last of batch ${p.batch} is eaten ${hours(p.hours, f)} after it left the oil. Serve it by ${f.clock(p.by)} or throw it away; fry later in smaller batches.`,

  'safety.title.PR-01': 'Kidney beans not boiled enough',
  'safety.say.PR-01': (p: { dish: string; soak: number; boil: number }, f: Formats) =>
    `${p.dish}: the beans soak for ${f.duration(p.soak)} and boil for ${f.duration(p.boil)}. Soak them 5 hours, throw that water away, and boil them hard for 30 minutes in fresh water.`,
  'safety.title.PR-02': 'Kidney beans never boiled',
  'safety.say.PR-02': (p: { dish: string }) => `${p.dish} only simmers the beans. That leaves them poisonous: boil them hard for 30 minutes first, then simmer.`,
  'safety.title.PR-03': 'Long soak in a warm kitchen',
  'safety.say.PR-03': (p: { dish: string; soak: number }, f: Formats) => `${p.dish} soaks for ${f.duration(p.soak)} in a warm kitchen. Put the bowl into the fridge.`,
  'safety.title.PR-04': 'Rice stands warm too long',
  'safety.say.PR-04': (p: { dish: string; hours: number; celsius: number }, f: Formats) =>
    `${p.dish} stands for ${hours(p.hours, f)} at ${f.degrees(p.celsius)}. Keep it above ${f.degrees(60)} or eat it within two hours; reheating does not make it safe.`,
  'safety.title.BO-01': 'Garlic or herbs in oil',
  'safety.say.BO-01.warm': (p: { dish: string }, f: Formats) => `${p.dish} keeps plants in oil at room temperature. Make it on the day and keep what is left at ${f.degrees(5)} or colder.`,
  'safety.say.BO-01.long': (p: { dish: string; days: number; limit: number }, f: Formats) =>
    `${p.dish} keeps plants in oil for ${counted(Math.round(p.days), 'day', 'days', f)}. Use it within ${p.limit} days, or freeze it.`,

  'safety.title.ED-03a': 'Milk drink cools',
  'safety.say.ED-03a': (p: { drink: string; celsius: number; aim: number }, f: Formats) =>
    `${p.drink} falls to ${f.degrees(p.celsius)} in the flask. With milk in it, keep it at ${f.degrees(p.aim)} or hotter: smaller fills, or milk apart.`,
  'safety.title.ED-03b': 'Milk drink cold too long',
  'safety.say.ED-03b': (p: { drink: string; minutes: number }, f: Formats) =>
    `${p.drink} is under ${f.degrees(57)} for ${f.duration(p.minutes)}. Throw it away after two hours; refill sooner, or serve the milk apart.`,
  'safety.title.SC-03': 'Cups too hot to hand over',
  'safety.say.SC-03': (p: { drink: string; celsius: number; limit: number; minutes: number }, f: Formats) =>
    `${p.drink} is ${f.degrees(p.celsius)} in the cup; above ${f.degrees(p.limit)} a spill scalds at once. Let poured cups stand ${f.duration(Math.ceil(p.minutes))}, or add cold milk or water.`,
  'safety.title.CD-10': 'Children’s cups too hot',
  'safety.say.CD-10': (p: { drink: string; celsius: number; limit: number }, f: Formats) =>
    `${p.drink} is ${f.degrees(p.celsius)} in the cup and children have some. Cool their cups to ${f.degrees(p.limit)} with cold milk or water.`,
  'safety.title.CD-04': 'Honey and a baby',
  'safety.say.CD-04': (p: { dish: string; babies: number; months: number }, f: Formats) =>
    `${p.dish} has honey in it and ${counted(p.babies, 'baby', 'babies', f)} under ${p.months} months ${p.babies === 1 ? 'is' : 'are'} coming. Use sugar, or keep it away from them.`,

  'safety.title.DF-01': 'Oil outside its range',
  'safety.say.DF-01': (p: { dish: string; celsius: number; low: number; high: number }, f: Formats) =>
    `${p.dish} is fried at ${f.degrees(p.celsius)}. Fry between ${f.degrees(p.low)} and ${f.degrees(p.high)}: cooler, food soaks up oil; hotter, the oil spoils.`,
  'safety.title.DF-02': 'Oil too hot',
  'safety.say.DF-02': (p: { dish: string; celsius: number; limit: number }, f: Formats) =>
    `${p.dish} is fried at ${f.degrees(p.celsius)}. Stay under ${f.degrees(p.limit)} with this oil; ${f.degrees(175)} is hot enough.`,
  'safety.title.DF-03a': 'Pan rather full',
  'safety.say.DF-03a': (p: { pans: readonly string[]; share: number }, f: Formats) =>
    `${some(p.pans, f)}: hot oil with a batch in it fills ${p.pans.length > 1 ? 'up to ' : ''}${f.percent(p.share)} of the pan. A third is enough: take less oil, fewer pieces at once, or a bigger pan.`,
  'safety.title.DF-03b': 'Pan more than half full',
  'safety.say.DF-03b': (p: { pans: readonly string[]; share: number }, f: Formats) =>
    `${some(p.pans, f)}: hot oil with a batch in it fills ${p.pans.length > 1 ? 'up to ' : ''}${f.percent(p.share)} of the pan; half is the limit. Take less oil or a bigger pan.`,
  'safety.title.DF-04a': 'Little rim above the oil',
  'safety.say.DF-04a': (p: { pans: readonly string[]; mm: number }, f: Formats) =>
    `${some(p.pans, f)}: ${f.number(p.mm)} mm of rim are left above the oil with a batch in it. Put pieces in slowly; for 80 mm take less oil or fewer pieces at once.`,
  'safety.title.DF-04b': 'Oil too near the rim',
  'safety.say.DF-04b': (p: { pans: readonly string[]; mm: number }, f: Formats) =>
    `${some(p.pans, f)}: only ${f.number(p.mm)} mm of rim are left above the oil with a batch in it; 50 mm is the limit. Take less oil or fewer pieces at once.`,
  'safety.title.DF-12': 'Hot oil not watched',
  'safety.say.DF-12': (p: { person: string; at: number; minutes: number }, f: Formats) =>
    `${p.person} watches hot oil and has another job at ${f.clock(p.at)} for ${f.duration(p.minutes)}. Give that job to somebody else.`,
  'safety.say.DF-12.alone': (p: { from: number; to: number }, f: Formats) =>
    `Nobody is free to watch the oil from ${f.clock(p.from)} to ${f.clock(p.to)}. Ask one more helper, or turn the heat off.`,
  'safety.title.DF-14': 'Oil moved too soon',
  'safety.say.DF-14': (p: { hours: number }, f: Formats) =>
    `The oil stands for ${hours(p.hours, f)} before it is moved. Leave it 4 hours, and overnight when it is more than 3 litres.`,

  'safety.title.GC-01': 'Outdoor burner inside',
  'safety.say.GC-01': (p: { burner: string }) => `${p.burner} stands inside. Portable and outdoor burners make deadly gas in a room: use it outdoors, away from doors and windows.`,
  'safety.title.GC-05': 'Gas cylinder inside',
  'safety.say.GC-05': (p: { kg: number }, f: Formats) => `A cylinder with ${f.number(p.kg, 1)} kg of gas is inside. Keep it outdoors, upright, a metre from doors and windows.`,
  'safety.title.EL-01': 'Too much on one circuit',
  'safety.say.EL-01': (p: { circuit: string; watts: number; limit: number }, f: Formats) =>
    `${p.circuit}: ${f.number(p.watts)} W together, ${f.number(p.limit)} W is the limit for hours on end. Plug something into another circuit.`,
  'safety.title.LF-06': 'Pot too heavy for one',
  'safety.say.LF-06': (p: { pot: string; litres: number; limit: number }, f: Formats) =>
    `${p.pot} is filled with ${f.number(p.litres, 1)} litres; ${f.number(p.limit)} is what one person should lift. Ladle it out where it stands, lift it with two, or fill it less.`,

  'safety.title.AL-01a': 'Allergen on the menu',
  'safety.say.AL-01a': (p: { allergen: string; people: number; dishes: readonly string[]; open: readonly string[] }, f: Formats) =>
    `${guests(p.people, f)} listed ${named(p.allergen)}, and it is in ${f.list(p.dishes)}. Mark the cards. Without it: ${some(p.open, f)}.`,
  'safety.title.AL-01b': 'Nothing left to eat',
  'safety.say.AL-01b': (p: { allergen: string; people: number }, f: Formats) =>
    `Every dish has ${named(p.allergen)} in it and ${guests(p.people, f)} listed it. Add a dish without it.`,
  'safety.say.AL-01b.unknown': (p: { allergen: string; people: number }, f: Formats) =>
    `No dish is known to be without ${named(p.allergen)}, and ${guests(p.people, f)} listed it. Add a dish that is, or name what is in those you have.`,
  'safety.title.AL-07': 'Allergen in the frying oil',
  'safety.say.AL-07': (p: { allergen: string; people: number; pan: string; source: string; dishes: readonly string[] }, f: Formats) =>
    `${p.source} brings ${named(p.allergen)} into the oil of ${p.pan}, and so into ${f.list(p.dishes)}. ${guests(p.people, f)} listed it: take another pan with fresh oil and its own spoon.`,

  'safety.needs.hotHold': (p: { dishes: number; first: string }, f: Formats) => `Not checked: needs the temperature at which hot food waits (${others(p.dishes, p.first, f)}).`,
  'safety.needs.fridge': (p: { dishes: number; first: string }, f: Formats) => `Not checked: needs the temperature of the fridge (${others(p.dishes, p.first, f)}).`,
  'safety.needs.waits': (p: { dishes: number; first: string }, f: Formats) => `Not checked: needs how it waits, hot, cold or on the counter (${others(p.dishes, p.first, f)}).`,
  'safety.needs.beanSteps': (p: { dish: string }) => `Not checked: needs the soaking and boiling steps of ${p.dish}.`,
  'safety.needs.keeps': (p: { dish: string }) => `Not checked: needs how long and where ${p.dish} keeps.`,
  'safety.needs.oilKind': (p: { oil: string }) => `Not fully checked: needs a frying oil whose smoke point is known; "${p.oil}" is not in the table.`,
  'safety.needs.contents': (p: { allergens: readonly string[]; dish: string; ingredient: string; others: number }, f: Formats) =>
    `Not checked for ${f.list(p.allergens.map(named))}: needs the contents of ${p.dish}, "${p.ingredient}"${p.others === 0 ? '' : `, and of ${counted(p.others, 'other dish', 'other dishes', f)}`}.`,
  'safety.needs.oilContents': (p: { allergens: readonly string[]; oil: string }, f: Formats) =>
    `Not checked for ${f.list(p.allergens.map(named))}: needs what the frying oil "${p.oil}" is made of. Choose an oil from the list in Kitchen.`,
  'safety.needs.coldSpace': (p: { dishes: number; first: string }, f: Formats) => `Not checked: needs the litres of cold space in Kitchen (${others(p.dishes, p.first, f)}).`,
  'safety.needs.higherRisk': 'Not checked: needs to know whether somebody at higher risk eats with you. Answer it in Guests.',
  'safety.needs.watch': 'Not checked: needs somebody to watch the oil in the day plan.',
  'safety.needs.cylinder': (p: { burner: string }) => `Not checked: needs the gas cylinder of ${p.burner} and where it stands.`,
  'safety.needs.circuit': (p: { appliance: string }) => `Not checked: needs the circuit that ${p.appliance} is plugged into.`,
} as const satisfies Record<string, Entry>;
