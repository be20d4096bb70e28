/** What a question is about, each answered by one command. */
export const JOBS = [
  'dose',
  'survives-lye',
  'law',
  'diagnose',
  'mix',
  'preview',
  'lye',
  'plan',
  'compare',
  'wet',
  'shelf-add',
  'shelf-use',
  'shelf-show',
  'challenge',
  /** An earlier answer is called into question. */
  'doubt',
  'help',
] as const;
export type Job = (typeof JOBS)[number];
