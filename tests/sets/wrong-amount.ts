import { parseSize } from '../../src/engine/batch/batch-size.ts';
import { oilsOfBatch } from '../../src/engine/batch/oils/lists/bare-grams.ts';
import { parsePortions } from '../../src/engine/batch/portions/portion-list.ts';
import { parseCarrier, parsePremix } from '../../src/engine/dosing/parse-premix.ts';
import type { Portion } from '../../src/engine/quantities/amount.ts';
import { parsePortion, parsePortionRange } from '../../src/engine/quantities/told/portion.ts';
import { inPlainWords, type ReadAs } from '../../src/engine/questions/options/in-plain-words.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { respelt } from '../../src/engine/text/spelling/trade/respelt.ts';
import { near, sameColour } from './same-thing.ts';
import type { Expect, TextSet } from './text-set.ts';
import { wrongBlend } from './wrong-oils.ts';
import { wrongPowder } from './wrong-powder.ts';
import { nameOf, wrongShares } from './wrong-shares.ts';

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
    if (!(refusal instanceof Refusal)) throw refusal;
    const text = toldPlainly(item) ?? respelt(item.text).text;
    if (text === item.text) throw refusal;
    return wrongReading({ ...item, text });
  }
}

const READ_AS: Readonly<Record<string, ReadAs>> = {
  portion: 'portion',
  oils: 'portion',
  size: 'size',
  'recipe-oils': 'oils',
};

/** What only the grammar of questions reads. */
function toldPlainly({ text, kind }: Omit<TextSet['amounts'][number], 'language'>): string | undefined {
  const readAs = READ_AS[kind];
  const told = readAs && inPlainWords(readAs, text);
  return told && 'text' in told ? told.text : undefined;
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
