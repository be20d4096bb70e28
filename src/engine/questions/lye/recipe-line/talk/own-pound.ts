import { unbroken } from '../../../../over-lines.ts';
import { amountText } from '../../../../quantities/for-readers.ts';
import { withOneMore } from '../../amounts/as-typed.ts';

/** The pound of 500 g and others that markets go by, told with what it has; the avoirdupois one, 453.6 g, needs no telling. */
const TOLD = new RegExp(
  unbroken`
    ,? ?(?:(?:pero|and|y|are|son|the|las|mis|my|en|in|de) )*(?:libras?|pounds?) (?:(?:son|es|are|
    is) )?(?:de|of|at) (?<grams>[3-5]\d\d) ?(?:g|gr|gramos|grams?)(?: cada una| each)?(?!\p{L})
  `,
  'gu',
);
const POUNDS = new RegExp(
  unbroken`
    (?<![\d.,/])(?<count>\d+(?:[.,]\d+)?|\d+\/\d+|\d+ \d\/\d) ?(?<unit>libras?|pounds?|
    lbs?)(?!\p{L})(?: (?:de|of) (?<own>[3-5]\d\d) ?(?:g|gr|gramos|grams?)(?!\p{L}))?
  `,
  'gu',
);
/** Whoever says more of it than what it has leaves it open which pound was weighed. */
const IN_DOUBT =
  /(?<!\p{L})(?:not sure|no se|ni se|creo|think|maybe|perhaps|quiza|or|o|gringa?s?|american[oa]?s?|inglesa?s?|english|otra|other|pero mi|but my)(?!\p{L})/u;
/** "2 libras de 500 g": with its number before it, it is what was weighed. */
const isCounted = (line: string, rest: readonly unknown[]): boolean =>
  /[\d.,/] ?$/u.test(
    line.slice(
      0,
      rest.find(one => typeof one === 'number'),
    ),
  );
const count = (told: string): number => {
  const [whole = '', part] = told.includes('/') && !told.includes(' ') ? ['0', told] : told.split(' ');
  const [over = 0, under = 1] = (part ?? '0/1').split('/').map(Number);
  return Number(whole.replace(',', '.')) + over / under;
};

/**
 * A line whose pounds are told as so many grams each, "2 libras, libras de 500 g", with their weight in grams, and the unit of "one more"
 * told. Its pounds as they were where two such pounds are told, or what is said of them is in doubt. Takes what `plainWords` gives. Pure.
 */
export function withOwnPound(plain: string): string {
  const line = withOneMore(plain);
  const told = [
    ...[...line.matchAll(POUNDS)].flatMap(({ groups }) => groups?.own ?? []),
    ...[...line.replace(POUNDS, ' ').matchAll(TOLD)].flatMap(({ groups }) => groups?.grams ?? []),
  ];
  const [grams] = told;
  if (grams === undefined || new Set(told).size > 1 || IN_DOUBT.test(line)) return line;
  // "2 libras de oliva, libras de 500 g, y una de coco": without that the next one follows on.
  return withOneMore(line.replace(TOLD, (whole, ...rest) => (isCounted(line, rest) ? whole : ''))).replace(
    POUNDS,
    (_, ...rest) => {
      const { count: many } = rest.at(-1) as { count: string };
      return amountText(count(many) * Number(grams));
    },
  );
}
