/** What is asked, and of what its answer warns: the caution, and a part of its sentence in English and in Spanish that no other caution's has. */
export type WarnedCase = readonly [
  asked: string | readonly string[],
  cautions: readonly (readonly [id: string, english: string, spanish: string])[],
];
