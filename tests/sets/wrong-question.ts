import type { Portion } from '../../src/engine/quantities/amount.ts';
import { parsePortionRange } from '../../src/engine/quantities/told/portion.ts';
import { US_TEASPOON_ML } from '../../src/engine/quantities/units.ts';
import { readPowder } from '../../src/engine/text/amounts/powders/powder-phrase.ts';
import { apart } from '../../src/engine/text/colours/colour-name.ts';
import { NEAR, near, sameThing } from './same-thing.ts';
import type { Expect } from './text-set.ts';
import { wrongOils } from './wrong-oils.ts';

/** The data of an answer to a plain question, as far as the sets look at it. */
export type Answered = {
  readonly understood?: {
    readonly job?: string;
    readonly command?: string;
    /** The matter of handling lye that it asks about. */
    readonly lye?: string;
    /** The matter of working with colour that it asks about. */
    readonly technique?: string;
    /** Which part of that matter was answered. */
    readonly named?: string;
    readonly outside?: string;
    readonly given?: Readonly<Record<string, string>>;
    readonly facts?: {
      readonly named: readonly string[];
      readonly portion?: string;
      readonly powder?: string;
      readonly strength?: string;
      readonly target?: { readonly hex: string };
      readonly colours?: readonly { readonly hex?: string }[];
      readonly region?: string;
      /** ISO 3166-1 code of a country whose law no table holds. */
      readonly country?: string;
      readonly oils?: string;
      readonly superfat?: number;
      readonly percent?: number;
      readonly concentration?: number;
    };
  };
};

/** What was understood otherwise than its writer labelled it; undefined where all is right. */
export function wrongQuestion({ understood }: Answered, job: string, expect: Expect): string | undefined {
  const { facts, given = {} } = understood ?? {};
  // The sets have one name for the contest and for a member who disputes an answer.
  // No number near lye where something is unclear: it is asked for.
  // What of lye is no recipe is answered by its matter.
  const isAnswered = understood?.lye !== undefined && !UNANSWERED.has(understood.lye);
  const asked = understood?.lye === 'stopped' || (job === 'lye' && isAnswered) ? 'lye' : understood?.job;
  // Whether powder goes in dry, and what it is wetted in, is answered in general, which names these kinds.
  const isWetted = understood?.technique !== undefined && OF_WETTING.has(understood.technique);
  const isOfKind = Object.entries(expect).every(
    ([key, value]) => key === 'colourant' && KINDS_WETTED.test(String(value)),
  );
  if (job === 'wet' && isWetted && isOfKind) return undefined;
  if (job === 'mix' && foreseesBoth(understood, expect)) return undefined;
  const said = asked === 'doubt' ? 'challenge' : asked;
  const got = said?.startsWith('shelf') ? 'shelf' : said;
  if (got !== job) return `${got ?? understood?.outside ?? 'nothing'} for ${job}`;
  const names = facts?.named ?? [];
  for (const [key, value] of Object.entries(expect)) {
    const why = wrongFact(key, value, { names, facts, given, job });
    if (why !== undefined) return `${key} ${JSON.stringify(value)}: ${why}`;
  }
  return undefined;
}

/** Hues of which it is told in words what comes of both. */
const PAIRS: Readonly<Record<string, readonly RegExp[]>> = {
  'blue-and-yellow': [/blue/u, /yellow/u],
  'red-and-blue': [/red/u, /blue/u],
};

/** What colour two colourants make together, which the sets call a mix, is told by a preview of both, or in words of their hues. */
function foreseesBoth(understood: Answered['understood'], { ingredients, ...rest }: Expect): boolean {
  const both = Array.isArray(ingredients) ? (ingredients as string[]) : [];
  if (both.length !== 2 || Object.keys(rest).length > 0) return false;
  const hues = understood?.technique === 'blend-two' ? PAIRS[understood.named ?? ''] : undefined;
  if (hues) return hues.every(hue => both.some(name => hue.test(name)));
  const names = understood?.facts?.named ?? [];
  const isOfBoth = both.every(name => names.some(one => sameThing(one, name)));
  return understood?.job === 'preview' && understood.given?.mix?.includes('+') === true && isOfBoth;
}

/** Answers of technique that say what powder is wetted in. */
const OF_WETTING: ReadonlySet<string> = new Set(['dry-in']);
/** The kinds that they name. */
const KINDS_WETTED = /^(?:mica|clay|oxides?|titanium dioxide|(?:activated )?charcoal)$/u;

/** Answers near lye that say only that there is none. */
const UNANSWERED: ReadonlySet<string> = new Set(['unsure', 'soap-at-large']);

type Facts = NonNullable<Answered['understood']>['facts'];
type Got = {
  readonly names: readonly string[];
  readonly facts: Facts;
  readonly given: Readonly<Record<string, string>>;
  readonly job: string;
};

function wrongFact(key: string, value: unknown, { names, facts, given, job }: Got): string | undefined {
  // Of a dose counts what it was run with.
  const isDose = job === 'dose' || job === 'preview';
  const told = isDose ? given.portion : facts?.portion;
  const portion = told === undefined ? undefined : parsePortionRange(told).low;
  switch (key) {
    case 'colourant': {
      const all = [...names, given.colourant, given.item, given.mix].filter(name => name !== undefined);
      return all.some(name => sameThing(name, value as string)) ? undefined : `got ${all.join(', ')}`;
    }
    case 'ingredients': {
      const missing = (value as string[]).filter(wanted => !names.some(name => sameThing(name, wanted)));
      return missing.length === 0 ? undefined : `lacks ${missing.join(', ')} in ${names.join(', ')}`;
    }
    case 'portion_ml':
      return portion && near(millilitres(portion), value) ? undefined : `got ${facts?.portion}`;
    case 'portion_g_batter':
    case 'portion_g_oils': {
      const of = key === 'portion_g_oils' ? 'oils' : 'batter';
      return portion?.measure === 'mass' && near(portion.grams, value) && portion.of === of
        ? undefined
        : `got ${facts?.portion}`;
    }
    case 'grams':
    case 'tsp': {
      const read = facts?.powder === undefined ? undefined : readPowder(facts.powder).low;
      const amount = read?.measure === 'mass' ? read.grams : read && read.millilitres / US_TEASPOON_ML;
      return amount !== undefined && near(amount, value) ? undefined : `got ${facts?.powder}`;
    }
    case 'strength':
      return strengthOf(facts?.strength) === strengthOf(value) ? undefined : `got ${facts?.strength}`;
    case 'target_hex': {
      // Of a plan several colours are told, each of which is looked for among those that were understood.
      const wanted = [value].flat() as string[];
      const got = [facts?.target, ...(facts?.colours ?? [])].flatMap(one => one?.hex ?? []);
      return wanted.every(hex => got.some(one => apart(one, hex) <= NEAR))
        ? undefined
        : `got ${got.join(', ')}`;
    }
    case 'region':
      return [facts?.region, facts?.country === 'GB' ? 'UK' : facts?.country].includes(value as string)
        ? undefined
        : `got ${facts?.region}`;
    case 'percent':
      return [
        facts?.superfat,
        facts?.percent,
        facts?.concentration,
        Number.parseFloat(given.superfat ?? ''),
      ].includes(Number(value))
        ? undefined
        : `got ${facts?.superfat}`;
    case 'oils': {
      const oils = given.oils ?? facts?.oils;
      return oils === undefined ? 'no oils' : wrongOils(oils, value as Record<string, number>, given.size);
    }
    default:
      return undefined;
  }
}

/** Labels of writers that have another name here: a light colour is a pastel, half of full is medium (common practice). */
const STRENGTHS: Readonly<Record<string, string>> = { light: 'pastel', half: 'medium' };
const strengthOf = (told: unknown) => STRENGTHS[String(told)] ?? told;

const millilitres = (portion: Portion) => (portion.measure === 'volume' ? portion.millilitres : Number.NaN);
