import { unbroken } from '../../over-lines.ts';
import { percentText } from '../../quantities/for-readers.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import { isOil } from '../found/amounts.ts';
import type { Words } from '../found/words-of.ts';
import { type PlanColour, planColours } from './plan-colours.ts';

const FRACTIONS: ReadonlyMap<string, number> = new Map([
  ...['half', 'mitad', 'medio', 'media', '1/2', 'mita'].map(word => [word, 1 / 2] as const),
  ...['third', 'thirds', 'tercio', '1/3'].map(word => [word, 1 / 3] as const),
  ...['quarter', 'cuarto', '1/4'].map(word => [word, 1 / 4] as const),
]);
/** Between a share and its colour no more words stand than in "un cuarto de la masa va de". */
const NEAR = 5;
const EQUALLY = new RegExp(
  unbroken`
    \b(?:equal(?:ly)?|even(?:ly)?|(?:in|into|by) (?:halves|thirds|quarters|fifths)|(?:a third|third|
    quarter) each|partes iguales|iguales|por igual|a partes? igual|en tercios|en cuartos|parej[oa]s?|
    (?:la )?misma cantidad (?:de )?cada|todos iguales|(?:the )?same amount of each)\b
  `,
  'u',
);
/** So many of one size, as layers without another word are. */
const COUNTED =
  /\b([2-9]|two|three|four|five|six|seven|dos|tres|cuatro|cinco|seis|siete) (?:\p{L}+ ){0,2}?(?:layers?|stripes?|bands?|capas|franjas|rayas|bandas)\b/u;
/** Counts of parts in words, both languages. */
export const NUMBERS: ReadonlyMap<string, number> = new Map(
  'two three four five six seven'
    .split(' ')
    .flatMap((word, at) => [
      [word, at + 2] as const,
      ['dos tres cuatro cinco seis siete'.split(' ')[at]!, at + 2] as const,
    ]),
);
const WELLS =
  /\b(\d{1,2}) (?:\p{L}+ )?(?:wells?|cavit(?:y|ies)|bars?|cups|moulds?|molds?|huecos?|cavidades|barras?|pastillas?|moldecitos?)\b/u;

/** A line takes less than any share. */
const LEAST = 0.01;

/** Shares to a sum of one; none where they are more or less. */
function whole(shares: readonly number[]): readonly number[] | undefined {
  const sum = shares.reduce((all, one) => all + one, 0);
  if (Math.abs(sum - 1) > 0.011 || shares.some(one => one < LEAST)) return undefined;
  return shares.map(one => one / sum);
}
/** As `/plan` reads them. */
const written = (colours: readonly PlanColour[], shares: readonly number[]): string =>
  colours.map(({ text }, at) => `${percent(shares[at]!)} ${textOf(text)}`).join('; ');
const percent = (share: number): string =>
  [2, 3, 4, 5, 6, 7, 8].find(parts => Math.abs(share * parts - 1) < 0.001) === undefined
    ? percentText(share)
    : `1/${Math.round(1 / share)}`;
const textOf = (text: string): string => (/^(?:na|nada|natural|undyed)$/u.test(text) ? 'plain' : text);

/** "60/20/20", "70 / 30": as many figures as colours. */
function slashed(words: readonly string[], count: number): readonly number[] | undefined {
  for (const word of words) {
    const figures = /^\d{1,2}(?:\/\d{1,2})+$/u.test(word) ? word.split('/').map(Number) : [];
    if (figures.length === count && figures.reduce((all, one) => all + one, 0) === 100)
      return figures.map(one => one / 100);
  }
  return undefined;
}

/** "12 wells: 4 pink 4 green 4 yellow": the figure right before each colour, which come to all of them. */
function ofWells({ words, text }: Words, colours: readonly PlanColour[]): readonly number[] | undefined {
  const all = Number(WELLS.exec(text)?.[1]);
  const each = colours.map(({ from }) => Number(words[from - 1]));
  const sum = each.reduce((whole, one) => whole + one, 0);
  return sum === all ? each.map(one => one / all) : undefined;
}

/** A share reaches no further than a comma or what joins two parts. */
const JOINT = /^(?:[,;.:]|and|n|y|e)$/u;

/** The share that stands by each colour, all before or all behind; one that has none takes what is left. */
function told({ words }: Words, colours: readonly PlanColour[]): readonly number[] | undefined {
  const isOfPercents = words.some(word => /^(?:\d{1,2}%|%|percent|ciento)$/u.test(word));
  const before = colours.map(({ from }, at) => {
    const near = words.slice(Math.max(colours[at - 1]?.to ?? 0, from - NEAR), from);
    return shareIn(near.slice(near.findLastIndex(word => JOINT.test(word)) + 1), isOfPercents);
  });
  const behind = colours.map(({ to }, at) => {
    const near = words.slice(to, Math.min(colours[at + 1]?.from ?? words.length, to + NEAR));
    const joint = near.findIndex(word => JOINT.test(word));
    return shareIn(joint < 0 ? near : near.slice(0, joint), isOfPercents);
  });
  const isBehind = before[0] === undefined && count(behind) >= count(before);
  const shares = isBehind ? behind : before;
  const left = 1 - shares.reduce<number>((sum, one) => sum + (one ?? 0), 0);
  if (count(shares) === 0 || colours.length - count(shares) > 1) return undefined;
  return shares.map(share => share ?? left);
}
const count = (shares: readonly (number | undefined)[]) => shares.filter(one => one !== undefined).length;

/** "60% white, 30 pink and 10 black": a figure with no unit behind it. */
const isBare = (words: readonly string[], at: number): boolean =>
  unitOfWord(words[at + 1] ?? '') === undefined;

/**
 * The last share among these words, of which more than one is no share of one colour. `isOfPercents`: one colour's is told in percent, so
 * that a bare figure is one too.
 */
function shareIn(words: readonly string[], isOfPercents: boolean): number | undefined {
  // "The other half gets split in 3" is no half of one colour.
  if (words.some(word => /^(?:split|divid\p{L}*|repart\p{L}*)$/u.test(word))) return undefined;
  const shares = words.flatMap((word, at) => {
    const figure = /^(\d{1,2})%?$/u.exec(word)?.[1];
    const isShare = word.endsWith('%') || words[at + 1] === '%' || (isOfPercents && isBare(words, at));
    if (figure !== undefined && isShare) return [Number(figure) / 100];
    const share = FRACTIONS.get(word);
    return share === undefined ? [] : [share * (/^(?:two|dos|2)$/u.test(words[at - 1] ?? '') ? 2 : 1)];
  });
  return shares.length === 1 ? shares[0] : undefined;
}

/** Equal parts where that is said, or where as many layers as colours are. */
function alike({ text }: Words, colours: readonly PlanColour[]): readonly number[] | undefined {
  const counted = COUNTED.exec(text)?.[1];
  const layers = counted === undefined ? undefined : (NUMBERS.get(counted) ?? Number(counted));
  if (!EQUALLY.test(text) && layers !== colours.length) return undefined;
  return colours.map(() => 1 / colours.length);
}

/** What one has, behind the colours that are wished. */
const OWNED = /^(?:got|have|ive|i've|using|tengo|uso|usando)$/u;

/** The colours that are wished, without those behind them that only tell what there is to make them of. */
function wished({ words }: Words, colours: readonly PlanColour[]): readonly PlanColour[] {
  const [, second] = colours;
  if (!second) return colours;
  const end = words.findIndex((word, at) => at >= second.to && (word === '.' || OWNED.test(word)));
  const [first, rest] = [colours.filter(({ from }) => from < end), colours.filter(({ from }) => from > end)];
  const isOwned = rest.length > 1 || words.slice(end, end + 2).some(word => OWNED.test(word));
  return end > 0 && first.length > 1 && isOwned && rest.some(({ isThing }) => isThing) ? first : colours;
}

/** Before a colour, what makes a touch of it; behind one, where it is drawn on what lies there. */
const TOUCHED = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:a |just a )?(?:touch|hint|drizzle|splash|dash|pinch|speck|thin line|line|bit|little|accents?)(?: \p{L}+)? of|
    (?:un )?(?:toque|chorrit?o|hilo|pizca|raya|linea|rayita)(?: \p{L}+)? de|tantit[oa]|poquit[oa]|un poquit?o (?:de )?)(?: (?:the|el|la|un|una|color))? ?$
  `,
  'u',
);
const TOUCH_BEHIND =
  /^(?:line|drizzle|accents?|veins?|dots|lines|pencil line|en (?:lineas?|hilos?|vetas?))(?!\p{L})/u;

/** The colours of which a touch is told. */
const touchesIn = ({ words }: Words, colours: readonly PlanColour[]): readonly PlanColour[] =>
  colours.filter(({ from, to }, at) => {
    const before = words.slice(Math.max(colours[at - 1]?.to ?? 0, from - NEAR), from).join(' ');
    return TOUCHED.test(before) || TOUCH_BEHIND.test(words.slice(to, to + 2).join(' '));
  });

/** "Peach/cream/sage" are three. */
function apart(words: Words): Words {
  const all = words.words.flatMap(word => (/^\p{L}+(?:\/\p{L}+)+$/u.test(word) ? word.split('/') : [word]));
  return { ...words, words: all };
}

/**
 * What a wish for a plan tells of its oils and colours where it gives the oils no amounts: their names, its colours, and the portions in
 * words that `/plan` reads, where every colour's share is told. Pure.
 * @example planParts(wordsOf('plan 1 kg with coconut and olive, half blue half white'))
 *   // { oils: ['coconut', 'olive'], colours: [...], portions: '1/2 blue; 1/2 white' }
 */
export function planParts(typed: Words): {
  readonly oils: readonly string[];
  readonly colours: readonly PlanColour[];
  readonly portions?: string;
  /** Each colour's part, 0 to 1. */
  readonly shares?: readonly number[];
  /** Colours of which a touch is told, and no size. */
  readonly touches?: readonly string[];
} {
  const words = apart(typed);
  const all = planColours(words);
  const isOfColour = (at: number) => all.some(({ from, to }) => at >= from && at < to);
  const oils = words.words.filter(
    (word, at) => /^\p{L}{3}/u.test(word) && isOil(words.words, at) && !isOfColour(at),
  );
  const colours = wished(words, all);
  const touches = touchesIn(words, colours);
  const shares =
    colours.length < 2
      ? undefined
      : touches.length > 0
        ? besideTouches(words, colours, touches)
        : sharesOf(words, colours);
  const parts = shares && whole(shares);
  return {
    oils: [...new Set(oils)],
    colours,
    ...(parts && { portions: written(colours, parts), shares: parts }),
    ...(parts && touches.length > 0 && { touches: touches.map(({ text }) => text) }),
  };
}

/** The share of each colour where all are told, or are said to be alike. */
const sharesOf = (words: Words, colours: readonly PlanColour[]): readonly number[] | undefined =>
  told(words, colours) ??
  slashed(words.words, colours.length) ??
  ofWells(words, colours) ??
  alike(words, colours);

/** A touch, a line or a drizzle of one colour takes a twentieth of the whole (common practice). */
export const TOUCH = 1 / 20;

/** The shares of what is no touch, which come to one by themselves or are alike, with a twentieth taken off for each touch. */
function besideTouches(
  words: Words,
  colours: readonly PlanColour[],
  touches: readonly PlanColour[],
): readonly number[] | undefined {
  const others = colours.filter(one => !touches.includes(one));
  if (others.length === 0) return undefined;
  const sized = others.length === 1 ? [1] : sharesOf(words, others);
  const shares = sized === undefined ? others.map(() => 1 / others.length) : whole(sized);
  const left = 1 - TOUCH * touches.length;
  return shares && colours.map(one => (touches.includes(one) ? TOUCH : left * shares[others.indexOf(one)]!));
}
