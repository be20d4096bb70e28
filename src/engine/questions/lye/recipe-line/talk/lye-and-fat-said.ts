import { unbroken } from '../../../../over-lines.ts';
import { FAT, LYE } from '../../amounts/words.ts';
import { PERSON } from '../doubts/harmless-phrases.ts';

const MASS = String.raw`\d[\d.,]* ?(?:g|gr|gramos|grams?|oz|onzas?|ounces?)?`;
/** Turns of phrase of the bench for lye that is weighed, how pure it is, the superfat, and which soap it is for. */
export const LYE_AND_FAT_SAID: readonly (readonly [RegExp, string])[] = [
  // "How much more lye to get 5%", beside lye that is dissolved already: what is there is checked against what the oils take.
  [
    new RegExp(
      unbroken`
        (?<=(?<!\p{L})(?:already|got|have|i've|ive|tengo|ya|hay)(?!\p{L}).*${MASS} ?(?:of |
        de )?${LYE}.*)(?:and |y )?(?:how much more|how many more(?: grams| g)?|cuant[oa] (?:mas )?|
        que mas)(?:(?:of|de|the|la) )*(?: ?${LYE})?(?: (?:mas|more|me falta|falta|le falta|do i need|
        do i add|(?:should|must) i add|is (?:needed|missing)|needed))*(?: (?:to (?:get|reach|make|hit|have)|
        for|para|hasta|until))?(?= |$)
      `,
      'gu',
    ),
    ' ; is it right ; at ',
  ],
  // "Weighed out": all of it is there.
  [/(?<!\p{L})(weigh(?:ed|ing)?|measur(?:ed|ing))(?: it| them)? out(?!\p{L})/gu, '$1'],
  [
    new RegExp(
      `(?<=(?<!\\p{L})(?:i|we|i've|we've|have|he|yo|hemos) )(?:already|ya|just) (?=(?:weighed|measured|pese|pesado|medido) ${MASS} ?(?:of |de )?${LYE})`,
      'gu',
    ),
    '',
  ],
  // "La sosa ya está pesada, 140 g".
  [
    new RegExp(
      `(?<!\\p{L})(${LYE})(?: (?:ya|esta|is|already|all|have|has|been|la))* (?:pesada|weighed)(?: (?:ya|already))?[,:]? (?=\\d)`,
      'gu',
    ),
    '$1 ',
  ],
  // "My lye tub says 97%": how pure it is.
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:(?:my|the|mi|la|el) )?(?:${LYE} (?:tub|bag|label|tin|packet|bottle|jar|container|pot)|
        (?:bolsa|etiqueta|bote|envase|frasco|paquete) de (?:la |mi )?${LYE})(?: (?:it|que))? (?:says|reads|
        said|is|dice|pone|es|marca)(?: (?:al|de|it's|its))? ((?:8|9)\d(?:[.,]\d+)?|100) ?(?:%|percent|
        por ciento)(?: (?:pure|purity|pura|de pureza))?
      `,
      'gu',
    ),
    'lye purity $1%',
  ],
  // "La soda que conseguí es al 96 %".
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:(?:my|the|mi|la|el) )?(?:${LYE}|soda) (?:que|that|which|i|we)(?: (?:i|we|me|
        yo))?(?: (?:got|found|bought|have|can get|consegui|conseguimos|compre|encontre|tengo|venden|
        vendieron|dieron)) (?:es|is|viene|comes|dice|says)(?: (?:al|de|at|del))? ((?:8|
        9)\d(?:[.,]\d+)?) ?(?:%|percent|por ciento)(?: (?:pure|pura|de pureza))?
      `,
      'gu',
    ),
    'lye purity $1%',
  ],
  // "Mi hija quiere jabón de cacao: 400 g …": which soap, before its recipe.
  [
    new RegExp(
      unbroken`
        ^(?:(?:hey|hi|hiya|hola|ok|so|well|che) )*(?:(?:my|our|the|mi|la|el) )?${PERSON} (?:wants|asked for|
        fancies|quiere|pidio|me pidio) (?:(?:an?|some|un|unos) )?(?:jabon(?:es)? de \p{L}+|\p{L}+ (?:soaps?|
        bars?))(?: (?:for|para) (?:(?:the|la|el) )?\p{L}+)? ?[:;] ?(?=\d)
      `,
      'u',
    ),
    '',
  ],
  // "Yo saqué 150 de soda", "I make it 150 g lye", "me ha salido que necesito 71 g de sosa": what was reckoned is to be checked.
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:yo |i |we )?(?:saque|me (?:da|dio|dan|sale|salio|salen|ha (?:dado|salido)|han (?:dado|
        salido))|make it|got|get|came to|worked out)(?: (?:que|that))?(?: (?:necesito|ocupo|lleva|
        hacen? falta|i need|it needs|needs))?(?= ${MASS} ?(?:of |de )?(?:${LYE}|soda(?! (?:ash|
        water)))(?!\p{L}))
      `,
      'gu',
    ),
    ' ; ',
  ],
  // "Can someone run 450 g olive …", "take 500 rapeseed", "si hago 750 g de oliva": what is asked of all that follows.
  [
    new RegExp(
      unbroken`
        ^(?:[^\d;]{0,30}; ?)?(?:(?:can|could|would|will) (?:someone|somebody|anyone|you|ye|
        yous?)(?: (?:please|pls|plz))? (?:run|do|reckon|figure|check|crunch|calculate)|take|si (?:hago|
        hacemos|uso|usamos|pongo)|(?:if|what if) (?:i|we) (?:do|make|use|used|go with))(?: (?:con|with|solo|
        just|only))?(?= (?:\d|pur[oa] (?:aceite|manteca|sebo)))
      `,
      'u',
    ),
    '',
  ],
  // "Puro aceite de oliva 750 g": nothing else is in it.
  [/^ ?pur[oa] (?=aceite|manteca|sebo)/u, ''],
  // "¿Cuánta sosa si son 1250 de oliva?": of what there is.
  [
    new RegExp(
      `(?<=(?<!\\p{L})${LYE}) (?:si (?:son|es|tengo|uso|pongo)|if (?:i|we) (?:use|have)) (?=\\d)`,
      'gu',
    ),
    ' para ',
  ],
  // "Si quiero 5%": the superfat.
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:si|if) (?:lo |la )?(?:quiero|queremos|i want|we want)(?: (?:it|un|una|a))?(?: (?:al|
        at))? (?=\d{1,2} ?(?:%|percent|por ?ciento)(?: ?(?:[;,]|$)))
      `,
      'gu',
    ),
    'al ',
  ],
  // "5% superfat is what I was after": the one that is wanted.
  [
    new RegExp(
      unbroken`
        (?<=(?<!\p{L})${FAT}) (?:is|was|es|era) (?:what|the one|lo que) (?:(?:i|we|yo) )?(?:(?:was|were|am|
        are|'m) )?(?:after|aiming for|looking for|going for|want(?:ed)?|quiero|queria|busco|
        buscaba)(?= ?[,;])
      `,
      'gu',
    ),
    ' ; ',
  ],
];
