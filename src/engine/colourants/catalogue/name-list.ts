/** A comma-separated run of names, over as many lines as it takes. */
export const namesIn = (names: string): readonly string[] => names.split(/,\s*/).map(name => name.trim());
