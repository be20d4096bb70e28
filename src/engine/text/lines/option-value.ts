/* What a typed text means as a value of an option; undefined where it is none. English and Spanish. */

/** A number with a full stop or a comma. */
export const numberTyped = (text: string): number | undefined =>
  /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/u.test(text) ? Number(text.replace(',', '.')) : undefined;

export function yesNoTyped(text: string): boolean | undefined {
  if (/^(?:yes|y|true|sí|si)$/iu.test(text)) return true;
  return /^(?:no|n|false)$/iu.test(text) ? false : undefined;
}
