import type { Conversation } from '../../src/conversation/conversation.ts';
import { parseSize } from '../../src/engine/batch/batch-size.ts';
import { oilsOfBatch } from '../../src/engine/batch/oils/bare-grams.ts';
import { knownOil } from '../../src/engine/batch/oils/find-oil.ts';
import { parseOils } from '../../src/engine/batch/oils/oil-list.ts';
import { parsePortions } from '../../src/engine/batch/portions/portion-list.ts';
import type { ColourAsk, OilBlend } from '../../src/engine/batch/request.ts';
import { colourantsMeant } from '../../src/engine/colourants/find.ts';
import { parseCarrier, parsePremix } from '../../src/engine/dosing/parse-premix.ts';
import { barredIn } from '../../src/engine/hazards/index.ts';
import type { Portion } from '../../src/engine/quantities/amount.ts';
import { parsePortion, parsePortionRange } from '../../src/engine/quantities/portion.ts';
import { US_TEASPOON_ML } from '../../src/engine/quantities/units.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { substanceNamed } from '../../src/engine/stability/names.ts';
import { plantNamed } from '../../src/engine/stability/plant-classes.ts';
import { readPowder } from '../../src/engine/text/amounts/powder-phrase.ts';
import { apart, colourNamed } from '../../src/engine/text/colours/colour-name.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { respelt } from '../../src/engine/text/spelling/respelt.ts';
import { askLine } from '../../src/terminal/seat.ts';

/** A set of texts by one kind of maker, as its writer labelled it. */
export type TextSet = {
  readonly writer: string;
  readonly questions: readonly { text: string; language: Written; job: string; expect: Expect }[];
  readonly amounts: readonly {
    text: string;
    language: string;
    kind: string;
    expect: Readonly<Record<string, unknown>>;
    /** The size is not told: right is a question back. */
    ask?: boolean;
  }[];
  readonly colours: readonly { text: string; hex: string }[];
  readonly scope: readonly { text: string; language: Written; outside: boolean }[];
};
/** Some makers write both in one line. */
type Written = 'en' | 'es' | 'mixed';
type Expect = Readonly<Record<string, unknown>>;
export type Part = { readonly right: number; readonly total: number };
export type Score = Readonly<Record<'questions' | 'amounts' | 'colours' | 'scope', Part>> & {
  readonly misses: readonly string[];
};

/** Two colours this near (CIEDE2000) are one person's idea of the other's word. */
const NEAR = 20;

/** Right where everything that the label states was understood: the job, the names, the numbers within 1 %. */
export async function score(set: TextSet, conversation: Conversation): Promise<Score> {
  const misses: string[] = [];
  const part = async <Item extends { text: string }>(
    name: string,
    items: readonly Item[],
    wrong: (item: Item) => Promise<string | undefined> | string | undefined,
  ): Promise<Part> => {
    let right = 0;
    for (const [at, item] of items.entries()) {
      const why = await (async () => wrong(item))().catch(
        (error: unknown) => `threw ${String((error as { id?: string }).id ?? error)}`,
      );
      if (why === undefined) right += 1;
      else misses.push(`${name} ${at} “${item.text}”: ${why}`);
    }
    return { right, total: items.length };
  };
  const asked = async (text: string, written: Written) => {
    const language = written === 'mixed' ? mostly(text) : written;
    const seat = { member: `reader-${Math.random()}`, group: 'sets', language, manages: false, roles: [] };
    return (await askLine(`/ask question:${JSON.stringify(text.replaceAll('\n', ' '))}`, seat, conversation))
      .answer;
  };
  return {
    questions: await part('question', set.questions, async ({ text, language, job, expect }) => {
      const answer = await asked(text, language);
      if (answer.kind !== 'reply')
        return `no reply: ${answer.kind} ${answer.kind === 'problem' ? answer.id : ''}`;
      return wrongQuestion(answer.data as Answered, job, expect);
    }),
    amounts: await part('amount', set.amounts, item => wrongAmount(item)),
    colours: await part('colour', set.colours, ({ text, hex }) => {
      const read = colourNamed(text);
      if (!read) return `unread, ${hex}`;
      const far = apart(read.hex, hex);
      return far <= NEAR ? undefined : `${read.hex} (${read.name}) is ${far.toFixed(0)} from ${hex}`;
    }),
    scope: await part('scope', set.scope, async ({ text, language, outside }) => {
      const answer = await asked(text, language);
      const data = (answer.kind === 'reply' ? answer.data : {}) as Answered & { emergency?: unknown };
      const isOutside = data.understood?.outside !== undefined || data.emergency !== undefined;
      if (outside) return isOutside ? undefined : `answered inside: ${data.understood?.command ?? 'nothing'}`;
      if (isOutside) return `sent away: ${data.understood?.outside ?? 'first aid'}`;
      return (data.understood?.command ?? data.understood?.lye) === undefined ? 'not understood' : undefined;
    }),
    misses,
  };
}

const SPANISH = new Set(
  'a al algo así con cual cuando cuanto cuántos cuánto de del el en es esta está la las lo los más me mi no o para pero por porque puedo que qué se si sin sobre su un una y ya yo'.split(
    ' ',
  ),
);
const ENGLISH = new Set(
  'a about an and are can did do for from get got have how i in is it like me my no of on or please so that the this to we what when which why will with you'.split(
    ' ',
  ),
);
/** The language that most of a text's small words are of. */
function mostly(text: string): 'en' | 'es' {
  const words = text.toLowerCase().split(/[^\p{L}]+/u);
  const of = (list: ReadonlySet<string>) => words.filter(word => list.has(word)).length;
  return of(SPANISH) > of(ENGLISH) ? 'es' : 'en';
}

type Answered = {
  readonly understood?: {
    readonly job?: string;
    readonly command?: string;
    /** The matter of handling lye that it asks about. */
    readonly lye?: string;
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

function wrongQuestion({ understood }: Answered, job: string, expect: Expect): string | undefined {
  const { facts, given = {} } = understood ?? {};
  // The sets have one name for the contest and for a member who disputes an answer.
  // No number near lye where something is unclear: it is asked for.
  // What of lye is no recipe is answered by its matter.
  const isAnswered = understood?.lye !== undefined && !UNANSWERED.has(understood.lye);
  const asked = understood?.lye === 'stopped' || (job === 'lye' && isAnswered) ? 'lye' : understood?.job;
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
      return facts?.strength === value ? undefined : `got ${facts?.strength}`;
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

const millilitres = (portion: Portion) => (portion.measure === 'volume' ? portion.millilitres : Number.NaN);
const near = (got: number, wanted: unknown) =>
  Math.abs(got - Number(wanted)) <= 0.012 * Math.abs(Number(wanted));

/** Two names of one thing, as far as the catalogue and the list of substances know it. */
function sameThing(got: string, wanted: string): boolean {
  if (fold(got) === fold(wanted)) return true;
  const ids = (name: string) => new Set(colourantsMeant(name).map(({ id }) => id));
  // A command puts slips right where the name as it stands is unknown.
  const [a, b] = [ids(colourantsMeant(got).length > 0 ? got : respelt(got).text), ids(wanted)];
  if (b!.size > 0 && [...b!].some(id => a!.has(id))) return true;
  const [plant, same] = [plantNamed(fold(got)), plantNamed(fold(wanted))];
  if (plant !== undefined && plant.plant === same?.plant) return true;
  const [one, other] = [substanceNamed(got), substanceNamed(wanted)];
  if (one !== undefined && one === other) return true;
  // Names of one class of colours that stay out of soap, such as food colouring in two languages.
  const [kept, out] = [barredIn(got), barredIn(wanted)];
  if (kept !== undefined && !kept.hue && kept.reason === out?.reason) return true;
  return fold(got).includes(fold(wanted)) || (fold(wanted).includes(fold(got)) && fold(got).length > 3);
}

function wrongOils(
  text: string,
  wanted: Readonly<Record<string, number>>,
  sized?: string,
): string | undefined {
  return wrongBlend(parseOils(text), wanted, sized);
}

function wrongBlend(
  { shares, ...told }: OilBlend,
  wanted: Readonly<Record<string, number>>,
  sized?: string,
): string | undefined {
  const size = sized === undefined ? undefined : parseSize(sized);
  // Weights that are brought to another size are what that size makes of them.
  const totalGrams = size?.by === 'oils' ? size.grams : told.totalGrams;
  const entries = Object.entries(wanted);
  const asShares = entries.every(([, amount]) => amount <= 1);
  const sum = entries.reduce((all, [, amount]) => all + amount, 0);
  if (shares.length !== entries.length) return `got ${shares.map(({ oil }) => oil.id).join(', ')}`;
  for (const [name, amount] of entries) {
    const own = shares.find(({ oil }) => oil === knownOil(name));
    if (!own || !near(own.share, amount / sum)) return `${name}: got ${own?.share}`;
  }
  return asShares || near(totalGrams ?? Number.NaN, sum) ? undefined : `in all ${totalGrams}`;
}

/** Refusals that ask for what an amount does not tell: the size of a jug, a unit. */
const ASKED_BACK: ReadonlySet<string> = new Set(['amount-vessel', 'amount-without-unit']);

/** What is wrong with how an amount is read; undefined where it is right. Throws where the reader does. */
export function wrongAmount({
  ask = false,
  ...item
}: Omit<TextSet['amounts'][number], 'language'>): string | undefined {
  if (!ask) return wrongOrRespelt(item);
  try {
    wrongReading(item);
    return 'read without asking';
  } catch (refusal) {
    return refusal instanceof Refusal && ASKED_BACK.has(refusal.id) ? undefined : `threw ${String(refusal)}`;
  }
}

/** As a command reads it: where it is refused as it stands, with its slips put right. */
function wrongOrRespelt(item: Omit<TextSet['amounts'][number], 'language'>): string | undefined {
  try {
    return wrongReading(item);
  } catch (refusal) {
    const text = respelt(item.text).text;
    if (!(refusal instanceof Refusal) || text === item.text) throw refusal;
    return wrongReading({ ...item, text });
  }
}

function wrongReading({
  text,
  kind,
  expect,
}: Omit<TextSet['amounts'][number], 'language'>): string | undefined {
  switch (kind) {
    case 'portion':
    case 'oils': {
      const { low, high } = parsePortionRange(text);
      return wrongAmountOf({ low, ...(high && { high }) }, expect);
    }
    case 'powder':
      return wrongPowder(text, expect);
    case 'size': {
      if (expect.g_low !== undefined) return wrongEnds(text, expect);
      const size = parseSize(text);
      const got =
        size.by === 'mould'
          ? volumeOf(size.mould)
          : size.by === 'batter-volume'
            ? size.millilitres
            : size.grams;
      const wanted = expect.g ?? expect.ml ?? expect.g_low;
      const isMass = size.by === 'oils' || size.by === 'batter-mass';
      return isMass === (expect.g !== undefined) && near(got, wanted)
        ? undefined
        : `got ${JSON.stringify(size)}`;
    }
    case 'premix': {
      if (expect.carrier === 'alcohol') return refusedAs('carrier-is-alcohol', () => parsePremix(text));
      const read = parsePremix(text);
      const ratio =
        read.by === 'spoons'
          ? read.carrierMillilitres / read.powderMillilitres
          : read.by === 'percent'
            ? (1 - read.pigmentShare) / read.pigmentShare
            : Number.NaN;
      const wanted =
        Number(expect.carrier_parts ?? expect.carrier_g) / Number(expect.powder_parts ?? expect.powder_g);
      const carrier = expect.carrier === undefined || parseCarrier(expect.carrier as string) === read.carrier;
      return near(ratio, wanted) && carrier ? undefined : `got ${JSON.stringify(read)}`;
    }
    case 'recipe-oils':
      return wrongBlend(oilsOfBatch(text), expect.oils as Record<string, number>);
    case 'share':
      return wrongShares(text, expect.shares as Record<string, number>);
    case 'layers': {
      const layers = parsePortions(text).map(nameOf);
      const wanted = expect.layers as string[];
      const same =
        layers.length === wanted.length && wanted.every((name, at) => sameColour(layers[at]!, name));
      return same ? undefined : `got ${layers.join(', ')}`;
    }
    default:
      return `unknown kind ${kind}`;
  }
}

/** What spoils soap is understood where it is refused by its name. */
function refusedAs(id: string, read: () => unknown): string | undefined {
  try {
    read();
    return 'read without a refusal';
  } catch (refusal) {
    return refusal instanceof Refusal && refusal.id === id ? undefined : `threw ${String(refusal)}`;
  }
}

/** A batch has one size: of two ends, both are read and asked about. */
function wrongEnds(text: string, { g_low: low, g_high: high }: Expect): string | undefined {
  try {
    parseSize(text);
    return 'read without asking';
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || refusal.id !== 'amount-range') throw refusal;
    const ends = refusal.values as { readonly low: string; readonly high: string };
    return wrongAmountOf(
      { low: parsePortion(ends.low), high: parsePortion(ends.high) },
      { g_low: low, g_high: high },
    );
  }
}

const volumeOf = (mould: Extract<ReturnType<typeof parseSize>, { by: 'mould' }>['mould']): number =>
  mould.shape === 'loaf'
    ? mould.lengthCm * mould.widthCm * mould.heightCm
    : mould.shape === 'cylinder'
      ? (Math.PI / 4) * mould.diameterCm ** 2 * mould.lengthCm
      : mould.count * mould.eachMillilitres;

function wrongAmountOf(
  { low, high }: { low: Portion; high?: Portion },
  expect: Readonly<Record<string, unknown>>,
): string | undefined {
  const value = (portion: Portion) => (portion.measure === 'volume' ? portion.millilitres : portion.grams);
  const unit = expect.ml !== undefined || expect.ml_low !== undefined ? 'volume' : 'mass';
  const lowWanted = expect.ml ?? expect.ml_low ?? expect.g ?? expect.g_low;
  const highWanted = expect.ml_high ?? expect.g_high;
  const good =
    low.measure === unit &&
    near(value(low), lowWanted) &&
    (highWanted === undefined ? high === undefined : high !== undefined && near(value(high), highWanted));
  return good ? undefined : `got ${JSON.stringify({ low, high })}`;
}

/** Labels that tell an amount to so much oil, as that to a pound. */
function toThePound(label: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { tsp, g, per_g_oils: grams, g_per_kg_oils: perKilo } = label;
  const pounds = 453.59237 / Number(grams);
  if (perKilo !== undefined) return { g_per_lb_oils: Number(perKilo) * 0.45359237 };
  if (grams === undefined) return label;
  return tsp === undefined
    ? { g_per_lb_oils: Number(g) * pounds }
    : { tsp_per_lb_oils: Number(tsp) * pounds };
}

function wrongPowder(text: string, label: Readonly<Record<string, unknown>>): string | undefined {
  const read = readPowder(text);
  const expect = toThePound(label);
  const bad = (wanted: unknown, got: number | undefined) =>
    wanted !== undefined && (got === undefined || !near(got, wanted));
  const tsp = (amount: (typeof read)['high']) =>
    amount?.measure === 'volume' ? amount.millilitres / US_TEASPOON_ML : undefined;
  const grams = (amount: (typeof read)['high']) => (amount?.measure === 'mass' ? amount.grams : undefined);
  const wrong =
    (read.perPound
      ? bad(expect.tsp, undefined) || bad(expect.g, undefined)
      : bad(expect.tsp, tsp(read.low)) || bad(expect.g, grams(read.low))) ||
    bad(expect.percent_oils ?? expect.percent, read.percentOfOils) ||
    bad(expect.tsp_low, tsp(read.low)) ||
    bad(expect.tsp_high, tsp(read.high)) ||
    bad(expect.g_low, grams(read.low)) ||
    bad(expect.g_high, grams(read.high)) ||
    (expect.tsp_per_lb_oils !== undefined &&
      (!read.perPound || bad(expect.tsp_per_lb_oils, tsp(read.low)))) ||
    (expect.g_per_lb_oils !== undefined && (!read.perPound || bad(expect.g_per_lb_oils, grams(read.low)))) ||
    (expect.oz_per_lb_oils !== undefined &&
      (!read.perPound || bad(Number(expect.oz_per_lb_oils) * 28.349523125, grams(read.low)))) ||
    (expect.colourant !== undefined && !sameThing(read.name, expect.colourant as string));
  return wrong ? `got ${JSON.stringify(read)}` : undefined;
}

const nameOf = ({ colours }: { colours: readonly ColourAsk[] }): string =>
  colours
    .map(({ text, strength }) =>
      strength.by === 'name' && strength.name !== 'full' ? `${strength.name} ${text}` : text,
    )
    .join(' ') || 'plain';

const PLAIN = /^(?:plain|uncolou?red|natural|base|none|no colou?r)$/iu;

/** One colour in two languages, or two words for it. */
function sameColour(got: string, wanted: string): boolean {
  if (PLAIN.test(got) && PLAIN.test(wanted)) return true;
  if (fold(got) === fold(wanted) || sameThing(got, wanted)) return true;
  const [a, b] = [colourNamed(respelt(got).text), colourNamed(wanted)];
  return a !== undefined && b !== undefined && apart(a.hex, b.hex) <= NEAR / 2;
}

function wrongShares(text: string, wanted: Readonly<Record<string, number>>): string | undefined {
  const portions = parsePortions(text);
  const parts = portions.reduce((sum, { share }) => sum + (share.by === 'parts' ? share.parts : 0), 0);
  const told = portions.reduce(
    (sum, { share }) => sum + (share.by === 'percent' ? share.percent / 100 : 0),
    0,
  );
  const weights = portions.map(({ share }) =>
    share.by === 'mass' ? share.grams : share.by === 'volume' ? share.millilitres : 0,
  );
  const weight = weights.reduce((sum, one) => sum + one, 0);
  const got = portions.map((portion, at) => {
    const { share } = portion;
    const value =
      share.by === 'percent'
        ? share.percent / 100
        : share.by === 'parts'
          ? ((1 - told) * share.parts) / parts
          : share.by === 'rest'
            ? 1 - told
            : weights[at]! / weight;
    return { name: nameOf(portion), value };
  });
  const entries = Object.entries(wanted);
  const missing = entries.filter(
    ([name, value]) => !got.some(one => sameColour(one.name, name) && near(one.value, value)),
  );
  return missing.length === 0 && got.length === entries.length ? undefined : `got ${JSON.stringify(got)}`;
}
