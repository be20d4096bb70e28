import { colourants } from '../../src/engine/colourants/catalogue.ts';
import { mulberry32 } from '../mulberry32.ts';

/** The options of one question of `/dose`. */
export type DoseQuestion = Readonly<Record<string, string>>;

const pick = <One>(all: readonly One[], draw: () => number): One =>
  all[Math.floor(draw() * all.length)] as One;

const STRENGTHS = [
  undefined,
  undefined,
  'tint',
  'pastel',
  'medium',
  'full',
  '1/4 tsp per cup',
  '40% of full',
];
const CARRIERS = [undefined, undefined, undefined, 'oil', 'water', 'glycerin', 'olive oil'];
const ANOTHER = [undefined, undefined, undefined, 'titanium dioxide', 'gold mica pastel', 'kaolin clay tint'];

/** 2,400 amounts, of which most are asked for once only. */
function portion(draw: () => number): string {
  const quarters = 2 + Math.floor(draw() * 22);
  switch (Math.floor(draw() * 5)) {
    case 0:
      return `${quarters / 4} cups`;
    case 1:
      return `${(quarters / 8).toFixed(2)} lb oils`;
    case 2:
      return `${200 + Math.floor(draw() * 900)} g oils`;
    case 3:
      return `${10 + Math.floor(draw() * 60)} oz`;
    default:
      return `${80 + Math.floor(draw() * 1_400)} ml`;
  }
}

/**
 * Questions as a busy group asks them: any colourant by any of its names, in any portion, now and then with a strength, a carrier or a
 * second colour. Always the same ones for a seed; each is another.
 */
export function mixedDoses(count: number, seed: number): readonly DoseQuestion[] {
  const draw = mulberry32(seed);
  const all = new Map<string, DoseQuestion>();
  while (all.size < count) {
    const { names, synonyms } = pick(colourants, draw);
    const question = Object.fromEntries(
      Object.entries({
        colourant: pick([names.en, ...synonyms], draw),
        portion: portion(draw),
        strength: pick(STRENGTHS, draw),
        carrier: pick(CARRIERS, draw),
        'with-1': pick(ANOTHER, draw),
      }).filter((one): one is [string, string] => one[1] !== undefined),
    );
    all.set(nameOf(question), question);
  }
  return [...all.values()];
}

/** A question as one text, under which its answer can be found. */
export const nameOf = (question: DoseQuestion): string =>
  Object.entries(question)
    .map(([name, value]) => `${name}=${value}`)
    .sort()
    .join(' ');
