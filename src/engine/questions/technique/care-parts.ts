import { unbroken } from '../../over-lines.ts';
import { LESS_WATER, type Part, wholeWords } from './part.ts';
import type { Technique } from './topic.ts';

/** Where a question of care at the bench is led: gloves, dust, cloudy lye, tools of the kitchen. */
export const CARE_PARTS: Readonly<Partial<Record<Technique, readonly Part[]>>> = {
  'goggles-gloves': [
    {
      words: wholeWords(
        String.raw`in the mou?ld|after|cut(?:ting)?|unmou?ld\w*|handle|touch|bare hands?|desmold\w*|molde|toc\w+|cort\w+|manos`,
      ),
      named: 'gloves-raw',
    },
    {
      words: wholeWords(
        String.raw`wear|which|what|kind|type|latex|nitril\w*|vinyl|thin|washing up|que (?:guantes|me pongo|uso)|cuales|finit\w+`,
      ),
      lye: 'gear',
    },
  ],
  'powder-dust': [
    {
      words: wholeWords(
        String.raw`masks?|breath\w*|lungs?|inhal\w*|danger\w*|safe|asthma|mascarilla|barbijo|tapabocas?|respir\w*|peligro\w*|malo|asma|grave|count`,
      ),
      lye: 'dust',
    },
  ],
  'lye-cloudy': [
    {
      words: wholeWords(
        String.raw`overnight|cold|skin|film|haz[ey]\w*|milky|noche|fria?|nata|capa|lechosa|blanquecina`,
      ),
      lye: 'cloudy-lye',
    },
  ],
  'kitchen-tools': [
    { words: wholeWords(String.raw`alumin\w*|ally|foil|tin|zinc|galvani\w*|lata`), lye: 'aluminium' },
    {
      words: wholeWords(
        unbroken`
          glass|vidrio|cristal|wood\w*|madera|which (?:plastic|bowl)|plastic\w*|bowl|bol|enamel\w*|
          esmaltad\w*|pp|jug for lye|lye jug|jarra (?:de|para) (?:la )?(?:sosa|soda|lejia)
        `,
      ),
      lye: 'vessel',
    },
  ],
  'water-amount': [
    { words: LESS_WATER, named: 'less-water' },
    { words: wholeWords(String.raw`swirl\w*|remolin\w*|discount|descuento`), technique: 'swirl-water' },
  ],
};
