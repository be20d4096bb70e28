import { unbroken } from '../../over-lines.ts';
import { unitPutRight } from './amount-asides.ts';
import { barsPutRight } from './bars-put-right.ts';

/** "A bit under a pound, call it 420 g": what is said second is what it is. */
const RESTATES = new RegExp(
  unbroken`
    ^[^,;()]{1,60}[,;(]\s*(?:so |or |o )?(?:call it|say|make it|let'?s say|more like|rather|well|that is|
    that'?s|i'?d say|digamos|pongamos|o sea|m[aá]s bien|dir[ií]a)\s+(?=(?:about |around |some |unos |unas |
    como )?(?:\d|(?:an?|one|half|un|una|medi[oa])\s))
  `,
  'iu',
);

/** "A quart, then I dribbled a bit, but call it a quart": what it is to be counted as. */
const COUNTED_AS = new RegExp(
  unbroken`
    ^[\s\S]{1,150}?(?<!\p{L})(?:call (?:it|that)|let['’]?s (?:say|call it)|we['’]?ll (?:say|call it)|
    pong[aá]mosle|pongamos|digamos|ponle|dej[aá]lo en|d[eé]jalo en)\s+(?=(?:about |around |unos |unas |
    como )?(?:\d[\d.,/ ]*|(?:an?|one|half|un|una|medi[oa])\s)\p{L}[^,;]*$)
  `,
  'iu',
);

/** "Medio litro escaso, pon 480 ml", "a scant half litre, put 480 ml": the round one was only near it. */
const ROUND = new RegExp(
  unbroken`
    ^[^\d,;()]{1,60}[,;]\s*(?:pon(?:ga|le)?|ap[uú]nta(?:lo|me)?|c[uú]enta|put(?: down)?|write|go with|
    use)\s+(?:(?:about|unos|unas|como) )?(?=\d{2,}[\d.,]* ?\p{L}+[\s.]*$)
  `,
  'iu',
);

/** An amount as it is told at last: "half a kilo, say 520 g" is 520 g. Pure. */
export const restated = (text: string): string =>
  barsPutRight(unitPutRight(text)).replace(RESTATES, '').replace(COUNTED_AS, '').replace(ROUND, '');
