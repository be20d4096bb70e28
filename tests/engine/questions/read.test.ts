import { describe, expect, test } from 'vitest';
import { outsideField } from '../../../src/engine/questions/fields/scope.ts';
import { regionIn } from '../../../src/engine/questions/places/regions.ts';
import { readQuestion } from '../../../src/engine/questions/read.ts';

const job = (question: string) => readQuestion(question).readings[0]?.job;

/** What each question asks for, as its words say; pairs differ in little and ask for another thing. */
describe('what is asked is told from what is only mentioned', () => {
  test.each([
    ['do they let you use ultramarine in soap in germany', 'law'],
    ['mis jabones pasan la aduana si llevan oxido verde', 'law'],
    ['i sell at a fair in Ohio, can i use annatto', 'law'],
    ['will beet powder hold up in texas heat', 'survives-lye'],
    ['can i use annatto in my soap', 'survives-lye'],
    ['mi barra salio con rayas, lleva mica y dioxido de titanio', 'diagnose'],
    ['my bars came out with white spots, they have titanium dioxide', 'diagnose'],
    ['mi jabon salio con venitas, lleva mica, dioxido', 'diagnose'],
    ['a la mitad de lo normal pq el ultimo me salio ladrillo, oxido rojo, 800 g de aceites', 'dose'],
    ['my loaf looks like liver, it was pink', 'diagnose'],
    ['what will my bars look like if i use 1 tsp charcoal in 2 cups', 'preview'],
    ['i want a plum 3 cups batter with ultramarine violet how many tsp do i need', 'dose'],
    ['how many tsp of each do i need to make brown from red oxide and black oxide in 2 cups', 'mix'],
    ['need a dusty rose and all i got is red oxide and kaolin', 'mix'],
    ['carrot juice out of the garden will that stay orange', 'survives-lye'],
    ['cuanto oxido verde me qeda', 'shelf-show'],
    ['q te puedo preguntar', 'help'],
    ['what can i even ask you about', 'help'],
    ['how much lie for two pounds of tallow and half a pound of canola', 'lye'],
    ['cuanta soda pa 400 g d oliva y 100 g d coco', 'lye'],
  ])('%s: %s', (question, expected) => expect(job(question)).toBe(expected));
});

test('a wish beside “how many tsp do i need” is no second reading', () => {
  const question = '3 cups of batter and i wanna make it purple w ultramarine violet how many tsp do i need';
  expect(readQuestion(question).readings.map(one => one.job)).toEqual(['dose']);
});

describe('names', () => {
  test.each([
    ['red oxide and brown oxide and charcoal in 2 cups', ['red oxide', 'brown oxide', 'charcoal']],
    ['how much cocoa for brown in 2 cups', ['cocoa']],
    ['will the gel icing color work in lye soap', ['food colouring']],
    ['el colorante vegetal d botecito aguanta la sosa', ['colorante alimentario']],
    ['will food coloring work', ['food colouring']],
  ])('%s', (question, named) => expect(readQuestion(question).facts.named).toEqual(named));

  test('colours of plants are no cake colours', () => {
    expect(readQuestion('que colorantes vegetales aguantan la sosa').facts.named).not.toContain(
      'colorante alimentario',
    );
  });
});

test.each([
  ['titanium dioxide for 500 g of batter, white white', 'full'],
  ['oxido rojo pa 500 g d masa, bien rojo', 'full'],
  ['titanium dioxide for 500 g of batter, properly white', 'full'],
  ['titanium dioxide for 500 g of white batter', undefined],
])('%s: %s', (question, strength) => expect(readQuestion(question).facts.strength).toBe(strength));

test.each([
  ['sell it in france', 'EU'],
  ['venderlo en suecia', 'EU'],
  ['a fair in montana', 'US'],
  ['con los gringos', 'US'],
  // Neither a state nor a country of these tables.
  ['oxido colorado', undefined],
  ['in canada', undefined],
  ['give us a hand', undefined],
  ['allowed in the us', 'US'],
])('%s: %s', (text, region) => expect(regionIn(text)).toBe(region));

describe('what is somebody else’s field', () => {
  test.each([
    ['como derrito la base de glicerina en el microondas', 'melt-and-pour'],
    ['receta de pan de muerto', 'food'],
    ['a soup recipe for tonight', 'food'],
    ['one of my goats is limping', 'other'],
    ['la vaca tiene mastitis', 'other'],
    ["what's wheat going for a bushel", 'business'],
    ['a como esta el maiz', 'business'],
  ])('%s: %s', (text, field) => expect(outsideField(text)).toBe(field));

  test.each([
    'goat milk turns my cold process bars tan',
    'does beet juice from the garden stay pink',
    'mi jabon parece mole, era rosa, ayuda',
    'cuanto cuesta el lote de jabon',
    'beer yeast soap does it stay brown',
    'my vet said tallow soap is fine, how much lye for 500 g tallow',
    'does hibiscus survive, i have a ton of it',
  ])('%s is ours', text => expect(outsideField(text)).toBeUndefined());
});

describe('what a dose is asked with', () => {
  const given = (question: string) => readQuestion(question).readings[0]?.given;

  test.each([
    ['how much ultramarine blue for 2 cups in glycerin', '2 cups', 'glycerin'],
    ['how much gold mica for 2 cups in olive oil', '2 cups', 'olive oil'],
    ['cuánto azul ultramar para 2 tazas en agua', '2 tazas', 'agua'],
    ['how much ultramarine blue for 2 cups, water or oil?', '2 cups', undefined],
    ['how much ultramarine blue for 2 cups of olive oil soap', undefined, undefined],
  ])('%s', (question, portion, carrier) => {
    const told = given(question);
    expect([portion === undefined ? undefined : told?.portion, told?.carrier]).toEqual([portion, carrier]);
  });

  test.each([
    ['how much ultramarine blue for 2 x 3 cups', '6 cups'],
    ['ultramarine blue for 3 × 1.5 cups', '4.5 cups'],
    ['cuánto azul ultramar para 2 x 3 tazas', '6 tazas'],
    ['ultramarine blue for 2 x 1/2 cups', '1 cups'],
  ])('%s is all of them together', (question, portion) => {
    expect(given(question)?.portion).toBe(portion);
  });
});

test('stains are a flaw, and no slip of the thumb for a tea', () => {
  for (const question of ['manchas en mi jabón', 'le salieron manchas blancas al jabón']) {
    const { readings, corrections } = readQuestion(question);
    expect(readings[0]?.job).toBe('diagnose');
    expect(corrections).toEqual([]);
  }
});

test.each([
  ['how much mica for melt and pour base 1 lb', 'melt-and-pour'],
  ['can i use this mica in soy candles', 'candles'],
  ['does turmeric work in cold process or only in melt and pour', undefined],
  ['my sister wants to sell at the market, is carmine allowed in germany', undefined],
])('%s: field %s', (question, field) => expect(readQuestion(question).outside).toBe(field));

describe('what is told goes where the job takes it', () => {
  const told = (question: string) => readQuestion(question);
  const given = (question: string) => told(question).readings[0]?.given;

  test('a rate to the pound is how strong a dose is, and how much of a colour in a pound of oils that is looked at', () => {
    expect(given('how much gold mica for 1 tsp ppo')).toMatchObject({ strength: '1 tsp ppo' });
    const seen = given('gold mica at 1 tsp ppo, what does it look like');
    expect(seen).toMatchObject({ mix: '1 tsp gold mica', portion: '1 lb oils' });
  });
  test('a white that is mixed with is named, and named once', () => {
    const { facts } = told('how do i make pink with red oxide and white');
    expect([facts.named, facts.target?.text]).toEqual([['red oxide', 'titanium dioxide'], 'pink']);
    const twice = told('how do i make pink with red oxide and titanium dioxide white').facts.named;
    expect(twice).toEqual(['red oxide', 'titanium dioxide']);
  });
  test('a plant beside a colourant is asked about too, one alone is the subject', () => {
    const both = told('will hibiscus and rosehip survive lye').facts;
    expect([both.named, both.plants, both.subject]).toEqual([
      ['hibiscus', 'rosehip'],
      ['rosehip'],
      'hibiscus',
    ]);
    const alone = told('will dragon fruit powder survive lye').facts;
    expect([alone.named, alone.plants, alone.subject]).toEqual([
      ['dragon fruit powder'],
      undefined,
      'dragon fruit powder',
    ]);
  });
  test('the law of a colour in a place is ours, whatever the rest is of', () => {
    expect(told('is ultramarine allowed in norway, i sell at a fair').outside).toBeUndefined();
    expect(given('is ultramarine allowed in norway, i sell at a fair')).toMatchObject({
      item: 'ultramarine',
    });
  });
  test('nothing said is nothing asked, of our field and of none other', () => {
    const { readings, outside, elsewhere } = told('');
    expect([readings, outside, elsewhere < 0.1]).toEqual([[], undefined, true]);
  });
  test('two readings at most are kept, the likelier first', () => {
    const { readings } = told('can i colour it with annatto');
    expect(readings.length).toBeLessThanOrEqual(2);
    const [first, second] = readings;
    expect(first!.score).toBeGreaterThanOrEqual(second?.score ?? 0);
  });
});
