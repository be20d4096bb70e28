import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { TestBar } from '../../src/engine/colour/calibration/test-bar.ts';
import { barGrams } from '../../src/engine/colour/jars/jar-spoons.ts';
import { parseBar, parseBarDose, type WrittenBar } from '../../src/engine/colour/reading/bar-text.ts';
import {
  parseBarMix,
  parseMixedBar,
  type WrittenBarMix,
} from '../../src/engine/colour/reading/mixed-bar-text.ts';
import type { Lab } from '../../src/engine/colour/spectra/cielab.ts';
import { colourantsNamed } from '../../src/engine/colourants/find.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { Refusal, refuse } from '../../src/engine/refusal.ts';
import { excerpt } from '../../src/engine/text/excerpt.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { spooned } from '../../src/presenting/colour/jars.ts';
import { listShelf, type ShelfItem } from '../../src/records/shelf/index.ts';
import { findJar, type Jar } from '../../src/records/shelf/jars/jar.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'calibration-photo-without-dose': Record<never, never>;
    'calibration-photo-without-white': Record<never, never>;
    'calibration-without-item': Record<never, never>;
    'calibration-mix-without-jar': { readonly text: string };
  }
}

/** A bar whose jars are named, with the pigment of each in grams per 100 g of batter. */
export type MixedBar = {
  /** As it was written, without its colour. */
  readonly parts: readonly { readonly jar: Jar; readonly grams: number }[];
  readonly lab: Lab;
  readonly plusMinus: number;
};

/** The bars of one question: of the jar that it is about, and of jars that the bars name. */
export type GivenBars = {
  readonly bars: readonly TestBar[];
  readonly mixed: readonly MixedBar[];
  readonly photo?: { readonly hex: string; readonly plusMinus: number };
  /** Plain bars beside bars of several jars: they are of none of them. */
  readonly plainLeftOut?: number;
};

type Asked = {
  readonly bar: readonly string[];
  readonly photo?: Attachment | undefined;
  readonly dose?: string | undefined;
};

/** Error of a colour that was typed after looking, CIEDE2000 (from memory: naming and picking by eye scatter so). */
const TYPED_PLUS_MINUS = 3;

/**
 * Reads the bars of a question, those typed and the one in the photo. Throws a Refusal: `calibration-without-item` where a bar names
 * no jar and the question neither, `calibration-mix-without-jar`, or those of bars, mixes and photos.
 */
export async function givenBars(
  asked: Asked,
  { jar, measures }: { readonly jar: Jar | undefined; readonly measures: Measures },
  context: Context,
): Promise<GivenBars> {
  const reading = { jar, measures, isName: await namesKnown(context), context };
  const plain = jar ? [] : asked.bar.filter(text => isPlain(text, measures));
  const typed = await Promise.all(
    asked.bar
      .filter(text => !plain.includes(text))
      .map(async text => {
        const { parts, lab } = written(text, reading);
        return { parts: await jarsOf(parts, text, reading), lab, plusMinus: TYPED_PLUS_MINUS };
      }),
  );
  const pictured = asked.photo && (await photographed(asked.photo, asked.dose, reading));
  const all = [...typed, ...(pictured ? [pictured.bar] : [])];
  const isOfOne = ({ parts }: MixedBar) => parts.every(one => one.jar === jar);
  return {
    bars: all
      .filter(isOfOne)
      .map(({ parts, lab, plusMinus }) => ({ grams: parts[0]!.grams, lab, plusMinus })),
    mixed: all.filter(bar => !isOfOne(bar)),
    ...(pictured && { photo: pictured.seen }),
    ...(plain.length > 0 && { plainLeftOut: plain.length }),
  };
}

/** Whether a bar is one without any colour. */
function isPlain(text: string, measures: Measures): boolean {
  try {
    return parseBar(text, measures).dose.by === 'plain';
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
}

/**
 * The one jar that all bars but a plain one name: the plain bar is then its bar too. Undefined where no plain bar is there, or
 * several jars are named.
 */
export async function soleJarNamed(
  bars: readonly string[],
  measures: Measures,
  context: Context,
): Promise<ShelfItem | undefined> {
  const coloured = bars.filter(text => !isPlain(text, measures));
  if (coloured.length === bars.length || coloured.length === 0) return undefined;
  const reading = { jar: undefined, measures, isName: await namesKnown(context), context };
  const jars = await Promise.all(
    coloured.map(async text => {
      const { parts } = written(text, reading);
      return Array.isArray(parts)
        ? (await jarsOf(parts, text, reading)).map(({ jar }) => jar.item)
        : [undefined];
    }),
  );
  const [first, ...others] = jars.flat();
  return first && jars.every(one => one.length === 1) && others.every(one => one?.id === first.id)
    ? first
    : undefined;
}

const namesKnown = async ({ shelf }: Context) => {
  const own = new Set((await listShelf(shelf)).map(({ name }) => fold(name)));
  return (one: string) => own.has(fold(one)) || colourantsNamed(one).length > 0;
};

type Reading = {
  readonly jar: Jar | undefined;
  readonly measures: Measures;
  readonly isName: (text: string) => boolean;
  readonly context: Context;
};

type Written = { readonly parts: WrittenBarMix | WrittenBar['dose']; readonly lab: Lab };

/** A bar by its dose alone, else by the names of its jars. */
function written(text: string, { measures, isName }: Reading): Written {
  try {
    const { dose, lab } = parseBar(text, measures);
    return { parts: dose, lab };
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || refusal.id !== 'test-bar-unreadable') throw refusal;
    const mixed = parseMixedBar(text, measures, isName);
    if (!mixed) throw refusal;
    return mixed;
  }
}

/** The jars of a bar; a dose alone is of the jar that the question is about. */
async function jarsOf(
  parts: Written['parts'],
  text: string,
  { jar, measures, context }: Reading,
): Promise<MixedBar['parts']> {
  if (!Array.isArray(parts)) {
    if (!jar) return refuse('calibration-without-item', {});
    return [{ jar, grams: barGrams(parts as WrittenBar['dose'], spooned(jar, measures), measures) }];
  }
  const found = await Promise.all(
    (parts as WrittenBarMix).map(async ({ name, dose }) => {
      const named = await findJar(context.shelf, name);
      const same = jar && named.item?.id === jar.item?.id ? jar : named;
      return { jar: same, grams: barGrams(dose, spooned(same, measures), measures) };
    }),
  );
  if (!found.some(one => one.jar.item)) refuse('calibration-mix-without-jar', { text: excerpt(text) });
  return found;
}

async function photographed(photo: Attachment, dose: string | undefined, reading: Reading) {
  const { measures, isName, context } = reading;
  if (dose === undefined) return refuse('calibration-photo-without-dose', {});
  const parts = await jarsOf(parseBarDose(dose, measures) ?? mixOf(dose, measures, isName), dose, reading);
  const bytes = await photo.read();
  const { colours, whiteReference } = await context.workers.run(
    'photoColours',
    { bytes },
    { owner: context.asker.id },
  );
  const [main] = colours;
  if (!main) return refuse('photo-bar-unseen', {});
  if (!whiteReference) return refuse('calibration-photo-without-white', {});
  const { lab, hex, plusMinus } = main;
  return { bar: { parts, lab, plusMinus }, seen: { hex, plusMinus } };
}

/** A dose that names its jars. Throws a Refusal `strength-unreadable` where it names none. */
function mixOf(dose: string, measures: Measures, isName: (text: string) => boolean): WrittenBarMix {
  const mix = parseBarMix(dose, measures, isName);
  return mix.some(({ name }) => isName(name)) ? mix : refuse('strength-unreadable', { text: excerpt(dose) });
}
