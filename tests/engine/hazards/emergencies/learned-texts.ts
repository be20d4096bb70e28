import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { OILS } from '../../../../src/engine/batch/oils/index.ts';
import { colourants } from '../../../../src/engine/colourants/catalogue.ts';
import { CLASSES, type Class } from '../../../../src/engine/hazards/emergencies/learned/classes.ts';
import { featuresOf } from '../../../../src/engine/hazards/emergencies/learned/features.ts';
import { groundsIn } from '../../../../src/engine/hazards/emergencies/read.ts';
import { BARRED, type EmergencyId } from '../../../../src/engine/hazards/index.ts';
import { EXAMPLES } from '../../flaws/examples.ts';
import { listedTexts } from '../../questions/technique/texts.ts';
import type { Lesson } from '../../text/learned/fit.ts';

/** A text with what it tells of. `writer`: whose words they are; one writer is left out at a time. */
export type LearnedText = {
  readonly text: string;
  readonly label: Class;
  readonly writer: string;
  readonly kind: 'emergency' | 'question' | 'calm' | 'plain';
};

type Told = { readonly text: string; readonly id: EmergencyId };
type File = {
  readonly emergencies: readonly Told[];
  readonly 'no-alarm': readonly { readonly text: string }[];
  readonly 'first-aid-questions'?: readonly Told[];
};
const read = (file: string) => JSON.parse(readFileSync(join(import.meta.dirname, file), 'utf8'));

/** The first two files are two halves by one hand. */
const WRITERS = {
  tune: 'first',
  second: 'first',
  third: 'third',
  own: 'own',
  reviewed: 'reviewed',
  fourth: 'fourth',
  fifth: 'fifth',
  sixth: 'sixth',
  seventh: 'seventh',
  eighth: 'eighth',
  tenth: 'tenth',
  eleventh: 'eleventh',
  twelfth: 'twelfth',
  thirteenth: 'thirteenth',
  fourteenth: 'fourteenth',
  fifteenth: 'fifteenth',
  sixteenth: 'sixteenth',
  seventeenth: 'seventeenth',
} as const;

/** Of these every third text of each kind is kept, to try the model on what this writer said and it never saw. */
const KEPT_OF: ReadonlySet<string> = new Set([
  'tenth',
  'eleventh',
  'twelfth',
  'thirteenth',
  'fourteenth',
  'fifteenth',
  'sixteenth',
  'seventeenth',
]);
const isKept = (writer: string, at: number) => KEPT_OF.has(writer) && at % 3 === 2;

function told(isIn: (writer: string, at: number) => boolean): readonly LearnedText[] {
  return Object.entries(WRITERS).flatMap(([name, writer]) => {
    const file = read(`emergencies-${name}.json`) as File;
    const among = <One>(all: readonly One[] = []) => all.filter((_, at) => isIn(writer, at));
    return [
      ...among(file.emergencies).map(({ text, id }) => ({
        text,
        label: id,
        writer,
        kind: 'emergency' as const,
      })),
      ...among(file['first-aid-questions']).map(({ text, id }) => ({
        text,
        label: id,
        writer,
        kind: 'question' as const,
      })),
      ...among(file['no-alarm']).map(({ text }) => ({
        text,
        label: 'none' as const,
        writer,
        kind: 'calm' as const,
      })),
    ];
  });
}

/** The texts that nothing is learned from, though their writers' others are. */
export const keptTexts = (): readonly LearnedText[] => told(isKept);

/** Names that stand alone in an option: colours, oils, and a powder that is refused by name. */
const names = (): readonly string[] => [
  ...colourants.flatMap(({ names: { en, es } }) => [en, es, `2 cups ${en}`, `${es} 2 cdtas`]),
  ...OILS.flatMap(({ names: { en, es } }) => [en, `${es} 500 g`]),
  ...BARRED.flatMap(({ names: all }) => all.split('; ')),
  ...[
    'aluminium powder',
    'aluminum flakes',
    'polvo de aluminio',
    'zinc powder',
    'polvo de zinc',
    'polvo de bronce',
  ],
];

/** Asked of us, and no flaw: somebody is hurt. */
export const HURT =
  /hands went red and itchy|skin peeling a bit|fizzed like crazy|his skin burns and went red|dried out my skin raw|al lavarme las manos me arde|solo pica en algunos puntos|it climbed out of the mold!! very hot|fizzed and stank|burbujeo solita|se trago un pedazo|huevo podrido|my eye burns|blistered|my dog ate|the drops make my gloves slippery and burn|rash on both arms|rash up his arms|rozaduras del bebe|^volcano(?:!$| out of the mold)/u;

const OF_COLOURS: ReadonlySet<string> = new Set([
  'dose',
  'survives-lye',
  'law',
  'mix',
  'preview',
  'plan',
  'compare',
  'wet',
]);

/** A pot that goes thick or stays thin, how it is poured and swirled: what is cried over, and hurts nobody. */
const WITH_A_POT: ReadonlySet<string> = new Set([
  'thick-now',
  'riced-now',
  'thin-it',
  'pot-time',
  'no-trace',
  'split-batter',
  'blend-or-stir',
]);

const withAPot = () => listedTexts().filter(({ label }) => WITH_A_POT.has(label));

/** Questions and flaws in which no pattern tells of anybody who is hurt, four parts of the flaws apart, and names. */
function plain(): readonly LearnedText[] {
  const all = [
    'beginner-in-a-hurry',
    'market-seller',
    'three-generations',
    'four-of-one-group',
    'club-of-five',
    'six-voices',
  ].flatMap(name => {
    const set = read(`../../../sets/${name}.json`) as Record<string, readonly { text: string }[] | string>;
    return Object.values(set).flatMap(part =>
      typeof part === 'string' ? [] : part.map(({ text }) => ({ text, writer: name })),
    );
  });
  // What is asked of colours, amounts and plans, by makers of many places; of lye and of what came out amiss only those before.
  const asked = [
    'ward-and-woolshed',
    'six-countries',
    'barrio-and-bayou',
    'jeepney-and-pasture',
    'bazaar-and-bothy',
    'taproom-and-olivar',
    'allotment-and-laboratory',
    'staffroom-and-cradle',
    'van-and-hive',
    'garage-and-apiary',
    'schoolroom-and-goatfold',
    'harbour-and-hedge',
    'depot-and-vineyard',
    'ranch-and-obrador',
    'surgery-and-loom',
    'nightshift-and-lorry',
    'fishmarket-and-dispensary',
    'omnibus-and-porch',
    'conductor-and-neighbour',
    'labbench-and-bakehouse',
  ].flatMap(name =>
    (read(`../../../sets/${name}.json`).questions as readonly { text: string; job: string }[])
      .filter(({ job }) => OF_COLOURS.has(job))
      .map(({ text }) => ({ text, writer: name })),
  );
  // Kept out of tuning the causes; that they alarm nobody is learned from, so that others are asked for what is not known.
  const kept = ['part-1', 'part-2', 'part-3', 'part-4', 'second'].flatMap(name =>
    (read(`../../flaws/heldout/${name}.json`) as readonly { text: string }[]).map(({ text }) => ({
      text,
      writer: 'kept flaws',
    })),
  );
  const flaws = EXAMPLES.map(({ text }, at) => ({ text, writer: `flaws ${at % 4}` }));
  return [
    ...all,
    ...asked,
    ...kept,
    ...flaws,
    ...withAPot(),
    ...names().map(text => ({ text, writer: 'names' })),
  ]
    .filter(({ text }) => groundsIn(text).told.length === 0 && !HURT.test(text))
    .map(({ text, writer }) => ({ text, writer, label: 'none' as const, kind: 'plain' as const }));
}

/** Every text that is learned from. */
export const learnedTexts = (): readonly LearnedText[] => [
  ...told((writer, at) => !isKept(writer, at)),
  ...plain(),
];

export const lessonOf = ({ text, label }: LearnedText): Lesson => ({
  features: featuresOf(groundsIn(text)),
  label: CLASSES.indexOf(label),
});
