/** A comma-separated run of names, over as many lines as it takes. */
export const said = (names: string): readonly string[] => names.split(/,\s*/).map(name => name.trim());
