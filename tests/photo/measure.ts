/**
 * Draws bars with the tests' own renderer, which the model was not trained on, and writes what the model says of them:
 * node tests/photo/measure.ts measured.json [pictures of each flaw] [clean ones]
 * node tests/photo/measure.ts --tricky measured-tricky.json [clean ones with something that deceives]
 * node tests/photo/measure.ts --poor measured-poor.json [too poor to read]
 * node tests/photo/measure.ts --folder measured-elsewhere.json FOLDER   a set that another hand drew; see training/score.ts
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { decodePhoto } from '../../src/photo/decode.ts';
import { look } from '../../src/photo/network/passes.ts';
import { DECEITS, type Deceit } from './render/bar.ts';
import { chance } from './render/chance.ts';
import type { Flaw } from './render/flaws.ts';
import { type Shot, shoot } from './render/scene.ts';
import { FLAW_DRAWINGS, shotOf, twoColours } from './render/shots.ts';

export const DRAWN = [...(Object.keys(FLAW_DRAWINGS) as Flaw['kind'][]), 'colour-bled', 'clean'] as const;
export type Drawn = (typeof DRAWN)[number];

/** What a drawn flaw is called among the findings. */
export const calledOf = (drawn: Drawn): string => (drawn === 'crack-on-top' ? 'crack' : drawn);

/** One picture and what was said of it: logits, one a finding; none where no bar was outlined. */
export type Measured = {
  readonly drawn: string;
  readonly seed: number;
  readonly answers: readonly number[] | undefined;
  readonly noSoap: number | undefined;
  readonly poor: number | undefined;
};

/** A picture that another hand drew, and what was said of it. */
export type Elsewhere = Omit<Measured, 'drawn' | 'seed'> & {
  readonly file: string;
  readonly kind: 'bar' | 'nothing' | 'poor';
  readonly tricky: boolean;
  readonly present: readonly string[];
  /** Those that cover at least 0.3 % of the bar. */
  readonly large: readonly string[];
};

const FIRST_SEED = 50_000;
const CAMERAS = [
  { blur: 1.5, noise: 3, quality: 90 },
  { blur: 4, noise: 8, quality: 75 },
] as const;

/** The `index`th picture with a flaw, or without: by turns a good camera and a poor one. */
export function measuredShot(drawn: Drawn, index: number): Shot {
  const seed = drawn === 'clean' ? FIRST_SEED + 5000 + index * 41 : FIRST_SEED + index * 37;
  return shotOf(seed, CAMERAS[seed % 2] ?? CAMERAS[0], givenFor(drawn, index, seed));
}

function givenFor(drawn: Drawn, index: number, seed: number): Partial<Shot> {
  if (drawn === 'clean')
    return index % 3 === 2 ? twoColours(seed) : index % 7 === 0 ? { paper: 'under' } : {};
  if (drawn === 'colour-bled') return twoColours(seed, 0.075 + 0.012 * (seed % 5));
  const { flaw, colours } = FLAW_DRAWINGS[drawn](seed);
  return { flaws: [flaw], ...(colours && { colours }) };
}

/** The `index`th clean bar with something that deceives. Drawn apart from the others: what was measured stays as it is. */
export function trickyShot(index: number): { readonly deceit: Deceit; readonly shot: Shot } {
  const seed = FIRST_SEED + 20_000 + index * 43;
  const deceit = DECEITS[index % DECEITS.length] ?? 'veined';
  const dice = chance(seed * 13 + 3);
  const pale = dice.pick(['#efe6d6', '#f0e6d0', '#d8c8e8', '#e3b7b0', '#8fb8a2'] as const);
  const strong = dice.pick(['#7f5fa8', '#2f6f8f', '#4f8a4a', '#c9a24a', '#5a4030', '#ffffff'] as const);
  const colours = dice.between(0, 1) < 0.3 && deceit !== 'seeds' ? [strong, pale] : [pale, strong];
  const design = { pattern: deceit, edge: dice.between(0.002, 0.012) };
  return { deceit, shot: shotOf(seed, CAMERAS[index % 8 < 4 ? 0 : 1], { colours, design }) };
}

/** The `index`th picture that nothing can be read in: by turns out of focus, and at night with grain. */
export function poorShot(index: number): Shot {
  const seed = FIRST_SEED + 40_000 + index * 47;
  const dice = chance(seed);
  const blurred = { blur: dice.between(30, 70), noise: dice.between(1, 8), quality: 85 };
  const dark = { blur: dice.between(1, 6), noise: dice.between(4, 14), quality: 85 };
  const light = dice.between(0.006, 0.025);
  return index % 2 === 0 ? shotOf(seed, blurred) : shotOf(seed, dark, { cast: [light, light, light * 0.8] });
}

/** What the model says of one clean bar with something that deceives. */
export async function measuredTricky(index: number): Promise<Measured> {
  const { deceit, shot } = trickyShot(index);
  return said(deceit, shot);
}

/** What the model says of one picture. */
export async function measured(drawn: Drawn, index: number): Promise<Measured> {
  return said(calledOf(drawn), measuredShot(drawn, index));
}

async function said(drawn: string, shot: Shot): Promise<Measured> {
  return { drawn, seed: shot.seed, ...(await logitsOf(await shoot(shot))) };
}

async function logitsOf(bytes: Uint8Array): Promise<Pick<Measured, 'answers' | 'noSoap' | 'poor'>> {
  const seen = await look(await decodePhoto(bytes));
  const rounded = (value: number) => Math.round(1000 * value) / 1000;
  return {
    answers: seen?.answers.map(rounded),
    noSoap: seen && rounded(seen.noSoap),
    poor: seen && rounded(seen.poor),
  };
}

async function all(each: number, clean: number): Promise<readonly Measured[]> {
  const rows: Measured[] = [];
  for (const drawn of DRAWN)
    for (let i = 0; i < (drawn === 'clean' ? clean : each); i++) rows.push(await measured(drawn, i));
  return rows;
}

async function each(count: number, one: (index: number) => Promise<Measured>): Promise<readonly Measured[]> {
  const rows: Measured[] = [];
  for (let i = 0; i < count; i++) rows.push(await one(i));
  return rows;
}

type Label = {
  readonly file: string;
  readonly present: readonly string[];
  readonly share?: Readonly<Record<string, number>>;
  readonly tricky?: boolean;
  readonly soap?: boolean;
  readonly poor?: boolean;
};

/** A set that another hand drew. */
async function elsewhere(folder: string): Promise<readonly Elsewhere[]> {
  const rows: Elsewhere[] = [];
  const labels = JSON.parse(readFileSync(join(folder, 'labels.json'), 'utf8')) as readonly Label[];
  for (const { file, present, share = {}, tricky = false, soap = true, poor = false } of labels) {
    const kind = poor ? 'poor' : soap ? 'bar' : 'nothing';
    rows.push({
      file,
      kind,
      tricky,
      present,
      large: present.filter(id => (share[id] ?? 1) >= 0.003),
      ...(await logitsOf(readFileSync(join(folder, file)))),
    });
  }
  return rows;
}

if (process.argv[1] === import.meta.filename) {
  const [, , which = '', ...rest] = process.argv;
  const [target = 'measured.json', first, clean = '60'] = which.startsWith('--') ? rest : [which, ...rest];
  const rows =
    which === '--tricky'
      ? await each(Number(first ?? 48), measuredTricky)
      : which === '--poor'
        ? await each(Number(first ?? 24), index => said('poor', poorShot(index)))
        : which === '--folder'
          ? await elsewhere(first ?? '.')
          : await all(Number(first ?? 10), Number(clean));
  writeFileSync(target, JSON.stringify(rows));
}
