import { colourantsMeant } from '../../../colourants/find.ts';
import type { NamedThing } from './named-thing.ts';

/** Of English names: in Spanish the head stands before its hue. */
export const HUE_BEFORE = /^(?:red|green|blue|yellow|orange|violet|pink|black|brown|white)$/u;
const HUE =
  /^(?:red|green|blue|yellow|orange|violet|pink|black|brown|white|roj[oa]|verde|azul|amarill[oa]|naranja|violeta|rosa|negr[oa]|marron|blanc[oa])$/u;
const HEAD_FIRST = /^((?:oxido(?: de hierro)?|mica|arcilla|ultramar) )\p{L}+$/u;
const HEAD_LAST = /^\p{L}+( (?:iron )?(?:oxide|mica|clay|ultramarine))s?$/u;

/** What joins the last of several hues to the one beside the shared word; further ones may stand between commas. */
const LAST_JOINT = /^(?:and|n|y|e|&|\+)$/u;
const JOINT = /^(?:and|n|y|e|&|\+|,)$/u;
const ARTICLE = /^(?:the|el|la|los|las)$/u;

/** The hues that lie behind one another from `from` on in steps of `step`, the last of them in reading order or the first behind "and". */
function huesBeside(words: readonly string[], from: number, step: 1 | -1): readonly number[] {
  const hues: number[] = [];
  const joints: string[] = [];
  const past = (at: number) => (ARTICLE.test(words[at] ?? '') ? at + step : at);
  for (let at = past(from); JOINT.test(words[at] ?? ''); ) {
    const hue = past(at + step);
    if (!HUE.test(words[hue] ?? '')) break;
    hues.push(hue);
    joints.push(words[at]!);
    at = past(hue + step);
  }
  // "Red, yellow and black oxide": the joint beside the last one named says that it is a list.
  return LAST_JOINT.test((step === 1 ? joints.at(-1) : joints[0]) ?? '') ? hues : [];
}

/** "Óxido rojo y amarillo", "red, yellow and black oxide": things that are named by one word. */
export function headShared(words: readonly string[], found: readonly NamedThing[]): readonly NamedThing[] {
  return found.flatMap(({ text, from, to }) => {
    const first = HEAD_FIRST.exec(text)?.[1];
    const last = HEAD_LAST.exec(text)?.[1];
    if ((first ?? last) === undefined) return [];
    const hues = first === undefined ? huesBeside(words, from - 1, -1) : huesBeside(words, to, 1);
    return hues.flatMap(at => {
      if (found.some(one => at >= one.from && at < one.to)) return [];
      const name = first === undefined ? `${words[at]}${last}` : `${first}${words[at]}`;
      const colourants = colourantsMeant(name);
      return colourants.length > 0 ? [{ text: name, from: at, to: at + 1, colourants }] : [];
    });
  });
}

const PLURAL_HEAD: ReadonlyMap<string, (hue: string) => string> = new Map([
  ['oxides', hue => `${hue} iron oxide`],
  ['oxidos', hue => `oxido de hierro ${hue}`],
  ['ultramarines', hue => `${hue} ultramarine`],
  ['ultramares', hue => `ultramar ${hue}`],
]);

/** Hues that run on with no more than marks and articles between them: "red black yellow", "negro, rojo y amarillo". */
function huesRunning(words: readonly string[], from: number): readonly number[] {
  const hues = [from];
  for (let at = from + 1; at < words.length; at += 1) {
    if (HUE.test(words[at]!)) hues.push(at);
    // "An olive green, the yellow one": an article goes on with a list behind "and" alone.
    else if (!JOINT.test(words[at]!) && !(ARTICLE.test(words[at]!) && LAST_JOINT.test(words[at - 1]!))) break;
  }
  return hues;
}

/** "With oxides? The yellow and the black": what is named once for all stands apart, and only hues that run on are of it. */
export function headApart(words: readonly string[], found: readonly NamedThing[]): readonly NamedThing[] {
  const isFree = (at: number) => !found.some(one => at >= one.from && at < one.to);
  const at = words.findIndex((word, index) => PLURAL_HEAD.has(word) && isFree(index));
  if (at < 0 || found.some(({ colourants }) => colourants.length > 0)) return [];
  const head = PLURAL_HEAD.get(words[at]!)!;
  const first = words.findIndex((word, index) => HUE.test(word) && huesRunning(words, index).length > 1);
  if (first < 0) return [];
  return huesRunning(words, first).flatMap(hue => {
    const name = head(words[hue]!);
    const colourants = colourantsMeant(name);
    return colourants.length > 0 ? [{ text: name, from: hue, to: hue + 1, colourants }] : [];
  });
}

/** A kind of colourant named alone, and how one of its hues is named in full. */
export const HEAD_ALONE: ReadonlyMap<string, (of: string) => string> = new Map([
  ['oxide', of => `${of} iron oxide`],
  ['oxido', of => `oxido de hierro ${of}`],
  ['clay', of => `${of} clay`],
  ['arcilla', of => `arcilla ${of}`],
]);
const BEFORE_ONE = /^(?:the|of|el|la|de|french|francesa|brazilian)$/u;
const AFTER_ONE = /^(?:ones?|francesa|[?!;,.:()])$/u;

/** "To wet oxide? the red one", "clay: slurried? 15 g of french green": one hue stands apart from what it is the hue of. */
export function oneApart(words: readonly string[], found: readonly NamedThing[]): readonly NamedThing[] {
  const isFree = (at: number) => !found.some(one => at >= one.from && at < one.to);
  const heads = words.flatMap((word, at) => (HEAD_ALONE.has(word) && isFree(at) ? [at] : []));
  if (heads.length !== 1 || found.some(({ colourants }) => colourants.length > 0)) return [];
  const hues = words.flatMap((word, at) => (HUE.test(word) && isFree(at) ? [at] : []));
  const [hue] = hues;
  if (hues.length !== 1 || hue === undefined) return [];
  const isApart =
    hue > heads[0]! + 1 && BEFORE_ONE.test(words[hue - 1]!) && AFTER_ONE.test(words[hue + 1] ?? '?');
  if (!isApart) return [];
  const text = HEAD_ALONE.get(words[heads[0]!]!)!(words[hue]!);
  const colourants = colourantsMeant(text);
  return colourants.length > 0 ? [{ text, from: hue, to: hue + 1, colourants }] : [];
}

const CHROMIUM = /\b(?:chrom(?:e|ium)|cromo)\b/u;
const HYDRATED = /^(?:hydrated?|hidratad[oa])$/u;
const HYDRATED_NAME = 'hydrated chromium oxide';

/** "El óxido de cromo o el hidratado": the second is of the same metal. */
export function hydrateApart(words: readonly string[], found: readonly NamedThing[]): readonly NamedThing[] {
  const at = words.findIndex(word => HYDRATED.test(word));
  const isTaken = found.some(one => at >= one.from && at < one.to);
  if (at < 0 || isTaken || !found.some(({ text }) => CHROMIUM.test(text))) return [];
  return [{ text: HYDRATED_NAME, from: at, to: at + 1, colourants: colourantsMeant(HYDRATED_NAME) }];
}
