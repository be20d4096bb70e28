import { unbroken } from '../../../over-lines.ts';

/** As in "and a bit of white", "con un poco de blanco"; a white of another kind is named by what follows. */
const WHITE = new RegExp(
  unbroken`
    (?:\b(?:and|with|plus|y|con|mas)|[+&,])\s+(?:(?:just |only |solo )?(?:an? |some |un |una |
    algo de )?(bit|touch|little|pinch|dash|hint|drop|tiny bit|lot|lots|poco|poquito|pizca|toque|gota|
    monton)?(?: bit)?(?: of| de)? ?)?(?:white|blanco)\b(?! (?:mica|clay|oxide|kaolin|lake|pigment from|
    arcilla|pearl|oxido|soap|bar|base|chocolate|speck|spot))
  `,
  'u',
);
const LITTLE = /^(?:bit|touch|little|pinch|dash|hint|drop|tiny bit|poco|poquito|pizca|toque|gota)$/u;
const MUCH = /^(?:lots?|monton)$/u;

/**
 * The white that a question puts beside its colours without naming a pigment, as a part of a mix: titanium dioxide, the
 * usual white, by a strength word. Undefined where none is spoken of. Takes text in lower case without accents.
 * @example whiteBeside('ultramarine and a bit of white') // 'titanium dioxide pastel'
 */
export function whiteBeside(text: string): string | undefined {
  const found = WHITE.exec(text);
  if (!found) return undefined;
  const much = found[1] ?? '';
  const strength = LITTLE.test(much) ? 'pastel' : MUCH.test(much) ? 'full' : 'medium';
  return `titanium dioxide ${strength}`;
}
