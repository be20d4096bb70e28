import { unbroken } from '../over-lines.ts';
import { Refusal } from '../refusal.ts';
import { carrierNamed } from '../text/names/carrier-name.ts';

/** Parts of powder and of liquid; only their proportion counts. */
export type Parts = { readonly powder: number; readonly liquid: number };

const FIGURE = String.raw`(?:\d+(?:[.,]\d+)?(?: \d+\/\d+)?|\d+\/\d+|an?|one|una?|uno|half|medi[oa]|mitad)`;
const PART = `(?:(?:equal )?(?:parts?|partes?|pts?|shares?|measures?|medidas?) )?(?:of |de )?`;
/** "three of water to one of clay", "2 partes aceite, una pigmento", "half powder half sunflower": each part with its name. */
const NAMED_PARTS = new RegExp(
  unbroken`
    ^(?:(?:mixed|mezclad[oa]|mojad[oa]) )?(${FIGURE}) ${PART}(?!(?:and|y|
    n)\b)(\p{L}[\p{L} ]*?)[,:]? (?:(?:to|in|into|on|and|y|with|con|por|a|en|for|every|cada|the other|
    la otra|otra) )*(${FIGURE}) ${PART}(\p{L}[\p{L} ]*)$
  `,
  'iu',
);
/** "1 to 4 rice bran oil", "1 a 10, achiote en oliva": two bare figures, powder first, and the liquid behind them. */
const BARE =
  /^(\d+(?:[.,]\d+)?|una?|uno|one) (?:to|a|por|:) ?(\d+(?:[.,]\d+)?|una?|uno|one)(?=[\s,]+\p{L})(.+)$/iu;
const MEASURE =
  '(?:tsps?|tbsps?|teaspoons?|tablespoons?|spoons?|scoops?|cups?|cdt?as?|cucharad(?:it)?as?|cucharas?|tazas?|medidas?) (?:of |de )?';
/** "2 cucharadas de agua por cada una de arcilla": one measure for both, by volume; what is weighed is read elsewhere. */
const ONE_MEASURE = new RegExp(
  unbroken`
    ^(${FIGURE}) (${MEASURE})(\p{L}[\p{L} ]*?),? (?:(?:to|in|into|on|and|y|with|con|por|a|en|for|every|each|
    cada|per) )*(${FIGURE}) (?:(${MEASURE})|(?:of |de ))(\p{L}[\p{L} ]*)$
  `,
  'iu',
);
/** "charcoal 2 parts, palm kernel oil 5 parts". */
const PARTS_BEHIND = new RegExp(
  String.raw`^(\p{L}[\p{L} ]*?) (${FIGURE}) (?:parts?|partes?|pts?)[\s,]+(?:and |y |to |por )?(\p{L}[\p{L} ]*?) (${FIGURE}) (?:parts?|partes?|pts?)$`,
  'iu',
);
const UNIT =
  /^[\s,]*(?:tsps?|tbsps?|teaspoons?|tablespoons?|cups?|g|gr|grams?|gramos?|ml|cc|oz|ounces?|cdt?as?|cucharad\p{L}*|tazas?|kg|kilos?)\b/iu;
const TIMES =
  '(?:the |el |la )?(double|twice|two times|doble|dos veces|triple|three times|tres veces|same|mism[oa]|igual|equal)';
/** "double the oil to the powder", "el doble de agua que de caolín", "same weight of castor as powder". */
const MANIFOLD = new RegExp(
  unbroken`
    ^${TIMES} (?:as much |(?:the |el |la )?(?:weight|amount|volume|quantity|peso|cantidad|volumen)? ?(?:of |
    de |the |del? )*)(\p{L}[\p{L} ]*?) (?:to|as|than|que(?: de)?|a|for|por|with|con) (?:the |its |el |la |
    del? )?(?:own )?(\p{L}[\p{L} ]*)$
  `,
  'iu',
);
/** What is said behind a proportion changes nothing of it. */
const BEHIND = new RegExp(
  unbroken`
    [\s,.]+(?:that['’]?s|thats|(?:as|like|como) (?:always|usual|mum|mom|gran|the|in|my|siempre|dice|me|mi)|
    as[ií]|always|siempre|infus\p{L}*|by (?:weight|volume)|(?:en|por|al) (?:peso|volumen)|the same (?:spoon|
    scoop|cup)|la misma (?:cuchara|medida)|please|por favor)(?!\p{L})[^\d]*$
  `,
  'iu',
);

/** "..., I make it like pancake batter": a clause of its own without a figure. */
const REMARK = /[,;]\s*(?:i|it|we|like|como|as|lo|la|le|yo)(?!\p{L})[^\d]*$/iu;

const countOf = (written: string): number => {
  if (/^(?:half|medi|mitad)/iu.test(written)) return 1 / 2;
  if (/^\p{L}/u.test(written)) return 1;
  const [, whole = '0', over, under] = /^(?:(\d+) )?(\d+)\/(\d+)$/u.exec(written) ?? [];
  return over === undefined
    ? Number(written.replace(',', '.'))
    : Number(whole) + Number(over) / Number(under);
};

const stemOf = (measure: string): string => measure.trim().split(' ')[0]!.toLowerCase().replace(/s$/u, '');

/** Whether a name is one of a liquid; what harms is one too, and refused where the carrier is read. */
function isLiquid(name: string): boolean {
  try {
    return carrierNamed(name) !== undefined || /\b(?:liquid|l[ií]quido)\b/iu.test(name);
  } catch (refusal) {
    if (refusal instanceof Refusal) return true;
    throw refusal;
  }
}

/** Two amounts with their names, whichever comes first; undefined where not one of the names is a liquid's. */
function parted(one: number, name: string, other: number, otherName: string): Parts | undefined {
  const [first, last] = [isLiquid(name), isLiquid(otherName)];
  if (first === last || !(one > 0 && other > 0)) return undefined;
  return first ? { powder: other, liquid: one } : { powder: one, liquid: other };
}

/** A paste whose proportion is told in words; undefined where it is told otherwise. */
export function wordedParts(text: string): Parts | undefined {
  const said = text.replace(REMARK, '').replace(BEHIND, '').trim();
  const [, times, more, less] = MANIFOLD.exec(said) ?? [];
  if (times !== undefined && more !== undefined && less !== undefined) {
    const factor = /^(?:double|twice|two|doble|dos)/iu.test(times)
      ? 2
      : /^(?:triple|three|tres)/iu.test(times)
        ? 3
        : 1;
    // "Double its weight in oil" tells no second name.
    const known = parted(factor, more, 1, less);
    if (known) return known;
  }
  const [, one, name, other, otherName] = NAMED_PARTS.exec(said) ?? [];
  if (one !== undefined && !UNIT.test(name!) && !UNIT.test(otherName!)) {
    const known = parted(countOf(one), name!, countOf(other!), otherName!);
    if (known) return known;
  }
  const measured = ONE_MEASURE.exec(said);
  const isOne = measured && (measured[5] === undefined || stemOf(measured[5]) === stemOf(measured[2]!));
  const behind = PARTS_BEHIND.exec(said);
  const known = isOne
    ? parted(countOf(measured[1]!), measured[3]!, countOf(measured[4]!), measured[6]!)
    : behind && parted(countOf(behind[2]!), behind[1]!, countOf(behind[4]!), behind[3]!);
  if (known) return known;
  const [, powder, liquid, rest = ''] = BARE.exec(said) ?? [];
  return powder !== undefined && !UNIT.test(rest) && isLiquid(rest)
    ? { powder: countOf(powder), liquid: countOf(liquid!) }
    : undefined;
}
