import { unbroken } from '../over-lines.ts';

/** One entry of an ingredient list, taken apart but not yet recognised. */
export type Entry = {
  /** As the list wrote it, trimmed. */
  readonly as: string;
  /** Without numbers, percentages and brackets. */
  readonly name: string;
  readonly brackets: readonly string[];
  /** Colour Index numbers, digits only. */
  readonly numbers: readonly string[];
  /** E numbers, without the E. */
  readonly eNumbers: readonly string[];
  /** Mass percent; the middle of a stated range. */
  readonly percent: number | undefined;
  /** True behind "may contain" or "+/-". */
  readonly ifPresent: boolean;
};

/** Stands for "may contain" from here to the end, or to the bracket that closes it. */
const maybe = '\u0001';

const mayContain = new RegExp(
  unbroken`
    [([]?(?:\+ ?\/ ?-|±|\b(?:may (?:also )?contain|puede (?:también )?contener|pueden contener|
    peut contenir|kann (?:auch )?enthalten|può contenere|pode conter)\b)[)\]]?(?: ?[([](?:\+ ?\/ ?-|
    ±)[)\]])? ?:?
  `,
  'giu',
);
const headings = new RegExp(
  unbroken`
    \b(?:full |all )?(?:ingredients?|inci(?: name| names| list)?|ingredientes|ingrédients?|inhaltsstoffe|
    bestandteile|ingredienti|composici[óo]n|composizione|composição|composition|contains|contiene|contient|
    enthält|contém|colou?rants?|colorantes|pigments?|pigmentos)(?: list)? ?[:：]
  `,
  'giu',
);
const joiners = / ?[([] ?(?:and|y|et|und|e) ?[)\]] ?/giu;

/** How a powder is sold, not what is in it. */
const grades =
  /,? ?\b(?:(?:water|oil)[- ](?:dispersible|soluble|dispersable)|(?:hidro|hydro|lipo|oleo)(?:soluble|dispersable|dispersible))\b/giu;

/** Words after which a full stop does not end an entry. */
const abbreviations = new Set('no nr n º núm num c ci i ext denat var spp sp st co d'.split(' '));

/** List text with one kind of blank, without headings, every "may contain" as one mark. */
const plain = (text: string): string =>
  text
    .replaceAll(maybe, ' ')
    .replace(/\r\n?/g, '\n')
    .replace(/[^\S\n]+/gu, ' ')
    .replace(headings, '\n')
    .replace(grades, ' ')
    .replace(joiners, ', ')
    .replace(mayContain, mark => `${/^[([]/.test(mark) && !/[)\]]/.test(mark) ? '[' : ';'}${maybe}`);

/** For every opening bracket its closing one, for those that close; one pass. */
function closings(text: string): ReadonlyMap<number, number> {
  const open: number[] = [];
  const pairs = new Map<number, number>();
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === '(' || text[at] === '[') open.push(at);
    else if (text[at] === ')' || text[at] === ']') {
      const from = open.pop();
      if (from !== undefined) pairs.set(from, at);
    }
  }
  return pairs;
}

/** "12,5 %" and "1,2-hexanediol" hold commas that part nothing. */
const partsNothing = (text: string, at: number): boolean =>
  /\d/.test(text[at - 1] ?? '') && /^,\d{1,2}(?: ?%|-[a-z])/i.test(text.slice(at, at + 6));

function endsEntry(text: string, at: number): boolean {
  const sign = text[at] ?? '';
  if (sign === ',') return !partsNothing(text, at);
  if (sign === '.') {
    if (!/^(?:\s|;|$)/.test(text.slice(at + 1, at + 2))) return false;
    const word = /\p{L}+$/u.exec(text.slice(Math.max(0, at - 8), at))?.[0] ?? '';
    return !abbreviations.has(word.toLowerCase());
  }
  return /[;\n•·|●▪◦、，；]/.test(sign);
}

type Piece = {
  readonly raw: string;
  readonly outside: string;
  readonly brackets: readonly string[];
  readonly ifPresent: boolean;
};

/** Lists within brackets within brackets; deeper ones are read as plain brackets. */
const deepest = 3;

/** Parts a list at its separators, outside brackets; a bracket that opens with "may contain" is a list of its own. */
function pieces(text: string, outerMaybe: boolean, depth: number): readonly Piece[] {
  const pairs = closings(text);
  const found: Piece[] = [];
  let ifPresent = outerMaybe;
  let start = 0;
  let from = 0;
  let outside = '';
  let brackets: string[] = [];
  const end = (at: number): void => {
    outside += text.slice(from, at);
    const raw = text.slice(start, at).replaceAll(maybe, '').trim();
    if (raw !== '') found.push({ raw, outside, brackets, ifPresent });
    outside = '';
    brackets = [];
    from = at + 1;
    start = from;
  };
  for (let at = 0; at < text.length; at += 1) {
    const close = pairs.get(at);
    if (close !== undefined) {
      const inside = text.slice(at + 1, close);
      if (depth < deepest && inside.includes(maybe)) {
        end(at);
        found.push(...pieces(inside, ifPresent, depth + 1));
        start = close + 1;
      } else {
        outside += `${text.slice(from, at)} `;
        brackets.push(inside);
      }
      from = close + 1;
      at = close;
    } else if (text[at] === maybe) {
      end(at);
      ifPresent = true;
    } else if (endsEntry(text, at)) end(at);
  }
  end(text.length);
  return found;
}

const registryNumber = /\b\d{2,7}-\d{2}-\d\b|\b\d{3}-\d{3}-\d\b/g;
const percentage =
  /[<>≤≥~]? ?(\d{1,3}(?:[.,]\d{1,4})?)(?: ?(?:-|–|to|a|bis|à) ?(\d{1,3}(?:[.,]\d{1,4})?))? ?%/giu;
const colourIndex =
  /(?:\bC\.? ?I\.? ?)?(?:(?:#|\bno\.?|\bnr\.?|\bn[º°o]\.?|number) ?)?:? ?(?<![\d.])(\d{5}(?::\d{1,2})?)(?![\d:])/giu;
const eNumber = /\bE[ -]?(\d{3})(?: ?\(?([a-g])\)?)?(?![\d])\b/gu;

const decimal = (digits: string): number => Number(digits.replace(',', '.'));

function percentOf(text: string): number | undefined {
  const [found] = text.matchAll(percentage);
  if (found?.[1] === undefined) return undefined;
  const low = decimal(found[1]);
  const middle = found[2] === undefined ? low : (low + decimal(found[2])) / 2;
  return middle <= 100 ? middle : undefined;
}

function entryOf({ raw, outside, brackets, ifPresent }: Piece): Entry {
  const whole = [outside, ...brackets].join(' ; ').replace(registryNumber, ' ');
  const bare = (part: string): string =>
    part
      .replace(registryNumber, ' ')
      .replace(percentage, ' ')
      .replace(colourIndex, ' ')
      .replace(eNumber, ' ')
      .replace(/ +/g, ' ')
      .trim();
  const numbers = whole.replace(percentage, ' ');
  return {
    as: raw,
    name: bare(outside),
    brackets: brackets.map(bare).filter(bracket => /[\p{L}\p{N}]/u.test(bracket)),
    numbers: [...new Set([...numbers.matchAll(colourIndex)].map(match => match[1] ?? ''))],
    eNumbers: [
      ...new Set(
        [...numbers.matchAll(eNumber)].map(([, digits, letter]) => `${digits ?? ''}${letter ?? ''}`),
      ),
    ],
    percent: percentOf(whole),
    ifPresent,
  };
}

/**
 * The entries of an ingredient list: parted at commas, semicolons, bullets, line breaks, "(and)" and full stops;
 * CI and E numbers, percentages and brackets taken out; everything behind "may contain" or "+/-" marked so.
 * Work grows in proportion to the text.
 */
export function readEntries(text: string): readonly Entry[] {
  return pieces(plain(text), false, 0)
    .map(entryOf)
    .filter(({ as }) => /[\p{L}\p{N}]/u.test(as));
}
