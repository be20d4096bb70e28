import { barredInSentence } from '../../hazards/index.ts';
import { unbroken } from '../../over-lines.ts';
import { parsePortionRange } from '../../quantities/told/portion.ts';
import { colourNamed } from '../../text/colours/colour-name.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { amountsIn } from '../found/amounts.ts';
import { thingsIn } from '../found/names/entities.ts';
import type { Words } from '../found/words-of.ts';
import { readPortions } from '../portion-line/portion-line.ts';
import type { ColouredParts } from './coloured-parts.ts';
import { NUMBERS } from './plan-parts.ts';

/** One hue that goes from deep to pale, or the other way. */
const GRADIENT = new RegExp(
  unbroken`
    (?<!\p{L})(?:gradients?|gradations?|ombre|degrad\p{L}+|difuminad[oa]|(?:light|pale|palest|lightest|dark|deep|darkest) to (?:light|pale|dark|deep|
    darkest|lightest|palest)|de (?:mas )?(?:claro|clarito|oscuro|fuerte) a (?:mas )?(?:claro|clarito|oscuro|fuerte)|
    del? (?:mas )?(?:claro|oscuro) al (?:mas )?(?:claro|oscuro))(?!\p{L})
  `,
  'u',
);
const PALE_FIRST =
  /(?<!\p{L})(?:light|pale|lightest|palest|clar[oa]|clarit[oa])(?!\p{L}).{0,40}(?<!\p{L})(?:dark|deep|darkest|oscur[oa]|fuerte)(?!\p{L})/u;
/** Strengths from deep to pale, each about half of the one before (our own choice; common practice). */
const SHADES: readonly (readonly string[])[] = [
  ['full', 'pastel'],
  ['full', 'medium', 'pastel'],
  ['full', 'medium', 'pastel', 'tint'],
];
const [FEWEST, USUAL] = [2, 3] as const;
const COUNT = String.raw`(\d|two|three|four|dos|tres|cuatro)`;
const OF_SHADES = new RegExp(
  unbroken`
    (?<!\p{L})${COUNT} (?:\p{L}+ )?(?:shades?|steps?|layers?|parts?|tones?|tonos?|capas|pasos|partes|\p{L}*(?:reds?|blues?|
    greens?|pinks?|purples?|yellows?|azules|verdes|rojos|rosas|morados|violetas|amarillos))(?!\p{L})
  `,
  'u',
);
const OF_LYE = /(?<!\p{L})(?:lye|naoh|koh|sosa|soda|lejia|superfat|sobreengrasad\p{L}*)(?!\p{L})/u;
const PLAIN = new RegExp(
  unbroken`
    ^(?:reds?|blues?|greens?|pinks?|purples?|violets?|yellows?|oranges?|
    browns?|roj[oa]s?|azul(?:es)?|verdes?|rosas?|morad[oa]s?|violetas?|amarill[oa]s?|naranjas?)$
  `,
  'u',
);

/** The one hue, or the one colourant, that a gradient is of. */
function ofWhat(read: Words): { readonly text: string; readonly isThing: boolean } | undefined {
  const powders = thingsIn(read).filter(({ colourants }) => colourants.length > 0);
  if (powders.length > 1) return undefined;
  if (powders.length === 1) return { text: powders[0]!.text, isThing: true };
  const hues = new Set(
    read.words
      .filter(word => PLAIN.test(word))
      .map(word => word.replace(/(?<=[aeiou])s$|(?<=[a-z]{3})s$|es$/u, '')),
  );
  const [hue] = hues;
  return hues.size === 1 && hue !== undefined && isColourWord(foldedColour(hue))
    ? { text: hue, isThing: false }
    : undefined;
}

/**
 * The parts of a batch that goes from deep to pale in one hue, as many as are told, three where none are: each the same colourant, weaker from
 * part to part. Undefined where no gradient of one hue is told, or its size is not. Pure.
 * @example gradientParts(wordsOf('three greens light to dark in 900 g'))?.parts.map(part => part.strength) // ['pastel', 'medium', 'full']
 */
export function gradientParts(read: Words): ColouredParts | undefined {
  const { text } = read;
  if (!GRADIENT.test(text) || OF_LYE.test(text) || barredInSentence(text) !== undefined) return undefined;
  const of = ofWhat(read);
  const said = OF_SHADES.exec(text)?.[1];
  const count = said === undefined ? USUAL : (NUMBERS.get(said) ?? Number(said));
  const deepFirst = SHADES[count - FEWEST];
  const things = thingsIn(read);
  const { whole } = readPortions(read, things, amountsIn(read, things));
  if (of === undefined || deepFirst === undefined || whole === undefined) return undefined;
  const hex = colourNamed(of.text)?.hex ?? '#808080';
  const shades = PALE_FIRST.test(text) ? deepFirst.toReversed() : deepFirst;
  return {
    whole: parsePortionRange(whole).low,
    parts: shades.map(strength => ({ ...of, hex, strength, share: 1 / count })),
    isTold: false,
  };
}
