import { type ColourJar, opticsOfJar } from '../jars/jar.ts';
import { baseSoap, type ShadeShare } from '../mixing/base-soap.ts';
import type { Lab } from '../spectra/cielab.ts';
import { type MatchAnswer, matchColour } from './match.ts';
import type { MatchCandidate, MatchRequest } from './match-request.ts';

/** A jar that a recipe may use. */
export type JarCandidate = Omit<MatchCandidate, 'optics'> & { readonly jar: ColourJar };

export type JarMatchAsk = {
  readonly target: Lab;
  readonly candidates: readonly JarCandidate[];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  readonly portion: MatchRequest['portion'];
  readonly owned?: MatchRequest['owned'];
  readonly most: number;
  readonly recipes?: number;
};

/** Sets of three among more jars than this take seconds. */
const MANY = 80;
/** Recipes of two looked at to choose the jars that sets of three are made of. */
const LOOKED_AT = 40;

/**
 * {@link matchColour} for jars, whose optics are worked out here. Past 80 jars, sets of three are made only of those that
 * the 40 best recipes of one and of two use. Throws the Refusals of {@link matchColour}.
 */
export function matchJars({ candidates, shades, gelled, ...asked }: JarMatchAsk): MatchAnswer {
  const all = candidates.map(({ jar, ...candidate }) => ({ ...candidate, optics: opticsOfJar(jar) }));
  const request = { ...asked, candidates: all, base: baseSoap(shades, gelled) };
  if (asked.most < 3 || all.length <= MANY) return matchColour(request);
  const used = [1, 2].flatMap(most =>
    matchColour({ ...request, most, recipes: LOOKED_AT }).recipes.flatMap(({ doses }) =>
      doses.map(({ id }) => id),
    ),
  );
  return matchColour({ ...request, candidates: all.filter(({ id, white }) => white || used.includes(id)) });
}
