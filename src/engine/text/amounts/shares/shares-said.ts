import { unbroken } from '../../../over-lines.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { bare, percent, shareAt } from './share-at.ts';

const LONGEST = 200;
/** "T'other half". */
const T_OTHER = /(?<![\p{L}\p{N}])t['’] ?other(?!\p{L})/giu;
/** "Otra de blanco", "another of white": one more part of the same. */
const ONE_MORE =
  /(?<=(?:\s(?:y|and|n|&)|,)\s+)(?:otr[oa]|another(?: one)?)(?: (?:parte|part))? (de|of) (?=\p{L})/giu;
/** "Otra cuarta blanco". */
const MORE_OF_FRACTION =
  /(?<!\p{L})(otr[oa]|una) (tercera|cuarta|quinta|sexta|octava|d[eé]cima) (?!partes?(?!\p{L}))(?=\p{L})/giu;
/** "Tres cuartas partes café y una de beige": one more of those. */
const ONE_OF_THEM = new RegExp(
  unbroken`
    ((?:tres|dos|cuatro|two|three|four|[234]) (cuartas?|tercios|terceras|quint[oa]s|quarters|thirds|
    fifths)(?: partes)?(?!\p{L})[^\d,;]*?(?:,|\s(?:y|and|n)) )(?:una?|one)(?: (?:de|of))? (?!(?:cuart|
    quarter|terc|third|quint|fifth|parte))(?=\p{L})
  `,
  'iu',
);
const SINGLE: readonly (readonly [RegExp, string])[] = [
  [/^cuart/iu, '1/4'],
  [/^quarter/iu, '1/4'],
  [/^(?:terc|third)/iu, '1/3'],
  [/^(?:quint|fifth)/iu, '1/5'],
];
/** "Pink to have most, like half": how much that is follows. */
const MOST_LIKE = new RegExp(
  unbroken`
    ^(?:i (?:want|d like|would like) |quiero (?:que )?)?(?:(?:the|el|
    la) )?(\p{L}+(?: \p{L}+)?) (?:(?:to )?(?:ha(?:ve|s)|gets?|be|is)|(?:tenga|tiene|lleva|lleve|sea|
    es)) (?:the |lo |la )?(?:most|mayor[ií]a|m[aá]s),? (?:like|about|say|maybe|como|digamos)? ?
  `,
  'iu',
);
/** A share of what the shares before it left. */
const OF_WHAT_IS_LEFT = new RegExp(
  unbroken`
    (?:,|\s)(?:and |y |then |luego )*(?<share>(?:a |an |one |the |la |un |una )?(?:half|third|quarter|mitad|
    tercio|cuarto|tercera parte|cuarta parte)) (?:of|de) (?:the (?:rest|remainder|other half)|
    what(?:['’]?s| is| was|ever(?:['’]s| is| was)?) left(?: over)?|what remain(?:s|ed)|la otra mitad|
    lo que (?:queda|quedaba|qued[oó]|sobra|sobraba)|(?:el |lo )?(?:resto|dem[aá]s)|del resto)(?!\p{L})
  `,
  'iu',
);
/** "Then split the other half same between yellow and orange": all that is left, parted again. */
const SPLIT_REST = new RegExp(
  unbroken`
    [\s,.;]+(?:and |y |then |luego |despu[eé]s )*(?:split|divid(?:e|o|ir)|shar(?:e|ing)|halve|repart(?:e|o|
    ir)|parte|parto) (?:(?:the|el|lo|la) (?:rest|remainder|other half|resto|dem[aá]s|otra mitad)|
    what(?:['’]?s| is) left|lo que (?:queda|sobra))(?: (?:the same|same|equal(?:ly)?|even(?:ly)?|por igual|
    igual))*[,:]? (?=between |among |in |into |entre |en )
  `,
  'iu',
);
/** "Tenth is red, other 90 grey". */
const OTHER_FIGURE = /(?<!\p{L})(?:the )?other (\d{1,2})(?![\d.,:/]| ?%)(?= \p{L})/giu;
/** "Tenth is red". */
const BARE_FRACTION = /^(?=(?:third|quarter|fifth|sixth|eighth|tenth) (?:is|of|in|for)(?!\p{L}))/iu;
/** "Purple 3 : lilac 2". */
const RATIO_BEHIND = /^(\p{L}[\p{L} ]*?) (\d{1,2})((?: ?[:/,-] ?\p{L}[\p{L} ]*? \d{1,2})+)[.\s]*$/u;
/** "Blue n purple the same, and pink double of either". */
const MANIFOLD_OF = new RegExp(
  unbroken`
    ^(\p{L}.*?),? (?:(?:both |all )?(?:the same|alike|equal|iguales?|lo mismo|parejos?)),? (?:and |y |but |
    pero )?(?:the |el |la )?(\p{L}+(?: \p{L}+)?) (?:is |gets |has )?(?:the |el )?(double|twice|doble|
    triple)(?: (?:of|o|as much as|que|de))?(?: (?:either|each|them|the others?|those|cada un[oa]|los otros|
    las otras|any|one)(?: (?:of|o|ae|de) (?:them|those|the others|ellos|ellas|los otros))?)?[.\s]*$
  `,
  'iu',
);

const JOINED = /\s*,\s*(?:and |y )?|\s+(?:and|y|n|&)\s+/iu;

/** The percents that stand in a text before a place. */
function sumBefore(text: string): number {
  let sum = 0;
  let end = 0;
  for (const { index } of text.matchAll(/(?<![\p{L}\d.,/])(?=[\p{L}\d])/gu)) {
    if (index < end) continue;
    const share = shareAt(text.slice(index));
    const figure = /^([\d.]+)%$/u.exec(share?.canonical ?? '')?.[1];
    if (share === undefined || figure === undefined) continue;
    sum += Number(figure);
    end = index + share.length;
  }
  return sum;
}

function withPartOfRest(text: string): string {
  const match = OF_WHAT_IS_LEFT.exec(text);
  const share = shareAt(match?.groups?.share ?? '');
  const figure = /^([\d.]+)%$/u.exec(share?.canonical ?? '')?.[1];
  const left = match === null ? 0 : 100 - sumBefore(text.slice(0, match.index));
  if (match === null || figure === undefined || !(left > 0 && left < 100)) return text;
  return `${text.slice(0, match.index)}, ${percent((Number(figure) * left) / 10_000)}${text.slice(match.index + match[0].length)}`;
}

function manifold(text: string): string | undefined {
  const [, list, more, times] = MANIFOLD_OF.exec(text) ?? [];
  if (list === undefined || more === undefined || times === undefined) return undefined;
  const names = [...list.split(JOINED), more].map(bare);
  if (names.length < 3 || !names.every(knowsColour)) return undefined;
  const count = /triple/iu.test(times) ? 3 : 2;
  return names.map((name, at) => `${at === names.length - 1 ? count : 1} parts ${name}`).join('; ');
}

function ratioBehind(text: string): string | undefined {
  const [, first, count, more = ''] = RATIO_BEHIND.exec(text) ?? [];
  if (first === undefined || !/[:/]/u.test(more)) return undefined;
  const others = [...more.matchAll(/[:/,-] ?(\p{L}[\p{L} ]*?) (\d{1,2})/gu)];
  const pieces = [[first, count], ...others.map(([, name, figure]) => [name, figure])];
  return pieces.every(([name, figure]) => knowsColour(bare(name!)) && Number(figure) > 0)
    ? pieces.map(([name, figure]) => `${figure} parts ${bare(name!)}`).join('; ')
    : undefined;
}

/**
 * How a batter is divided, with what hangs on another share told as what it is: one more of the same part, a part of what was left, the
 * double of either, counts behind their names. A text that tells none of these comes back as it was. Pure.
 * @example sharesSaid('half green, then half of what was left black, rest white') // 'half green, 25% black, rest white'
 */
export function sharesSaid(text: string): string {
  if (text.length > LONGEST || text.includes(';')) return text;
  const plain = text
    .replace(T_OTHER, 'the other')
    .replace(ONE_MORE, 'una $1 ')
    .replace(MORE_OF_FRACTION, '$1 $2 parte ')
    .replace(ONE_OF_THEM, (_, head: string, unit: string) => {
      const single = SINGLE.find(([pattern]) => pattern.test(unit))![1];
      return `${head}${single} `;
    })
    .replace(BARE_FRACTION, 'a ')
    .replace(MOST_LIKE, '$1 ')
    .replace(SPLIT_REST, ', rest split ');
  const said = withPartOfRest(plain);
  const tenths = sumBefore(said);
  const whole = said.replace(OTHER_FIGURE, (all, figure: string) =>
    Math.abs(tenths + Number(figure) - 100) < 0.01 ? `${figure}%` : all,
  );
  const counted = spokenAmounts(whole);
  return manifold(whole) ?? ratioBehind(counted) ?? whole;
}
