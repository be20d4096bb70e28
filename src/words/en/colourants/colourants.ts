import { spaced } from '../../../engine/over-lines.ts';
import type { RefusalSentences } from '../../sentence.ts';

type Choices = readonly { readonly names: { readonly en: string } }[];

/** As many as a phone shows without scrolling. */
const shown = 6;
const named = (choices: Choices) => choices.slice(0, shown).map(choice => choice.names.en);
const either = (choices: Choices) =>
  `${named(choices).join('; ')}${choices.length > shown ? `; and ${choices.length - shown} more` : ''}`;

const metals = {
  aluminium: 'Aluminium makes hydrogen gas and heat with lye',
  copper: 'Copper corrodes in lye and stains the soap',
  bronze: 'Bronze is copper with other metals and corrodes in lye',
  brass: 'Brass is copper and zinc and corrodes in lye',
  tin: 'Tin makes hydrogen gas with lye',
  zinc: 'Zinc metal makes hydrogen gas with lye',
  leaf: 'Gold- and silver-coloured powder or leaf is mostly brass, bronze or aluminium, and aluminium makes hydrogen with lye',
  unnamed: 'Metal flake is mostly aluminium, which makes hydrogen gas and heat with lye',
} as const;

export const colourants = {
  kinds: {
    oxide: 'iron oxide',
    ultramarine: 'ultramarine',
    chromium: 'chromium green',
    mica: 'mica',
    neon: 'neon',
    white: 'white pigment',
    lake: 'lake',
    dye: 'dye',
    carbon: 'carbon black',
    clay: 'clay or earth',
    botanical: 'plant powder',
  },
  carriers: { water: 'water', oil: 'oil', glycerin: 'glycerin' },
  light: {
    holds: 'Light does not fade it.',
    'fades-slowly': 'Light fades it slowly: keep finished bars out of the window.',
    fades: 'Light fades it: store finished bars in the dark.',
  },
  hints: {
    'botanical-varies': 'Plant colours vary from harvest to harvest: make a test bar.',
    'brown-lather-above-ceiling': 'More than this makes brown lather.',
    'choose-chromium-instead': 'For a green that lasts, take chromium green or a mica coloured with it.',
    'choose-ultramarine-instead':
      'For a blue or violet that lasts, take ultramarine or a mica coloured with it.',
    'clay-drinks-water': 'Clay drinks water: wet it first, or the batter thickens and the bar may crack.',
    'cocoa-for-brown': 'A good brown also comes from cocoa powder.',
    'coloured-lather-above-ceiling': 'More than this colours the lather and the towel.',
    'deepen-red-with-red-mica': 'A little red mica deepens this red.',
    'deepen-violet-with-blue': 'For a deep violet, add a touch of ultramarine blue.',
    'deepens-true-red': 'A little of this deepens the true red of Red 30 lake.',
    'dust-flies': 'Fine dust: open it slowly, wet it at once, and wear a dust mask.',
    'dye-migrates-and-stains':
      'This dye wanders into the next colour and stains: use it alone, or across the whole bar.',
    'grey-lather-above-ceiling': 'More than this makes grey lather.',
    'greyer-blue': 'In the bar it is a greyer blue, like denim.',
    'infuse-in-oil': 'Steep the root in warm oil and strain it: cleaner colour, no grit.',
    'interference-needs-dark-base':
      'Over pale soap this looks white: its colour shows only over a dark base.',
    'keep-from-light': 'Cure and keep the bars away from daylight.',
    'keeps-as-slurry': 'Mixed with water it keeps as a ready slurry: shake before use.',
    'lake-bleeds': 'This lake bleeds into pale swirls and may stain: start low and make a test bar.',
    'less-gives-clean-pastels': 'Any less gives a clean pastel.',
    'never-in-water': 'Oil or glycerin only: it never disperses in water.',
    'never-with-acid': 'Keep it from acid: acid destroys it with a rotten-egg smell.',
    'not-listed-fluorescent':
      'Neon resin pigments are not on the US list of cosmetic colours, and in the EU each dye inside must be listed: see /colourant check.',
    'not-listed-us': 'Not on the US list of cosmetic colours for soap: see /colourant check.',
    'pearl-hides-in-soap': 'Soap is not clear, so the shimmer shows little inside the bar; it shines on top.',
    'read-what-coats-the-mica':
      'Mica is only the carrier: what coats it decides. Read its ingredient list to /colourant check.',
    'scratchy-above-ceiling': 'More than this feels scratchy.',
    'start-small-strong': 'Strong colour: start with half and look.',
    'stick-blend-white': 'Stick-blend it in; that portion thickens, so do it last or expect it.',
    'sugar-heats': 'It is sugar: that portion runs hotter.',
    'test-violet-drift': 'It may drift bluer in hot, strong lye: make a test bar.',
    'true-red-instead': 'For a red that lasts, take Red 30 lake.',
    'wet-before-batter':
      'It clumps: wet it well before it meets the batter. Patience helps more than more liquid.',
    'white-brittle': 'Too much white makes brittle bars.',
    'white-crackles-when-hot': 'White crackles when the soap overheats: less heat, and less white.',
    'white-least-that-does': 'Use as little white as does it.',
    'zinc-thickens': 'Zinc oxide can thicken the batter.',
  },
};

export const colourantsRefusals: Pick<
  RefusalSentences,
  'colourant-unknown' | 'colourant-ambiguous' | 'metal-never-in-lye' | 'metal-or-mica' | 'glitter-read-label'
> = {
  'colourant-unknown': ({ text, nearest }) =>
    text.trim() === ''
      ? `Name a colourant, such as: ${either(nearest)}.`
      : `I don't know a colourant “${text}”. Nearest: ${either(nearest)}.`,
  'colourant-ambiguous': ({ text, candidates }) =>
    `“${text}” can be several. Say which: ${either(candidates)}.`,
  'metal-never-in-lye': ({ metal }) =>
    `Never put metal powder or flake in soap batter. ${metals[metal]}. For that look, use a mica coloured with iron oxide.`,
  'metal-or-mica': ({ metal, instead }) =>
    `The metal itself must never go in. ${metals[metal]}. If you mean the powder coloured like it, say “${instead.names.en}”.`,
  'glitter-read-label': () => spaced`
    Glitter is plastic film, often with aluminium on it, and aluminium must never meet lye. Read its
    ingredient list to /colourant check; keep plain cosmetic glitter for the top of finished bars.
  `,
};
