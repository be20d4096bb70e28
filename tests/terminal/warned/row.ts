/** Lines one after another, the last of which is looked at; `/press 4` is the fourth button of the answers before it. */
type Lines = string | readonly string[];

/**
 * What is asked, in each language where it is words, and of what its answer warns: the caution, and a part of its sentence in
 * English and in Spanish that no other caution's has.
 */
export type WarnedCase = readonly [
  asked: Lines | { readonly en: Lines; readonly es: Lines },
  cautions: readonly (readonly [id: string, english: string, spanish: string])[],
];
