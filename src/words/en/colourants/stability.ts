import { spaced } from '../../../engine/over-lines.ts';
import type { EuRestriction, UsArea } from '../../../engine/stability/listings.ts';

/** Where a colour goes in raw soap. */
const towards = {
  beige: 'beige',
  'blue-violet-grey': 'a bluish violet to grey',
  bluer: 'bluer',
  'bright-pink': 'a bright, wandering pink',
  'duller-brown': 'duller and browner',
  'green-beige': 'greenish beige',
  'green-then-yellow': 'green, then yellow',
  'grey-brown': 'grey-brown',
  greyer: 'greyer',
  'maroon-brown': 'maroon to brown',
  'olive-brown': 'olive to brown',
  'pale-yellow': 'pale yellow',
  paler: 'paler',
  'peach-tan': 'peach, then tan',
  'pink-that-bleeds': 'a pink that bleeds',
  'purple-then-dull': 'purple, then dull',
  redder: 'redder',
  'rose-or-purple': 'rose or purple',
  rust: 'rusty brown',
  'violet-blue': 'violet-blue, and fades',
  'violet-or-teal': 'violet or teal, and may fade',
  'yellow-brown': 'yellow, then brown',
  'yellow-that-bleeds': 'a yellow that bleeds',
  yellower: 'yellower',
};

/** What a behaviour depends on. */
const on = {
  'bleeds-from-lake': 'lye lets the dye out of the lake, so it bleeds into pale swirls',
  'dissolves-partly': 'the white stays, but part dissolves and can thicken the batter',
  'dye-migrates': 'the dye dissolves, so it wanders into the next colour and may change its shade',
  'film-and-dye': 'the film holds for a while, its dye may not',
  'hot-strong-lye': 'hot, strong lye pulls it toward blue',
  'how-alkaline': 'the shade follows how alkaline the soap is',
  'pearl-lost': 'the colour stays, the pearl may go',
  'salt-of-the-toner': 'the salt the pigment was made as decides',
  'shade-of-neon': 'pinks, purples and blues fade first, the other shades mostly hold',
  tarnishes: 'it does not react, but may tarnish',
};

export type Towards = keyof typeof towards;
export type ConditionId = keyof typeof on;

const areas: Readonly<Record<UsArea, string>> = {
  yes: 'yes',
  no: 'no',
  'limited-products': 'only certain products',
  'listed-products-only': 'only the products listed',
  'up-to-3-percent': 'at most 3 %',
  'up-to-5-percent': 'at most 5 %',
  'dye-and-aluminium-lake': 'yes, as dye and as aluminium lake',
};

const restrictions: Readonly<Record<EuRestriction, string>> = {
  none: 'no product-type restriction',
  'rinse-off-only': 'rinse-off products only',
  'not-on-mucous-membranes': 'not on mucous membranes',
  'not-in-eye-products': 'not in eye products',
};

export const stability = {
  towards,
  on,
  kinds: {
    glitter: 'glitter',
    metal: 'metal powder',
    plain: 'nothing that colours',
    unknown: 'not recognised',
  },
  confidence: { high: 'well known', medium: 'fairly sure', low: 'a guess: make a test bar' },
  /** What happens to one component or to the whole powder. */
  alkali: {
    stable: () => 'Holds in raw soap.',
    conditional: (v: { on: string }) => `Depends: ${v.on}. Make a test bar.`,
    shifts: (v: { towards: string }) => `Shifts in raw soap: it goes ${v.towards}.`,
    destroyed: (v: { towards: string }) => `Lost in raw soap: it goes ${v.towards}.`,
    bleeds: () => 'Bleeds: the dye dissolves and wanders into the next colour. Make a test bar.',
    never: () => 'Never let this meet lye: the metal reacts, and aluminium gives off hydrogen and heat.',
    unknown: () => 'Not known: make a test bar in a spoonful of batter first.',
  },
  acidMeetsUltramarine:
    'No. Acid destroys ultramarine and frees poisonous hydrogen sulfide; acid goes fully into the lye water first, never onto the pigment.',
  /** One short warning for a dose or a plan. */
  warning: {
    destroyed: (v: { name: string; towards: string }) => `${v.name} goes ${v.towards} in raw soap.`,
    shifts: (v: { name: string; towards: string }) => `${v.name} shifts in raw soap: it goes ${v.towards}.`,
    bleeds: (v: { name: string }) => `${v.name} bleeds into the colour beside it.`,
    conditional: (v: { name: string; on: string }) => `${v.name}: ${v.on}.`,
  },
  ifPresent: (v: { name: string }) => `${v.name}: only if it is in there (“may contain”). Ask your supplier.`,
  notRecognised: (v: { names: readonly string[] }) =>
    `I don't recognise: ${v.names.join('; ')}. So I can't promise anything about it.`,
  predispersed: (v: { carrier: string }) =>
    `Already dispersed in ${v.carrier}, so its strength is not known: start at a quarter, compare, step up, and note what worked.`,
  permitted: {
    us: (v: { section: string; external: UsArea; lips: UsArea; eye: UsArea }) =>
      `US, 21 CFR ${v.section}. External: ${areas[v.external]}. Lips: ${areas[v.lips]}. Eye area: ${areas[v.eye]}.`,
    usTerms: (v: { terms: string }) => `Terms: ${v.terms}.`,
    usCertified: 'Each batch must be certified by the FDA.',
    usLake: 'Lakes are listed provisionally under 21 CFR 81.1 and 82; each batch is certified.',
    usNotListed: (v: { name: string }) =>
      `US: ${v.name} is not on the lists of cosmetic colours (21 CFR 73, 74, 82).`,
    usNoRow: (v: { name: string }) =>
      `US: our copy of the lists has no row for ${v.name}. Check before you sell.`,
    eu: (v: { entry: string; restriction: EuRestriction }) =>
      `EU, Annex IV entry ${v.entry}: ${restrictions[v.restriction]}.`,
    euMost: (v: { most: string }) => `At most ${v.most}.`,
    euConditions: (v: { conditions: string }) => `Conditions: ${v.conditions}.`,
    euNoRow: (v: { name: string }) =>
      `EU: our copy of Annex IV has no row for ${v.name}. Check before you sell.`,
    noColour: (v: { name: string }) => `${v.name} counts as an ingredient, not as a colour.`,
    dated: (v: { asOf: string }) => `Text of ${v.asOf}.`,
    undated: 'From memory, not checked against the text.',
    fluorescent: spaced`
      Neon resin pigments: no US listing; of fluorescent colours the US lists only a few certified dyes. In
      the EU each dye inside must stand in Annex IV: ask the supplier which it is.
    `,
    change: 'Rules change and local codes decide: check the current text before you sell.',
    lyeFirst: 'A listing says nothing about lye: what must not meet lye stays out, listed or not.',
    trueSoap: spaced`
      US: a bar that is mostly lye-and-fat soap and sold only as soap is no cosmetic (21 CFR 701.20); any
      other claim makes it one, and the colour rules apply.
    `,
    euResponsible:
      'EU: any soap sold is a cosmetic; a responsible person answers for its assessment, file and notification (Regulation (EC) No 1223/2009).',
  },
  label: {
    us: 'US label: colours may follow the other ingredients in any order (21 CFR 701.3).',
    eu: 'EU label: colours may follow the other ingredients in any order, by CI number (Regulation (EC) No 1223/2009, Article 19).',
    unsure: (v: { names: readonly string[] }) =>
      `Ask your supplier whether these are really in it: ${v.names.join(', ')}.`,
  },
  evidence: {
    share: (v: { mean: string; low: string; high: string }) =>
      `${v.mean} of bars hold (90 % sure: between ${v.low} and ${v.high}).`,
    reports: (v: { reports: number }) =>
      v.reports === 0
        ? 'Nobody here has reported yet: this is from chemistry alone.'
        : v.reports === 1
          ? 'From chemistry and one report.'
          : `From chemistry and ${v.reports} reports.`,
    results: { held: 'held', shifted: 'shifted', faded: 'faded', bled: 'bled' },
  },
};
