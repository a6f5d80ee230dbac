const named: Readonly<Record<string, string>> = {
  amp: '&', lt: '<', gt: '>', quot: '"', apos: '\'', nbsp: ' ', frac12: '½', frac14: '¼', frac34: '¾', frac13: '\u2153', frac23: '\u2154', frac18: '\u215b',
  frac38: '\u215c', frac58: '\u215d', frac78: '\u215e', deg: '°', ndash: '\u2013', mdash: '\u2014', hellip: '…', rsquo: '\u2019', lsquo: '\u2018', rdquo: '\u201d',
  ldquo: '\u201c', times: '×', frasl: '\u2044', thinsp: ' ', ensp: ' ', emsp: ' ', bull: '•', eacute: 'é', egrave: 'è', ecirc: 'ê', agrave: 'à', acirc: 'â',
  ccedil: 'ç', ntilde: 'ñ', auml: 'ä', ouml: 'ö', uuml: 'ü', Auml: 'Ä', Ouml: 'Ö', Uuml: 'Ü', szlig: 'ß', icirc: 'î', iuml: 'ï', oacute: 'ó', aacute: 'á',
};
const entity = /&(?:#(\d{1,7})|#[xX]([0-9a-fA-F]{1,6})|([A-Za-z][A-Za-z0-9]{1,8}));/g;

function sign(code: number): string {
  return code > 0 && code <= 0x10ffff && !(code >= 0xd800 && code <= 0xdfff) ? String.fromCodePoint(code) : '\ufffd';
}

/** Text with HTML entities written out; unknown ones stay as they are. One pass: what an entity gives is not read again. */
export const withoutEntities = (text: string): string => text.replace(entity, (all, decimal: string | undefined, hex: string | undefined, name: string | undefined) => {
  if (decimal !== undefined) return sign(Number(decimal));
  if (hex !== undefined) return sign(Number.parseInt(hex, 16));
  return name !== undefined && Object.hasOwn(named, name) ? (named[name] ?? all) : all;
});

/** Text without HTML: tags become spaces, entities are written out (twice, for pages that write them twice), control signs go. */
export function plainText(text: string): string {
  const untagged = withoutEntities(text).replace(/<\/?[A-Za-z][^<>]{0,500}>/g, ' ');
  // eslint-disable-next-line no-control-regex -- control signs are what is taken out
  return withoutEntities(untagged).replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufeff\u200b-\u200d\u2060\u00ad]/g, '').trim();
}

const bullet = /^(?:[-–—•*·▢□☐✓]|&bull;)\s+/;

/** A line made ready for reading: one kind of space, no bullet in front. The reading always keeps the line itself as it was written. */
export const tidyLine = (text: string): string => plainText(text).replace(/[\s\u00a0\u2000-\u200a\u202f\u205f\u3000]+/g, ' ').replace(/[\u2010\u2011\u2212]/g, '-').trim().replace(bullet, '');
