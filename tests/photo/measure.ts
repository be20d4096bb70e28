/**
 * Draws bars with the tests' own renderer, which the model was not trained on, and writes what the model says of them:
 * node tests/photo/measure.ts measured.json [pictures of each flaw] [clean ones]
 */
import { writeFileSync } from 'node:fs';
import { decodePhoto } from '../../src/photo/decode.ts';
import { look } from '../../src/photo/network/passes.ts';
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

/** What the model says of one picture. */
export async function measured(drawn: Drawn, index: number): Promise<Measured> {
  const shot = measuredShot(drawn, index);
  const seen = await look(await decodePhoto(await shoot(shot)));
  const rounded = seen?.answers.map(value => Math.round(1000 * value) / 1000);
  return { drawn: calledOf(drawn), seed: shot.seed, answers: rounded, noSoap: seen?.noSoap };
}

if (process.argv[1] === import.meta.filename) {
  const [target = 'measured.json', each = '14', clean = '80'] = process.argv.slice(2);
  const rows: Measured[] = [];
  for (const drawn of DRAWN)
    for (let i = 0; i < Number(drawn === 'clean' ? clean : each); i++) rows.push(await measured(drawn, i));
  writeFileSync(target, JSON.stringify(rows));
}
