import { join } from 'node:path';
import { technique as english } from '../../../../src/words/en/colour/technique.ts';
import { technique as spanish } from '../../../../src/words/es/colour/technique.ts';
import { DOZENS, jobTexts, ORDINARY_WRITERS } from '../job-texts.ts';
import { type LabelledLine, labelledLines } from '../labelled-lines.ts';

/** A question with what it is about, a technique or `none`. */
export type TechniqueText = LabelledLine;

/** Who asked of techniques without having seen what answers them: one is left out at a time. */
export const WRITERS = ['midlands', 'dye-works', 'home-help', 'market-garden'] as const;

const folder = join(import.meta.dirname, 'lines');

/** What other sets ask of a colourant, a flaw, a recipe, and of other fields: no technique, but for the few that nobody labelled as one. */
const elsewhere = (): readonly TechniqueText[] =>
  jobTexts()
    .filter(({ label, part }) => label !== 'inside' && part !== 'own')
    .filter(({ writer }) => !DOZENS.has(writer) && !ORDINARY_WRITERS.has(writer))
    .filter(({ label, part }, at) => label === 'outside' || part === 'question' || at % 3 === 0)
    .map(({ text }) => ({ text, label: 'none', writer: 'elsewhere' }));

const ofWords = (): readonly TechniqueText[] =>
  [english, spanish].flatMap(({ matters }) =>
    Object.entries(matters).map(([label, text]) => ({ text, label, writer: 'own' })),
  );

export const techniqueTexts = (): readonly TechniqueText[] => [
  ...labelledLines(folder),
  ...ofWords(),
  ...elsewhere(),
];
