import type { Formats } from '../formats';

/** What the plan would have somebody borrow, and why. */
export const loanWords = {
  'loan.title': 'The plan suggests',
  'loan.take': 'Put on the list', 'loan.takeOf': ({ name }: { readonly name: string }) => `Put on the list: ${name}`,
  'loan.wave': 'Not needed', 'loan.waveOf': ({ name }: { readonly name: string }) => `Not needed: ${name}`,
  'loan.back': ({ n }: { readonly n: number }, f: Formats) => `Show ${f.plural(n, 'the 1 suggestion', `the ${f.number(n)} suggestions`)} waved away`,
  'loan.edit.wave': ({ name }: { readonly name: string }) => `Not needed: ${name}`, 'loan.edit.back': 'Suggestions shown again',
  'loan.pan': ({ station }: { readonly station: string }) => `Pan like the first at ${station}, with a burner`,
  'loan.burner': ({ watts }: { readonly watts: number }, f: Formats) => `Burner of ${f.figure(watts / 1000, 'kW')} or more`,
  'loan.flask': ({ drink }: { readonly drink: string }) => `Flask or jug for ${drink}`,
  'loan.urn': ({ drink }: { readonly drink: string }) => `Urn that heats its own water, for ${drink}`,
  'loan.tub': 'Tub for ice', 'loan.boxes': 'Boxes with lids for food',
  'loan.coolBox': ({ litres }: { readonly litres: number }, f: Formats) => `Cool box of ${f.figure(litres, 'L')} or more, with cold packs`,
  'loan.gas': ({ kg }: { readonly kg: number }, f: Formats) => `Gas cylinder with ${f.figure(kg, 'kg')} or more`,
  'loan.why.shortage': ({ dish, unmet }: { readonly dish: string; readonly unmet: number }, f: Formats) => `${f.number(unmet)} of ${dish} would not be ready in time.`,
  'loan.why.unbrewed': ({ drink, litres }: { readonly drink: string; readonly litres: number }, f: Formats) => `${f.figure(litres, 'L')} of ${drink} cannot be made in time.`,
  'loan.why.ice': ({ kg }: { readonly kg: number }, f: Formats) => `Cold drinks stand in ${f.figure(kg, 'kg')} of ice.`,
  'loan.why.cold': ({ need, room }: { readonly need: number; readonly room: number }, f: Formats) => `What is made ahead takes ${f.figure(Math.ceil(need), 'L')}; there is room for ${f.figure(Math.floor(room), 'L')}.`,
  'loan.why.boxes': 'In place of buying them.',
  'loan.why.gas': ({ kg, has }: { readonly kg: number; readonly has: number }, f: Formats) => `The day asks for ${f.figure(kg, 'kg')} of gas, the cylinders hold ${f.figure(has, 'kg')}.`,
} as const;
