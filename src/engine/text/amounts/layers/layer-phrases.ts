import { unbroken } from '../../../over-lines.ts';
import { plainText } from '../../../quantities/number.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { namesIn } from '../../names/listed-names.ts';
import { bare } from '../shares/share-at.ts';
import { placedLayers } from './placed-layers.ts';

const LAYERS = new RegExp(
  unbroken`
    ^(?:(?:son|van|va en|hago|it['’]?s|there (?:are|is)|i want|quiero|(?:in|en|with|
    con)(?= (?:\d+ )?(?:layers?|capas)))\s+)?(?:(\d{1,2}|one|una?)\s+)?(?:equal\s+|even\s+|thin\s+|
    rainbow\s+|horizontal\s+)?(?:layers?|colores|colou?rs?|capas?|stripes?|bands?|franjas?|bandas?|
    partes iguales|equal parts?)(?:\s+(?:igual(?:es|it[oa]s)|parej[oa]s|finas|of|
    de))*(?!\p{L})\s*[:,-]?\s*(.+)$
  `,
  'iu',
);
const STACKED = /\s*(?:,|;|\band then\b|\bthen\b|\bluego\b|\bdespu[eé]s\b|\bsobre eso\b|\s-\s|-?>|→|\/)\s*/iu;
/** Places and ordinals; what stands between two of them is one layer. */
const PLACE = new RegExp(
  unbroken`
    (?:\b(?:(?:on |at |in |for )?(?:the )?(?:very )?(?:bottom|top|middle|cent(?:er|re)|
    base)(?: layer| one)?(?: is)?|(?:the |la )?(?:first|second|third|fourth|fifth|last|next|primera?|
    segunda|tercera|cuarta|quinta|[uú]ltima)(?: (?:layer|capa|one))?(?: is| de)?|(?:layer|capa) \d{1,2}|
    layer|(?:la |el )?(?:de )?(?:(?:m[aá]s )?abajo|arriba|al fondo|en el fondo|en medio|encima|en el medio|
    en el centro)(?: del todo| de)?|capa de|capa|finally|start(?:ing)? with|empezando (?:con|por)|primero|
    al final|por ultimo|por último|ending with|arriba del todo)\b|(?<![\d.,])\d{1,2}[.)](?=\s))[:]?
  `,
  'giu',
);
const UPWARDS = new RegExp(
  unbroken`
    [\s,:]*\b(?:from (?:the )?bottom(?: to (?:the )?top| up)?|bottom (?:to top|up)|de abajo (?:hacia|a|
    para) arriba|desde abajo|start(?:ing|s)? (?:at|from) (?:the )?(?:bottom|floor|base)(?: of (?:the|
    my) \p{L}+)?|empezando (?:por|desde|en) (?:abajo|el fondo|la base)(?: del? (?:la )?\p{L}+)?)\b[\s,:]*
  `,
  'iu',
);
const DOWNWARDS = new RegExp(
  unbroken`
    [\s,:]*\b(?:from (?:the )?top(?: to (?:the )?bottom| down)?|top (?:to bottom|down)|de arriba (?:hacia|a|
    para) abajo|desde arriba|start(?:ing|s)? (?:at|from) (?:the )?top|empezando (?:por|
    desde) arriba)\b[\s,:]*
  `,
  'iu',
);
/** "pink over white over blue" is told from the top. */
const OVER = /\s+(?:over|on top of|sobre|(?:por )?encima del?|arriba del?(?! todo))\s+(?:the |la |el )?/iu;
/** Said of a layer before what it lies on. */
const REFERS = /\s+(?:va|queda|est[aá]|goes|sits|is|lies)$/iu;
/** What the layers are to look like is no layer: "amarillo azul y rojo como la bandera". */
const LIKENESS = /[\s,]+(?:like|como|tipo|igual que)\s+(?:the |a |an |la |el |una? |mi |my )[\p{L} ]+$/iu;

/** What tells at the end that the list before it is one of layers, or how they are to look. */
const IN_LAYERS = new RegExp(
  unbroken`
    [\s,]*(?:(?:en|in) (?:\d{1,2} )?(?:capas|layers|franjas|stripes)|por capas|layered|stacked|apilad[oa]s?|
    (?:an? |un )?(?:degrad[eé]|gradient|ombr[eé]|fade)(?: (?:de|of|in|en) \d{1,2}(?: (?:capas|layers|tonos|
    shades))?)?)[\s.!]*$
  `,
  'iu',
);
/** "Three: turquoise, coral, melon", "Four. Sand, coral, sand, coral". */
const COUNTED = /^(?:(?:son|van|just|only|solo)\s+)?(\d{1,2})\s*[:.]\s*(?=\p{L})/iu;

/** Layers that nothing parts: a colour that comes again, or three and more, each by its own name. */
function runTogether(text: string): readonly string[] | undefined {
  if (/[,;:/\d-]/u.test(text)) return undefined;
  const names = namesIn(text, knowsColour);
  const isRun = names.length > 2 || (names.length > 1 && new Set(names).size < names.length);
  return isRun && names.every(name => knowsColour(name)) ? names : undefined;
}

/** "Grey and white alternating, 5 layers, grey first": two colours by turns. */
const BY_TURNS = new RegExp(
  unbroken`
    ^(?:alternating |alternando |alternated )?(.+?) (?:and|y|n|con|with) (.+?)[\s,]+(?:alternat(?:ing|ed|e)|
    alternand[oa]|alternad[oa]s|by turns|por turnos)?[\s,]*(\d{1,2}) (?:layers|capas|franjas|
    stripes)(?:[\s,]+(?:empieza|empezando|start\p{L}*|begin\p{L}*)(?: (?:con|with|el|la|on|from|por))* (.+)|
    [\s,]+(.+?) (?:first|primero|abajo|at the bottom))?$
  `,
  'iu',
);
const MOST_TURNS = 12;

function byTurns(text: string): readonly string[] | undefined {
  if (!/altern|turn/iu.test(text)) return undefined;
  const [, one, other, count, starts, first] = BY_TURNS.exec(text) ?? [];
  if (one === undefined || other === undefined || !(Number(count) <= MOST_TURNS)) return undefined;
  const [a, b] = [bare(one), bare(other)];
  const lead = starts ?? first;
  const [from, next] = lead !== undefined && bare(lead) === b ? [b, a] : [a, b];
  if (!knowsColour(a) || !knowsColour(b) || (lead !== undefined && bare(lead) !== from)) return undefined;
  return Array.from({ length: Number(count) }, (_, at) => (at % 2 === 0 ? from : next));
}

/** Layers from the bottom up, in equal parts; undefined where the text is no such list. */
export function layersIn(text: string): readonly string[] | undefined {
  const isDown = DOWNWARDS.test(text);
  const told = plainText(text).replace(DOWNWARDS, ' ').replace(UPWARDS, ' ').replace(LIKENESS, '').trim();
  const said = told.replace(IN_LAYERS, '').replace(COUNTED, '$1 layers: ');
  const byPlace = placedLayers(told);
  if (byPlace) return isDown ? byPlace.toReversed() : byPlace;
  const turns = byTurns(told);
  if (turns) return isDown ? turns.toReversed() : turns;
  const run = runTogether(said);
  if (run) return isDown ? run.toReversed() : run;
  const isStack = said !== told && !COUNTED.test(told);
  const listed = LAYERS.exec(isStack ? `layers: ${said}` : said);
  const body = (listed?.[2] ?? said).replace(UPWARDS, ' ').trim();
  const over = body.split(OVER);
  // "Negro encima de rojo, y el rojo va sobre amarillo": the second time it is only referred to.
  const steps = over
    .flatMap(name => name.split(/\s*,\s*(?:y|and) (?:the |el |la )?/iu))
    .map(name => bare(name.replace(REFERS, '')));
  const apart = steps.filter((name, at) => name !== steps[at - 1]);
  if (over.length > 1 && apart.length === over.length && apart.every(name => knowsColour(name)))
    return apart.toReversed();
  const [top, bottom] = [/\b(?:top|arriba|encima)\b/iu, /\b(?:bottom|abajo|fondo)\b/iu].map(place =>
    body.search(place),
  );
  const isTopFirst =
    isDown ||
    (top! >= 0 &&
      (bottom! < 0 ? /^\W*(?:on |at |the )*(?:top|arriba|encima)\b/iu.test(body) : top! < bottom!));
  const placed = body.replace(PLACE, ' , ');
  const pieces = placed
    .split(STACKED)
    .map(piece => bare(piece.replace(/\s+/gu, ' ').trim()))
    .map(piece => bare(piece.replace(/^(?:and|y|a|an|una?|the|el|la)\s+/iu, '')))
    .filter(piece => piece !== '');
  const count = listed?.[1] === undefined ? undefined : Number(/^\p{L}/u.test(listed[1]) ? 1 : listed[1]);
  const split = listed
    ? namesIn(pieces.join(', '), knowsColour, count)
    : pieces.flatMap(piece => (/\s(?:and|y|n|&)\s/iu.test(piece) ? namesIn(piece, knowsColour) : [piece]));
  const layers = isTopFirst ? split.toReversed() : split;
  return layers.length > 1 || (listed && count === 1) ? layers : undefined;
}
