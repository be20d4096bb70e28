import { unbroken } from '../../../over-lines.ts';
import { WHOLE_GRAMS_WORDS } from '../whole-grams.ts';
import { type Outright, whole, within } from './words.ts';

const SCALE = `(?:mine|my scales?|the scales?|scales?|la mia|(?:mi|la) (?:balanza|bascula|peso|pesa))`;
const ALL = `(?:(?:all )?(?:the |my |our )?colou?rs|(?:todos )?(?:los|mis) colores|everything|todo)`;
const DULL = String.raw`(?:dull\w*|washed out|muted|lifeless|faded looking|apagad[oa]s?|opac[oa]s?|deslavad[oa]s?|sin vida)`;

/** Batter that splits, scales, dull colours, white and its lumps. */
export const IN_GENERAL: readonly Outright[] = [
  // What sets while it is still to be poured: minutes count.
  {
    words: whole(
      unbroken`
        (?:(?:help|ay|ayuda|uy|omg|so|and|y) )*(?:(?:my|the|se|me|la|mi) )*(?:batter|masa|mezcla|
        soap batter)? ?(?:(?:has|is|was|just|all|gone|se|me|ya) )*(?:went|go(?:ne|t|ing)|turned|setting|set|
        endurecio|espeso|cuajo|trabo|puso) (?:(?:too|so|really|all|very|muy|re|la|dur[ao]|espes[ao]|thick|
        hard|solid|stiff|up|masa|mezcla|on|me) ?)*(?:before (?:i|we) (?:even |ever )?(?:got to|could|
        had (?:time|a chance) to|managed to) (?:even )?(?:pour\w*|
        get it in\w*)(?: it)?(?: in(?:to)?(?: the)? mou?ld)?|in (?:the|my) (?:bowl|pot|jug)|
        antes de (?:poder )?(?:verter|echar|volcar)(?:la|lo)?(?: (?:en|al) (?:el )?molde)?|en (?:el|la|
        mi) (?:bowl|bol|olla|jarra|tazon|balde))
      `,
    ),
    technique: 'thick-now',
    to: { technique: 'thick-now' },
  },
  {
    words: whole(
      unbroken`
        (?:help |ay |ayuda |uy |omg )?(?:(?:it|its|my batter|the batter|batter|mine|la masa|
        la mezcla) )?(?:has |just |all )?(?:split|separated|curdled|se (?:me )?(?:ha )?(?:cort(?:o|ado)|
        separ(?:o|ado)))(?: (?:la masa|la mezcla|on me|help|ayuda|que hago))?
      `,
    ),
    technique: 'riced-now',
    to: { named: 'split-where' },
  },
  {
    words: new RegExp(String.raw`(?<!\p{L})${SCALE} (?:\w+ ){0,3}?(?:${WHOLE_GRAMS_WORDS})(?!\p{L})`, 'u'),
    technique: 'small-batch',
    to: { named: 'whole-grams' },
  },
  {
    words: within(String.raw`${ALL} (?:\w+ ){0,7}?${DULL}(?: now| todos| ahora)?`),
    technique: 'bright-colours',
    to: { named: 'dull-at-large' },
  },
  {
    words: within(
      '(?:titanium(?: dioxide)?|td) (?:for|to get|to make) white(?: soap)? or (?:is there )?(?:some|any)thing else',
    ),
    technique: 'whiter-soap',
    to: { named: 'white-without-titanium' },
  },
  {
    words: within(
      unbroken`
        (?:grumos?|bolitas?) blanc[oa]s? (?:(?:a|por )?dentro|en (?:el|mi) jabon)|white (?:lumps?|
        clumps?) (?:inside|in (?:my|the) (?:cut |made )?(?:soap|bars?|loaf))
      `,
    ),
    technique: 'no-lumps',
    to: { named: 'lumps-in-bar' },
  },
  {
    words: whole(
      unbroken`
        (?:y )?(?:(?:si|if) )?(?:(?:le |i )?(?:pongo|echo|uso|put|use) )?(?:with |con )?(?:less water|
        menos agua)(?: in)? (?:\w+ ){0,3}?(?:espes\w+|endurece|cuaja|thick\w*|sets?|hardens?)(?: (?:it|mas|
        up|faster|quicker|sooner|rapido|antes|up quicker|up faster|mas rapido))*
      `,
    ),
    technique: 'keep-fluid',
    to: { named: 'less-water' },
  },
];
