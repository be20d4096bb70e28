import { oilById } from '../../../engine/batch/oils/find-oil.ts';
import type { PortionName } from '../../../engine/batch/portions/portion-name.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { OUNCE_G } from '../../../engine/quantities/units.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import type { Outcome } from '../../../records/shelf/shelf.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { shelf } from '../members/shelf.ts';
import { batch } from './batch.ts';

const { down, figure, one, whole } = numbersIn('en');
const quoted = (names: readonly string[]) => names.map(name => `“${name}”`);
const orList = new Intl.ListFormat('en', { type: 'disjunction' });
const cups = (count: string) => (count === '1' ? '1 cup' : `${count} cups`);

/** What a mass is shown in: the decimals of the member's scale, and which unit stands first. */
type Shown = { readonly decimals: number; readonly first: 'grams' | 'ounces' };

/** A measure in the unit that stands first, and in the other one where there is one. */
type InTwo = { readonly first: string; readonly other?: string };

const inTwo = ({ first, other }: InTwo): string => (other === undefined ? first : `${first} (${other})`);
const weightInTwo = (grams: number, { decimals, first }: Shown): InTwo => {
  const [inGrams, inOunces] = [`${figure(grams, decimals)} g`, `${down(grams / OUNCE_G, 2)} oz`];
  return first === 'grams' ? { first: inGrams, other: inOunces } : { first: inOunces, other: inGrams };
};
const volumeInTwo = (v: { millilitres: number; cups: number }): InTwo => ({
  first: `${figure(v.millilitres, 0)} ml`,
  other: cups(figure(v.cups, v.cups < 10 ? 1 : 0)),
});

export const plan = {
  figure,
  inTwo,
  /** One unit alone, where there is no room for two. Ounces are rounded down, so that lye never grows by it. */
  mass: (grams: number, { decimals, first }: Shown) =>
    first === 'grams' ? `${figure(grams, decimals)} g` : `${down(grams / OUNCE_G, 2)} oz`,
  weightInTwo,
  /** Both units. */
  weight: (grams: number, shown: Shown) => inTwo(weightInTwo(grams, shown)),
  volumeInTwo,
  volume: (v: { millilitres: number; cups: number }) => inTwo(volumeInTwo(v)),
  capital,
  lye: { NaOH: 'Lye (NaOH)', KOH: 'Lye (KOH)' },
  lyeOf: (v: { grams: string; alkali: string }) => `${v.grams} ${v.alkali}`,
  water: 'Water in the lye jug',
  holdBack: (v: { all: string; held: string }) =>
    `${v.held} less than the ${v.all} of the recipe: the colours bring it.`,
  fragrance: 'Fragrance',
  fragranceNote: (v: { percent: number }) => `${one(v.percent)} % of the oils in the scented portions only.`,
  batter: 'Batter',
  batterNote: (v: { grams: string; density: number; reserve: number }) =>
    `${v.grams}, ${figure(v.density, 3)} g/ml. About ${figure(v.reserve, 0)} ml of it clings to pot and cups.`,
  superfat: 'Superfat',
  superfatNote: (v: {
    asked: number;
    usual: boolean;
    carriers: boolean;
    low: number;
    high: number;
  }) => spaced`
    ${v.usual ? 'Usual' : 'Asked'}: ${one(v.asked)}
    %.${v.carriers ? ' The oil in the colours lifts it.' : ''} Oils differ: it lies between ${one(v.low)}
    and ${one(v.high)} %.
  `,
  percent: (v: { percent: number }) => `${one(v.percent)} %`,
  portion: (v: { name: PortionName; volume: string }) => `${capital(batch.portionName(v.name))}: ${v.volume}`,
  /** Spoons first, then grams, then what it is wetted in. */
  dose: (v: { spoons: string; colour: string; grams: string; liquid: string | undefined }) =>
    `${v.spoons} ${v.colour}, about ${v.grams} g${v.liquid ? `, in ${v.liquid}` : ''}`,
  blend: { whisk: 'whisk it in', 'stick-blend': 'stick-blend it in' },
  liquid: (v: { spoons: string; liquid: string; dipped: boolean }) =>
    `${v.spoons} ${v.liquid}${v.dipped ? ' dipped from the batch' : ''}`,
  dippedOil: 'oil',
  noColour: 'no colour',
  inside: (v: { superfat: number; lye: number }) =>
    `superfat ${one(v.superfat)} %, lye ${one(v.lye)} % in there`,
  scent: (v: { grams: string }) => `${v.grams} fragrance`,
  unscented: 'unscented',
  watch: 'Watch out',
  colours: 'About the colours',
  stock: 'Your shelf',
  enough: (v: { name: string; grams: number; left: number }) =>
    `“${v.name}”: ${shelf.grams(v.grams)} needed, ${shelf.grams(v.left)} there.`,
  runsLow: (v: { name: string; grams: number; left: number; after: number }) =>
    `“${v.name}”: ${shelf.grams(v.grams)} needed, ${shelf.grams(v.left)} there. Low after this: ${shelf.grams(v.after)}.`,
  short: (v: { name: string; grams: number; left: number }) =>
    `Not enough “${v.name}”: ${shelf.grams(v.grams)} needed, ${shelf.grams(v.left)} there.`,
  uncounted: (v: { name: string; grams: number }) =>
    `“${v.name}”: ${shelf.grams(v.grams)} needed; I don’t know how much you have.`,
  heat: 'Heat of the loaf (estimate)',
  heatShape: (v: { widthCm: number; heightCm: number }) =>
    `You named no mould, so I took a loaf ${one(v.widthCm)} cm wide and ${one(v.heightCm)} cm high.`,
  timeline: 'What to do when',
  cardTitle: (v: { name: string | undefined }) => v.name ?? 'Batch card',
  cardAlt: (v: { headline: string }) => `Batch card: ${v.headline}.`,
  timelineAlt: (v: { headline: string }) => `What to do when, as a list to tick: ${v.headline}.`,
  card: {
    across: 'Cut across the loaf',
    byVolume: 'By volume, without a swirl.',
    ring: (v: { millimetres: number }) =>
      `By volume. Dashed: where a gel ring may show, ${whole(v.millimetres)} mm in.`,
    gelsFrom: 'gels from here',
    hours: (v: { hours: number }) => `${v.hours} h`,
  },
  print: 'Print on one page',
  printed: {
    a4: 'Your batch card on one A4 page, to print and tick.',
    letter: 'Your batch card on one Letter page, to print and tick.',
  },
  handoutAlt: (v: { headline: string }) => `Class handout to print: ${v.headline}`,
  handoutTitle: 'Class handout',
  stations: 'Stations',
  station: (v: { number: number; people: number }) =>
    `Station ${v.number}: ${v.people} ${v.people === 1 ? 'person' : 'people'}`,
  eachStation: 'At each station',
  shopping: 'For the whole class',
  oil: (v: { id: string; grams: string }) => `${v.grams} ${midSentence(oilById(v.id).names.en)}`,
  gear: (v: { pairs: number }) => `${v.pairs} pairs of goggles and of gloves`,
  leader: 'For the leader',
  lyeInAll: (v: { grams: string }) => `${v.grams} lye in all, weighed station by station`,
  waterInAll: (v: { grams: string }) => `${v.grams} water in all`,
  saved: (v: { name: string }) => `Kept as “${v.name}”.`,
  /** Forms and buttons: at most 45 and 80 characters. */
  forms: {
    begin: 'Plan a coloured batch',
    more: 'Lye, scent, extras',
    heat: 'Mould, heat, scale',
    save: 'Keep this recipe',
    oils: 'Oils',
    oilsHint: 'coconut 30%, olive 50%, palm 20%',
    size: 'Size (needed with percents)',
    sizeHint: '1000 g oils, 1.2 l batter, mould 25x9x7 cm, 12 x 100 ml',
    water: 'Water',
    waterHint: '33% lye, 2:1 (water to lye) or 38% of oils. 33% lye unless you say',
    superfat: 'Superfat, percent',
    superfatHint: '5 unless you say',
    portions: 'Portions and colours',
    portionsHint: '2 cups ultramarine blue; 500 ml gold mica pastel in water; rest plain',
    lye: 'Lye',
    lyeHint: 'NaOH, KOH 90%, NaOH 95% + KOH 5%, or 50% lye solution',
    liquid: 'Instead of water',
    liquidHint: 'goat milk; half beer, half water; cream 100 g in the oils',
    fragrance: 'Fragrance',
    fragranceHint: '3%, vanillin 8%. Write “unscented” after portions that get none',
    additives: 'Additives',
    additivesHint: 'honey 10 g, salt 5%, clay 1 Tbsp, citric acid 5 g',
    swirl: 'How you pour',
    process: 'The first day',
    material: 'Mould',
    start: 'Batter when poured',
    temperatureHint: '38 C or 100 F',
    room: 'Room',
    scale: 'Your scale steps in, grams',
    name: 'A name for it',
  },
  swirls: {
    'in-the-pot': 'in the pot',
    drop: 'drop',
    layered: 'layered',
    hanger: 'hanger',
    single: 'one colour',
  },
  change: 'Change',
  tryAgain: 'Put it right',
  showAll: 'Show everyone',
  myShelf: 'My shelf for it',
  takeAll: (v: { colours: number }) =>
    v.colours === 1 ? 'Take the colour off my shelf' : `Take all ${v.colours} colours off my shelf`,
  takenAll: (v: { outcomes: readonly Outcome[] }) =>
    `Taken off your shelf: ${v.outcomes.map(({ name, change = 0 }) => `${shelf.grams(-change)} “${name}”`).join(', ')}.`,
  takenNone: 'Nothing was taken off your shelf.',
};

export const recipes = {
  none: 'You have no recipes yet. Plan a batch with /plan, then keep it with /recipe save.',
  count: (v: { own: number; shared: number }) => `${v.own} of your own, ${v.shared} shared in this group`,
  own: 'Yours',
  shared: 'Shared in this group',
  row: (v: { name: string; oils: string; size: string }) => `${v.name}: ${v.oils}, ${v.size}`,
  sharedRow: (v: { name: string; by: string; oils: string; size: string }) =>
    `${v.name}, by ${v.by}: ${v.oils}, ${v.size}`,
  times: (v: { factor: number }) => `${figure(v.factor, 2)} times`,
  sizeOfOils: 'size by the oils’ weights',
  asWritten: 'As written',
  by: (v: { name: string }) => `By ${v.name}.`,
  saved: (v: { name: string }) => `“${v.name}” is kept. Plan it any time with /plan recipe:${v.name}`,
  copied: (v: { name: string; from: string }) => `“${v.name}” is yours now, a copy of “${v.from}”.`,
  sharedNow: (v: { name: string }) => `“${v.name}” is shared with this group.`,
  unshared: (v: { name: string }) => `“${v.name}” is no longer shared with this group.`,
  removed: (v: { name: string }) => `“${v.name}” is gone from your recipes.`,
  removedStillShared: 'The copy that you shared with this group stays until /recipe unshare.',
  rescaled: (v: { name: string; factor: number }) =>
    `“${v.name}” made ${figure(v.factor, 2)} times as big. Nothing is kept unless you say so.`,
  rescaledKept: (v: { name: string; from: string; factor: number }) =>
    `“${v.from}” made ${figure(v.factor, 2)} times as big, kept as “${v.name}”.`,
  repeated: 'I had already done that, so nothing was done twice.',
};

export const planRefusals: Pick<
  RefusalSentences,
  | 'recipe-unknown'
  | 'recipe-ambiguous'
  | 'recipe-name-taken'
  | 'recipe-shared-already'
  | 'recipe-shared-name-taken'
  | 'recipe-not-yours'
  | 'recipes-full'
  | 'plan-forgotten'
  | 'oils-missing'
  | 'additive-without-name'
  | 'number-unreadable'
  | 'factor-unreadable'
> = {
  'recipe-unknown': ({ asked, nearest }) =>
    nearest.length === 0
      ? `There is no recipe “${asked}”, and no other yet: plan a batch and keep it with /recipe save.`
      : `There is no recipe “${asked}” of yours or of this group. Nearest: ${orList.format(quoted(nearest))}.`,
  'recipe-ambiguous': ({ asked, candidates }) =>
    `“${asked}” could be ${orList.format(quoted(candidates))}: which one?`,
  'recipe-name-taken': ({ name }) =>
    `You already have a recipe “${name}”: take another name, or remove that one first.`,
  'recipe-shared-already': ({ name }) =>
    `“${name}” is shared already. To show a newer one, unshare it first.`,
  'recipe-shared-name-taken': ({ name, by }) =>
    `${by} already shares a “${name}” here: copy yours under another name and share that.`,
  'recipe-not-yours': ({ name, by }) =>
    `“${name}” was shared by ${by}: only they or a steward can take it back.`,
  'recipes-full': ({ most }) => `${most} recipes are the most I keep in one place: remove one first.`,
  'plan-forgotten': () => 'I no longer have that plan at hand: ask /plan again.',
  'oils-missing': () =>
    'Which oils? Add oils:“coconut 30%, olive 50%, palm 20%”, or recipe: with the name of a recipe.',
  'additive-without-name': ({ text }) =>
    `“${text}” of which additive? Write its name too: “honey 10 g”. Scent goes under Fragrance.`,
  'number-unreadable': ({ field }) => `“${field}” needs a plain number, such as 5 or 0.1.`,
  'factor-unreadable': ({ text }) =>
    `I can’t rescale by “${text}”. Write “2”, “1/2”, “x3”, or a size such as “1500 g oils” or “mould 25x9x7 cm”.`,
};
