/**
 * What a spreadsheet may take for the beginning of a formula, blanks before it included, and the same signs at full width.
 * Source: OWASP, CSV Injection.
 */
const FORMULA = /^(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/u;

/** A cell that no spreadsheet takes for a formula, whatever a member wrote. */
function cell(value: string | number | undefined): string {
  if (value === undefined) return '';
  const text = typeof value === 'string' && FORMULA.test(value) ? `'${value}` : String(value);
  return /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows as comma-separated values. Source: RFC 4180. */
export const csv = (rows: readonly (readonly (string | number | undefined)[])[]): string =>
  rows.map(row => `${row.map(cell).join(',')}\r\n`).join('');
