import { knownOil } from '../../../batch/oils/find-oil.ts';
import type { Oil } from '../../../batch/oils/oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { readOnce } from '../../../remembered.ts';
import { COUNT, gramsOf, POTASSIUM, plainWords, UNIT } from '../amounts/words.ts';
import { CAUSTIC } from '../topics/care-words.ts';

/**
 * What a weight told of a batch is of: an oil or all oils, water, the lye that went in or was meant, or how much of it was too
 * much or too little. `lye`: of lye, and it is not told which; `unknown`: nobody can tell.
 */
export type Role = 'oil' | 'whole' | 'water' | 'put' | 'meant' | 'lye' | 'more' | 'less' | 'unknown';

/** Grams. */
export type ToldAmount = {
  readonly role: Role;
  readonly grams: number;
  readonly oil: Oil | undefined;
  /** Of what is told as a batch or a recipe, not as its oils. */
  readonly isBatch: boolean;
  /** Where it stands in the plain words. */
  readonly at: number;
};

const LIQUID_UNIT = String.raw`(?:ml|cc|l|lts?|litros?|lit(?:er|re)s?)\b`;
export const VOLUME = `${COUNT} ?${LIQUID_UNIT}`;
/** Grams of a weight, or of water by its volume: a millilitre weighs a gram. */
export function gramsOrMillilitres(amount: string): number {
  const [, figure = '', unit] = new RegExp(`^(${COUNT}) ?(${LIQUID_UNIT})$`, 'u').exec(amount) ?? [];
  return gramsOf(unit === undefined ? amount : `${figure} ${/^(?:ml|cc)/u.test(unit) ? 'g' : 'kg'}`);
}
/** Figures of other things: shares, times, heat, pieces. */
const OTHER_FIGURE = new RegExp(
  unbroken`
    ^ ?(?:%|percent|por ciento|:|degrees|grados|[cf]\b|bars?|pastillas?|barras?|days?|dias?|weeks?|semanas?|
    hours?|horas?|minut|months?|meses|years?|anos?|am\b|pm\b|times|veces|(?:table ?|tea ?)?spoons?|tbsps?|
    tsps?|cucharad|cucharit|cups?\b|tazas?\b|vasos?\b|a (?:1|uno)\b)
  `,
  'u',
);
const AMOUNT = new RegExp(`(?<![\\p{L}\\d.,])(${COUNT}) ?(?:(${UNIT})|(${LIQUID_UNIT}))?`, 'gu');

const OF = '(?: ?(?:of|de|del))?(?: (?:the|my|mi|el|la|los))?(?: (?:same|extra))?';
const MORE = '(?:(?:way |far )?too much|extra|more|over|excess|de mas|demas|de sobra|mas)';
const LESS = '(?:less|too little|short|under|de menos|menos)';
const WATER = /^(?: ?(?:of|de|del))?(?: (?:the|my|el|la))?(?: extra)? ?(?:water|agua)\b/u;
const WHOLE =
  /^(?: ?(?:of|de|del))?(?: (?:the|my|mi|los|las|total))? ?(?:oils?|fats?|aceites?|grasas?)\b(?! de \p{L})/u;
const BATCH = /^(?: ?(?:of|de))? ?(?:(?:size )?(?:batch|recipe|loaf)|lote|receta|tanda)\b/u;
const IS_LYE = new RegExp(`^${OF} ?${CAUSTIC}(?!\\p{L})`, 'u');
const MORE_BEHIND = new RegExp(
  `^${OF} ?(?:${MORE}(?: (?:of|on|in|de))?(?: (?:the|my|la))? ${CAUSTIC}|${CAUSTIC} ${MORE}(?!\\p{L})|${MORE}(?= than| de lo que|,| ;|$))`,
  'u',
);
const LESS_BEHIND = new RegExp(
  `^${OF} ?(?:${LESS}(?: (?:of|on|in|de))?(?: (?:the|my|la))? ${CAUSTIC}|${CAUSTIC} ${LESS}(?!\\p{L})|${LESS}(?= than| de lo que|,| ;|$))`,
  'u',
);
const MORE_BEFORE = new RegExp(
  `(?:over by|too high by|(?:le |me )?sobr(?:an?|aron|o)|me pase(?: (?:de|por|en|con))?)(?: ${CAUSTIC})? ?$`,
  'u',
);
const LESS_BEFORE = /(?:short by|(?:me |le )?falt(?:an?|aron|o)|quede corto(?: (?:de|por|en))?) ?$/u;

const PUT =
  /(?<!\p{L})(?:put|puts|added|used|poured|weighed|dumped|tipped|went in|puse|eche|echado|puesto|use|pese|anadi|agregue|meti|vacie)(?!\p{L})/gu;
const MEANT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:recipe|formula|sheet|it) (?:said|says|wanted|wants|calls? for|called for|asked for|was|
    lye|had)|(?:should|supposed to|meant to) (?:have )?(?:been|be)|meant|instead of|rather than|
    (?:la )?(?:receta|formula)(?: (?:decia|pedia|lleva\p{L}*|dice|pide|era))?|decia|pedia|ponia|en (?:vez|
    lugar) de|eran|tenia que ser)(?!\p{L})
  `,
  'gu',
);
const MEANT_BEHIND =
  /^ ?(?:g |gramos )?(?:,? ?)(?:decia|pedia|ponia|es lo que|is what (?:it|the)|was what|it said|in the recipe)/u;

/** "50 g de un kilo", "160 g para 600 g": what was weighed out of the whole, and lye beside the oils that it is for. */
const OUT_OF = /^ ?(?:de|of|out of|from) $/u;
const FOR_OILS = /^ ?(?:para|for|in|into|en) $/u;

/** "200 g of water instead of 300": both are water. */
const INSTEAD =
  /^ ?(?:of |de )?(?:the |el )?(?:water|agua)?,? ?(?:instead of|rather than|en (?:vez|lugar) de) $/u;

const lastOf = (cue: RegExp, text: string): number =>
  Math.max(-1, ...[...text.matchAll(cue)].map(({ index }) => index));

/** The oil whose name begins a text, or ends it. */
function oilAt(text: string, side: 'behind' | 'before'): Oil | undefined {
  const plain = side === 'behind' ? text.replace(/^ ?(?:of |de |the |el |la )*/u, '') : text;
  const clause = side === 'behind' ? plain.split(/[,;:]/u)[0]! : plain.split(/[,;]/u).at(-1)!;
  const words = clause.replace(/:/gu, ' ').trim().split(' ').filter(Boolean);
  for (let count = Math.min(4, words.length); count > 0; count -= 1) {
    const name = (side === 'behind' ? words.slice(0, count) : words.slice(-count)).join(' ');
    const oil = knownOil(name);
    if (oil) return oil;
  }
  return undefined;
}

/** What is weighed or does the weighing, and is no lye. */
const NO_LYE =
  /(?<!\p{L})(?:scales?|balanza|bascula|romana|pesa|bottles?|botella|jars?|tarro|frasco|oils?|fats?|butters?|aceites?|grasas?|mantecas?)(?!\p{L})/u;
const NAMES_LYE = new RegExp(`(?<!\\p{L})${CAUSTIC}(?!\\p{L})`, 'u');

/** Whether the clause that a difference stands in speaks of an oil, a bottle or the scale: "the olive bottle was 100 g short". */
function isOfNoLye({ before, behind }: Pick<Around, 'before' | 'behind'>): boolean {
  const clause = `${before.split(/[,;]/u).at(-1)} ${behind.split(/[,;]/u)[0]}`;
  if (NAMES_LYE.test(clause)) return false;
  const words = clause.split(' ').filter(Boolean);
  const names = words.flatMap((word, at) => [word, `${word} ${words[at + 1] ?? ''}`.trim()]);
  return NO_LYE.test(clause) || names.some(name => knownOil(name) !== undefined);
}

/** What stands before and behind a weight, to the next one, and the whole sentence. */
type Around = { readonly before: string; readonly behind: string; readonly sentence: string };
/** "Olive is 600". */
const COPULA = / (?:is|are|was|were|weighs?|es|son|era|eran|pesa) $/u;

function roleOf({ before, behind, sentence }: Around): Pick<ToldAmount, 'role' | 'oil' | 'isBatch'> {
  const plainRole = (role: Role, oil?: Oil) => ({ role, oil, isBatch: false });
  if (WATER.test(behind)) return plainRole('water');
  const isDifference =
    [MORE_BEHIND, LESS_BEHIND].some(cue => cue.test(behind)) ||
    [MORE_BEFORE, LESS_BEFORE].some(cue => cue.test(before));
  if (isDifference && isOfNoLye({ before, behind })) return plainRole('unknown', oilAt(behind, 'behind'));
  if (MORE_BEHIND.test(behind)) return plainRole('more');
  if (LESS_BEHIND.test(behind)) return plainRole('less');
  if (IS_LYE.test(behind) && MORE_BEFORE.test(before)) return plainRole('more');
  if (IS_LYE.test(behind) && LESS_BEFORE.test(before)) return plainRole('less');
  const cue = lastOf(PUT, before) > lastOf(MEANT, before) ? 'put' : 'meant';
  const isCued = lastOf(cue === 'put' ? PUT : MEANT, before) >= 0;
  if (IS_LYE.test(behind)) return plainRole(isCued ? cue : 'lye');
  if (WHOLE.test(behind)) return plainRole('whole');
  if (BATCH.test(behind)) return { role: 'whole', oil: undefined, isBatch: true };
  const oil = oilAt(behind, 'behind');
  if (oil) return plainRole('oil', oil);
  if (MORE_BEFORE.test(before)) return plainRole('more');
  if (LESS_BEFORE.test(before)) return plainRole('less');
  if (OUT_OF.test(before)) return plainRole('whole');
  if (FOR_OILS.test(behind) && !isCued) return plainRole('lye');
  const isOfOil = readOffAnOil({ before, behind, sentence });
  return (
    roleBefore(before) ??
    roleBefore(before.replace(COPULA, '')) ??
    plainRole(MEANT_BEHIND.test(behind) ? 'meant' : isCued && !isOfOil ? cue : 'unknown')
  );
}

/** "Put the coconut in, he read 10.5 off the scale": a weight in a sentence that spoke of an oil is that oil's, where no lye is named there. */
function readOffAnOil({ before, sentence }: Around): boolean {
  if (NAMES_LYE.test(sentence)) return false;
  const words = before
    .split(';')
    .at(-1)!
    .split(/[ ,:]+/u)
    .filter(Boolean);
  return words.some(
    (word, at) =>
      knownOil(word) !== undefined || knownOil(`${word} ${words[at + 1] ?? ''}`.trim()) !== undefined,
  );
}

/** A name in front of its weight: "aceite 1 kilo", "sosa 200 g", "olive 700". */
function roleBefore(before: string): Pick<ToldAmount, 'role' | 'oil' | 'isBatch'> | undefined {
  const clause = before
    .split(/[,;]/u)
    .at(-1)!
    .replace(/[: ]+$/u, '');
  const named = (role: Role, oil?: Oil, isBatch = false) => ({ role, oil, isBatch });
  if (/(?:^| )(?:water|agua)$/u.test(clause)) return named('water');
  if (new RegExp(`(?:^| )${CAUSTIC}$`, 'u').test(clause) && !/recipe|receta|formula/u.test(clause))
    return named('lye');
  if (/(?:^| )(?:oils?|aceites?|grasas?|fats?)$/u.test(clause)) return named('whole');
  if (/(?:batch|recipe|receta|lote|tanda)(?: (?:of|de|was|era))?$/u.test(clause))
    return named('whole', undefined, true);
  const oil = clause === '' ? undefined : oilAt(clause, 'before');
  return oil && named('oil', oil);
}

/** "aceite 1 kilo sosa 200 g agua 350": each name stands in front of its weight. */
const namesFirst = (around: readonly Around[]): boolean =>
  around.length > 1 &&
  around.every(({ before }) => roleBefore(before) !== undefined) &&
  /^ ?(?:[,;]|$)/u.test(around.at(-1)!.behind);

/**
 * Every weight in a question told of one batch, and what it is of. Bare figures are grams, or ounces where all weights with a unit
 * are. Takes what `plainWords` gives with its clauses. Pure.
 */
export const toldAmounts = readOnce((plain): readonly ToldAmount[] => {
  const found = [...plain.matchAll(AMOUNT)].filter(
    ({ index, 0: whole, 2: unit, 3: liquid }) =>
      unit !== undefined || liquid !== undefined || !OTHER_FIGURE.test(plain.slice(index + whole.length)),
  );
  const units = found.map(({ 2: unit }) => unit).filter(unit => unit !== undefined);
  const bare = units.length > 0 && units.every(unit => /^o/u.test(unit)) ? 'oz' : 'g';
  const around = found.map(({ index, 0: whole }, at) => {
    const previous = found[at - 1];
    return {
      before: plain.slice(previous ? previous.index + previous[0].length : 0, index),
      behind: plain.slice(index + whole.length, found[at + 1]?.index ?? plain.length),
      sentence: `${/[^;]*$/u.exec(plain.slice(0, index))![0]}${/^[^;]*/u.exec(plain.slice(index))![0]}`,
    };
  });
  const isNameFirst = namesFirst(around);
  const roles = around.map(one => (isNameFirst && roleBefore(one.before)) || roleOf(one));
  return found.map(({ index, 1: figure = '', 2: unit, 3: liquid }, at) => {
    const isSameAgain = at > 0 && INSTEAD.test(around[at]!.before) && roles[at - 1]!.role === 'water';
    return {
      ...(isSameAgain ? roles[at - 1]! : roles[at]!),
      at: index,
      grams: gramsOrMillilitres(`${figure} ${unit ?? liquid ?? bare}`),
    };
  });
});

/** {@link plainWords} with a kilo that nobody counted counted, and soda by its whole name. */
export const wordsOfBatch = readOnce((question): string =>
  plainWords(question, { clauses: true })
    .replace(/(?<!\d ?)(?<!\p{L})(?:kilo|kg)(?= de )/gu, '1 kilo')
    .replace(/(?<=(?<!\p{L})(?:de|la|mi) )soda(?! caustica)(?!\p{L})/gu, 'soda caustica'),
);

/** Grams of sodium hydroxide and of oils nobody named, where a question tells these, and water at most. Pure. */
export function lyeAndOilsAlone(
  question: string,
): { readonly lye: number; readonly oils: number } | undefined {
  const plain = wordsOfBatch(question);
  const amounts = POTASSIUM.test(plain) ? [] : toldAmounts(plain);
  const of = (...roles: readonly Role[]) => amounts.filter(({ role }) => roles.includes(role));
  const [lye, oils, water] = [of('lye', 'put'), of('whole'), of('water')];
  const isAlone = lye.length === 1 && oils.length === 1 && !oils[0]!.isBatch;
  return isAlone && amounts.length === 2 + water.length
    ? { lye: lye[0]!.grams, oils: oils[0]!.grams }
    : undefined;
}
