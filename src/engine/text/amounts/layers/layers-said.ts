import { unbroken } from '../../../over-lines.ts';
import { plainText } from '../../../quantities/number.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { bare } from '../shares/share-at.ts';
import { placedLayers } from './placed-layers.ts';

const LONGEST = 200;
/** "Pink sandwiched between two browns", "azul entre blanco y verde". */
const BETWEEN = new RegExp(
  unbroken`
    ^(?:(?:a|an|the|el|la|un|una) )?(\p{L}+(?: \p{L}+)??),? (?:(?:sandwiched|stuck|caught|layer|line|capa|
    metid[oa]|apretad[oa]) )?(?:in )?(?:between|entre)(?: (?:two|2|dos)(?: (?:layers|capas) (?:of|
    de))?)? (\p{L}+(?: \p{L}+)?)(?: (?:and|y|n|&) (\p{L}+(?: \p{L}+)?))?[\s.!]*$
  `,
  'iu',
);

/** One colour of a word for two of it: "browns". */
const oneOf = (name: string): string =>
  [name.replace(/(?<=[aeiou])s$/iu, ''), name.replace(/e?s$/iu, ''), name.replace(/s$/iu, '')].find(
    one => one !== name && knowsColour(one),
  ) ?? name;

function between(text: string): readonly string[] | undefined {
  const [, middle, low, high] = BETWEEN.exec(text) ?? [];
  if (middle === undefined || low === undefined) return undefined;
  const isTwo = high === undefined && /(?<!\p{L})(?:two|2|dos)(?!\p{L})/iu.test(text);
  if (high === undefined && !isTwo) return undefined;
  const names = isTwo ? [oneOf(low), middle, oneOf(low)] : [low, middle, high!];
  return names.every(name => knowsColour(bare(name))) ? names.map(bare) : undefined;
}

/** "Pencil line don't count": what is no layer of its own. */
const NOT_COUNTED = new RegExp(
  unbroken`
    (?:^|[,;.])[^,;.\d]*(?<!\p{L})(?:line|pencil|stripe|dust(?:ing)?|l[ií]nea|raya|l[aá]piz|
    polvo)(?!\p{L})[^,;.\d]*(?:(?:do|does|did) ?n['’]?t|not|no) (?:count|cuentan?)(?:ed|
    s)?(?!\p{L})[^,;.\d]*(?=[,;.]|$)
  `,
  'iu',
);
/** "Thin pencil line, then grey. Line's charcoal": its colour is told last. */
const LINE_IS = new RegExp(
  unbroken`
    ^(.*?)(?<!\p{L})(?:(?:thin|fine|pencil|a|una|fina) )*(?:line|l[ií]nea|raya)(?: (?:fina|
    de l[aá]piz))*(?!['’]s|\p{L})(.*?)[.;,]\s*(?:(?:the|la) )?(?:(?:pencil )?line|l[ií]nea|
    raya)(?:['’]s| is| es) (?:de )?(\p{L}+(?: \p{L}+)?)[\s.!]*$
  `,
  'iu',
);

const POUR = new RegExp(
  unbroken`
    ^(?:(?:and|then|y|luego|despu[eé]s|i|we|le|les) )*(?:pour(?:ing|ed)?|put(?:ting)?|add(?:ing|ed)?|
    spoon(?:ing|ed)?|echo|eche|echamos|vierto|verter|pongo|poner|va|le pongo) (?:in |on )?(?:(?:the|a|some|
    el|la|un|una) )?
  `,
  'iu',
);
const LIES = new RegExp(
  unbroken`
    [\s,]+(?:over (?:it|that|a spoon|the back of a spoon)|on (?:top|it|that)|on top of (?:it|that)|
    (?:por )?encima|por arriba|arriba|sobre (?:eso|ella|la cuchara)|last|al final)[\s.!]*$
  `,
  'iu',
);

/** "Pour the grey, leave it ten minutes, pour teal over a spoon": poured in that order; what is done between adds no layer. */
function poured(text: string): readonly string[] | undefined {
  const clauses = text.split(/\s*[,.]\s*|\s+(?:then|luego)\s+/iu).filter(clause => clause !== '');
  if (!POUR.test(clauses[0] ?? '')) return undefined;
  const named = clauses.map(clause => ({
    isPoured: POUR.test(clause),
    name: bare(clause.replace(POUR, '').replace(LIES, '')),
  }));
  const layers = named.filter(({ isPoured, name }) => isPoured || knowsColour(name));
  const isWhole = named.every(
    one => layers.includes(one) || !one.name.split(/\s+/u).some(word => word.length > 3 && knowsColour(word)),
  );
  return layers.length > 1 && isWhole && layers.every(({ name }) => knowsColour(name))
    ? layers.map(({ name }) => name)
    : undefined;
}

/** What layers look like at the end: "like a pint of stout". */
const LIKENESS = /[\s,]+(?:like|como|igual que) (?:an?|una?|the|la|el|my|mi|our) [\p{L}\p{M}'’ ]+[.!\s]*$/iu;

/**
 * Layers that are told by what they lie between or each by its place, in the portions' own grammar, without what is said not to count. A
 * text that tells none comes back as it was, but for that. Pure.
 * @example layersSaid('pink sandwiched between two browns') // '1 parts brown; 1 parts pink; 1 parts brown'
 */
export function layersSaid(typed: string): string {
  if (typed.length > LONGEST || typed.includes(';')) return typed;
  const text = typed.replace(NOT_COUNTED, '').replace(LINE_IS, '$1$3$2');
  const plain = plainText(text).replace(LIKENESS, '');
  const names = between(plainText(text)) ?? placedLayers(plain) ?? poured(plain);
  return names === undefined ? text : names.map(name => `1 parts ${name}`).join('; ');
}
