import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;

beforeAll(async () => {
  room = await openRoom({ whole: true });
});

afterAll(() => room[Symbol.asyncDispose]());

const check = (ingredients: string) => room.member.run('/colourant check', { ingredients });
const first = (text: string) => text.split('\n')[0];

describe('/colourant check on the chat platform', () => {
  test('says first what lye does and toward which colour, then dose and carriers, then the law', async () => {
    const { text, ephemeral } = await check(
      'Mica (CI 77019), Titanium Dioxide (CI 77891), Ferric Ferrocyanide (CI 77510)',
    );
    expect(ephemeral).toBe(false);
    expect(first(text)).toBe('## Lost in raw soap: it goes rusty brown.');
    const [dose, law, sections] = ['Full colour', 'May it be used', '73.2299'].map(part =>
      text.indexOf(part),
    );
    expect(dose).toBeGreaterThan(0);
    expect(law).toBeGreaterThan(dose ?? 0);
    expect(sections).toBeGreaterThan(law ?? 0);
    expect(text).not.toMatch(/\bsafe\b/i);
  });

  // Acid frees hydrogen sulfide from ultramarine: safety data sheets of C.I. 77007 (ECHA, "contact with acids").
  test.each([
    [
      'en',
      'CI 77007, citric acid, sodium bicarbonate',
      /^## No\. Acid destroys ultramarine and frees poisonous/,
    ],
    ['en', 'ultramarine violet, mica, vinegar', /^## No\. Acid destroys ultramarine/],
    ['es', 'azul ultramar, zumo de limón', /^## No\. El ácido destruye el ultramar y libera sulfuro/],
  ] as const)(
    'an acid beside an ultramarine is refused first (%s: %s)',
    async (language, ingredients, said) => {
      room.member.grant({ locale: language === 'es' ? 'es-ES' : 'en-US' });
      const { text } = await check(ingredients);
      room.member.grant({ locale: 'en-US' });
      expect(text).toMatch(said);
      expect(text).not.toMatch(/CI 77007\)?[^\n]*: holds? in raw soap/);
    },
  );

  test.each([
    ['can I mix ultramarine with citric acid?', true],
    ['ultramarine and vinegar in the same bar?', true],
    ['can I add lemon juice to my ultramarine soap', true],
    ['does ultramarine survive acid?', true],
    ['¿puedo mezclar ultramar con ácido cítrico?', true],
    ['¿puedo echar vinagre a mi jabón con azul ultramar?', true],
    ['is ultramarine ok with stearic acid?', false],
    ['is ultramarine blue stable in soap?', false],
  ])('the acid that a question names is not dropped: %s', async (question, refused) => {
    const { text } = await room.member.run('/ask', { question });
    expect(/^## No[.:] (?:Acid|El ácido|acid|ácido) .*(?:ultramar|sulf)/i.test(text)).toBe(refused);
  });

  test.each([
    'CI 77891, hidróxido de aluminio',
    'mica, aluminum hydroxide (CI 77002)',
    'Mica, Titanium Dioxide, Aluminum Hydroxide/Alumina',
    'aluminium  hydroxyde; mica',
  ])('a compound of aluminium is no metal: %s', async list => {
    const { text } = await check(list);
    expect(text.split('\n')[0]).toBe('## Holds in raw soap.');
  });

  test('an aluminium pot with lye in it still is', async () => {
    const { text } = await room.member.run('/ask', {
      question: 'my aluminium pot is fizzing with the lye in it',
    });
    expect(text).toMatch(/hydrogen/);
  });

  // Directive 95/45/EC is the one of purity criteria for food colours.
  test('a law text and its directive are told whole', async () => {
    const { text } = await check('CI 77891');
    expect(text).toMatch(/Directive 95\/45\/EC \(E 171\)/);
    expect(text).toMatch(/aerodynamic diameter/);
    expect((await check('CI 42090')).text).not.toContain('sset');
  });

  test('every ultramarine is to be kept from acid, in whatever powder', async () => {
    for (const list of ['Mica, Ultramarines', 'CI 77007', 'ultramarine pink', 'Ultramarines, CI 77891'])
      expect((await check(list)).text).toContain('Keep it from acid');
    expect((await check('Mica, CI 77891')).text).not.toContain('Keep it from acid');
  });

  test.each([
    ['a metal, whatever a listing permits', 'Mica, Aluminum Powder (CI 77000)', /Never let this meet lye/],
    [
      'a metal that may be in it',
      'Mica, Titanium Dioxide. May contain (+/-): Bronze Powder',
      /Never let this/,
    ],
    [
      'what it only may contain',
      'Mica, May contain: Manganese Violet',
      /Holds in raw soap, unless it contains Manganese Violet\./,
    ],
    ['a neon by its resin', 'Polyester-3, Red 28', /Depends|Bleeds/],
    [
      'glitter without metal',
      'Glitter (Polyethylene Terephthalate, Polyurethane-33)',
      /Polyurethane-33: holds/,
    ],
    ['a list over several lines', 'Mica\nCI 77891\nUltramarines', /Holds/],
    [
      'an ingredient it does not know',
      'Mica, Titanium Dioxide, Xyzzyol',
      /don’t recognise|don't recognise: Xyzzyol/,
    ],
    ['a bare name', 'ultramarine blue', /Ultramarine blue: holds/],
    ['a Spanish list', 'Mica, dióxido de titanio, violeta de manganeso', /beige|Lost/],
  ])('reads %s', async (_, list, sentence) => {
    const { text } = await check(list);
    expect(text).toMatch(sentence);
    expect(text.length).toBeLessThanOrEqual(4000);
  });

  test('gives no dose for what must not meet lye', async () => {
    const { text } = await check('Mica, Copper Powder (CI 77400)');
    expect(text).not.toContain('Full colour');
    expect(text).toContain('No dose');
  });

  test.each([
    ['nothing', {}, /one thing to check/],
    ['two things', { ingredients: 'Mica', item: 'gold mica' }, /one thing to check/],
    ['blanks', { ingredients: '   ' }, /fill in|Paste/],
    ['a smile', { ingredients: '🧼🎨' }, /don't know/],
    ['smiles in a list', { ingredients: '🧼, 🎨' }, /recognise nothing/],
    ['an unknown item', { item: 'Unicorn breath' }, /don't know a colourant “Unicorn breath”/],
  ])('meets %s with one sentence', async (_, options, sentence) => {
    const { text, ephemeral } = await room.member.run('/colourant check', options as Record<string, string>);
    expect(ephemeral).toBe(true);
    expect(text).toMatch(sentence);
    expect(text.length).toBeLessThan(400);
  });

  test('five thousand characters do not fit, and the platform says so before we are asked', async () => {
    await expect(check('Mica, '.repeat(834))).rejects.toThrow(/4000|length|long/i);
  });

  test('the longest list that fits is answered', async () => {
    const { text } = await check('Mica, Titanium Dioxide, '.repeat(166));
    expect(first(text)).toBe('## Holds in raw soap.');
  });

  test('is in Spanish for a Spanish client', async () => {
    room.member.grant({ locale: 'es-ES' });
    const { text } = await check('Mica, Ferric Ferrocyanide');
    room.member.grant({ locale: 'en-US' });
    expect(first(text)).toBe('## Se pierde en jabón crudo: se vuelve marrón óxido.');
  });
});
