import { unbroken } from '../../../../over-lines.ts';
import { type Word, word } from './grammar-word.ts';

const SOURCE =
  '(?:recipe|book|card|note|notes|formula|original|plan|usual|receta|libro|ficha|nota|formula|cuaderno)';
const KIN = unbroken`
  (?:sister|brother|mother|mum|mom|mam|nan|nana|gran|granny|grandma|grandmother|aunt|auntie|cousin|friend|
  mate|neighbou?r|teacher|husband|wife|daughter|partner|hermana|hermano|madre|mama|abuela|tia|prima|amiga|
  amigo|vecina|vecino|maestra|profesora|profe|suegra|comadre|compadre|marido|mujer|cunada|hija|senora)
`;

/** Words that tell whose recipe it is, and whether it was planned or is what went in. */
export const WHOSE_RECIPE: readonly Word[] = [
  word(
    'mine',
    "(?:mine|ours) (?:will be|would be|is|are|has|goes|:)|lye for mine|(?:i'?d|i would|we'?d) (?:do|use|have)|mine not (?:hers|his|theirs)",
    unbroken`
      (?<=(?<!\p{L})(?:ayer|yesterday'?s?|last (?:week|month|time|one|batch)|la (?:ultima|otra) vez|
      la (?:vez|semana) pasada|el mes pasado)(?!\p{L}).*)(?:hoy|today|now|ahora),? (?:voy con|vamos con|
      quiero|hago|uso|i am (?:doing|using)|i'?m (?:doing|using)|its?|it is|it's)
    `,
    "(?<=(?<!\\p{L})(?:first|last|other|previous|earlier) one(?!\\p{L}).*)this one(?: (?:is|has)|'s)?",
    unbroken`
      (?<=(?<!\p{L})(?:last (?:week|month|time)(?:'?s)?|yesterday(?:'?s)?)(?!\p{L}).*)this (?:week|month|
      one)(?:'s)?(?: (?:i want|i need|i'?m (?:doing|making|having)|is|it'?s))?|this time(?: (?:it'?s|its|
      it s|is))?|for (?:this|the) (?:new|next) one|only check \p{L}+|esta vez|para el proximo(?: (?:quiero|
      va))?|la que (?:quiero|necesito) (?:calcular|revisar)(?: es(?: la (?:dos|2|b))?)?
    `,
    '(?:nosotr[oa]s|yo|la nuestra|la mia|el mio|el nuestro)(?: (?:hacemos|hago|lleva|es|le pongo|uso|usamos|quiero))?|me quedo con|nos quedamos con',
  ),
  word(
    'planned',
    unbroken`
      (?:the |my |our |this |that |la |el |mi )?${SOURCE}(?: ?:| (?:is|was|says|said|calls? for|called for|
      asks? for|wants?|wanted|needs?|needed|had|has|dice|decia|pide|pedia|lleva|llevaba|manda|mandaba|era|
      es))
    `,
    unbroken`
      (?:it |there )?(?:should|ought to|must|was supposed to|were supposed to|was meant to|
      were meant to) (?:have been|be)(?! (?:ok|okay|fine|safe|right|good|enough))|(?:i |
      we )?(?:had )?(?:planned|intended|meant to (?:add|put|use)|wanted to (?:add|put|use)|(?:was|
      were) going to (?:add|put|use|include))(?! batch)|(?:i|we) needed
    `,
    unbroken`
      (?:debi\p{L}+|tenia\p{L}*|tendria\p{L}*|habia\p{L}*) (?:que )?(?:ser|haber sido|haber)|(?:iba|ibamos|
      pensaba|pensabamos|queria|queriamos) (?:a )?(?:poner|echar|usar|agregar|anadir|meter)(?:le|les)?|
      necesitaba|hacian? falta|tocaban
    `,
    unbroken`
      (?:my|her|his|their|mi|tu|su|la) ${KIN} (?:uses|does|puts|takes|used|did|put|made|makes|has|got|tiene|
      usa|hace|pone|le pone|echa|le echa|lleva|usaba|hacia)|(?:she|he|they|ella|el) (?:uses?|does?|puts?|
      usa|hace|pone|echa)
    `,
  ),
  // Another day's.
  word(
    'planned',
    unbroken`
      (?:tomorrow|manana)(?:'s)?(?: \p{L}+)?|(?:the |my |an? |el |la |mi |en |in )*(?:other|another|second|
      next|otr[oa]|segund[oa]|proxim[oa]) (?:batch|tanda|lote)
    `,
  ),
  word(
    'actual',
    unbroken`
      (?:and |but |so )?(?:i|we)(?:'?ve| have| had|'d)? (?:only |just |actually |really |then )?(?:put|
      poured|used|added|weighed|measured|dumped|threw|had|have|got|use)(?: in)?(?: (?:only|just))?|
      (?:there (?:was|is) )(?:only |just )|(?<=[,;] )(?:used|poured|put)
    `,
    unbroken`
      (?:y |pero |yo )*(?:solo |solamente |al final |nomas )?(?:le |les )?(?:puse|pusimos|eche|echamos|use|
      usamos|pese|tengo|tenia|teniamos|habia|meti)(?: (?:solo|solamente|nomas))?
    `,
  ),
];
