/**
 * The names of a list, apart by commas, semicolons or lines, and where `plus` is set by `+` as well; trimmed, none empty. Nothing
 * is known of what they name: for names that nothing parts see `namesIn` of `listed-names.ts`.
 */
export const namesApart = (
  text: string,
  { plus = false }: { readonly plus?: boolean } = {},
): readonly string[] =>
  text
    .split(plus ? /[,;+\n]/u : /[,;\n]/u)
    .map(name => name.trim())
    .filter(name => name !== '');
