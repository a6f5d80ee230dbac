import { bandFactors, legalRange, mostPerPerson, parameter, parameterSource, parameters, rolePortions, appetiteCurve, sharedAppetite } from '../reference';

/** A value of the tables that a household may replace. */
export interface TableValue {
  readonly value: number;
  /** Unit of value and range: a parameter's own, `pieces`, `g` or `ml` of a portion, empty for a plain factor. */
  readonly unit: string;
  /** Id of the source, for `sourceTitle`. */
  readonly source: string;
  /** Range a household's own figure may have. */
  readonly least: number;
  readonly most: number;
}

type Found = Pick<TableValue, 'value' | 'unit' | 'source'> | undefined;

function ofBand(key: string): Found {
  const [, band, kind] = key.split('.');
  const row = bandFactors.find((b) => b.band === band);
  if (row === undefined) return undefined;
  const value = { food: row.food, cold: row.cold, hot: row.hot, hotCaffeinated: row.hotCaffeinated }[kind ?? ''];
  return value === undefined ? undefined : { value, unit: '', source: row.source };
}

function ofPortion(key: string, unit: string): Found {
  const row = rolePortions.find((r) => `portion.${r.role}` === key);
  if (row === undefined) return undefined;
  const by = unit === 'pieces' || unit === 'piece' ? 'piece' as const : unit === 'ml' || unit === 'L' ? 'ml' as const : 'g' as const;
  const found = row[by];
  return found === null ? undefined : { value: found.value, unit: by === 'piece' ? 'pieces' : by, source: found.source };
}

function ofAppetite(key: string): Found {
  const dishes = Number(key.slice('appetite.'.length));
  const row = appetiteCurve.find((p) => p.dishes === dishes) ?? appetiteCurve.at(-1);
  return row === undefined ? undefined : { value: sharedAppetite(dishes), unit: '', source: row.source };
}

function find(key: string, unit: string): Found {
  if (key.startsWith('band.')) return ofBand(key);
  if (key.startsWith('portion.')) return ofPortion(key, unit);
  if (key.startsWith('appetite.')) return ofAppetite(key);
  return parameters.some((p) => p.id === key) ? { value: parameter(key).value, unit: parameter(key).unit === '-' ? '' : parameter(key).unit, source: parameterSource(key) } : undefined;
}

/**
 * What the tables say under the key of a house figure, and the range of a household's own: a parameter, `band.<band>.<kind>`, `appetite.<dishes>` or
 * `portion.<role>`. Null for a key that no house figure can replace.
 * @param unit unit the value is shown in; tells which portion of a role is meant (pieces, by weight or by volume).
 */
export function tableValue(key: string, unit: string): TableValue | null {
  const found = find(key, unit);
  const range = legalRange(key);
  if (found === undefined || range === null) return null;
  // A portion's range depends on the unit it is given in, as the check of the file has it.
  const most = key.startsWith('portion.') ? (found.unit === 'pieces' ? mostPerPerson.pieces : mostPerPerson.gramsOrMl) : range.most;
  return { ...found, least: range.least, most };
}
