import { unbroken } from '../../over-lines.ts';
import type { Item, Quantity, Share, Some } from './item.ts';

const WHOLE = new RegExp(
  unbroken`
    ^(?: (?:of|o|de|del))?(?: (?:it|that|this|them|those|the|my|our|la|el|los|las|mi|un|una|eso|esto|ese|
    esa|ella|todo|total))* ?(?:batter|batch|soap|loaf|pot|lot|bucket|jug|masa|mezcla|lote|jabon|olla|tanda|
    batido|pasta|total)(?!\p{L})
  `,
  'u',
);
/** "A third of it for the green"; what is green already is no wish. */
const OF_IT = new RegExp(
  unbroken`
    ^ (?:of|o|de|del) (?:it|that|this|them|those|which|eso|esto|ella|ellos|esos|lo que)(?! (?:is|are|was|
    were|has|had|already|es|son|era|esta|ya)(?!\p{L}))(?!\p{L})
  `,
  'u',
);
/** What tells that a part that stands alone is one of the batter. */
const GETS = new RegExp(
  unbroken`
    ^ (?:(?:of (?:it|that|this|those|them|which)|de (?:eso|esto|ella|ellos)) )?(?:gets?|gettin|getting|
    is gettin|is getting|goes|going|wants?|needs?|takes?|(?:will|to|is to|has to|should|needs to|
    must) (?:be|get|go)|is going|is (?:for|colou?red)|i want|want|i'm pullin|lo quiero|la quiero|va a ser|
    van? con|ira|iran|va|lleva|llevara|quiere|necesita|se pinta|la pinto|lo pinto|(?:for|para) (?:the|el|la|lo))(?!\p{L})
  `,
  'u',
);
const COLOURED =
  /(?:^| )(?:colou?r|colou?ring|tint|tinting|dye|pint(?:o|ar)|coloreo|colorear|tenir)(?: (?:only|just|solo|nada mas|nomas))? $/u;
const THAT = /(?:^| )(?:for|para|in|en) (?:that|this|its|esa|ese|su|cada|each) $/u;
/** "Half as strong", "half the dose": of a strength, and of no batter. */
const OF_STRENGTH = new RegExp(
  unbroken`
    ^ (?:as |strength|dose|fuerza|dosis|(?:the|my|your|of the|of my|de la|la) (?:usual |normal |
    full )?(?:dose|amount|strength|rate|dosis|cantidad|fuerza)|of what|de lo que|(?:an? )?hour|past)
  `,
  'u',
);
const PARTING = /^(?:split(?:ting)?|divid(?:e|ed|ing)|partid[oa]|dividid[oa]|divido|repart(?:o|ido|ida))$/u;
const MEASURED = new RegExp(
  unbroken`
    ^(?: (?:of|de|del)(?: (?:it|the|my|la|el|mi))?(?: (?:batter|batch|soap|masa|mezcla|lote|jabon))?)? (?:=|
    is|are|was|comes to|weighs|makes|es|son|pesa|sale|mide)(?: (?:about|abt|around|roughly|some|like|como|
    unos|unas|casi|mas o menos))* (?=\d)
  `,
  'u',
);
const ENDS = /^(?: (?:of (?:it|the|my|that)|de (?:la|el|eso)|with|con)(?!\p{L})|$| [,.?;)])/u;

type Around = { readonly before: string; readonly behind: string };
const around = (items: readonly Item[], at: number): Around => ({
  before: `${items
    .slice(Math.max(0, at - 5), at)
    .map(({ text }) => text)
    .join(' ')} `,
  behind: items
    .slice(at + 1, at + 9)
    .map(({ text }) => ` ${text}`)
    .join(''),
});

/** Whether a share is one of the batter that is told. */
function isOfBatter(items: readonly Item[], at: number): boolean {
  const { before, behind } = around(items, at);
  if (OF_STRENGTH.test(behind)) return false;
  const next = items[at + 1];
  const own = next && /^(?:of|de|del)$/u.test(next.text) ? items.slice(at + 2, at + 5) : [];
  const isTaken =
    items.slice(Math.max(0, at - 3), at).some(({ is }) => is === 'takes') ||
    (items.slice(at + 1, at + 6).some(({ is }) => is === 'takes') && !/^ (?:of|de) \d/u.test(behind));
  return (
    isTaken ||
    WHOLE.test(behind) ||
    OF_IT.test(behind) ||
    GETS.test(behind) ||
    THAT.test(before) ||
    // "A 500 ml jug two thirds full"
    /^ (?:full|llen[oa]|filled)(?!\p{L})/u.test(behind) ||
    // "Split half half, one half purple mica"
    (next?.is === 'thing' && items.some(({ is, text }) => is === 'split' || PARTING.test(text))) ||
    // "La cuarta parte con cacao"
    (/^(?:con|with)$/u.test(next?.text ?? '') && items[at + 2]?.is === 'thing') ||
    (COLOURED.test(before) && ENDS.test(behind)) ||
    // "A third of my 40 oz oils"
    own.some(one => one.is === 'amount' && !one.isSpoons)
  );
}

/** "Half my batter, about 400 ml": of the half, or of all? */
const BESIDE = new RegExp(
  unbroken`
    ^(?: (?:of|de|del))?(?: (?:it|my|the|mi|la|el|this))*(?: (?:batter|batch|masa|mezcla|lote|pot|soap|
    jabon))? [,(](?: (?:about|abt|around|roughly|some|like|so|como|unos|unas|casi|o|sea))+ (?=\d)
  `,
  'u',
);

/** Whether the part's own size is told behind it: "the half is about 3 cups". */
const isMeasured = (items: readonly Item[], at: number): boolean => MEASURED.test(around(items, at).behind);

/** The clause that an item stands in. */
const clauseOf = (items: readonly Item[], at: number): readonly Item[] => {
  const ends = (item: Item) => item.is === 'mark' && /^[,.;?!]$/u.test(item.text);
  const from = items.slice(0, at).findLastIndex(ends) + 1;
  const to = items.findIndex((item, place) => place > at && ends(item));
  return items.slice(from, to < 0 ? undefined : to);
};

const ONE = new RegExp(
  unbroken`
    (?<!\p{L})(?:one (?:half|part|third|quarter|portion|jug|pot|container|cup|bowl|of (?:them|'?em|those|
    the))|una (?:mitad|parte|porcion|jarra|de (?:ellas|las))|un (?:tercio|cuarto|recipiente|vaso)|
    (?:(?:exactly|only|just) )?one (?:is|gets|goes|will|receives|half)|(?:una|uno) (?:va|le va|lleva|con|
    de)|solo una?|colou?ring one)(?!\p{L})
  `,
  'u',
);

const EACH_ONE = /(?<!\p{L})cada un[oa](?!\p{L})/gu;
/** "Splitting into three, and one of those, 1 cup, gets indigo": the part's own size behind it. */
const OWN_SIZE = /^ ?,? ?(?:(?:is|being|about|around|roughly|es|son|como|unos|unas) )*(?=\d)/u;

/** The parts of a batch that a question tells of. */
export type PartsTold = {
  /** Shares of the batter, each once; of several the one beside the colour that is asked about, where one is. */
  readonly shares: readonly Pick<Share, 'share' | 'value'>[];
  /** The share whose own size is told. */
  readonly isMeasured: boolean;
  /** An amount stands beside the share that may be its own or the whole's. */
  readonly isBeside: boolean;
  readonly some: readonly Some['count'][];
};

/** Which part of the whole is coloured, as far as the words tell. Pure. */
export function partsIn(items: readonly Item[]): PartsTold {
  const found = items.flatMap((item, at) => (item.is === 'share' ? [{ share: item, at }] : []));
  const measured = found.some(({ at }) => isMeasured(items, at));
  const ofBatter = found.filter(({ at }) => isOfBatter(items, at));
  const beside = ofBatter.filter(({ at }) => clauseOf(items, at).some(({ is }) => is === 'thing'));
  const split = items.find(item => item.is === 'split');
  const text = items.map(one => one.text).join(' ');
  const one = split?.is === 'split' ? ONE.exec(text) : null;
  const isOneTold = one !== null && OWN_SIZE.test(text.slice(one.index + one[0].length));
  const even = split?.is === 'split' && one ? [{ share: `1/${split.parts}`, value: 1 / split.parts }] : [];
  const shares =
    even.length > 0 ? even : (different(beside).length === 1 ? beside : ofBatter).map(({ share }) => share);
  return {
    shares: [...new Map(shares.map(one => [one.share, one])).values()],
    isMeasured: measured || isOneTold,
    isBeside: ofBatter.some(({ at }) => BESIDE.test(around(items, at).behind)),
    some: [
      ...new Set([
        ...items.flatMap(item => (item.is === 'some' ? [item.count] : [])),
        ...(items.some(item => item.is === 'amount' && item.product) && ONE.test(text.replace(EACH_ONE, ' '))
          ? [1]
          : []),
      ]),
    ],
  };
}

const different = (found: readonly { readonly share: Share }[]) => [
  ...new Set(found.map(({ share }) => share.share)),
];

const TAKEN_REACH = 4;
/** Whether an amount is what is taken out of a larger pot: "6 cups, gonna pull 1.5 cups for the black", "10 oz gets mica". */
export const isTaken = (items: readonly Item[], one: Quantity): boolean => {
  const at = items.indexOf(one);
  const before = items.slice(Math.max(0, at - TAKEN_REACH), at);
  const takes = before.findLastIndex(({ is }) => is === 'takes');
  return (
    (takes >= 0 && before.slice(takes + 1).every(({ is }) => is === 'word')) ||
    GETS.test(around(items, at).behind) ||
    // "Uso 300 g para carbón"
    (/^(?:for|para)$/u.test(items[at + 1]?.text ?? '') && items[at + 2]?.is === 'thing')
  );
};
