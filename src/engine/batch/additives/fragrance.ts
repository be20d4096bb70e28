import { type RiskyScent, riskyScents } from '../../hazards/scents/read.ts';
import { NEEDS_CERTIFICATE, type ScentRisk } from '../../hazards/scents/scents.ts';
import { unbroken } from '../../over-lines.ts';
import { plainText, readDecimal } from '../../quantities/number.ts';
import { refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import { type ScentTold, scentTold } from './scent-words.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'percent-unreadable': { text: string };
    /** One percent beside the word vanillin, or two of which neither is marked: dose or content? */
    'fragrance-dose-unclear': { text: string };
    'fragrance-dose-high': { percent: number; most: number };
    /** A scent that burns, of which no grams are told before its maker's limit is. */
    'scent-needs-certificate': { name: string; risk: ScentRisk; percent: number };
    /** Percents; `most` is what the certificate allows. */
    'scent-over-certificate': { name: string; percent: number; most: number };
  }
}

/** Percent of the oils' mass, and the vanillin in the fragrance itself. */
export type FragranceAsk = {
  readonly percentOfOils: number;
  readonly vanillinPercent: number;
  /** What burns or sensitises skin by its name. */
  readonly risky?: readonly RiskyScent[];
} & ScentTold;

/** Percent of the oils; more irritates skin and seizes batter, and is mostly a slip (common practice). */
export const MOST_FRAGRANCE = 6;

const VANILLIN = /(?:ethyl ?)?(?:vanill?[ie]?n[ae]?|vanilla|vainill?ina|vainilla|vanil(?:ina)?)\b/giu;
/** Between the word and its number: `vanillin content (of the oil) is about 8 %`. */
const CONTENT =
  /^[\s:=(]*(?:content|contenido|level|share|parte|is|es|of|de|about|unos|hasta|up to|~|aprox\.?)*[\s:=(]*$/iu;
const CONTENT_WORD = /content|contenido|level|share|=|:/iu;
/** What stands before, or after, the percent that is the dose. */
const DOSE_BEFORE =
  /(?:\bat|\bal|@|\bdose|\bdosis|\buse|\busing|\busage|\buso|\bload|\bcarga|\bfragrance|\bfragancia|\bscent|\baroma|\bperfume)[\s:=of]*$/iu;
const DOSE_AFTER = new RegExp(
  unbroken`
    ^\s*(?:(?:of|de) (?:the |los )?(?:oils?|fats?|aceites?|grasas?)|ppo\b|of (?:a |the )?(?:fragrance|
    scent)|de (?:fragancia|aroma|perfume)|(?:fragrance|fragancia|scent|aroma|perfume)\b)
  `,
  'iu',
);
const CONTENT_AFTER = /^\s*(?:of |de |pure )?(?:ethyl ?)?va(?:i)?nill?/iu;

/** `certificate 0.5%`, `IFRA max 0.5 %`, `certificado: 0,5%`: the most that its maker allows in soap. */
const CERTIFICATE = new RegExp(
  unbroken`
    [\s,;(]*\b(?:(?:its|the|su|el|la)\s+)?(?:ifra|certificates?|cert|certificado|max|maximum|m[aá]ximo|
    limit|l[ií]mite)\b(?:[\s:=,]*(?:ifra|certificate|certificado|category|categor[ií]a|cat|9|max|maximum|
    m[aá]ximo|limit|l[ií]mite|says|allows|permits|dice|permite|is|es|of|at|de|del|al|for|para|soap|
    jab[oó]n)\b)*[\s:=,]*(\d+(?:[.,]\d+)?)\s?%\)?
  `,
  'iu',
);

const VANILLA_SCENT = /^\s*(?:of |de )?va(?:nilla|inilla)\b/iu;

type Percent = { readonly value: number; readonly from: number; readonly to: number };
type Word = { readonly from: number; readonly to: number };

/**
 * Reads a fragrance: `3%`, `3% of oils, vanillin 8%`, `vanillin content 8 % at 3 %`, `3% vanilla 8%`; either
 * language,
 * either order, and `certificate 0.5%` for the most that a scent's maker allows. Percent of the oils, and of
 * vanillin in the fragrance (0 unless said). Where the two cannot be told
 * apart it is asked back. Scents that burn or sensitise are named in it. Throws a Refusal:
 * `percent-unreadable`,
 * `fragrance-dose-unclear`, `fragrance-dose-high`, `scent-barred`, `scent-needs-certificate`,
 * `scent-over-certificate`.
 */
export function parseFragrance(text: string): FragranceAsk {
  const risky = riskyScents(text);
  const whole = plainText(text).replace(/\s*(?:percent|por ciento)\b/giu, '%');
  const allowed = CERTIFICATE.exec(whole);
  const plain = allowed === null ? whole : whole.replace(allowed[0], ' ');
  const percents = [...plain.matchAll(/(-?[\d.,]*\d)\s?%/gu)].map(match => percentOf(match, text));
  const words = [...plain.matchAll(VANILLIN)].map(match => ({
    from: match.index,
    to: match.index + match[0].length,
  }));
  if (/-\s?\d/u.test(plain)) refuse('percent-unreadable', { text: excerpt(text) });
  if (percents.length === 0 || percents.length > 2)
    return refuse('percent-unreadable', { text: excerpt(text) });
  const { dose, vanillin } =
    told(plain, percents, words) ?? refuse('fragrance-dose-unclear', { text: excerpt(text) });
  if (vanillin > 100) refuse('percent-unreadable', { text: excerpt(text) });
  if (dose > MOST_FRAGRANCE) refuse('fragrance-dose-high', { percent: dose, most: MOST_FRAGRANCE });
  checkCertificate(risky, dose, allowed === null ? undefined : readDecimal(allowed[1]!)[0]);
  return {
    percentOfOils: dose,
    vanillinPercent: vanillin,
    ...(risky.length > 0 && { risky }),
    ...scentTold(
      text,
      risky.map(({ name }) => name),
    ),
  };
}

/**
 * A certificate tells the most in the whole soap, of which the oils are a part: held against the percent of the oils it is
 * the stricter reading. Throws a Refusal `scent-needs-certificate` or `scent-over-certificate`.
 */
function checkCertificate(risky: readonly RiskyScent[], percent: number, most: number | undefined): void {
  const burns = risky.find(({ risk }) => NEEDS_CERTIFICATE.has(risk));
  if (burns && most === undefined && percent > 0) refuse('scent-needs-certificate', { ...burns, percent });
  if (most !== undefined && percent > most + 1e-9)
    refuse('scent-over-certificate', { name: (burns ?? risky[0])?.name ?? '', percent, most });
}

function percentOf(match: RegExpExecArray, text: string): Percent {
  const value = readDecimal(match[1]!)[0];
  if (value === undefined || !(value >= 0)) return refuse('percent-unreadable', { text: excerpt(text) });
  return { value, from: match.index, to: match.index + match[0].length };
}

/** Which percent is the dose and which the vanillin; undefined where that cannot be told. */
function told(
  text: string,
  percents: readonly Percent[],
  words: readonly Word[],
): { readonly dose: number; readonly vanillin: number } | undefined {
  const [first, second] = percents;
  const isDose = (one: Percent) =>
    DOSE_BEFORE.test(text.slice(0, one.from)) || DOSE_AFTER.test(text.slice(one.to));
  if (second === undefined) {
    const alone = words.length === 0 || isDose(first!);
    return alone && !contentBefore(text, first!, words) ? { dose: first!.value, vanillin: 0 } : undefined;
  }
  // Two doses without the word for what is in them are two fragrances: never added up.
  if (words.length === 0) return undefined;
  const read = (dose: Percent, other: Percent) => ({ dose: dose.value, vanillin: other.value });
  const [aDose, bDose] = [isDose(first!), isDose(second)];
  if (aDose !== bDose) return aDose ? read(first!, second) : read(second, first!);
  const [a, b] = [isContent(text, first!, words), isContent(text, second, words)];
  // `3% vanilla, 5%`: a vanilla scent at 3 %, or 3 % of vanilla in one at 5 %?
  if (a && !b && VANILLA_SCENT.test(text.slice(first!.to))) return undefined;
  if (a !== b) return a ? read(second, first!) : read(first!, second);
  // `3% vanillin 8%`: the word belongs to the number after it unless a comma cuts it off.
  const cut = /[,;(]/u.test(text.slice(words[0]!.to, second.from));
  return a && b && !cut ? read(first!, second) : undefined;
}

/** `vanillin content: 8 %`. */
function contentBefore(text: string, percent: Percent, words: readonly Word[]): boolean {
  return words.some(
    ({ to }) =>
      to <= percent.from &&
      CONTENT.test(text.slice(to, percent.from)) &&
      CONTENT_WORD.test(text.slice(to, percent.from)),
  );
}

/** The word stands right before the number, or right after it. */
function isContent(text: string, percent: Percent, words: readonly Word[]): boolean {
  const before = words.some(({ to }) => to <= percent.from && CONTENT.test(text.slice(to, percent.from)));
  return before || CONTENT_AFTER.test(text.slice(percent.to));
}
