import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { technique as english } from '../../../../src/words/en/colour/technique.ts';
import { technique as spanish } from '../../../../src/words/es/colour/technique.ts';
import { DOZENS, jobTexts } from '../job-texts.ts';

/** A question with the technique that it asks about, or `none`; `writer`: whose words they are. */
export type TechniqueText = { readonly text: string; readonly label: string; readonly writer: string };

/** Who asked of techniques without having seen what answers them: one is left out at a time. */
export const WRITERS = ['midlands', 'dye-works', 'home-help', 'market-garden'] as const;

const folder = join(import.meta.dirname, 'lines');

/** One file a writer: techniques in brackets, and under each the questions about it, a line each. */
function ofFile(file: string): readonly TechniqueText[] {
  const texts: TechniqueText[] = [];
  let label = 'none';
  for (const line of readFileSync(join(folder, file), 'utf8').split('\n')) {
    const heading = /^\[(.+)\]$/u.exec(line)?.[1];
    if (heading !== undefined) label = heading;
    else if (line.trim() !== '') texts.push({ text: line.trim(), label, writer: file.replace('.txt', '') });
  }
  return texts;
}

/** What other sets ask of a colourant, a flaw, a recipe, and of other fields: no technique, but for the few that nobody labelled as one. */
const elsewhere = (): readonly TechniqueText[] =>
  jobTexts()
    .filter(({ label, part, writer }) => label !== 'inside' && part !== 'own' && !DOZENS.has(writer))
    .filter(({ label, part }, at) => label === 'outside' || part === 'question' || at % 3 === 0)
    .map(({ text }) => ({ text, label: 'none', writer: 'elsewhere' }));

const ofWords = (): readonly TechniqueText[] =>
  [english, spanish].flatMap(({ matters }) =>
    Object.entries(matters).map(([label, text]) => ({ text, label, writer: 'own' })),
  );

export const techniqueTexts = (): readonly TechniqueText[] => [
  ...readdirSync(folder).sort().flatMap(ofFile),
  ...ofWords(),
  ...elsewhere(),
];
