/** Molar masses g/mol and protons per molecule of kitchen acids. Chemistry (IUPAC atomic masses). */
const acids: Readonly<Record<string, { readonly molar: number; readonly protons: number }>> = {
  citric: { molar: 192.12, protons: 3 }, tartaric: { molar: 150.09, protons: 2 }, creamOfTartar: { molar: 188.18, protons: 1 },
  lactic: { molar: 90.08, protons: 1 }, acetic: { molar: 60.05, protons: 1 }, malic: { molar: 134.09, protons: 2 },
};
const sodaMolar = 84.007;
/** Gas constant J/molK over one atmosphere in kPa gives litres. */
const litresPerMolKelvin = 8.314462 / 101.325;

/** Litres of gas from baking soda at a temperature: one mole per mole with enough acid, half by heat alone. Ideal gas. */
export const sodaGasLitres = (sodaG: number, celsius: number, withAcid: boolean): number =>
  (sodaG / sodaMolar) * (withAcid ? 1 : 0.5) * litresPerMolKelvin * (celsius + 273.15);

/** Grams of an acid that use up the soda; null for an acid that is not listed. Stoichiometry. */
export function acidForSoda(sodaG: number, acid: string): number | null {
  const row = acids[acid];
  return row === undefined ? null : ((sodaG / sodaMolar) * row.molar) / row.protons;
}

/** Grams of an acid with a neutralising value: parts of soda used up by 100 parts. */
export const acidByValue = (sodaG: number, value: number): number => (sodaG * 100) / value;
