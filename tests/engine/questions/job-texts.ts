import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { amountsIn } from '../../../src/engine/questions/found/amounts.ts';
import { factsOf } from '../../../src/engine/questions/found/facts.ts';
import { thingsIn } from '../../../src/engine/questions/found/names/entities.ts';
import { type Words, wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { CLASSES, type Class } from '../../../src/engine/questions/learned/classes.ts';
import { type Found, featuresOf, saidIn } from '../../../src/engine/questions/learned/features.ts';
import { fieldFeaturesOf } from '../../../src/engine/questions/learned/field/features.ts';
import { FIELDS } from '../../../src/engine/questions/learned/field/read.ts';
import { tellingStems } from '../../../src/engine/questions/learned/strange-words.ts';
import { settled } from '../../../src/engine/questions/settled.ts';
import { chatSpelt } from '../../../src/engine/text/spelling/chat-spelling.ts';
import { EXAMPLES } from '../flaws/examples.ts';
import type { Lesson } from '../text/learned/fit.ts';
import { linesOf, phrasings } from './phrasings.ts';
import { ofShelf } from './shelf-labels.ts';
import { type OrdinarySet, ordinarySets } from './technique/ordinary.ts';

/**
 * A text with what it asks for, or `inside` where only that is known: that it is no other field's. `writer`: whose words they
 * are; one writer is left out at a time.
 */
export type JobText = {
  readonly text: string;
  readonly label: Class | 'inside';
  readonly writer: string;
  readonly part: 'question' | 'scope' | 'flaw' | 'own';
};

type TextSet = {
  readonly questions: readonly { readonly text: string; readonly job: string }[];
  readonly scope: readonly { readonly text: string; readonly outside: boolean }[];
  readonly flaws?: readonly { readonly text: string }[];
};

const SETS = [
  'beginner-in-a-hurry',
  'market-seller',
  'three-generations',
  'four-of-one-group',
  'club-of-five',
  'six-voices',
  'station-and-stall',
  'tablet-and-hall',
  'bakery-and-balcony',
  'cab-and-quay',
  'ward-and-woolshed',
  'six-countries',
  'barrio-and-bayou',
  'jeepney-and-pasture',
  'bazaar-and-bothy',
  'harbour-and-hedge',
  'depot-and-vineyard',
  'dairy-and-comal',
  'creamery-and-mercado',
  'busline-and-feria',
  'oven-and-workshop',
  'taproom-and-olivar',
  'allotment-and-laboratory',
  'staffroom-and-cradle',
  'van-and-hive',
  'ranch-and-obrador',
  'surgery-and-loom',
  'salon-and-taxi',
  'garage-and-apiary',
  'schoolroom-and-goatfold',
  'wharf-and-tlapaleria',
  'nightshift-and-lorry',
  'switchboard-and-thimble',
  'fishmarket-and-dispensary',
  'omnibus-and-porch',
  'pipewrench-and-seminar',
  'conductor-and-neighbour',
  'labbench-and-bakehouse',
  'fishstall-and-estuary',
  'pit-and-guardia',
  'tram-and-panaderia',
  'prairie-and-needle',
  'infirmary-and-postbag',
  'schoolbus-and-comadre',
  'galley-and-botica',
  'organ-and-volcano',
  'carriage-and-cloister',
  'padlock-and-altiplano',
  'nightbake-and-florist',
  'schoolkitchen-and-nightdesk',
  'beeyard-and-notary',
  'tramshed-and-swimhall',
  'physio-and-dispatch',
] as const;

/** From this set on, what is asked of other crafts names what matters of lye name too: resin, drains, a bad batch. */
const FIRST_OF_FIELDS = SETS.indexOf('busline-and-feria');
/** Sets that teach jobs and the field, and of matters nothing; this one, of recipes and lye alone, teaches these too. */
export const OF_FIELDS: ReadonlySet<string> = new Set(
  SETS.slice(FIRST_OF_FIELDS).filter(writer => writer !== 'pit-and-guardia'),
);

/** Some sets call it a challenge where an earlier answer is called into question. */
const ofChallenge = (text: string): Class =>
  /\b(?:told|wrong|answer|figure|numbers?|dijiste|dices|segur[oa])\b/iu.test(text) ? 'doubt' : 'challenge';

function ofSet(writer: string): readonly JobText[] {
  const file = join(import.meta.dirname, `../../sets/${writer}.json`);
  const set = JSON.parse(readFileSync(file, 'utf8')) as TextSet;
  return [
    ...set.questions.map(
      ({ text, job }): JobText => ({
        text,
        label: job === 'shelf' ? ofShelf(text) : job === 'challenge' ? ofChallenge(text) : (job as Class),
        writer,
        part: 'question',
      }),
    ),
    ...set.scope.map(
      ({ text, outside }): JobText => ({
        text,
        label: outside ? 'outside' : 'inside',
        writer,
        part: 'scope',
      }),
    ),
    ...(set.flaws ?? []).map(({ text }): JobText => ({ text, label: 'diagnose', writer, part: 'flaw' })),
  ];
}

/** Two hands that each wrote lines as dozens of makers, under a heading each for what they ask. */
const CORPORA = ['first', 'second'] as const;
export const DOZENS: ReadonlySet<string> = new Set(CORPORA.map(hand => `${hand} dozens`));

const ofHeading = (heading: string, text: string): JobText['label'] =>
  heading === 'shelf'
    ? ofShelf(text)
    : heading === 'survives'
      ? 'survives-lye'
      : (heading as JobText['label']);

function ofCorpus(hand: (typeof CORPORA)[number]): readonly JobText[] {
  const folder = join(import.meta.dirname, 'corpus', hand);
  return ['en.txt', 'es.txt'].flatMap(name =>
    [...linesOf(join(folder, name))].flatMap(([heading, lines]) =>
      lines.map((text): JobText => {
        const label = ofHeading(heading, text);
        const part = label === 'outside' || label === 'inside' ? 'scope' : 'question';
        return { text, label, writer: `${hand} dozens`, part };
      }),
    ),
  );
}

/** What a busy chat brings beside our field and in it, by several hands, each with a matter of its own (`corpus/README.md`). */
const FIELD_HANDS = [
  'building-and-cloth',
  'kitchen-and-table',
  'market-and-lessons',
  'household-and-errands',
  'weather-and-weekend',
] as const;
export const FIELD_WRITERS: ReadonlySet<string> = new Set(FIELD_HANDS);

const ofField = (hand: (typeof FIELD_HANDS)[number]): readonly JobText[] =>
  [...linesOf(join(import.meta.dirname, `corpus/fields/${hand}.txt`))].flatMap(([heading, lines]) =>
    lines.map((text): JobText => ({ text, label: ofHeading(heading, text), writer: hand, part: 'scope' })),
  );

/** Labels of ordinary questions that no command answers, and that are not of the craft either. */
const NO_JOB: ReadonlySet<string> = new Set([
  'chat',
  'follow-up',
  'job:first-aid',
  'job:lye-care',
  'job:palette',
  'job:term',
  'none',
  'vague-trouble',
]);
const asOrdinary = (set: string) => `${set}, ordinary`;
export const ORDINARY_WRITERS: ReadonlySet<string> = new Set(
  ordinarySets().map(({ name }) => asOrdinary(name)),
);

/** Short questions as they come all day, by what another hand says they ask for; what is of the craft and no job is inside. */
const ofOrdinary = ({ name, questions }: OrdinarySet): readonly JobText[] =>
  questions
    .filter(({ label }) => !NO_JOB.has(label))
    .map(({ text, label }): JobText => {
      const heading = label.startsWith('job:') ? label.slice('job:'.length) : 'inside';
      const part = heading === 'inside' ? 'scope' : 'question';
      return { text, label: ofHeading(heading, text), writer: asOrdinary(name), part };
    });

/** Every text that is learned from. */
export const jobTexts = (): readonly JobText[] => [
  ...SETS.flatMap(ofSet),
  ...CORPORA.flatMap(ofCorpus),
  ...FIELD_HANDS.flatMap(ofField),
  ...ordinarySets().flatMap(ofOrdinary),
  ...phrasings(1).map(({ text, label }): JobText => ({ text, label, writer: 'own', part: 'own' })),
  ...EXAMPLES.filter((_, at) => at % 3 === 0).map(
    ({ text }): JobText => ({ text, label: 'diagnose', writer: 'own', part: 'own' }),
  ),
];

/** How much a text counts: flaws are many and alike. */
const WEIGHTS = { question: 3, scope: 3, flaw: 0.2, own: 2.5 } as const;

type Prepared = { readonly words: Words; readonly stems: readonly number[]; readonly found: () => Found };

function prepared({ text }: JobText): Prepared {
  const typed = wordsOf(chatSpelt(text));
  const things = thingsIn(typed);
  const words = settled(typed, things);
  const amounts = amountsIn(words, things);
  const stems = tellingStems(saidIn(words, { things, amounts }));
  // Half of what reading a text takes: for those alone whose lesson is asked for.
  const found = () => ({ things, amounts, facts: factsOf(text, words, { things, amounts }) });
  return { words, stems, found };
}

const ANY_BUT_OUTSIDE = CLASSES.flatMap((one, at) => (one === 'outside' ? [] : [at]));
/** One hand wrote as many makers: each knows words that the others do not. */
const VOICES = 8;

/** What a text teaches of the job that it asks for, and of the field that it is about. */
type Taught = { readonly lesson: Lesson; readonly ofField: Lesson };

function taughtBy(text: JobText, { words, found: foundIn }: Prepared, known: ReadonlySet<number>): Taught {
  const found = foundIn();
  const weight = WEIGHTS[text.part];
  const label = text.label === 'inside' ? ANY_BUT_OUTSIDE : CLASSES.indexOf(text.label);
  // One label that is no class would turn every weight into nothing.
  if (label === -1) throw new Error(`no job: ${text.label}, of “${text.text}”`);
  const features = featuresOf(words, found, known);
  const field = FIELDS.indexOf(text.label === 'outside' ? 'elsewhere' : 'ours');
  const ofField = { features: fieldFeaturesOf(words, found, known, features), label: field, weight };
  return { lesson: { features, label, weight }, ofField };
}

/** What a text holds for a program that knows these words of makers, whoever used them. */
export const asKnown = (text: JobText, known: ReadonlySet<number>): Taught =>
  taughtBy(text, prepared(text), known);

/** What each text teaches, worked out when it is asked for, and the words that makers use; a text's own writer is no witness to its words. */
export function lessonsOf(texts: readonly JobText[]): {
  readonly lessonOf: (text: JobText) => Lesson;
  /** What a text teaches of the field that it is about. */
  readonly fieldLessonOf: (text: JobText) => Lesson;
  readonly known: ReadonlySet<number>;
} {
  const read = texts.map(prepared);
  const voices = texts.map(({ writer }, at) =>
    DOZENS.has(writer) || writer === 'own' ? `${writer} ${at % VOICES}` : writer,
  );
  const users = new Map<number, Set<string>>();
  for (const [at, { stems }] of read.entries())
    if (texts[at]!.label !== 'outside')
      for (const stem of stems) users.set(stem, (users.get(stem) ?? new Set()).add(voices[at]!));
  const isKnown = (stem: number, voice: string) => {
    const all = users.get(stem);
    return all !== undefined && (all.size > 1 || !all.has(voice));
  };
  const places = new Map(texts.map((text, at) => [text, at]));
  const taught = new Map<JobText, Taught>();
  function teach(text: JobText) {
    const at = places.get(text)!;
    const one = read[at]!;
    return taughtBy(text, one, new Set(one.stems.filter(stem => isKnown(stem, voices[at]!))));
  }
  function of(text: JobText) {
    const both = taught.get(text) ?? teach(text);
    taught.set(text, both);
    return both;
  }
  return {
    lessonOf: text => of(text).lesson,
    fieldLessonOf: text => of(text).ofField,
    known: new Set(users.keys()),
  };
}
