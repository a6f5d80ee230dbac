/** Signs a spreadsheet takes for the start of a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/** One cell: neutralised when a spreadsheet would run it, quoted where the format needs it. Source: RFC 4180, section 2. */
function cell(text: string): string {
  const safe = formulaStart.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A table as comma-separated values: lines end with CR LF, the last one too. Source: RFC 4180. */
export const csv = (rows: readonly (readonly string[])[]): string => rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
