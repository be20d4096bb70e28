import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isMatter } from '../../../../src/engine/questions/technique/topic.ts';
import { technique as english } from '../../../../src/words/en/colour/technique.ts';
import { technique as spanish } from '../../../../src/words/es/colour/technique.ts';
import { inboxTexts } from '../inbox.ts';
import { DOZENS, jobTexts, ORDINARY_WRITERS } from '../job-texts.ts';
import { type LabelledLine, labelledLines, linesIn } from '../labelled-lines.ts';
import { ordinarySets } from './ordinary.ts';

/** A question with what it is about, a matter or `none`. */
export type TechniqueText = LabelledLine;

/** Who asked without having seen what answers them: one is left out at a time. Lists of every matter, then ordinary questions. */
export const LISTS = ['home-help', 'market-garden', 'caretaker', 'porter', 'florist', 'mechanic'] as const;
export const ORDINARY = ['midlands', 'dye-works', 'lifeguard', 'barbershop', 'auckland', 'brisbane'] as const;

/** What is said near lye, and the matter of ours that is asked in the same words. */
const NEAR_LYE: Readonly<Record<string, string>> = {
  'after-pour': 'demould-cut',
  gear: 'goggles-gloves',
  'no-goggles': 'goggles-gloves',
  'weak-gear': 'goggles-gloves',
  dust: 'powder-dust',
  children: 'children-helping',
  'clean-up': 'lye-spilt-surface',
  'hot-crack': 'rising-now',
  'back-to-food': 'kitchen-tools',
  vessel: 'kitchen-tools',
  aluminium: 'kitchen-tools',
  'mould-stuff': 'kitchen-tools',
  'water-amount': 'water-amount',
  'no-trace': 'no-trace',
  vanillin: 'vanilla-brown',
  selling: 'label-selling',
  'fresh-plants': 'botanicals',
  'craft-glitter': 'shine-sparkle',
  sugars: 'honey-sugar',
  'when-safe': 'cure-time',
  'why-cure': 'cure-time',
  'undissolved-lye': 'lye-cloudy',
  'cloudy-lye': 'lye-cloudy',
  'scent-dose': 'scent-amount',
  'scale-off': 'scale-drift',
};

const nearLye = (): readonly TechniqueText[] =>
  [
    ...labelledLines(join(import.meta.dirname, '../lye-matters')),
    ...linesIn(readFileSync(join(import.meta.dirname, '../lye/topics/care-wordings.txt'), 'utf8'), 'lye'),
  ].map(({ text, label }) => {
    const matter = NEAR_LYE[label];
    // What else is asked near lye has answers of its own.
    return {
      text,
      ...(matter === undefined ? { label: 'none', writer: 'elsewhere' } : { label: matter, writer: 'lye' }),
    };
  });

/** What other sets ask of a colourant, a flaw, a recipe, and of other fields: no matter, but for the few that nobody labelled as one. */
const elsewhere = (): readonly TechniqueText[] =>
  jobTexts()
    .filter(({ label, part }) => label !== 'inside' && part !== 'own')
    .filter(({ writer }) => !DOZENS.has(writer) && !ORDINARY_WRITERS.has(writer))
    .filter(({ label, part }, at) => label === 'outside' || part === 'question' || at % 3 === 0)
    .map(({ text }) => ({ text, label: 'none', writer: 'elsewhere' }));

const ordinary = (): readonly TechniqueText[] =>
  ordinarySets().flatMap(({ name, questions }) =>
    questions.map(({ text, label }) => ({ text, label: isMatter(label) ? label : 'none', writer: name })),
  );

const ofWords = (): readonly TechniqueText[] =>
  [english, spanish].flatMap(({ matters }) =>
    Object.entries(matters).map(([label, text]) => ({ text, label, writer: 'own' })),
  );

/** What leans on an earlier message is about whatever that was, and in a talk so may what looks like chat or a cry by itself. */
const inInboxes = (): readonly TechniqueText[] =>
  inboxTexts()
    .filter(({ label }) => label !== 'follow-up' && label !== 'chat' && label !== 'vague-trouble')
    .map(one => ({ ...one, label: isMatter(one.label) ? one.label : (NEAR_LYE[one.label] ?? 'none') }));

/** What the lists and the ordinary questions ask. */
export const listedTexts = (): readonly TechniqueText[] => [
  ...labelledLines(join(import.meta.dirname, 'lines')),
  ...ordinary(),
];

export const techniqueTexts = (): readonly TechniqueText[] => [
  ...listedTexts(),
  ...inInboxes(),
  ...nearLye(),
  ...ofWords(),
  ...elsewhere(),
];
