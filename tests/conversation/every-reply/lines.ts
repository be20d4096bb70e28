import { scenario } from '../../../src/demo/scenario.ts';

/*
 * Lines that members ask, such that every command and subcommand is among them, in an order in which they can be asked one
 * after the other. `{photo}` stands for the path of a picture of a bar; `+60 ` before a line lets so many hours pass, and
 * `@reader ` has it asked by the other member.
 */

/** Words that a face may have, by command. Source: the issue that asks for short faces. */
export const LIMITS: Readonly<Record<string, number>> = {
  dose: 90,
  diagnose: 110,
  plan: 130,
  match: 90,
  preview: 90,
  'colourant check': 80,
  help: 70,
};
export const MOST = 130;

/** The README's examples, and what is long: many colours, milk, doubt. */
export const LINES: readonly string[] = [
  '/dose colourant:"ultramarine blue" portion:"2 cups"',
  '/dose colourant:"titanium dioxide" portion:"1 cup" with:"gold mica pastel"',
  '/dose colourant:"ultramarine blue" portion:"1 cup" with-1:"gold mica" with-2:"titanium dioxide tint" with-3:"red iron oxide" with-4:"chromium oxide green"',
  '/dose colourant:carmine portion:"2-3 cups" strength:pastel',
  '/dose colourant:"ultramarine violet" portion:"1 cup" premix:"1 tsp in 1 Tbsp oil"',
  '/diagnose words:"blue specks all over, no zap"',
  '/diagnose words:"white crackly veins on top, the soap got hot, oozing liquid, zaps"',
  '/diagnose words:"it looks odd"',
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; 500 ml gold mica pastel in water; rest plain"',
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; rest plain" liquid:"goat milk" fragrance:"3%, vanillin 8%" additives:"honey 10 g, salt 5%"',
  '/plan oils:"olive 100%" size:"500 g oils" lye:"50% lye solution"',
  '/plan oils:"coconut 30%, olive 70%" size:"1000 g oils" people:6 stations:3',
  '/match target:#1f7d7d portion:"1 cup"',
  '/match target:#6b3fa0 portion:"500 ml" from:catalogue',
  '/preview mix:"ultramarine blue + gold mica" portion:"1 cup"',
  '/preview mix:"neon pink + titanium dioxide + gold mica" gel:true',
  '/colourant check item:carmine',
  '/colourant check item:"gold mica"',
  '/colourant check ingredients:"Mica (CI 77019), Carmine (CI 75470), Titanium Dioxide (CI 77891), Blue 1 Lake, Iron Oxides (CI 77491), Tin Oxide, Red 40 Lake"',
  '/help',
  '/help topic:plan',
  '/help topic:challenge',
  '/shelf list',
  '/prefer',
];

const lineOf = ({ command, options }: (typeof scenario)[number]) =>
  `${command} ${Object.entries(options)
    .map(([name, value]) => `${name}:"${value}"`)
    .join(' ')}`;
export const DEMO: readonly string[] = scenario
  .filter(({ command }) => /^\/(?:shelf|plan|dose|recipe|diagnose)/.test(command))
  .map(lineOf);

/** Jars, a plan, and what is kept, foretold, bought and shared with them. */
export const JARS: readonly string[] = [
  '/shelf add item:Dusk colourant:"ultramarine violet" amount:"50 g" price:"8.50 €"',
  '/shelf add item:Sun colourant:"gold mica" amount:"50 g" price:"6 €"',
  '/shelf add item:Leaf colourant:"chromium oxide green" amount:"50 g"',
  '/shelf add item:Brick colourant:"red iron oxide" amount:"50 g"',
];
export const MADE: readonly string[] = [
  '/dose colourant:Dusk portion:"2 cups"',
  '/match target:#6b3fa0 portion:"500 ml"',
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups Dusk; 500 ml Sun pastel; rest plain" prices:"olive 8 €/kg, coconut 6 € per 500 g, palm 4 €/kg"',
  '/batch poured name:Lagoon',
  '/batch poured made:"2 cups Dusk 1/2 tsp; 1 cup Sun 1 tsp; 1 cup Leaf 1/4 tsp; 1 cup Brick 1/4 tsp" name:Many',
  '/batch list',
  '/batch show batch:Lagoon',
  '/batch dates',
  '/batch cut weights:"112 g, 108 g"',
  '/batch weigh weights:"107.4, 103.4"',
  '/batch cured colours:"Dusk #7f5fa8"',
  '/palette today',
  '/palette make colours:"#4b3a78, #b14e78, #de6f4d, #f2b95c"',
  '/palette buy colours:"#5f8f5a, #2f6b46"',
  '/pour layers mould:"25x9x6 cm" layers:12 raised:0.2',
  '/pour line mould:"25x9x6 cm" lines:2',
  '/pour swirl mould:"25x9x6 cm" shares:"blue 70%, white 30%"',
  '/pour gradient from:"ultramarine blue full" to:plain steps:8',
  '/pour infusion',
  '/pour infusion bar:"20% #dcc58a" target:"#cda64f" oils:"1000 g"',
  '/swap offer item:Dusk',
  '/swap list',
  '/season show',
  '/calibrate plan',
  '/calibrate bars item:Dusk bar-1:"1/8 tsp per cup #8b93bd" bar-2:"1/2 tsp per cup #4d5aa0"',
  '/shelf compare one:Dusk other:"ultramarine blue"',
];

/** What is left of the commands, by somebody who has {@link JARS} and {@link MADE} behind them. */
export const REST: readonly string[] = [
  '/ask question:"how much ultramarine blue for 2 cups?"',
  '/first-aid what:lye-eye',
  '/shelf show item:Dusk',
  '/shelf use item:Dusk amount:"1.5 g"',
  '/shelf restock item:Dusk amount:"12.5 g"',
  '/shelf weigh item:Dusk amount:"2.45 g"',
  '/shelf dish-test item:Dusk result:water',
  '/shelf low-mark item:Dusk amount:"7.5 g"',
  '/shelf describe item:Leaf price:"7.25 €" size:"50 g"',
  '/shelf new-lot item:Leaf amount:"22.5 g" lot:B7',
  '/shelf undo',
  '/recipe save save-as:"Lagoon loaf"',
  '/recipe list',
  '/recipe show recipe:"Lagoon loaf"',
  '/recipe rescale recipe:"Lagoon loaf" size:"1.5 x"',
  '/recipe copy recipe:"Lagoon loaf" save-as:Lagoon-2',
  '/recipe share recipe:"Lagoon loaf"',
  '/recipe unshare recipe:"Lagoon loaf"',
  '/recipe remove recipe:Lagoon-2',
  '/batch note text:"poured at 38.5 °C, thick at once" batch:Lagoon',
  '/batch share batch:Lagoon',
  '/batch unshare batch:Lagoon',
  '/batch export',
  '/batch remove batch:Many',
  '/colourant report item:Dusk result:held process:gel weeks:6 strength:pastel',
  '/colourant evidence item:Dusk',
  '/colourant share on:true',
  '/colourant label market:eu of:"ultramarine blue, gold mica, titanium dioxide"',
  '/colourant withdraw item:Dusk',
  '/flaws learned',
  '/flaws given',
  '/flaws pictures',
  '/flaws reset',
  '/swap withdraw item:Dusk',
  '/season propose title:"Winter sea" colours:"teal, #4b3f9e, old gold"',
  '/season vote palette:"Winter sea"',
  '/season settle',
  '/challenge open title:"Winter sea" brief:"The harbour in December." palette:"#3f6f9f, #ece4d2" entries-until:"in 2 days" votes-until:"in 9 days"',
  '/challenge show',
  '/challenge list',
  '/challenge palette colours:3 seed:north',
  '/challenge settings zone:Europe/Madrid',
  '@reader /challenge enter title:"Kelp line" photo:"{photo}" colourants:"gold mica"',
  '/challenge enter title:Breakwater photo:"{photo}" colourants:Dusk note:"two pours"',
  '/challenge replace title:Breakwater photo:"{photo}" colourants:"Dusk, Sun"',
  '+60 /challenge ballot',
  '/challenge vote ranking:"1"',
  '/challenge history',
  '+250 /challenge results',
  '/challenge audit',
  '@reader /recipe unshare recipe:"Harbour loaf"',
  '@reader /challenge recipe recipe:"Harbour loaf"',
  '/challenge export',
  '/challenge open title:"Spring field" palette:"#7faf6f" entries-until:"in 2 days" votes-until:"in 9 days"',
  '/challenge extend challenge:"Spring field" reason:"the photos are late" entries-until:"in 4 days"',
  '/challenge enter challenge:"Spring field" title:Meadow photo:"{photo}" colourants:Leaf',
  '/challenge withdraw challenge:"Spring field"',
  '/challenge enter challenge:"Spring field" title:Hedge photo:"{photo}" colourants:Leaf',
  '/challenge disqualify challenge:"Spring field" entry:2 reason:"not of this season"',
  '/challenge cancel challenge:"Spring field" reason:"too few of us"',
  '/diagnose words:"white crackly veins" photo:"{photo}"',
  '/calibrate plan jars:"Sun, Leaf" mixes:true',
  '/privacy show',
  '/privacy export',
  '/privacy erase what:recent',
  '/shelf remove item:Brick',
];

/** Needs a name out of the stewards' file of pictures; its answer is one line. */
export const UNASKED: ReadonlySet<string> = new Set(['flaws drop']);

/** Amounts with the decimal sign of the other language: what is typed is read either way, and written back in one. */
export const OTHER_SIGN: Readonly<Record<'en' | 'es', readonly string[]>> = {
  en: ['1,5 cups', '2,5-3,5 cups'],
  es: ['1.5 cups', '2.5-3.5 cups'],
};
export const signLines = (language: 'en' | 'es'): readonly string[] => {
  const [amount = '', range = ''] = OTHER_SIGN[language];
  return [
    `/dose colourant:Dusk portion:"${amount}"`,
    `/dose colourant:Dusk portion:"${range}"`,
    `/match target:#6b3fa0 portion:"${amount}"`,
    `/preview mix:Dusk portion:"${amount}"`,
    `/palette make colours:"#4b3a78, #f2b95c" portion:"${amount}"`,
    `/palette today portion:"${amount}"`,
    `/pour gradient from:"Dusk full" to:plain portion:"${amount}"`,
    `/calibrate plan jars:Sun portion:"${amount}"`,
  ];
};

/** Everything, in order: first by somebody new, then by somebody with jars. */
export const ALL: readonly {
  readonly by: 'reader' | 'maker';
  readonly line: string;
  readonly later: number;
}[] = [
  ...[...DEMO, ...LINES].map(line => ({ by: 'reader' as const, line, later: 0 })),
  ...[...JARS, ...MADE, ...REST].map(written => {
    const [, hours = '0', other, line = written] = /^(?:\+(\d+) )?(@reader )?(.*)$/s.exec(written) ?? [];
    return { by: other ? ('reader' as const) : ('maker' as const), line, later: Number(hours) };
  }),
];
