import { expect, test } from 'vitest';
import { askedPart, askingPart } from '../../../src/engine/questions/asking/asked-part.ts';
import { asksCalmly } from '../../../src/engine/questions/asking/asks-calmly.ts';
import { asksWhatItDoes } from '../../../src/engine/questions/asking/what-it-does.ts';
import { courtesyIn } from '../../../src/engine/questions/fields/courtesy.ts';
import { plainlyElsewhere } from '../../../src/engine/questions/fields/elsewhere.ts';
import { isOfTheSkin } from '../../../src/engine/questions/fields/of-the-skin.ts';
import { tellsOfMakingSoap } from '../../../src/engine/questions/fields/other-field.ts';
import { mayBeOfShelf } from '../../../src/engine/questions/fields/shelf-words.ts';
import { pastAside, smallTalkIn } from '../../../src/engine/questions/fields/small-talk.ts';
import { isUnsureNearLye } from '../../../src/engine/questions/fields/unsure.ts';
import { amountJudged } from '../../../src/engine/questions/found/amount-judged.ts';
import { asksItsColour } from '../../../src/engine/questions/found/asked/asks-its-colour.ts';
import { hueAsked } from '../../../src/engine/questions/found/asked/hue-asked.ts';
import { scentsAsked } from '../../../src/engine/questions/found/asked/scent-asked.ts';
import { survivalAsked } from '../../../src/engine/questions/found/asked/survives.ts';
import { kitchenColoursNamed } from '../../../src/engine/questions/found/names/kitchen-colours.ts';
import { termAsked } from '../../../src/engine/questions/found/trade-terms.ts';
import { asksOfContest } from '../../../src/engine/questions/jobs/contest-asked.ts';
import { plainRequest } from '../../../src/engine/questions/jobs/plain-requests.ts';
import { readQuestion } from '../../../src/engine/questions/read.ts';
import { benchAsked } from '../../../src/engine/questions/technique/bench-asked.ts';
import { isPlainMix, isWishedWith } from '../../../src/engine/questions/technique/mix-wished.ts';
import { outrightIn } from '../../../src/engine/questions/technique/outright/read.ts';
import { putsTwoTogether } from '../../../src/engine/questions/technique/two-hues.ts';
import { warmthTold } from '../../../src/engine/questions/technique/warmth.ts';

/*
 * What makers ask (from memory of how they write), and what every reader makes of it: which command with which options, the names, amounts
 * and strengths it tells, what is talk, a trade's term, another field.
 */

const SIGNS: Readonly<Record<string, (question: string, read: ReturnType<typeof readQuestion>) => boolean>> =
  {
    calm: asksCalmly,
    does: asksWhatItDoes,
    skin: isOfTheSkin,
    shelf: mayBeOfShelf,
    makesSoap: tellsOfMakingSoap,
    contest: asksOfContest,
    twoTogether: putsTwoTogether,
    unsureNearLye: isUnsureNearLye,
    itsColour: asksItsColour,
    plainMix: isPlainMix,
    wishedWith: isWishedWith,
  };

/** What is changed of a text, if it is. */
const ifOther = (question: string, other: string | undefined) => (other === question ? undefined : other);

function readBy(question: string) {
  const read = readQuestion(question);
  const { facts, corrections, hotProcess } = read;
  const [first] = read.readings;
  return {
    job: first?.job,
    command: first?.command,
    given: first?.given,
    outside: read.outside,
    named: facts.named,
    portion: facts.portion,
    powder: facts.powder,
    strength: facts.strength,
    oils: facts.oils,
    percent: facts.percent,
    region: facts.region,
    country: facts.country,
    carrier: facts.carrier,
    fromShelf: facts.fromShelf,
    target: facts.target?.name,
    hot: hotProcess,
    slips: corrections.map(({ from, to }) => `${from} ${to}`),
    bench: benchAsked(question, read)?.technique,
    outright: outrightIn(question)?.technique,
    talk: smallTalkIn(question),
    past: ifOther(question, pastAside(question)),
    asked: ifOther(question, askedPart(question)),
    asking: ifOther(question, askingPart(question)),
    elsewhere: plainlyElsewhere(question),
    hue: hueAsked(question),
    survival: survivalAsked(question),
    term: termAsked(question),
    request: plainRequest(question),
    warmth: warmthTold(question),
    scents: scentsAsked(question, read).map(({ name }) => name),
    kitchen: ifOther(question, kitchenColoursNamed(question)),
    judged: amountJudged(question, facts),
    courtesy: (courtesy => (courtesy === 'any' ? undefined : courtesy))(courtesyIn(question)),
    is: Object.entries(SIGNS)
      .flatMap(([sign, shows]) => (shows(question, read) ? [sign] : []))
      .join(' '),
  };
}

/** What is no, and what is empty, is left out. */
const told = (read: object): object =>
  Object.fromEntries(
    Object.entries(read).filter(
      ([, one]) =>
        one !== undefined && one !== false && one !== '' && !(Array.isArray(one) && one.length === 0),
    ),
  );

test.each([
  [
    'how much ultramarine blue for 2 cups of batter, pastel',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'ultramarine blue', portion: '2 cups', strength: 'pastel' },
      named: ['ultramarine blue'],
      portion: '2 cups',
      strength: 'pastel',
      is: 'calm',
    },
  ],
  [
    'cuánto óxido rojo para 500 g de masa, bien fuerte',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'oxido rojo', portion: '500 g batter', strength: 'full' },
      named: ['oxido rojo'],
      portion: '500 g batter',
      strength: 'full',
      is: 'calm',
    },
  ],
  [
    'how much titanium dioxide for 1 kg of oils',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'titanium dioxide', portion: '1 kg oils' },
      named: ['titanium dioxide'],
      portion: '1 kg oils',
      is: 'calm',
    },
  ],
  [
    '1 tsp ppo of green clay for 800 g oils',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'green clay', portion: '800 g oils', strength: '1 tsp ppo' },
      named: ['green clay'],
      portion: '800 g oils',
      powder: '1 tsp',
      strength: '1 tsp ppo',
      judged: '1 tsp',
    },
  ],
  [
    'dose of activated charcoal for a 3 lb loaf mould',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'activated charcoal', portion: '3 lb' },
      named: ['activated charcoal'],
      portion: '3 lb',
      powder: '3 lb',
    },
  ],
  [
    'how many grams of pink mica for half a litre of batter?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'pink mica', portion: '1/2 litre' },
      named: ['pink mica'],
      portion: '1/2 litre',
      is: 'calm',
    },
  ],
  [
    'cuánta mica dorada para tres tazas',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'mica dorada', portion: '3 tazas' },
      named: ['mica dorada'],
      portion: '3 tazas',
    },
  ],
  [
    'is 2 tsp of spirulina too much for 500 g oils?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'spirulina', portion: '500 g oils' },
      named: ['spirulina'],
      portion: '500 g oils',
      powder: '2 tsp',
      judged: '2 tsp',
    },
  ],
  [
    'is 5 g kaolin enough for 600 g batter',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'kaolin', portion: '600 g batter' },
      named: ['kaolin'],
      portion: '600 g batter',
      powder: '5 g',
      judged: '5 g',
    },
  ],
  [
    'I used 3 tbsp cocoa in 2 lb oils, ok?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'cocoa', portion: '2 lb oils' },
      named: ['cocoa'],
      portion: '2 lb oils',
      powder: '3 tbsp',
      oils: 'cocoa in 2 lb oils',
      judged: '3 tbsp',
      is: 'shelf',
    },
  ],
  [
    'does spirulina survive lye',
    { job: 'survives-lye', command: 'colourant check', given: { item: 'spirulina' }, named: ['spirulina'] },
  ],
  [
    '¿la cúrcuma aguanta la sosa?',
    { job: 'survives-lye', command: 'colourant check', given: { item: 'curcuma' }, named: ['curcuma'] },
  ],
  [
    'will beetroot powder stay pink in soap',
    { job: 'survives-lye', command: 'colourant check', given: { item: 'beetroot' }, named: ['beetroot'] },
  ],
  [
    'does ultramarine violet fade in the sun',
    {
      job: 'survives-lye',
      command: 'colourant check',
      given: { item: 'ultramarine violet' },
      named: ['ultramarine violet'],
    },
  ],
  [
    'can I use neon pigment in soap in the EU',
    { job: 'law', command: 'colourant check', given: { item: 'neon pigment' }, region: 'EU' },
  ],
  [
    'is annatto legal in the US',
    { job: 'law', command: 'colourant check', given: { item: 'annatto' }, named: ['annatto'], region: 'US' },
  ],
  [
    'está permitido el óxido de cromo en Europa',
    {
      job: 'law',
      command: 'colourant check',
      given: { item: 'oxido de cromo' },
      named: ['oxido de cromo'],
      region: 'EU',
    },
  ],
  [
    'can I sell soap with mica in Canada',
    { job: 'law', command: 'colourant check', given: { item: 'mica' }, named: ['mica'], country: 'CA' },
  ],
  [
    'mix plum from ultramarine violet and red oxide',
    {
      job: 'mix',
      command: 'match',
      given: { target: 'plum' },
      named: ['ultramarine violet', 'red oxide'],
      target: 'plum',
      is: 'twoTogether',
    },
  ],
  [
    'how do I make teal from blue oxide and yellow',
    { job: 'mix', command: 'match', given: { target: 'teal' }, target: 'teal' },
  ],
  [
    'cómo hago un verde oliva con lo que tengo',
    { job: 'mix', command: 'match', given: { target: 'verde oliva' }, target: 'verde oliva', is: 'shelf' },
  ],
  [
    'I want a dusty rose, 500 g batter',
    {
      job: 'dose',
      command: 'dose',
      given: { portion: '500 g batter' },
      portion: '500 g batter',
      target: 'dusty rose',
    },
  ],
  [
    'quiero un azul marino para 2 tazas',
    {
      job: 'dose',
      command: 'dose',
      given: { portion: '2 tazas' },
      portion: '2 tazas',
      target: 'azul marino',
    },
  ],
  [
    'what will 1 tsp charcoal in 2 cups look like',
    {
      job: 'preview',
      command: 'preview',
      given: { mix: '1 tsp charcoal', portion: '2 cups' },
      named: ['charcoal'],
      portion: '2 cups',
      powder: '1 tsp',
      judged: '1 tsp',
    },
  ],
  [
    'muéstrame cómo queda media cucharadita de mica verde en 300 g',
    {
      job: 'preview',
      command: 'preview',
      given: { mix: '1/2 cucharadita mica verde', portion: '300 g' },
      named: ['mica verde'],
      portion: '300 g',
      powder: '1/2 cucharadita',
      judged: '1/2 cucharadita',
      is: 'shelf',
    },
  ],
  [
    'what do I wet titanium dioxide with',
    { job: 'wet', command: 'dose', given: { colourant: 'titanium dioxide' }, named: ['titanium dioxide'] },
  ],
  [
    '¿en qué disuelvo la arcilla rosa?',
    { job: 'wet', command: 'dose', given: { colourant: 'arcilla rosa' }, named: ['arcilla rosa'] },
  ],
  [
    'how much oil to disperse 2 tsp of mica',
    { job: 'wet', command: 'dose', given: { colourant: 'mica' }, named: ['mica'], powder: '2 tsp' },
  ],
  [
    'can I mix oxide in water',
    {
      job: 'wet',
      command: 'dose',
      given: { colourant: 'iron oxide' },
      named: ['iron oxide'],
      carrier: 'water',
    },
  ],
  [
    'my soap has white specks, used titanium dioxide',
    {
      job: 'diagnose',
      command: 'diagnose',
      given: { words: 'my soap has white specks, used titanium dioxide' },
      named: ['titanium dioxide'],
      is: 'shelf',
    },
  ],
  [
    'me salió con pintitas blancas',
    { job: 'diagnose', command: 'diagnose', given: { words: 'me salió con pintitas blancas' } },
  ],
  [
    'my green went brown after gel',
    { job: 'diagnose', command: 'diagnose', given: { words: 'my green went brown after gel' }, is: 'shelf' },
  ],
  [
    'the swirl bled into the white',
    { job: 'diagnose', command: 'diagnose', given: { words: 'the swirl bled into the white' } },
  ],
  [
    'why are my bars cracked on top',
    { job: 'diagnose', command: 'diagnose', given: { words: 'why are my bars cracked on top' }, is: 'shelf' },
  ],
  [
    'plan a 1 kg batch with three colours, green, white and blue',
    { job: 'plan', command: 'plan', given: { size: '1 kg batter' }, portion: '1 kg batter' },
  ],
  [
    'planifica un jabón de 900 g de aceites con dos colores',
    { job: 'plan', command: 'plan', given: { size: '900 g oils' }, portion: '900 g oils' },
  ],
  [
    'divide 1 kg batter into 3 colours',
    { job: 'plan', command: 'plan', given: { size: '1 kg batter' }, portion: '1 kg batter' },
  ],
  [
    'half white, a quarter pink and a quarter plain of 800 g',
    { job: 'plan', command: 'plan', given: { size: '800 g' }, portion: '800 g', powder: '800 g' },
  ],
  [
    'what colours go with sage green',
    { job: 'mix', command: 'match', given: { target: 'sage green' }, target: 'sage green' },
  ],
  [
    'compare red oxide and red clay',
    {
      job: 'compare',
      command: 'compare',
      given: { first: 'red oxide', second: 'red clay' },
      named: ['red oxide', 'red clay'],
    },
  ],
  [
    'add 50 g rose clay to my shelf',
    {
      job: 'shelf-add',
      command: 'shelf add',
      given: { item: 'rose clay', amount: '50 g' },
      named: ['rose clay'],
      powder: '50 g',
      fromShelf: true,
      judged: '50 g',
      is: 'shelf',
    },
  ],
  [
    'agregá 30 g de mica cobre a mi estante',
    {
      job: 'shelf-add',
      command: 'shelf add',
      given: { item: 'mica cobre', amount: '30 g' },
      named: ['mica cobre'],
      powder: '30 g',
      fromShelf: true,
      judged: '30 g',
      is: 'shelf',
    },
  ],
  [
    'I used 5 g of the green mica',
    {
      job: 'shelf-use',
      command: 'shelf use',
      given: { item: 'green mica', amount: '5 g' },
      named: ['green mica'],
      powder: '5 g',
      judged: '5 g',
      is: 'shelf',
    },
  ],
  [
    'gasté 10 g de óxido negro',
    {
      job: 'shelf-use',
      command: 'shelf use',
      given: { item: 'oxido negro', amount: '10 g' },
      named: ['oxido negro'],
      powder: '10 g',
      judged: '10 g',
    },
  ],
  [
    'what have I got on my shelf',
    {
      job: 'shelf-show',
      command: 'shelf list',
      given: {},
      fromShelf: true,
      request: { kind: 'shelf' },
      is: 'shelf',
    },
  ],
  [
    'cuánto óxido verde me queda',
    {
      job: 'shelf-show',
      command: 'shelf show',
      given: { item: 'oxido verde' },
      named: ['oxido verde'],
      is: 'shelf',
    },
  ],
  [
    'when does the challenge close',
    { job: 'challenge', command: 'challenge list', given: {}, is: 'contest' },
  ],
  ['cuándo cierra el reto', { job: 'challenge', command: 'challenge list', given: {}, is: 'contest' }],
  ['how do I enter the contest', { job: 'challenge', command: 'challenge list', given: {}, is: 'contest' }],
  ['quién ganó el desafío', { job: 'challenge', command: 'challenge list', given: {} }],
  ['that answer is wrong', { job: 'doubt', command: 'help', given: {} }],
  ['eso no está bien', { job: 'doubt', command: 'help', given: {} }],
  ['hi', { job: 'help', command: 'help', given: {}, talk: 'greets', request: { kind: 'greeting' } }],
  ['hola buenas', { job: 'help', command: 'help', given: {}, talk: 'greets', request: { kind: 'greeting' } }],
  ['gracias, me sirvió mucho', { outside: 'other', request: { kind: 'thanks' }, courtesy: 'welcome' }],
  ["what's the weather", { outside: 'other', talk: 'cannot' }],
  ['cómo hago una vela', { outside: 'candles', elsewhere: 'candles' }],
  ['how much dye for bath bombs', { outside: 'bath-products' }],
  ['can I put mica in melt and pour', { outside: 'melt-and-pour', named: ['mica'] }],
  [
    'hot process soap colours, how much mica',
    { job: 'dose', command: 'dose', given: { colourant: 'mica' }, named: ['mica'], hot: true },
  ],
  [
    'is cinnamon oil ok in soap',
    {
      job: 'survives-lye',
      command: 'colourant check',
      given: { item: 'cinnamon oil' },
      survival: { name: 'cinnamon oil', isLiquid: false, isOfSoap: true },
    },
  ],
  [
    'can I use food colouring',
    {
      job: 'survives-lye',
      command: 'colourant check',
      given: { item: 'food colouring' },
      named: ['food colouring'],
    },
  ],
  [
    'colorante de repostería sirve?',
    {
      job: 'survives-lye',
      command: 'colourant check',
      given: { item: 'colorante alimentario' },
      named: ['colorante alimentario'],
    },
  ],
  [
    'can I use crayons to colour soap',
    { job: 'survives-lye', command: 'colourant check', given: { item: 'crayons' }, named: ['crayons'] },
  ],
  [
    'will acrylic paint work',
    {
      job: 'survives-lye',
      command: 'colourant check',
      given: { ingredients: 'acrylic, paint' },
      named: ['acrylic', 'paint'],
    },
  ],
  ['qué es la traza', { bench: 'what-is-trace', term: 'trace', request: { kind: 'term', term: 'trace' } }],
  [
    'what is gel phase',
    {
      job: 'help',
      command: 'help',
      given: {},
      bench: 'gel-and-colour',
      term: 'gel',
      request: { kind: 'term', term: 'gel' },
    },
  ],
  ['dónde guardo las barras', { bench: 'cure-time' }],
  [
    'can I blend the mica with the stick blender',
    { job: 'wet', command: 'dose', given: { colourant: 'mica' }, named: ['mica'] },
  ],
  [
    'what if I use blue mica and yellow oxide together, will it be green',
    {
      job: 'preview',
      command: 'preview',
      given: { mix: 'blue mica + yellow oxide' },
      named: ['blue mica', 'yellow oxide'],
    },
  ],
  [
    'how do I get a really black soap',
    { job: 'mix', command: 'match', given: { target: 'really black' }, strength: 'full', target: 'black' },
  ],
  [
    'un rosa como el de la mesa pero más claro',
    { job: 'mix', command: 'match', given: { target: 'rosa' }, strength: 'pastel', target: 'rosa' },
  ],
  [
    'a red like a brick but darker',
    { job: 'mix', command: 'match', given: { target: 'red' }, target: 'red' },
  ],
  [
    'mint green not lime',
    { job: 'mix', command: 'match', given: { target: 'mint green' }, target: 'mint green' },
  ],
  [
    'not too dark, navy blue mica for 3 cups',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'blue mica', portion: '3 cups', strength: 'medium' },
      named: ['blue mica'],
      portion: '3 cups',
      strength: 'medium',
    },
  ],
  [
    'rose clay or pink clay, which one for pink',
    {
      job: 'compare',
      command: 'compare',
      given: { first: 'rose clay', second: 'pink clay' },
      named: ['rose clay', 'pink clay'],
      target: 'pink',
    },
  ],
  ['blue?', { job: 'mix', command: 'match', given: { target: 'blue' }, target: 'blue' }],
  [
    'un kilo de masa con 10 g de mica',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'mica', portion: '1 kilo batter' },
      named: ['mica'],
      portion: '1 kilo batter',
      powder: '10 g',
      judged: '10 g',
    },
  ],
  [
    'my son is 5 and wants a blue soap, how much mica for 500 g',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'mica', portion: '500 g' },
      named: ['mica'],
      portion: '500 g',
      powder: '500 g',
      is: 'shelf',
    },
  ],
  [
    'it rained all day. how much charcoal for 600 g oils?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'charcoal', portion: '600 g oils' },
      named: ['charcoal'],
      portion: '600 g oils',
      asked: 'how much charcoal for 600 g oils?',
      asking: 'how much charcoal for 600 g oils?',
      is: 'calm',
    },
  ],
  [
    'ayer vino mi suegra, en fin. ¿cuánta mica para 2 tazas?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'mica', portion: '2 tazas' },
      named: ['mica'],
      portion: '2 tazas',
      past: '¿cuánta mica para 2 tazas?',
      asking: '¿cuánta mica para 2 tazas?',
      is: 'calm shelf',
    },
  ],
  [
    'is ultramarine safe on skin',
    {
      job: 'survives-lye',
      command: 'colourant check',
      given: { item: 'ultramarine' },
      named: ['ultramarine'],
      is: 'skin',
    },
  ],
  [
    'how much woad powder for 500 g',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'woad', portion: '500 g' },
      named: ['woad'],
      portion: '500 g',
      powder: '500 g',
      is: 'calm',
    },
  ],
  [
    'madder root for 400 g oils',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'madder root', portion: '400 g oils' },
      named: ['madder root'],
      portion: '400 g oils',
    },
  ],
  [
    'infuse annatto seeds in 200 g oil',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'annatto seeds', portion: '200 g oils' },
      named: ['annatto seeds'],
      portion: '200 g oils',
    },
  ],
  [
    'cuánto achiote para infusionar',
    { job: 'dose', command: 'dose', given: { colourant: 'achiote' }, named: ['achiote'] },
  ],
  [
    'parsley powder green?',
    { job: 'survives-lye', command: 'colourant check', given: { item: 'parsley' }, named: ['parsley'] },
  ],
  [
    'indigo for 1 kg oils',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'indigo', portion: '1 kg oils' },
      named: ['indigo'],
      portion: '1 kg oils',
    },
  ],
  [
    'alkanet root purple',
    {
      job: 'survives-lye',
      command: 'colourant check',
      given: { item: 'alkanet root' },
      named: ['alkanet root'],
    },
  ],
  ['how to make a gradient with blue', { outside: 'other', target: 'blue', outright: 'layers-how' }],
  [
    'dust mica on top, how much',
    { job: 'dose', command: 'dose', given: { colourant: 'mica' }, named: ['mica'] },
  ],
  [
    '25% of the batter pink, the rest white, 1.2 kg',
    {
      job: 'dose',
      command: 'dose',
      given: { portion: '25% of 1.2 kg' },
      portion: '25% of 1.2 kg',
      powder: '1.2 kg',
      percent: 25,
    },
  ],
  [
    'ultramrine blu for 2 cups',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'ultramarine blue', portion: '2 cups' },
      named: ['ultramarine blue'],
      portion: '2 cups',
      slips: ['ultramrine ultramarine', 'blu blue'],
    },
  ],
  [
    'oxido rogo para 300 g',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'oxido rojo', portion: '300 g' },
      named: ['oxido rojo'],
      portion: '300 g',
      powder: '300 g',
      slips: ['rogo rojo'],
    },
  ],
  [
    'tio2 for 16 oz oils',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'titanium dioxide', portion: '16 oz oils' },
      named: ['titanium dioxide'],
      portion: '16 oz oils',
    },
  ],
  [
    'glitter in soap?',
    { job: 'survives-lye', command: 'colourant check', given: { item: 'glitter' }, named: ['glitter'] },
  ],
  [
    'titanium white 1:3 in oil, how much of the paste for 500 g',
    {
      job: 'wet',
      command: 'dose',
      given: { colourant: 'titanium white', portion: '500 g' },
      named: ['titanium white'],
      portion: '500 g',
      powder: '500 g',
      is: 'calm',
    },
  ],
  [
    'how much mica for three cups, I like it light',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'mica', portion: '3 cups', strength: 'pastel' },
      named: ['mica'],
      portion: '3 cups',
      strength: 'pastel',
    },
  ],
  [
    'medio kilo de aceites con arcilla verde, ¿cuánta?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'arcilla verde', portion: '1/2 kilo oils' },
      named: ['arcilla verde'],
      portion: '1/2 kilo oils',
      is: 'calm',
    },
  ],
  [
    'I want my bars deep purple with ultramarine violet, 3 lb of oils',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'ultramarine violet', portion: '3 lb oils', strength: 'full' },
      named: ['ultramarine violet'],
      portion: '3 lb oils',
      strength: 'full',
      target: 'deep purple',
      is: 'shelf',
    },
  ],
  [
    'dos cucharaditas de cacao por libra de aceites, ¿está bien?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'cacao', strength: '2 cucharaditas ppo' },
      named: ['cacao'],
      powder: '2 cucharaditas',
      strength: '2 cucharaditas ppo',
      judged: '2 cucharaditas',
    },
  ],
  [
    'how much red oxide for a third of 900 g batter',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'red oxide', portion: 'a third of 900 g batter' },
      named: ['red oxide'],
      portion: 'a third of 900 g batter',
      is: 'calm',
    },
  ],
  [
    'the charcoal is for 12 oz of batter only, how many teaspoons',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'charcoal', portion: '12 oz batter' },
      named: ['charcoal'],
      portion: '12 oz batter',
      is: 'calm',
    },
  ],
  [
    'no more than 1 tsp of chromium green for 400 g oils?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'chromium green', portion: '400 g oils' },
      named: ['chromium green'],
      portion: '400 g oils',
      powder: '1 tsp',
      judged: '1 tsp',
    },
  ],
  [
    'does cochineal turn purple in lye',
    { job: 'survives-lye', command: 'colourant check', given: { item: 'cochineal' }, named: ['cochineal'] },
  ],
  [
    '¿se va el color del hibisco con la sosa?',
    { job: 'survives-lye', command: 'colourant check', given: { item: 'hibisco' }, named: ['hibisco'] },
  ],
  [
    'will alkanet stay purple or go blue',
    {
      job: 'survives-lye',
      command: 'colourant check',
      given: { item: 'alkanet' },
      named: ['alkanet'],
      outright: 'colour-families',
    },
  ],
  [
    'is zinc oxide allowed in Spain',
    {
      job: 'law',
      command: 'colourant check',
      given: { item: 'zinc oxide' },
      named: ['zinc oxide'],
      region: 'EU',
    },
  ],
  [
    'se puede vender en México jabón con ultramar',
    {
      job: 'law',
      command: 'colourant check',
      given: { item: 'ultramar' },
      named: ['ultramar'],
      country: 'MX',
    },
  ],
  [
    "what's the difference between kaolin and bentonite",
    {
      job: 'compare',
      command: 'compare',
      given: { first: 'kaolin', second: 'bentonite' },
      named: ['kaolin', 'bentonite'],
    },
  ],
  [
    'I need a grey from charcoal and white for 500 ml',
    {
      job: 'mix',
      command: 'match',
      given: { target: 'grey', portion: '500 ml' },
      named: ['charcoal', 'titanium dioxide'],
      portion: '500 ml',
      target: 'grey',
    },
  ],
  [
    'what mica makes coral',
    { job: 'mix', command: 'match', given: { target: 'coral' }, named: ['mica'], target: 'coral' },
  ],
  [
    'show me 2 g ultramarine pink in 250 g batter',
    {
      job: 'preview',
      command: 'preview',
      given: { mix: '2 g ultramarine pink', portion: '250 g batter' },
      named: ['ultramarine pink'],
      portion: '250 g batter',
      powder: '2 g',
      judged: '2 g',
      is: 'shelf',
    },
  ],
  [
    'how will 5% rose clay look',
    { job: 'preview', command: 'preview', given: { mix: 'rose clay' }, named: ['rose clay'], percent: 5 },
  ],
  [
    'my charcoal soap leaves grey lather',
    {
      job: 'diagnose',
      command: 'diagnose',
      given: { words: 'my charcoal soap leaves grey lather' },
      named: ['charcoal'],
      is: 'shelf',
    },
  ],
  [
    'brown spots after two months, canola',
    { job: 'diagnose', command: 'diagnose', given: { words: 'brown spots after two months, canola' } },
  ],
  [
    'me quedó ceniza blanca arriba',
    { job: 'diagnose', command: 'diagnose', given: { words: 'me quedó ceniza blanca arriba' } },
  ],
  [
    'take 15 g off my titanium dioxide',
    {
      job: 'shelf-use',
      command: 'shelf use',
      given: { item: 'titanium dioxide', amount: '15 g' },
      named: ['titanium dioxide'],
      portion: '15 g',
      powder: '15 g',
      is: 'shelf',
    },
  ],
  [
    'have I got any yellow mica',
    {
      job: 'shelf-show',
      command: 'shelf show',
      given: { item: 'yellow mica' },
      named: ['yellow mica'],
      is: 'shelf',
    },
  ],
  [
    "what's left of the woad",
    { job: 'shelf-show', command: 'shelf show', given: { item: 'woad' }, named: ['woad'], is: 'shelf' },
  ],
  ['cuándo se vota', { job: 'challenge', command: 'challenge list', given: {} }],
  ['is the theme of the round blue', { job: 'challenge', command: 'challenge list', given: {} }],
  [
    "no that's wrong, it was 500 g",
    { job: 'doubt', command: 'help', given: {}, portion: '500 g', powder: '500 g' },
  ],
  ['you said 2 tsp but the label says 1', { job: 'doubt', command: 'help', given: {}, powder: '2 tsp' }],
  [
    'how do I dye wool with madder',
    { outside: 'textiles', named: ['madder'], target: 'wool', elsewhere: 'textiles' },
  ],
  ['tinte para velas de soja', { outside: 'candles', named: ['tinte para velas'], elsewhere: 'candles' }],
  ['can I colour resin with mica', { outside: 'other', named: ['mica'], elsewhere: 'other' }],
  [
    'what does trace mean',
    { job: 'help', command: 'help', given: {}, term: 'trace', request: { kind: 'term', term: 'trace' } },
  ],
  [
    'qué significa acelerar',
    { outside: 'other', term: 'acceleration', request: { kind: 'term', term: 'acceleration' } },
  ],
  [
    'what is ricing',
    { job: 'help', command: 'help', given: {}, term: 'ricing', request: { kind: 'term', term: 'ricing' } },
  ],
  [
    'cómo hago un degradado de azul a blanco',
    {
      job: 'mix',
      command: 'match',
      given: { target: 'degradado de azul a blanco' },
      target: 'degradado de azul a blanco',
      outright: 'layers-how',
      is: 'plainMix',
    },
  ],
  [
    'can I wet mica in alcohol',
    { job: 'wet', command: 'dose', given: { colourant: 'mica' }, named: ['mica', 'alcohol'] },
  ],
  [
    'does the fridge dull my colours',
    {
      job: 'law',
      command: 'colourant check',
      given: { item: 'fridge dull my colors' },
      bench: 'gel-and-colour',
      is: 'shelf',
    },
  ],
  ['who won last month', { job: 'challenge', command: 'challenge list', given: {} }],
  [
    'tres colores que combinen con terracota',
    {
      job: 'mix',
      command: 'match',
      given: { target: 'terracota' },
      named: ['terracota'],
      target: 'terracota',
    },
  ],
  [
    'pretty pink please, 400 g of batter, pink clay',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'pink clay', portion: '400 g batter' },
      named: ['pink clay'],
      portion: '400 g batter',
    },
  ],
  [
    'hey so my nan visited, anyway how much spirulina for 700 g oils',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'spirulina', portion: '700 g oils' },
      named: ['spirulina'],
      portion: '700 g oils',
      past: 'how much spirulina for 700 g oils',
      asked: 'anyway how much spirulina for 700 g oils',
      asking: 'anyway how much spirulina for 700 g oils',
      is: 'calm shelf',
    },
  ],
  [
    'sorry to bother you, ultramarine for 500 g batter?',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'ultramarine', portion: '500 g batter' },
      named: ['ultramarine'],
      portion: '500 g batter',
      courtesy: 'noHarm',
    },
  ],
  [
    'quick one - tio2 for 2 lb oils, ta',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'titanium dioxide', portion: '2 lb oils' },
      named: ['titanium dioxide'],
      portion: '2 lb oils',
      courtesy: 'welcome',
    },
  ],
  [
    'how mch gren mica fr 2 cps',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'green mica', portion: '2 cups' },
      named: ['green mica'],
      portion: '2 cups',
      slips: ['gren green'],
    },
  ],
  [
    'cuanta arsilla rosa pa 400 gr de masa',
    {
      job: 'dose',
      command: 'dose',
      given: { colourant: 'arcilla rosa', portion: '400 gr batter' },
      named: ['arcilla rosa'],
      portion: '400 gr batter',
      slips: ['arsilla arcilla'],
    },
  ],
] as readonly (readonly [question: string, read: object])[])('%s', (question, read) => {
  expect(told(readBy(question))).toMatchObject(read);
});
