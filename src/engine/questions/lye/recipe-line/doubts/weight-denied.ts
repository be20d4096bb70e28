import { unbroken } from '../../../../over-lines.ts';
import { COUNT, UNIT } from '../../amounts/words.ts';

/**
 * A weight with its oil that is said not to be so: "650 coconut no, I mean 350", "corrijo, 650 de coco no". Which weight counts is never
 * guessed. A "no" right before a name says something else.
 */
const DENIED = new RegExp(
  unbroken`
    (?<![\d.,/])${COUNT} ?(?:${UNIT} ?)?(?:of |de (?:la |el )?|del )?(?:(?!no |and |y |e |with |con |but |pero |que |superfat|sobre|sosa|soda|lye|lejia|
    naoh|koh)\p{L}+ ){1,4}?no(?= ?[,.;]? ?(?:digo|mejor|i mean|it['’]?s|eso|that)(?!\p{L})|
    (?: )?[,.;](?! ?(?:(?:sorry|perdon|wait|but|sino|si) ,? ?)?\d)| ?$)
  `,
  'u',
);

/** The words in which a weight of an oil is denied; undefined where none is. Takes plain words. Pure. */
export const weightDeniedIn = (plain: string): string | undefined => DENIED.exec(plain)?.[0];
