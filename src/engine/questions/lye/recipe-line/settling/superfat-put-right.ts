import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { FAT } from '../../amounts/words.ts';

/** What puts a superfat right, directly behind it. */
export const PUT_RIGHT = new RegExp(
  unbroken`
    ^[ ;,]*(?:(?:no(?! ?\d)|oops|wait|sorry|actually|bueno|rectifico|corrijo|correccion|correction|ponle|
    pongamos|ponedle|ponganle|better|rather|call it|scratch that|perdon|digo|espera|mejor|ay|mejor dicho|
    i mean|i meant|make (?:it|that)|quise decir|que sean?|it's|its|is|es|son|at|al|del|well|
    :) ?,? ?)+(?<figure>\d{1,2}(?:[.,]\d)?)(?: ?(?:%|percent|pct|
    por ?ciento))?(?: (?:${FAT}))?(?= *(?:[;,.](?!\d)|$))
  `,
  'u',
);

/** "Superfat 5. No wait, I've dry hands, make it 8": why it is put right stands between; no oil and no figure does. */
export const PUT_RIGHT_WHY = new RegExp(
  unbroken`
    ^[ ;,%]*(?:no(?: wait)?|wait|oops|sorry|actually|perdon|espera|ay no|
    mejor),? (?<why>[^;\d]{3,60}),? (?:so )?(?:make (?:it|that)|mejor(?: al| a| el)?|que sean?|ponle|
    pongamos|call it) (?<figure>\d{1,2}(?:[.,]\d)?)(?: ?(?:%|percent|pct|por ?ciento))?(?= *(?:[;,.](?!\d)|
    $))
  `,
  'u',
);
/** What is done to a recipe, or of it, is no reason for another superfat. */
const OF_RECIPE = new RegExp(
  unbroken`
    (?<!\p{L})(?:oils?|fats?|butters?|aceites?|mantecas?|grasas?|ceras?|wax|water|agua|milk|leche|each|
    every|all|todo|batch|recipe|receta|tanda|half|double|mitad|doble)(?!\p{L})
  `,
  'u',
);
/** Whether what stands between a superfat and another tells why, and nothing of the recipe. Pure. */
export const isReason = (why: string): boolean =>
  !OF_RECIPE.test(why) &&
  why.split(/[^\p{L}]+/u).every(word => word.length < 3 || knownOil(word) === undefined);

/** The same figure, said to be meant. */
export const YES_SO = new RegExp(
  unbroken`
    ^[ ;,]*(?:yes|yeah|si|so|really|correct|right|de verdad|i do mean|
    asi es),? (?<figure>\d{1,2}(?:[.,]\d)?)(?: ?(?:%|percent|por ciento))?(?: now)?(?= *(?:[;,.](?!\d)|$))
  `,
  'u',
);
