import { barredInSentence } from '../../hazards/index.ts';
import { unbroken } from '../../over-lines.ts';
import type { Portion } from '../../quantities/amount.ts';
import { parsePortionRange } from '../../quantities/told/portion.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { amountsIn } from '../found/amounts.ts';
import { thingsIn } from '../found/names/entities.ts';
import type { Words } from '../found/words-of.ts';
import { readPortions } from '../portion-line/portion-line.ts';
import { isTheme, type PlanColour } from './plan-colours.ts';
import { NUMBERS, planParts } from './plan-parts.ts';
import { ownedFor } from './shares-asked.ts';

/** A part of a batch with its colour, which has no hex where it is left plain, and its share of the whole, 0 to 1. */
export type ColouredPart = Pick<PlanColour, 'text' | 'hex' | 'isThing'> & {
  readonly share: number;
  /** What is at hand for its hue, by name. */
  readonly owned?: string;
  /** How deep it is to be, where it differs from part to part. */
  readonly strength?: string;
};

/** A batch whose colours and size are told, and whose oils are not. */
export type ColouredParts = {
  readonly whole: Portion;
  readonly parts: readonly ColouredPart[];
  /** Colours of which a touch is told, which is reckoned as a twentieth. */
  readonly touches?: readonly string[];
  /** Whether the shares are told; equal ones are taken where nothing is. */
  readonly isTold: boolean;
};

const COUNTED = new RegExp(
  unbroken`
    (?<!\p{L})(\d|two|three|four|five|six|seven|dos|tres|cuatro|cinco|seis|siete) (?:\p{L}+ ){0,2}?(?:colou?rs?|
    colores|layers?|capas|stripes?|franjas|parts?|partes|tones|tonos|bands?|bandas)(?!\p{L})
  `,
  'u',
);
/** Lye is reckoned for oils: without them nothing of such a plan is. */
const OF_LYE = /(?<!\p{L})(?:lye|naoh|koh|sosa|soda|lejia|superfat|sobreengrasad\p{L}*)(?!\p{L})/u;
/** A line, a dot and a vein take less than a part. */
const THIN = new RegExp(
  unbroken`
      (?<!\p{L})(?:lines?|thin|dots?|veins?|specks?|seeds?|hint|touch|mostly|mainly|rest|lineas?|
      rayitas?|lunares|puntos|vetas?|pepas|semillas|toque|tantit[oa]|poquit[oa]|a (?:little|bit)|resto)(?!\p{L})
    `,
  'u',
);
const [FEWEST, MOST] = [2, 8] as const;

/** "Red orange yellow green" without commas are so many as are told. */
function apart(colours: readonly PlanColour[], count: number): readonly PlanColour[] {
  if (colours.length >= count) return colours;
  const each = colours.flatMap(one => {
    const words = one.text.split(' ');
    const isRun = !one.isThing && words.length > 1 && words.every(word => isColourWord(foldedColour(word)));
    return isRun ? words.map(text => ({ ...one, text })) : [one];
  });
  return each.length === count ? each : colours;
}

/**
 * The coloured parts of a batch whose size is told and whose oils are not; undefined where a part or its share is left open. Pure.
 * @example colouredParts(wordsOf('rainbow loaf, three equal layers red, yellow, blue, 900 ml'))?.parts.length // 3
 */
export function colouredParts(read: Words): ColouredParts | undefined {
  // What stays out of soap may not be passed by as one of its parts.
  if (OF_LYE.test(read.text) || barredInSentence(read.text) !== undefined) return undefined;
  const { oils, colours: all, shares, touches } = planParts(read);
  const named = all.filter(one => !isTheme(one, read.words));
  const said = COUNTED.exec(read.text)?.[1];
  const count = said === undefined ? named.length : (NUMBERS.get(said) ?? Number(said));
  const colours = apart(named, count);
  const isCounted =
    !named.some(one => isTheme(one, read.words)) &&
    colours.length === count &&
    count >= FEWEST &&
    count <= MOST;
  if (oils.length > 0 || !isCounted || (shares === undefined && THIN.test(read.text))) return undefined;
  const things = thingsIn(read);
  const owned = things.filter(
    one => one.colourants.length > 0 && !colours.some(({ text }) => text === one.text),
  );
  const ofOwn = colours.map(one => (one.isThing ? undefined : ownedFor(one, owned)));
  // What is owned and gives none of the colours is for something that is not told, and so is one for two of them.
  const used = ofOwn.filter(one => one !== undefined);
  if (new Set(used).size < used.length || owned.some(({ text }) => !used.includes(text))) return undefined;
  // A name that may be several is asked for by its hue.
  const isOne = (name: string | undefined): name is string =>
    owned.some(({ text, colourants }) => text === name && colourants.length === 1);
  const { whole } = readPortions(read, things, amountsIn(read, things));
  if (whole === undefined) return undefined;
  const isTold = shares !== undefined && shares.length === colours.length;
  return {
    whole: parsePortionRange(whole).low,
    parts: colours.map(({ text, hex, isThing }, at) => ({
      text,
      ...(hex !== undefined && { hex }),
      isThing,
      share: isTold ? shares[at]! : 1 / count,
      ...(isOne(ofOwn[at]) && { owned: ofOwn[at] }),
    })),
    ...(isTold && touches && { touches }),
    isTold: isTold && new Set(shares).size > 1,
  };
}
