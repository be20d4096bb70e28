import { unbroken } from '../../../over-lines.ts';

const HUE =
  'white|black|red|blue|green|pink|purple|yellow|orange|brown|grey|blanc[oa]|negr[oa]|roj[oa]|azul|verde|morad[oa]|amarill[oa]|rosa|naranja|cafe|marron|gris';
/** Words that wish a colour deep; a pattern. */
export const DEEP =
  'dark|deep|strong|bold|bright|intense|vivid|saturated|oscur[oa]|fuerte|intens[oa]|viv[oa]|cargad[oa]|saturad[oa]|profund[oa]';

const OF = '(?: (?:of )?(?:the |la |el |de )?|-)';
/** The word itself, as it is clipped or slips: "str", "strngth", "fza". */
const STRENGTH = unbroken`
  (?:str(?:e?n?gt?h?|e?ngh?t|en|n|nth|engt)?\b\.?|stren\w*|stregn\w*|dose|intensity|(?:full |normal |
  usual )colou?r\b|fza\.?|fuerza|intens(?:idad)?\b\.?|dosis)
`;
const part = (words: string) =>
  new RegExp(String.raw`(?<![\d/.,] ?)\b(?:${words})${OF}(?:full )?${STRENGTH}`, 'u');

/** Parts of full colour, as the strengths' own grammar takes them. */
export const PARTS: readonly (readonly [name: string, RegExp])[] = [
  ['double', part('2x|x2|dbl|doble')],
  ['double', /\bx ?2 (?:strength|str)\b/u],
  ['75%', part('3/4|3 4|three[- ]quarters?|tres cuartos')],
  ['25%', part('1/4|quarter|a quarter|un cuarto')],
  ['67%', part('2/3|two[- ]thirds|dos tercios')],
  ['33%', part('1/3|(?:a |one )?third|un tercio')],
  ['half', part('half|1/2|mitad|media|medio')],
  ['half', /\b(?:at|a) (?:half|1\/2|medio|mitad de) color\b/u],
];
/** A percent of full colour. */
export const PERCENT = new RegExp(
  String.raw`(?<![\d.,])([1-9]\d|1\d\d|200) ?%(?: (?:of|de))?(?: full)? ${STRENGTH}`,
  'u',
);

const LITTLE =
  '(?:a (?:notch|shade|touch|tad|bit|little|hair|step|smidge)|slightly|one (?:notch|shade|step)|un (?:poco|poquito|pelin|punto|tono)|algo|tantito)';
const LIGHTER =
  '(?:lighter|paler|softer|gentler|weaker|mas (?:clar[oa]|suave|palid[oa]|flojo|tenue|bajit[oa]))';
const DARKER =
  '(?:darker|deeper|stronger|bolder|brighter|mas (?:oscur[oa]|fuerte|intens[oa]|cargad[oa]|subid[oa]|viv[oa]))';
const PALE =
  'pale|light|faint|soft|pastel|washed out|clar[oa]|palid[oa]|suave|pastel|flojo|floja|apagad[oa]|tenue|deslavad[oa]|pobre';
const LOUD = unbroken`
  loud|bright|dark|deep|strong|bold|vivid|garish|gaudy|intense|chillon|chillona|oscur[oa]|fuerte|intens[oa]|
  viv[oa]|encendid[oa]|cargad[oa]|llamativ[oa]|estridente|saturad[oa]
`;
/** Words that others hide in: "a notch lighter" is no touch, "lightish" no light. */
export const CLIPPED: readonly (readonly [RegExp, string])[] = [
  [new RegExp(String.raw`\b${LITTLE} ${LIGHTER}`, 'gu'), 'medium'],
  [new RegExp(String.raw`\b${LITTLE} ${DARKER}`, 'gu'), 'full'],
  [/\b(?:v|vry|rly)\.? (?=(?:pale|light|lt|soft|faint)\b)/gu, 'very '],
  // A jug that is full to a part tells of no colour.
  [/\b(?:half|halfway|thirds?|quarters?|[1-3]\/[2-4]|medi[oa]|tercios?|cuartos?) (?:full|llen[oa])\b/gu, ';'],
  [/\blt\b(?! (?:of|brown|green))/gu, 'light'],
  [/\b(?:drk|dk)\b/gu, 'dark'],
  [/\b(?:pale|light|soft)-?ish\b/gu, 'pastel'],
  [/\b(?:dark|deep|strong|bold|bright)-?ish\b/gu, 'full'],
  [
    /\b(?:flat out|full (?:whack|send|on|bore)|all the way|al tope|a todo(?: color)?|con todo|go (?:hard|full on)|full on)\b/gu,
    'full',
  ],
  [
    new RegExp(
      unbroken`
        \b(?:middle of the road|in[- ]between|middle strength|normal strength|usual strength|half ?way|
        half (?:throttle|speed|steam)|a media maquina|a medio gas|ni mucho ni poco|termino medio|
        intensidad normal|fuerza normal)\b
      `,
      'gu',
    ),
    'medium',
  ],
  // "Ni pálido ni chillón", "neither pale nor loud", "not too pale, not too bright": between a pale and a deep one.
  [
    new RegExp(
      unbroken`
        \b(?:ni (?:muy |tan |demasiado )?(?:${PALE}),? ni (?:muy |tan |demasiado )?(?:${LOUD})|ni (?:muy |
        tan |demasiado )?(?:${LOUD}),? ni (?:muy |tan |demasiado )?(?:${PALE})|(?:neither|not) (?:too |so |
        very )?(?:${PALE}),? (?:and |but )?(?:n?or|not|neither) (?:too |so |very )?(?:${LOUD})|(?:neither|
        not) (?:too |so |very )?(?:${LOUD}),? (?:and |but )?(?:n?or|not|neither) (?:too |so |
        very )?(?:${PALE}))\b
      `,
      'gu',
    ),
    'medium',
  ],
  // How far it is to be seen, and no share of a batch: "que se note a medias".
  [
    /\b(?:(?:que )?(?:se (?:note|vea|marque)|quede|de color|color) a medias|(?:show(?:s|ing)?|seen|visible|coloured|colored) (?:only )?half ?way)\b/gu,
    'medium',
  ],
  // A white that is only to lift what is there: "solo para aclarar", "just to take the yellow off".
  [
    new RegExp(
      unbroken`
        \b(?:(?:solo|solamente|nomas|nada mas) (?:para|pa) (?:aclarar(?:l[oa])?|suavizar(?:l[oa])?|
        blanquear(?:l[oa])? (?:un poco|algo|apenas)|bajar(?:le)? (?:un poco )?(?:el|lo) amarill[oa]|
        quitar(?:le)? (?:un poco )?(?:el|lo) amarill[oa]|que (?:aclare|suavice|se note))|(?:just|
        only) to (?:lighten|soften|lift|brighten|knock back|take)(?: (?:it|things|the (?:batter|colou?r|
        base|yellow)))?(?: (?:up|off|down|a (?:bit|touch|little|tad)))*)\b
      `,
      'gu',
    ),
    'tint',
  ],
  [/\b(?:a |just a |only a )blush of(?= it\b| colou?r\b|\s*(?:[.,;?!]|$))/gu, 'tint'],
  [/\b(?:apenitas|casi nadita|a whiff|a breath)\b/gu, 'tint'],
  // "Clarita nomás", "un verdecito de nada": no more than that.
  [
    new RegExp(
      unbroken`
        \b(?:(?:clar|suave|baj|palid)(?:c?it[oa]|c?it[oa]s) (?:no ?mas|nada mas|y ya)|\p{L}+(?:cit[oa]|
        it[oa]) de nada|(?:solo|nomas|nada mas|just|only) (?:un|una|a) (?:tinte|tonito|tono|
        toque) (?:suavecit[oa]|clarit[oa]|bajit[oa]))\b
      `,
      'gu',
    ),
    'tint',
  ],
  [/\b(?:clarin|claritito|palidin)\b/gu, 'pastel'],
  // The most of it, and the word made big or dear: "fuertísimo", "bien cargadito", "oscurote".
  [
    /\b(?:re|requete|super)?(?:fuert|intens|oscur|cargad|satur|saturad|viv|profund|negr|blanqu|roj|azul)isim[oa]s?\b/gu,
    'full',
  ],
  [
    /\b(?:(?:bien|muy|re) )?(?:cargadit|fuertecit|fuerton|fuertot|oscurot|cargadot|intensit)[oa]s?\b/gu,
    'full',
  ],
  // "Negro cerrado", "black not grey": nothing paler is meant.
  [/\b(?:negr[oa]|azul|verde|roj[oa]|color) cerrad[oa]\b/gu, 'full'],
  [
    new RegExp(
      unbroken`
        \b(?:black|negr[oa]),? (?:and )?(?:(?:not|never|rather than|instead of) (?:a |
        just )?(?:dark )?gr[ea]y|(?:y )?(?:no|en vez de|en lugar de|que no) (?:un )?gris)\b
      `,
      'gu',
    ),
    'full',
  ],
  [
    /\b(?:a |un )?(?:breath of|susurr(?:o|it[oa])(?: de)?|suspiro de|sombra de|atisbo de|insinuacion de)/gu,
    'tint ',
  ],
];

/** Strengths in the words of makers, looked for in this order; from memory. */
export const STRENGTHS: readonly (readonly [name: string, RegExp])[] = [
  ['double', /\b(?:double|twice(?: as| the)?|el doble|doble|dos veces mas)\b/u],
  [
    'half',
    new RegExp(
      unbroken`
        \b(?:half (?:of )?(?:the )?(?:usual|normal|stren\w+|stregn\w+|strngth|dose)|half as (?:strong|dark|
        much colou?r|intense)|(?:a )?la mitad de (?:lo|fuerte|intenso|oscuro|la (?:dosis|fuerza|
        intensidad))|media (?:fuerza|dosis|intensidad))\b
      `,
      'u',
    ),
  ],
  [
    'tint',
    new RegExp(
      unbroken`
        \b(?:hint|tint|barely(?: there)?|just a touch|touch|smidge[n]?|tiny bit|ever so (?:slightly|
        faint(?:ly)?)|(?:the )?(?:slightest|faintest|palest)|faint(?:ly)?|ghost(?:ly)?|kiss of|a wash of|
        suggestion of|hardly any|apenas|toque|pizca|un pelin|tantit[oa]|poquitit[oa]|levemente|levisim[oa]|
        casi (?:blanco|nada|transparente)|matiz|whisper|(?:very|really|super|so) (?:light|pale|soft|
        faint)(?:ly)?|muy (?:clar\w*|palid\w*|suave\w*|tenue)|palidisim[oa]|clarisim[oa])\b
      `,
      'u',
    ),
  ],
  [
    'pastel',
    new RegExp(
      unbroken`
        \b(?:pastel|pastelit[oa]s?|pale|palish|light(?:ly|er)?|soft(?:er|ly)?|gentle|subtle|baby|bebe|milky|
        washed out|clarit[oa]s?|clar[oa]s?|claron|palid[oa]s?|palidit[oa]s?|suave|suavecit[oa]|suavit[oa]|flojit[oa]s?|tenue|sutil|
        liger[oa]|ligerit[oa]|deslavad[oa]|apagad[oa]|delicad[oa]|minty|muted|delicate|bajit[oa]|(?:azul|
        rosad|celest|verdec|amarill|lil|rosit)it[oa]s?|rosita)\b
      `,
      'u',
    ),
  ],
  [
    'medium',
    new RegExp(
      unbroken`
        \b(?:medium|med|mid|middling|moderate|intermedi[oa]|medi[oa]n[oa]|(?:tono|color|intensidad|fuerza|
        azul|celeste|turquesa|rojo|granate|verde|rosa|rosado|fucsia|amarillo|ocre|dorado|beige|marron|cafe|
        gris|negro|blanco|morado|violeta|lila|malva|lavanda|naranja|coral|teja) medi[oa](?! (?:litro|kilo|
        vaso|lote|molde))|half strength|not too \w+|ni (?:muy )?clar[oa] ni (?:muy )?oscur[oa]|
        ni (?:muy )?fuerte ni (?:muy )?\w+)\b
      `,
      'u',
    ),
  ],
  [
    'full',
    new RegExp(
      unbroken`
        \b(?:full|(?:bien |muy )?priet[oa]|(?:${HUE}) de verdad|really pop|pop|punchy|loud|rich|vibrant|
        ${DEEP}|oscurit[oa]|max(?:imum)?|maxim[oa]|chillon|encendid[oa]|subid[oa]|a tope|(?:saturacion|
        intensidad|fuerza) (?:plena|total|maxima|completa)|plena saturacion|pleno color|color pleno|a full|
        al maximo|black black|jet black|pitch black|(?:almost|nearly|casi) (?:black|negr[oa])|as (?:${DEEP}|
        ${HUE}) as|(?:the )?(?:whitest|blackest|darkest|brightest|deepest|strongest|boldest|reddest|bluest|
        greenest)|(?:bright|dark|strong|white|black) as poss\w*|lo mas (?:${DEEP}|${HUE})|(?:bien|muy|
        super) (?:${HUE}|${DEEP})|(?:properly|proper|really|real|truly|true|solid|stark|super|seriously|
        very) (?:${HUE})|(?<hue>${HUE}) \k<hue>)\b
      `,
      'u',
    ),
  ],
];
