import { additiveById, knownAdditive } from '../../../batch/additives/additives.ts';
import { parseOils } from '../../../batch/oils/lists/oil-list.ts';
import { unbroken } from '../../../over-lines.ts';
import { figureText } from '../../../quantities/for-readers.ts';
import { unlessRefused } from '../../../refusal.ts';
import type { LyeQuestion } from '../question.ts';
import { gramsOf, MASS, plainWords } from './words.ts';

const NAME_AND_MASS = new RegExp(`^(.+?) (${MASS})$`, 'u');
/** Goes into the batter and not into the jug. */
const AT_TRACE = unbroken`
  ,?(?: (?:added|stirred in|blended in|goes in|going in|in|anadida|agregada|echada|va))* (?:(?:at|after) (?:a )?(?:light |thin |medium )?trace|into the
  (?:batter|oils)|(?:en|a) la traza|en traza|en la masa|a los aceites)(?!\p{L})
`;
const OF_TRACE =
  /^(?:(?:at|after|light|thin|medium|added|stirred|in|the|batter|la|a|en|masa) ?)*(?:trace|traza)$/u;

type Liquid = {
  readonly name: string;
  readonly calledAs: readonly string[];
  readonly mass: string;
  readonly waterGrams: number;
};

function liquidOf(additive: string): Liquid | undefined {
  const [, name = '', mass = ''] = NAME_AND_MASS.exec(additive.trim()) ?? [];
  const id = name === '' ? undefined : knownAdditive(name);
  if (id === undefined) return undefined;
  const { liquid, water, synonyms } = additiveById(id);
  const calledAs = [...new Set(synonyms.map(one => plainWords(one).split(' ').at(-1)!))];
  return liquid === undefined ? undefined : { name, calledAs, mass, waterGrams: gramsOf(mass) * water };
}

/**
 * A recipe that weighs water and another liquid: so much water is told, and what the liquid brings comes on top of it; `/plan` counts both as its water.
 * A liquid that is told for trace goes into the oils. Takes a line of `prepared`; any other recipe comes back as it was. Pure.
 */
export function withLiquidBesideWater(told: LyeQuestion, line: string): LyeQuestion {
  const { oils, additives, size } = told.given;
  if (additives === undefined || oils === undefined) return told;
  const all = additives.split(/,(?!\d)/u).map(text => ({ text: text.trim(), liquid: liquidOf(text) }));
  const liquids = all.flatMap(({ liquid }) => (liquid ? [liquid] : []));
  if (liquids.length === 0) return told;
  const oilGrams = size === undefined ? unlessRefused(() => parseOils(oils).totalGrams) : gramsOf(size);
  const atTrace = liquids.filter(({ calledAs }) =>
    new RegExp(`(?<!\\p{L})(?:${calledAs.join('|')})${AT_TRACE}`, 'u').test(line),
  );
  const stirredIn = all.filter(({ liquid }) => !liquid || !atTrace.includes(liquid)).map(({ text }) => text);
  const { additives: _, ...given } = told.given;
  const brought = liquids.reduce((sum, { waterGrams }) => sum + waterGrams, 0);
  const isOfWater = told.waterGrams !== undefined && oilGrams !== undefined && oilGrams > 0;
  const water = isOfWater
    ? `${figureText((100 * (told.waterGrams + brought)) / oilGrams)}% of oils`
    : given.water;
  return {
    ...told,
    given: {
      ...given,
      ...(water !== undefined && { water }),
      ...(stirredIn.length > 0 && { additives: stirredIn.join(', ') }),
      ...(atTrace.length > 0 && {
        liquid: [given.liquid, ...atTrace.map(({ name, mass }) => `${mass} ${name} into the oils`)]
          .filter(Boolean)
          .join(', '),
      }),
    },
    left: atTrace.length > 0 ? told.left.filter(word => !OF_TRACE.test(word)) : told.left,
  };
}
