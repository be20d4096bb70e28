import type { NamedThing } from './entities.ts';
import type { Words } from './words-of.ts';

const HUE =
  'white|black|red|blue|green|pink|purple|yellow|orange|brown|grey|blanc[oa]|negr[oa]|roj[oa]|azul|verde|morad[oa]|amarill[oa]|rosa|naranja|cafe|marron|gris';
const DEEP =
  'dark|deep|strong|bold|bright|intense|vivid|saturated|oscur[oa]|fuerte|intens[oa]|viv[oa]|cargad[oa]|saturad[oa]|profund[oa]';

/** Strengths in the words of makers, looked for in this order; from memory. */
const STRENGTHS: readonly (readonly [name: string, RegExp])[] = [
  ['double', /\b(?:double|twice(?: as| the)?|el doble|doble|dos veces mas)\b/u],
  [
    'half',
    /\b(?:half (?:of )?(?:the )?(?:usual|normal|stren\w+|stregn\w+|strngth|dose)|half as (?:strong|dark|much colou?r|intense)|(?:a )?la mitad de (?:lo|fuerte|intenso|oscuro)|media (?:fuerza|dosis|intensidad))\b/u,
  ],
  [
    'tint',
    /\b(?:hint|tint|barely(?: there)?|just a touch|touch|smidge[n]?|tiny bit|ever so (?:slightly|faint(?:ly)?)|(?:the )?(?:slightest|faintest|palest)|faint(?:ly)?|ghost(?:ly)?|kiss of|a wash of|suggestion of|hardly any|apenas|toque|pizca|un pelin|tantit[oa]|poquitit[oa]|levemente|levisim[oa]|casi (?:blanco|nada|transparente)|whisper|(?:very|really|super|so) (?:light|pale|soft|faint)(?:ly)?|muy (?:clar\w*|palid\w*|suave\w*|tenue)|palidisim[oa]|clarisim[oa])\b/u,
  ],
  [
    'pastel',
    /\b(?:pastel|pale|palish|light(?:ly|er)?|soft(?:er|ly)?|gentle|subtle|baby|bebe|milky|washed out|clarit[oa]s?|clar[oa]s?|claron|palid[oa]s?|palidit[oa]s?|suave|suavecit[oa]|tenue|sutil|liger[oa]|ligerit[oa]|deslavad[oa]|apagad[oa]|delicad[oa]|minty|muted|delicate|bajit[oa]|(?:azul|rosad|celest|verdec|amarill|lil|rosit)it[oa]s?|rosita)\b/u,
  ],
  [
    'medium',
    /\b(?:medium|med|mid|middling|moderate|intermedi[oa]|medi[oa]n[oa]|(?:tono|color|intensidad|azul|rojo|verde|rosa|amarillo|fuerza) medi[oa]|half strength|not too \w+|ni (?:muy )?clar[oa] ni (?:muy )?oscur[oa]|ni (?:muy )?fuerte ni (?:muy )?\w+)\b/u,
  ],
  [
    'full',
    new RegExp(
      String.raw`\b(?:full|really pop|pop|punchy|loud|rich|vibrant|${DEEP}|oscurit[oa]|max(?:imum)?|maxim[oa]|chillon|encendid[oa]|subid[oa]|a tope|saturacion (?:plena|total|maxima)|plena saturacion|pleno color|color pleno|a full|al maximo|black black|jet black|pitch black|(?:almost|nearly|casi) (?:black|negr[oa])|as (?:${DEEP}|${HUE}) as|lo mas (?:${DEEP}|${HUE})|(?:bien|muy|super) (?:${HUE}|${DEEP})|(?:properly|proper|really|truly|true|solid|stark|super|seriously|very) (?:${HUE})|(?<hue>${HUE}) \k<hue>)\b`,
      'u',
    ),
  ],
];

/** What was not wished: "too strong", "demasiado oscuro", "it came out dark". */
const UNWISHED = new RegExp(
  String.raw`\b(?:(?<!not )too|demasiado|tan|nada|(?:no|not)(?: (?:a|an|un|una|muy|very|so|all that|quede|sea|salga|quiero))?|less|menos|wasn'?t|isn'?t|(?:was|were|came out|turned out|salio|quedo|me quedo) (?:too |so |very |muy |tan |bien )?)\s*(?:${DEEP}|pale|light|faint|clarit[oa]|clar[oa]|palid[oa]|palidit[oa]|bajit[oa]|pastel|suave|suavecit[oa]|soft)\b`,
  'gu',
);

/** The strength a question wishes, looked for outside the colourants' names. */
export function strengthIn({ words }: Words, things: readonly NamedThing[]): string | undefined {
  const rest = words
    .map((word, at) => (things.some(({ from, to }) => at >= from && at < to) ? ';' : word))
    .join(' ')
    .replaceAll('colour', 'color')
    .replace(UNWISHED, ';');
  return STRENGTHS.find(([, pattern]) => pattern.test(rest))?.[0];
}
