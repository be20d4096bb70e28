import type { BarredReason, BatchPart } from '../../../engine/hazards/index.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

/** Of white powders that are no colour. */
const TALC = 'Its dust harms lungs and may hold asbestos: cosmetic grade only, with a mask.';
const FINE_POWDER = 'A fine powder: keep it out of your lungs, wear a mask.';

const { plain } = numbersIn('en');
/** Why a colour stays out of soap, and what to take instead. */
const barred: Readonly<Record<BarredReason, string>> = {
  cadmium:
    'Cadmium pigments are poisonous and banned in cosmetics. For that yellow, orange or red take iron oxides, a mica, or Red 30 lake',
  lead: spaced`
    Lead pigments (lead white, red lead, chrome yellow) are poisonous and banned in cosmetics. Take
    titanium dioxide for white, yellow iron oxide for yellow
  `,
  mercury:
    'Vermilion and cinnabar are mercury sulfide: poisonous and banned in cosmetics. For that red take Red 30 lake',
  arsenic:
    'This is a pigment of arsenic: poisonous and banned in cosmetics. For green take chromium oxide green; for yellow, yellow iron oxide',
  antimony:
    'Antimony pigments (Naples yellow among them, with lead) are poisonous and banned in cosmetics. Take yellow iron oxide',
  chromate:
    'Chromates are chromium(VI): they cause cancer and allergy, and are banned in cosmetics. Chromium oxide green is another substance and may be used',
  oxidiser: spaced`
    Permanganate is a strong oxidiser: it burns and stains skin, reacts with oils and glycerin, which may
    catch fire, and is no colour for cosmetics. For violet take ultramarine violet
  `,
  cobalt:
    'Cobalt pigments are not listed for soap, and cobalt causes allergy. For blue take ultramarine blue',
  nickel: 'Nickel pigments cause allergy and are banned in cosmetics. Take yellow iron oxide',
  'copper-poison':
    'This copper pigment is poisonous or corrosive, and in no list of cosmetic colours. For green take chromium oxide green, for blue ultramarine',
  radioactive: 'This is radioactive. It stays out of soap',
  asbestos:
    'Asbestos dust causes cancer and is banned. Leave it closed, and ask your local authority where it goes',
  'delisted-dye':
    'This dye was struck off the lists or is prohibited for skin. Take a listed lake or dye, such as Red 30 lake or Red 33',
  'us-delisted':
    'Red 3 (erythrosine) and amaranth (Red 2) were struck off the US list for cosmetics. Take Red 30 lake, Red 33 or a red iron oxide',
  'burning-plant':
    'This plant burns or poisons skin (bloodroot, pokeberry). For red take madder, a red clay or a red iron oxide',
  metal:
    'This is metal: in lye it corrodes, heats up and may give off hydrogen, which burns. Take gold mica or silver mica',
  paint: spaced`
    This is made for paper, walls or resin, not for skin: nobody says what is in it, and it may be lead,
    cadmium or cobalt. Only a pigment sold for soap or cosmetics, with its CI number on the label, goes in.
    If it has one, ask with that
  `,
  crayon:
    'Crayons are made for paper, not for skin: their pigments are not listed, do not disperse, and bleed. Take a mica or an oxide',
  'candle-dye':
    'Candle dye is made for wax, not for skin; it bleeds and stains, and lye changes it. Take a mica or an oxide',
  'cloth-dye':
    'This dye is made for cloth, leather, wood or hair, not for skin: it can cause allergy. Take a mica or an oxide',
  'food-colouring': spaced`
    Food colouring in lye: most of it turns brown or fades within days, and what stays bleeds and stains.
    Better an oxide, ultramarine or mica. If the label names the dye (Blue 1, Red 40, E133), ask with that
    name and I tell what lye does to it
  `,
  'make-up': spaced`
    Make-up is fillers, oils, and colours in unknown shares; some are destroyed by lye, some listed for
    eyes or nails only. Take a mica or an oxide. If it has an ingredient list, paste that and I tell what
    lye does to it
  `,
};

/** What a name that is no colour is in the batch, and what that means for whoever wanted it as one. */
export const batchPart: Readonly<Record<BatchPart, string>> = {
  liquid: spaced`
    goes in place of water, with a method of its own: frozen, boiled flat, or into the oils, never plain
    with lye (what is sour or sweet uses up lye, or heats). /plan liquid:“goat milk” weighs it
  `,
  sugar: spaced`
    is a sugar: it browns and makes soap hot. At most 30 g per kg of oils, dissolved in water, into the
    oils, never into lye. /plan additives:“honey 15 g” counts its heat
  `,
  acid: spaced`
    is an acid and uses up lye, so the lye is weighed with it: /plan liquid:“vinegar” or additives:“citric
    acid 10 g”. Never onto dry lye or strong lye water: it spits. Never with ultramarine
  `,
  fat: 'is a fat: it belongs in the oils, and takes lye of its own. /plan oils:“olive 700 g, coconut 300 g” weighs it',
  scent:
    'is a scent: weighed by its maker’s certificate for soap (IFRA category 9), never by the spoon. /plan fragrance:“3%”. Vanilla turns soap brown',
  salt: 'is a salt: it hardens the bar, and thickens the batter. /plan additives:“salt 20 g” weighs it',
  wax: 'is a wax or the like: a little hardens, and it melts hotter than most soap is poured. /plan oils:“olive 950 g, beeswax 50 g”',
  lye: 'makes the soap and is no colour. It is weighed to the gram, never by the spoon: /plan works it out from your oils',
  oil: spaced`
    is an oil that I do not know: a fat takes lye of its own (/plan oils), an essential oil is a scent,
    weighed by its certificate for soap (/plan fragrance), and mineral or motor oil makes no soap
  `,
  herb: 'leaves no colour that I know of in lye. What is watery in it counts as water; with alcohol in it the batter seizes: leave that out',
  plain: 'colours nothing that I know of',
};

export const hazardRefusals: Pick<RefusalSentences, 'colour-barred' | 'law-allows-too-little' | 'no-colour'> =
  {
    'law-allows-too-little': ({ text, law, percent }) => spaced`
      “${text}”: ${law === 'us' ? 'US' : 'EU'} law allows at most ${plain(percent)} % of the finished bar,
      less than any spoon measures of it. Take another colour; or keep your jar on the shelf with its
      ingredient list, and I hold each dose under the law.
    `,
    'no-colour': ({ text, kind }) =>
      kind === 'glow'
        ? spaced`
          “${text}” is not for soap: powders that glow are strontium aluminate, in no list of cosmetic
          colours, or luminescent zinc sulfide, which the US lists for make-up and nails only. For a bright
          colour take a neon pigment.
        `
        : kind === 'stone'
          ? spaced`
            “${text}” is the ground gem, with pyrite and calcite in it: in no list of cosmetic colours, and
            no substitute by the spoon for the pigment. Does your label say ultramarine blue or CI 77007?
            Then ask with that name.
          `
          : kind in batchPart
            ? `I give no amount: “${text}” ${batchPart[kind as BatchPart]}. A colour that is only called so? Ask with its full name, such as “wine red mica”.`
            : spaced`
              “${text}” is no colour: a white filler that only lightens a little. For white take titanium
              dioxide. ${kind === 'talc' ? TALC : FINE_POWDER}
            `,
    'colour-barred': ({ text, reason, hue }) =>
      hue
        ? `“${text}” as a pigment does not go into soap. ${barred[reason]}. If it is a mica that is only called so, ask with the ingredient list on its label.`
        : `“${text}” does not go into soap. ${barred[reason]}.`,
  };
