import { readdirSync, readFileSync } from 'node:fs';
import { parseSize } from '../../src/engine/batch/batch-size.ts';
import { readQuestion } from '../../src/engine/questions/read.ts';
import { Refusal, unlessRefused } from '../../src/engine/refusal.ts';
import { apart, colourNamed } from '../../src/engine/text/colours/colour-name.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import { readInChat } from '../engine/questions/read-in-chat.ts';
import { NEAR, near } from './same-thing.ts';
import type { Expect, TextSet } from './text-set.ts';
import { wrongAmount } from './wrong-amount.ts';
import { wrongOils } from './wrong-oils.ts';
import { wrongOptions } from './wrong-options.ts';
import { type Answered, wrongQuestion } from './wrong-question.ts';

/*
 * Lines of the sets as the engine alone reads them, without a conversation around it: quick enough for a test that is asked of each change
 * (`npm run mutants`). What each should be read as was labelled by its writer.
 */

/** A line of a set, and what is wrong with how it is read; undefined where all is right. */
export type Line = {
  readonly file: string;
  readonly at: number;
  readonly text: string;
  readonly wrong: () => string | undefined;
};

/** What is read of the lines of each part. */
export const READ = [
  'amounts',
  'colours',
  'questions',
  'portions',
  'scope',
  'recipes',
  'standing',
  'altered',
] as const;
export type Read = (typeof READ)[number];

const sets = new URL('.', import.meta.url);
const pairs = new URL('../engine/questions/lye/pairs/', import.meta.url);

type Pair = { readonly plain: string; readonly altered: string; readonly plain_oils: Record<string, number> };

/** Facts that a question tells only where its writer labelled one of these. */
const LABELLED_AS = {
  portion: ['portion_ml', 'portion_g_batter', 'portion_g_oils'],
  strength: ['strength'],
  powder: ['grams', 'tsp'],
  region: ['region'],
  superfat: ['percent'],
  percent: ['percent'],
  target: ['target_hex'],
} as const;
type Labelled = keyof typeof LABELLED_AS;

/** A dose for a shade, and a batch, tell more than their writers labelled. */
const unlabelledIn = (job: string): readonly Labelled[] =>
  (Object.keys(LABELLED_AS) as Labelled[]).filter(
    fact => job !== 'lye' && job !== 'plan' && !(job === 'dose' && fact === 'target'),
  );

function wrongRead(text: string, job: string, expect: Expect): string | undefined {
  const { readings, facts, outside } = readQuestion(text);
  const { job: got, given } = readings[0] ?? {};
  const understood = { job: got, given, outside, facts } as NonNullable<Answered['understood']>;
  const wrong = wrongQuestion({ understood }, job, expect);
  if (wrong !== undefined) return wrong;
  const more = unlabelledIn(job).find(
    fact => facts[fact] !== undefined && !LABELLED_AS[fact].some(label => label in expect),
  );
  if (more) return `${more} ${JSON.stringify(facts[more])}, which nobody told`;
  const names = (expect.colourant === undefined ? 0 : 1) + ((expect.ingredients as string[])?.length ?? 0);
  if (names > 0 && job !== 'mix' && job !== 'plan' && facts.named.length !== names)
    return `names ${facts.named.join(', ')}`;
  return wrongOptions((given ?? {}) as Readonly<Record<string, string>>, job, expect);
}

function wrongField(text: string, isOutside: boolean): string | undefined {
  const { outside, readings } = readQuestion(text);
  if (isOutside) return outside === undefined ? 'taken for ours' : undefined;
  return outside ?? (readings.length === 0 ? 'not understood' : undefined);
}

/** Words without which nobody tells a liquid, its amount or its strength. */
const OF_LIQUIDS = /water|agua|lye|conc|solu|lej|liqu|leche|milk|beer|cerveza|coffee|café|tea|té|aloe|:/iu;
const OF_POTASH = /koh|pot[aá]s/iu;

/** What a recipe is given beside its oils; undefined where each was told. */
function wrongBeside(text: string, { lye, water, liquid }: ReturnType<typeof readInChat>['given']) {
  const isPotash = lye?.startsWith('KOH') === true;
  if (isPotash && !OF_POTASH.test(text)) return 'potash, which nobody named';
  const hasLiquid = water !== undefined || liquid !== undefined;
  return hasLiquid && !OF_LIQUIDS.test(text) ? `water ${water ?? ''} liquid ${liquid ?? ''}` : undefined;
}

/** What all oils weigh where their shares are told; undefined where that is right. */
function wrongTotal(size: string | undefined, { total_g: total, portion_g_oils: oils }: Expect) {
  const wanted = total ?? oils;
  if (wanted === undefined || size === undefined) return undefined;
  const read = parseSize(size);
  return read.by === 'oils' && near(read.grams, wanted) ? undefined : `size ${size}`;
}

/** What is told again of a message stands in it; undefined where all does. */
function wrongTold(text: string, { left, respelt = [] }: ReturnType<typeof readInChat>): string | undefined {
  const said = unaccented(text).replaceAll(/[^\p{L}\p{N}]+/gu, ' ');
  const stands = (part: string) =>
    said.includes(
      unaccented(part)
        .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
        .trim(),
    );
  const missing = [...left, ...respelt.map(({ typed }) => typed)].find(part => !stands(part));
  return missing && `told again, but never said: ${missing}`;
}

/** Of a recipe the oils with their weights or shares, a superfat only where one is told, and the lye that was weighed. */
function wrongRecipe(text: string, expect: Expect): string | undefined {
  const { oils, percent, lye } = expect;
  const read = readInChat(text);
  const { given, weighed } = read;
  if (lye !== undefined && !(weighed && near(weighed.grams, lye))) return `weighed ${weighed?.grams}`;
  if (given.oils === undefined) return 'no oils';
  if (percent === undefined && given.superfat !== undefined) return `superfat ${given.superfat}`;
  if (percent !== undefined && !near(Number(given.superfat), percent)) return `superfat ${given.superfat}`;
  return (
    wrongBeside(text, given) ??
    wrongTotal(given.size, expect) ??
    wrongTold(text, read) ??
    wrongOils(given.oils, oils as Record<string, number>, given.size)
  );
}

function wrongColour(text: string, hex: string): string | undefined {
  const read = colourNamed(text);
  return read && apart(read.hex, hex) <= NEAR ? undefined : `${read?.name} for ${hex}`;
}

/** What does not stand as it is told is asked about, or nothing of it is reckoned. */
const wrongAltered = (text: string): string | undefined =>
  unlessRefused(() => readInChat(text))?.given.oils && 'read as it stands';

const rows = <Row>(folder: URL, read: (file: string) => readonly Row[] | undefined) =>
  readdirSync(folder)
    .filter(name => name.endsWith('.json'))
    .flatMap(file => (read(file) ?? []).map((row, at) => ({ file, at, row })));
const parsed = (folder: URL, file: string) => JSON.parse(readFileSync(new URL(file, folder), 'utf8'));

/** What a reader refuses is wrong too. */
const orRefused = (read: () => string | undefined) => () => {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal) return `refused: ${error.id}`;
    throw error;
  }
};

type Parts = Omit<TextSet, 'writer'>;
/** The rows of one part of all sets. */
const ofSets = <Part extends keyof Parts>(part: Part) =>
  rows<Parts[Part][number]>(sets, file => (parsed(sets, file) as Partial<Parts>)[part]);
const ofPairs = () => rows(pairs, file => parsed(pairs, file).pairs as readonly Pair[]);

/** Jobs that are done for a portion or a batch, which is told. */
const OF_PORTIONS: ReadonlySet<string> = new Set(['dose', 'plan', 'preview', 'wet']);

const LINES: Readonly<Record<Read, () => readonly Line[]>> = {
  amounts: () =>
    ofSets('amounts').map(({ row, ...line }) => ({ ...line, text: row.text, wrong: () => wrongAmount(row) })),
  colours: () =>
    ofSets('colours').map(({ row, ...line }) => ({
      ...line,
      text: row.text,
      wrong: () => wrongColour(row.text, row.hex),
    })),
  questions: () =>
    ofSets('questions').map(({ row, ...line }) => ({
      ...line,
      text: row.text,
      wrong: () => wrongRead(row.text, row.job, row.expect),
    })),
  portions: () =>
    ofSets('questions')
      .filter(({ row }) => OF_PORTIONS.has(row.job) && /\d/u.test(row.text))
      .map(({ row, ...line }) => ({
        ...line,
        text: row.text,
        wrong: () => wrongRead(row.text, row.job, row.expect),
      })),
  scope: () =>
    ofSets('scope').map(({ row, ...line }) => ({
      ...line,
      text: row.text,
      wrong: () => wrongField(row.text, row.outside),
    })),
  recipes: () =>
    ofSets('questions')
      .filter(({ row }) => row.expect.oils !== undefined)
      .map(({ row, ...line }) => ({
        ...line,
        text: row.text,
        wrong: () => wrongRecipe(row.text, row.expect),
      })),
  standing: () =>
    ofPairs().map(({ row, ...line }) => ({
      ...line,
      text: row.plain,
      wrong: () => wrongRecipe(row.plain, { oils: row.plain_oils }),
    })),
  altered: () =>
    ofPairs().map(({ row, ...line }) => ({
      ...line,
      text: row.altered,
      wrong: () => wrongAltered(row.altered),
    })),
};

/** All lines of a part, right or not. Throws what a reader throws but a refusal. */
export const linesOf = (part: Read): readonly Line[] =>
  LINES[part]().map(line => ({ ...line, wrong: orRefused(line.wrong) }));

/** Which lines of a part are held, by the set's file: chosen by `write-by-engine.ts`. */
export type Held = Readonly<Record<Read, Readonly<Record<string, readonly number[]>>>>;
const written = new URL('held/by-engine.json', import.meta.url);

/** So many lines are read by one test. */
const TOGETHER = 4;

/** The lines of a part that are held, a few together, with the first one's words. */
export function heldOf(part: Read): readonly { readonly text: string; readonly lines: readonly Line[] }[] {
  const held = (JSON.parse(readFileSync(written, 'utf8')) as Held)[part];
  const lines = linesOf(part).filter(({ file, at }) => held[file]?.includes(at));
  return Array.from({ length: Math.ceil(lines.length / TOGETHER) }, (_, few) => {
    const own = lines.slice(TOGETHER * few, TOGETHER * (few + 1));
    return { text: own[0]!.text, lines: own };
  });
}

/** What is wrong with how these lines are read, each with its words. */
export const wrongOf = (lines: readonly Line[]): readonly string[] =>
  lines.flatMap(({ file, at, text, wrong }) => {
    const why = wrong();
    return why === undefined ? [] : [`${file} ${at} “${text}”: ${why}`];
  });
