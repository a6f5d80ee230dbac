const people: Readonly<Record<string, string>> = {
  under1: 'babies under 1', age1to3: 'children of 1 to 3', age4to6: 'children of 4 to 6', age7to9: 'children of 7 to 9',
  age10to12: 'children of 10 to 12', age13to17: 'young people of 13 to 17', adult: 'adults', olderAdult: 'older adults',
};

/** People of an age band in words: "children of 4 to 6". An unknown band is named by its id. */
export const peopleOfBand = (band: string): string => people[band] ?? band;
