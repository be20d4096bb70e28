import { converter, formatHex } from 'culori';
import { colourDifference, labOfHex } from '../../colour/spectra/cielab.ts';
import { unbroken } from '../../over-lines.ts';
import { FOLDED_WORDS } from './folded-colours.ts';

/** A name found in a wish. */
export type FoundColour = {
  readonly hex: string;
  readonly name: string;
  readonly length: number;
  readonly trade: boolean;
};

type Shift = { readonly l?: number; readonly c?: number };

/** What a word beside a colour does to it, in CIE lightness (added) and chroma (a factor). From memory. */
export const SHIFTS: readonly (readonly [RegExp, Shift])[] = [
  [
    /\b(?:very|real|really|super|muy|bien) (?:light|pale|clarito|claro|clara|palido|palida)\b/u,
    { l: 16, c: 0.6 },
  ],
  [/\b(?:real|really) light\b/u, { l: 16, c: 0.6 }],
  [/\b(?:palest|lightest|barely|apenas|clarisimo|clarisima|el mas claro|la mas clara)\b/u, { l: 30, c: 0.3 }],
  [/\b(?:darkest|deepest|nearly black|almost black|casi negro|oscurisimo|oscurisima)\b/u, { l: -32, c: 0.8 }],
  [/\b(?:very|real|really|super|muy) (?:dark|deep|oscuro|oscura)\b/u, { l: -22, c: 0.9 }],
  [
    /\b(?:wash|thin|diluted|sheer|translucent|see through|frosted|whisper of|watercolou?r|translucido|translucida|aguada|acuarela|esmerilado)\b/u,
    { l: 22, c: 0.5 },
  ],
  [
    new RegExp(
      unbroken`
        \b(?:light|lighter|clear|clearer|pale|paler|clarito|clarita|claro|clara|claritos|palido|palida|soft|
        suave|pastel|baby|bebe|faded|deslavado|deslavada|gastado|gastada|washed|whiter|weak|powdery|chalky|
        milky|aguado|aguada|bajito|bajita|tenue|palido)\b
      `,
      'u',
    ),
    { l: 13, c: 0.7 },
  ],
  [
    /\b(?:dark|darker|deep|deeper|oscuro|oscura|profundo|profunda|subido|subidito|subidita|quemado|burnt|blackish|wet|mojado|mojada|tostado|tostada)\b/u,
    { l: -14, c: 0.95 },
  ],
  [
    new RegExp(
      unbroken`
        \b(?:bright|brighter|vivid|vivo|viva|brillante|neon|electric|electrico|electrica|strong|stronger|
        fuerte|intenso|intensa|bold|saturated|chillon|hot|pop)\b
      `,
      'u',
    ),
    { l: -1, c: 1.4 },
  ],
  [
    new RegExp(
      unbroken`
        \b(?:dusty|muted|dull|dirty|dustier|duller|greyer|apagado|apagada|empolvado|empolvada|viejo|vieja|
        sucio|sucia|grayish|greyish|grisaceo|grisacea|old|vintage|antique|dirtier|dull day|rainy|overcast|
        misty|foggy|nublado|neblina|lluvioso|brumoso|smoky|cenizo|ceniza)\b
      `,
      'u',
    ),
    { l: 0, c: 0.5 },
  ],
];
const A_LITTLE =
  /\b(?:a ?(?:lil|little|bit|tad|touch|hair)|slightly|un poco|un poquito|poquito|algo|apenas|ligeramente|tantito|un pelin)\b/u;
const lch = converter('lch65');
/** A colour with a shift, `share` of it. */
export const shifted = (hex: string, shift: Shift, share: number): string => {
  const colour = lch(hex)!;
  const l = Math.min(98, Math.max(4, colour.l + (shift.l ?? 0) * share));
  const c = colour.c * (1 + ((shift.c ?? 1) - 1) * share);
  return formatHex({ mode: 'lch65', l, c, h: colour.h ?? 0 });
};

const lab = converter('lab65');
/** A mix of two colours in CIELAB, `share` of the second. */
export const between = (one: string, other: string, share: number): string => {
  const [a, b] = [lab(one)!, lab(other)!];
  const at = (x: number, y: number) => x + (y - x) * share;
  return formatHex({ mode: 'lab65', l: at(a.l, b.l), a: at(a.a, b.a), b: at(a.b, b.b) });
};

/** Degrees between the hues of two colours, 0 to 180; of a grey's hue nothing is known, so it lies beside all. */
export const hueApart = (one: string, other: string): number => {
  const [a, b] = [lch(one)?.h, lch(other)?.h];
  if (a === undefined || b === undefined) return 0;
  const gap = Math.abs(a - b) % 360;
  return Math.min(gap, 360 - gap);
};

/** How far apart two colours look, CIEDE2000. */
export const apart = (one: string, other: string): number => colourDifference(labOfHex(one), labOfHex(other));

/** What the words beside a name do to its colour, and how much of it. */
export function shiftOf(
  said: string,
  name: string,
): { readonly shift: Shift; readonly share: number } | undefined {
  const rest = said.replace(name, ' ').replace(/\s+/gu, ' ').trim();
  const found = SHIFTS.find(([pattern]) => pattern.test(rest));
  return found && { shift: found[1], share: A_LITTLE.test(rest) ? 0.5 : 1 };
}

/** Hues by name, which settle the family of a thing's colour that stands beside them: "slime green", "verde musgo". */
const FAMILY = new RegExp(
  unbroken`
    ^(?:red|orange|yellow|green|blue|purple|violet|pink|brown|grey|white|black|beige|teal|turquoise|rojo|
    roja|naranja|amarillo|amarilla|verde|azul|morado|morada|violeta|rosa|rosado|marron|cafe|gris|blanco|
    negro|lila)$
  `,
  'u',
);
/** What lies farther apart (CIEDE2000) is another family: the hue that was named is believed. */
const ANOTHER_FAMILY = 44;

/** A thing with a hue beside it: the thing's colour drawn to that hue, or the hue alone where the thing has quite another one. */
export function huedBy({ hex, name }: FoundColour, words: readonly string[]): string | undefined {
  const at = [words.length - 1, 0].find(one => FAMILY.test(words[one] ?? ''));
  const hue = at === undefined ? undefined : words[at];
  if (hue === undefined || words.length < 2 || name.split(' ').includes(hue)) return undefined;
  const family = FOLDED_WORDS.get(hue);
  if (family === undefined) return undefined;
  return apart(hex, family) > ANOTHER_FAMILY ? family : between(hex, family, 0.35);
}

/** Whether a word names a hue rather than a thing. */
export const isHue = (word: string): boolean => FAMILY.test(word);

/**
 * A hue and one or more things beside it, wherever they stand: of "copper green, the verdigris sort" verdigris, drawn to green. Undefined
 * where no thing is of the hue's family.
 */
export function thingOfHue(hue: string, things: readonly FoundColour[]): FoundColour | undefined {
  const family = FOLDED_WORDS.get(hue);
  if (family === undefined) return undefined;
  const [near] = things
    .map(thing => ({ thing, far: apart(thing.hex, family) }))
    .sort((a, b) => a.far - b.far);
  if (near === undefined || near.far > ANOTHER_FAMILY) return undefined;
  return { ...near.thing, hex: between(near.thing.hex, family, 0.35) };
}

/** Endings that make a colour of a thing: "lemony", "coppery", "sandy". */
export const likeness = (word: string): readonly string[] =>
  /(?:y|ish)$/u.test(word) && word.length > 4
    ? [
        word.replace(/(?:e?y|ish)$/u, ''),
        word.replace(/(.)\1y$/u, '$1'),
        word.replace(/y$/u, 'e'),
        word.replace(/y$/u, ''),
      ]
    : [];

/** A word that shifts a colour before or behind a word of the trade ("dusty plum"), or a likeness before a hue ("goldish green"). */
export function shadeOf(said: string): string | undefined {
  const words = said.split(' ');
  if (words.length !== 2) return undefined;
  const [one, other] = words as [string, string];
  for (const [shift, name] of [
    [one, other],
    [other, one],
  ] as const) {
    const found = SHIFTS.find(([pattern]) => pattern.test(shift));
    const hex = FOLDED_WORDS.get(name);
    if (found && hex !== undefined && !FOLDED_WORDS.has(shift)) return shifted(hex, found[1], 1);
  }
  const like = likeness(one)
    .map(thing => FOLDED_WORDS.get(thing))
    .find(hex => hex !== undefined);
  const hue = FAMILY.test(other) ? FOLDED_WORDS.get(other) : undefined;
  return like !== undefined && hue !== undefined ? between(hue, like, 0.4) : undefined;
}
