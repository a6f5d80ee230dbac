import type { DispenserPlan } from '../../drinks';

/** What a tea-maker needs to know of a flask beforehand. Times in minutes from midnight, temperatures in degrees Celsius. */
export interface FlaskFacts {
  /** Coolest while something is in it, with the minute; null when it is never filled. */
  readonly coolest: { readonly celsius: number; readonly at: number } | null;
  /** Warmest while something is in it; what matters of a cold drink. */
  readonly warmest: { readonly celsius: number; readonly at: number } | null;
  /** First minutes it stands empty after having been filled. */
  readonly emptyAt: readonly number[];
}

/** Less than this is an empty flask: what does not come out of the tap any more. Litres, common practice, no source. */
const dregsLitres = 0.05;

/** Reads the coolest and warmest moments and the moments it runs empty off the minute series. */
export function flaskFacts(flask: DispenserPlan): FlaskFacts {
  let coolest: FlaskFacts['coolest'] = null;
  let warmest: FlaskFacts['warmest'] = null;
  const emptyAt: number[] = [];
  let full = false;
  flask.litres.forEach((litres, i) => {
    const at = flask.fromMinute + i;
    const celsius = flask.celsius[i];
    const holds = litres > dregsLitres;
    if (holds && celsius !== undefined && (coolest === null || celsius < coolest.celsius)) coolest = { celsius, at };
    if (holds && celsius !== undefined && (warmest === null || celsius > warmest.celsius)) warmest = { celsius, at };
    if (full && !holds) emptyAt.push(at);
    full = holds;
  });
  return { coolest, warmest, emptyAt };
}
