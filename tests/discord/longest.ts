/** One command at its longest: what is given to it, and how many hours after the one before. */
export type Longest = {
  readonly path: string;
  readonly given: Readonly<Record<string, string | number | boolean>>;
  readonly later?: number;
  /** Whoever of the two asks; the steward unless said. */
  readonly by?: 'steward' | 'member';
  /** Answered with a "no"; `perhaps` where it hangs on what buttons did before, or on lots. */
  readonly refused?: boolean | 'perhaps';
};

/** The name of a jar as long as a jar's may be. */
export const longJar = (n: number): string =>
  `Jar ${n} ${'of the deepest evening colour over the lagoon '.repeat(2)}`.slice(0, 60).trim();

const filled = (text: string, most: number): string =>
  text
    .repeat(Math.ceil(most / text.length))
    .slice(0, most)
    .trim();
const PROSE = 'of what went on that day, from the first jug to the last scrape of the pot, ';
const TITLE = filled('A sea in winter and all that swims in it ', 78);
const PORTIONS = Array.from(
  { length: 9 },
  (_, n) => `100 ml ${longJar(n)} pastel + ${longJar(n + 5)} tint`,
).join('; ');
const PALETTE = '#3f6f9f 20%, #ece4d2 20%, #7faf6f 20%, #b14e78 20%, #f2b95c 20%';
const LABEL = Array.from(
  { length: 12 },
  () => 'Mica (CI 77019), Carmine (CI 75470), Titanium Dioxide (CI 77891), Blue 1 Lake, Red 40 Lake',
).join(', ');
const PLAN = {
  oils: 'coconut 25%, olive 40%, palm 15%, shea 5%, castor 5%, avocado 5%, sunflower 5%',
  size: '3000 g oils',
  portions: PORTIONS,
  additives: 'honey 10 g, salt 5%, clay 1 Tbsp, citric acid 5 g',
  fragrance: '3%, vanillin 8%',
};
const COLOURS = 'teal, gold, #a04060, sage, dusty rose, #4b3f9e';
const EXAMPLE = { jar: longJar(0), other: longJar(1) };

/** Every command there is, in an order in which they can be asked, by a steward with forty jars and twelve recipes. */
export const LONGEST: readonly Longest[] = [
  {
    path: 'dose',
    given: {
      colourant: longJar(0),
      portion: '2 cups',
      'with-1': longJar(1),
      'with-2': longJar(2),
      'with-3': longJar(4),
    },
  },
  { path: 'plan', given: PLAN },
  { path: 'plan', given: { ...PLAN, portions: `2 cups ${EXAMPLE.jar}; rest plain`, 'save-as': 'Walked' } },
  { path: 'plan', given: { ...PLAN, people: 24, stations: 8 } },
  { path: 'plan', given: {} },
  { path: 'preview', given: { mix: `${longJar(0)} pastel + ${longJar(1)} + ${longJar(3)} tint` } },
  { path: 'match', given: { target: '#6b3fa0', portion: '500 ml' } },
  { path: 'match', given: { photo: '{photo}', portion: '500 ml' } },
  { path: 'dose', given: { colourant: 'oxide', portion: '1 cup' }, refused: true },
  { path: 'preview', given: { mix: 'oxide' }, refused: true },
  { path: 'palette today', given: {} },
  { path: 'palette make', given: { colours: COLOURS } },
  { path: 'palette buy', given: { colours: COLOURS } },
  { path: 'pour layers', given: { mould: '25x9x6 cm', layers: 12, raised: 0.2 } },
  { path: 'pour line', given: { mould: '25x9x6 cm', lines: 12, colourant: EXAMPLE.jar } },
  {
    path: 'pour swirl',
    given: {
      mould: '25x9x6 cm',
      shares: 'blue 10%, white 10%, red 10%, gold 10%, green 10%, pink 10%, teal 10%, plain 30%',
    },
  },
  { path: 'pour gradient', given: { from: `${longJar(0)} + ${longJar(1)}`, to: longJar(3), steps: 12 } },
  { path: 'pour infusion', given: { bar: '20% #dcc58a', target: '#cda64f', oils: '1000 g' } },
  { path: 'calibrate plan', given: { jars: [0, 1, 2].map(longJar).join(', '), mixes: true } },
  {
    path: 'calibrate bars',
    given: {
      item: EXAMPLE.jar,
      ...Object.fromEntries(
        ['1/16', '1/8', '1/4', '3/8', '1/2'].map((spoon, at) => [
          `bar-${at + 1}`,
          `${spoon} tsp per cup ${['#a9aecf', '#8b93bd', '#6d78ac', '#5b66a4', '#4d5aa0'][at]!}`,
        ]),
      ),
    },
  },
  { path: 'diagnose', given: {} },
  {
    path: 'diagnose',
    given: {
      words:
        `white crackly veins on top, the soap got hot, oozing liquid, zaps, blue specks, it faded, ${'crumbly, orange spots, smells rancid, white ash, '.repeat(40)}`.slice(
          0,
          3_900,
        ),
      photo: '{photo}',
    },
  },
  { path: 'first-aid', given: { what: 'lye-eye' } },
  { path: 'help', given: {} },
  { path: 'help', given: { topic: 'plan' } },
  {
    path: 'ask',
    given: { question: filled('how much ultramarine blue and gold mica for 2 cups of batter, ', 1_900) },
  },
  { path: 'ask', given: { question: 'how much of the blue one?' } },
  { path: 'ask', given: { question: 'how much ultramarine blue for 2 cups?' } },
  {
    path: 'prefer',
    given: {
      owned: '1 Tbsp, 1 tsp, 1/2, 1/4, 1/8, 1/16',
      zone: 'America/Argentina/Buenos_Aires',
      scale: 0.1,
    },
  },
  { path: 'prefer', given: { owned: 'all' } },

  { path: 'shelf list', given: {} },
  { path: 'shelf add', given: { item: 'One more', colourant: 'gold mica', amount: '50 g', price: '6 €' } },
  { path: 'shelf show', given: { item: EXAMPLE.jar } },
  { path: 'shelf use', given: { item: EXAMPLE.jar, amount: '1 g' } },
  { path: 'shelf restock', given: { item: EXAMPLE.jar, amount: '12 g' } },
  { path: 'shelf weigh', given: { item: EXAMPLE.other, amount: '1.6 g' } },
  { path: 'shelf dish-test', given: { item: EXAMPLE.other, result: 'neither' } },
  { path: 'shelf low-mark', given: { item: EXAMPLE.jar, amount: '20 g' } },
  { path: 'shelf describe', given: { item: EXAMPLE.other, ingredients: LABEL.slice(0, 900) } },
  { path: 'shelf new-lot', given: { item: longJar(2), amount: '25 g', lot: filled('B7-', 60) } },
  { path: 'shelf compare', given: { one: EXAMPLE.jar, other: longJar(5) } },
  { path: 'shelf undo', given: {} },
  { path: 'dose', given: { colourant: longJar(5), portion: '1 cup' } },
  { path: 'recipe list', given: {} },
  { path: 'recipe show', given: { recipe: 'Walked' } },
  { path: 'recipe rescale', given: { recipe: 'Walked', size: '4500 g oils' } },
  { path: 'recipe save', given: { 'save-as': filled('Kept under as long a name as there may be ', 78) } },
  { path: 'recipe copy', given: { recipe: 'Walked', 'save-as': 'Walked again' } },
  { path: 'recipe share', given: { recipe: 'Walked' } },
  { path: 'recipe unshare', given: { recipe: 'Walked' } },
  { path: 'recipe remove', given: { recipe: 'Walked again' } },

  {
    path: 'batch poured',
    given: {
      made: Array.from({ length: 6 }, (_, n) => `1 cup ${longJar(n + 5)} 1/8 tsp`).join('; '),
      name: filled('Poured on an evening ', 60),
    },
  },
  { path: 'batch poured', given: { recipe: 'Walked', name: 'Seen' } },
  { path: 'batch list', given: {} },
  { path: 'batch dates', given: {} },
  { path: 'batch note', given: { text: filled(PROSE, 1_000), batch: 'Seen' } },
  { path: 'batch show', given: { batch: 'Seen' } },
  {
    path: 'batch cut',
    given: { batch: 'Seen', weights: Array.from({ length: 24 }, () => '112.5 g').join(', ') },
    later: 30,
  },
  {
    path: 'batch weigh',
    given: { batch: 'Seen', weights: Array.from({ length: 24 }, () => '108.5 g').join(', ') },
    later: 200,
  },
  // Another number of bars is asked about.
  {
    path: 'batch weigh',
    given: { batch: 'Seen', weights: Array.from({ length: 23 }, () => '107.5 g').join(', ') },
  },
  { path: 'batch cured', given: { batch: 'Seen', colours: `${EXAMPLE.jar} #6b5aa8` }, later: 900 },
  { path: 'batch share', given: { batch: 'Seen' } },
  { path: 'batch unshare', given: { batch: 'Seen' } },
  { path: 'batch export', given: {} },
  { path: 'batch remove', given: { batch: 'Seen' } },

  { path: 'colourant check', given: { ingredients: LABEL } },
  {
    path: 'colourant report',
    given: {
      item: EXAMPLE.jar,
      result: 'shifted',
      process: 'gel',
      weeks: 6,
      strength: 'pastel',
      base: filled('pale olive base ', 90),
      note: filled(PROSE, 290),
    },
  },
  { path: 'colourant evidence', given: { item: EXAMPLE.jar } },
  { path: 'colourant evidence', given: {} },
  { path: 'colourant share', given: { on: true } },
  { path: 'colourant label', given: { market: 'eu', of: LABEL } },
  { path: 'colourant withdraw', given: { item: EXAMPLE.jar } },
  { path: 'flaws learned', given: {} },
  { path: 'flaws given', given: {} },
  { path: 'flaws pictures', given: {} },
  { path: 'flaws drop', given: { file: '3f09c2a1b7de.jpg' }, refused: true },
  { path: 'flaws reset', given: {} },
  { path: 'swap offer', given: { item: longJar(3), for: filled('something blue ', 100) } },
  { path: 'swap list', given: {} },
  { path: 'swap withdraw', given: { item: longJar(3) } },
  { path: 'season propose', given: { title: filled('Of the sea ', 58), colours: COLOURS } },
  { path: 'season vote', given: { palette: filled('Of the sea ', 58) } },
  { path: 'season show', given: {} },
  { path: 'season settle', given: {} },

  { path: 'challenge settings', given: { zone: 'America/Argentina/Buenos_Aires' } },
  { path: 'challenge palette', given: { colours: 6, seed: 'north' } },
  { path: 'challenge open', given: {} },
  {
    path: 'challenge open',
    given: {
      title: TITLE,
      brief: filled(PROSE, 990),
      palette: PALETTE,
      'entries-until': 'in 2 days',
      'votes-until': 'in 9 days',
      decides: 'both',
      entries: 5,
      anonymous: false,
    },
  },
  { path: 'challenge show', given: { challenge: TITLE } },
  { path: 'challenge list', given: {} },
  {
    path: 'challenge enter',
    given: { title: 'Of the house', photo: '{photo}', colourants: longJar(0), challenge: TITLE },
  },
  ...[0, 1, 2].map(n => ({
    path: 'challenge enter',
    by: 'member' as const,
    given: {
      title: filled(`Bar ${n} of the long evening `, 78),
      photo: '{photo}',
      colourants: 'ultramarine blue, gold mica',
      note: filled(PROSE, 400),
      challenge: TITLE,
    },
  })),
  {
    path: 'challenge replace',
    by: 'member',
    refused: 'perhaps',
    given: { entry: 3, challenge: TITLE, title: filled('Another bar of the evening ', 78), photo: '{photo}' },
  },
  {
    path: 'challenge extend',
    given: { challenge: TITLE, reason: filled(PROSE, 290), 'entries-until': 'in 3 days' },
  },
  { path: 'challenge ballot', given: { challenge: TITLE }, later: 75 },
  { path: 'challenge vote', given: { challenge: TITLE, ranking: '2' }, by: 'member', refused: 'perhaps' },
  { path: 'challenge history', given: {} },
  { path: 'challenge results', given: { challenge: TITLE }, later: 400 },
  { path: 'challenge audit', given: { challenge: TITLE } },
  { path: 'challenge export', given: { challenge: TITLE } },
  { path: 'challenge recipe', given: { challenge: TITLE, recipe: 'Walked' }, refused: 'perhaps' },
  {
    path: 'challenge open',
    given: { title: 'The next', 'entries-until': 'in 2 days', 'votes-until': 'in 9 days', entries: 2 },
  },
  { path: 'challenge show', given: { challenge: 'The next' } },
  {
    path: 'challenge enter',
    given: { title: 'Hedge', photo: '{photo}', colourants: longJar(0), challenge: 'The next' },
  },
  {
    path: 'challenge disqualify',
    refused: 'perhaps',
    given: { challenge: 'The next', entry: 1, reason: filled(PROSE, 290) },
  },
  {
    path: 'challenge enter',
    given: { title: 'Meadow', photo: '{photo}', colourants: longJar(0), challenge: 'The next' },
  },
  { path: 'challenge withdraw', given: { challenge: 'The next' }, refused: 'perhaps' },
  { path: 'challenge cancel', given: { challenge: 'The next', reason: filled(PROSE, 290) } },

  { path: 'privacy show', given: {} },
  { path: 'privacy export', given: {} },
  { path: 'privacy erase', given: { what: 'recent' } },
  { path: 'shelf remove', given: { item: longJar(4) } },
];

/** Ways on that these lines need not come by, and why. */
export const UNREACHED: ReadonlySet<string> = new Set([
  // Where a question was read with doubt.
  'ask.run',
  'ask.matter',
  'ask.technique',
  // On the announcement in the channel, and after a second pick: each way is gone once.
  'challenge.ballot',
  'challenge.back',
  // More than one page or file holds.
  'challenge.turn',
  'colourant.group',
  'colourant.one',
  'flaws.more',
  'privacy.more',
  // Where what is offered hangs on what a photo shows or what was given of it.
  'match.pick',
  'diagnose.filled',
  'flaws.takeAllBack',
  // Where a cured bar teaches the opposite of what it shows, where another looks at the catalogue, and in a class.
  'batch.teach',
  'match.dose-all',
  'plan.class-shelf',
]);
