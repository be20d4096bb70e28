import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Member } from '../../../src/loopback/interface.ts';
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
    expect(/^## No\. (?:Acid destroys|El ácido destruye)/.test(text)).toBe(refused);
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

describe('what the group has seen', () => {
  const report = (member: Member, result: string, more: Record<string, string | number> = {}) =>
    member.run('/colourant report', { item: 'carmine mica', result, process: 'ambient', ...more });

  test('moves from the chemistry with each report, and tells dose and check', async () => {
    const { member, steward } = room;
    const before = await member.run('/colourant evidence', { item: 'carmine mica' });
    expect(first(before.text)).toMatch(/No reports on .* yet/);
    const told = await report(member, 'held', { weeks: 6, strength: 'pastel', base: 'pale olive' });
    expect(told.ephemeral).toBe(false);
    expect(told.text).toMatch(/1 of 1 here saw .* hold/);
    await report(steward, 'shifted', { note: '**went** lilac' });
    const after = await member.run('/colourant evidence', { item: 'carmine mica' });
    expect(first(after.text)).toMatch(/1 of 2 here saw .* hold/);
    expect(after.text).toContain('held; left to itself; 6 weeks; pastel; in pale olive; yours');
    expect(after.text).toContain('\\*\\*went\\*\\* lilac');
    expect((await member.run('/colourant check', { item: 'carmine mica' })).text).toMatch(/1 of 2 here/);
    expect((await member.run('/dose', { colourant: 'carmine mica', portion: '1 cup' })).text).toMatch(
      /1 of 2/,
    );
  });

  test('a later report takes the place of the earlier one, and its maker can take it back', async () => {
    const { member } = room;
    expect((await report(member, 'faded')).text).toContain('takes the place');
    expect((await member.run('/colourant evidence', { item: 'carmine mica' })).text).toMatch(/0 of 2 here/);
    const gone = await member.run('/colourant withdraw', { item: 'carmine mica' });
    expect(gone.text).toMatch(/report on .* is gone/);
    expect((await member.run('/colourant evidence', { item: 'carmine mica' })).text).toMatch(/0 of 1 here/);
    expect((await member.run('/colourant withdraw', { item: 'carmine mica' })).text).toMatch(
      /nothing to take back/,
    );
  });

  test('is turned page by page, and one colour opened from the list', async () => {
    const { member } = room;
    const names = [
      'gold mica',
      'ultramarine blue',
      'kaolin',
      'cocoa',
      'neon pink',
      'nettle',
      'charcoal',
      'indigo',
      'madder',
    ];
    for (const item of names) await member.run('/colourant report', { item, result: 'held', process: 'gel' });
    const page = await member.run('/colourant evidence');
    expect(page.text).toContain('Page 1 of 2');
    const more = page.controls.find(({ label }) => label === 'More');
    const second = await member.press(page, more?.customId ?? '');
    expect(second.text).toContain('Page 2 of 2');
    const menu = second.controls.find(({ kind }) => kind === 'text-menu');
    const opened = await member.choose(second, menu?.customId ?? '', ['ultramarine-blue']);
    expect(first(opened.text)).toMatch(/1 of 1 here saw ultramarine blue hold/);
  });

  test('a metal cannot be reported, a strength must be readable', async () => {
    const { member } = room;
    const metal = await member.run('/colourant report', {
      item: 'Mica, Bronze Powder',
      result: 'held',
      process: 'gel',
    });
    expect(metal.text).toMatch(/Never put metal/);
    const odd = await report(member, 'held', { strength: 'purple' });
    expect(odd.text).toMatch(/purple/);
    expect((await member.run('/colourant evidence', { item: 'carmine mica' })).text).toMatch(/of 1 here/);
  });

  test('of a photo only the number is kept', async () => {
    const photo = { name: 'bar.png', bytes: new Uint8Array([137, 80, 78, 71]) };
    const { text } = await room.member.run('/colourant report', {
      item: 'rose clay',
      result: 'held',
      process: 'other',
      photo,
    });
    expect(text).toContain('not the picture');
    expect((await room.member.run('/colourant evidence', { item: 'rose clay' })).text).toContain(
      'with photo',
    );
  });

  test('stays in the group until stewards of both groups share', async () => {
    const { host, steward, member } = room;
    const other = host.addGuild({ name: 'Tuesday soapers', channels: ['bench'] });
    const guest = other.addMember({ name: 'Ines', permissions: 1n << 5n });
    await guest.run('/colourant report', { item: 'madder', result: 'faded', process: 'gel' });
    const look = async () => (await member.run('/colourant evidence', { item: 'madder' })).text;
    expect(await look()).not.toContain('other groups');
    expect((await member.run('/colourant share', { on: true })).text).toMatch(/steward/);
    await steward.run('/colourant share', { on: true });
    expect(await look()).not.toContain('other groups');
    await guest.run('/colourant share', { on: true });
    expect(await look()).toContain('In other groups that share: 0 of 1 saw it hold');
    await steward.run('/colourant share', { on: false });
    expect(await look()).not.toContain('other groups');
  });
});

describe('a label on the shelf', () => {
  test('warns when the jar is added and each time it is dosed', async () => {
    const { member } = room;
    const added = await member.run('/shelf add', {
      item: 'Dusk',
      amount: '20 g',
      ingredients: 'Mica (CI 77019), Manganese Violet (CI 77742)',
    });
    expect(added.text).toMatch(/mica/);
    expect(added.text).toMatch(/Dusk goes beige in raw soap/);
    const dose = await member.run('/dose', { colourant: 'Dusk', portion: '1 cup' });
    expect(dose.text).toContain('Dusk goes beige in raw soap');
    expect(dose.text.match(/in lye|in raw soap/g)).toHaveLength(1);
    expect((await member.run('/shelf show', { item: 'Dusk' })).text).toContain('Manganese Violet');
    expect(first((await member.run('/colourant check', { item: 'dusk' })).text)).toMatch(
      /Dusk: lost in raw soap/,
    );
  });

  test('does not warn of what the catalogue fears when its own list holds', async () => {
    const { member } = room;
    await member.run('/shelf add', {
      item: 'Plum',
      ingredients: 'Mica, Iron Oxides',
      colourant: 'carmine mica',
    });
    const { text } = await member.run('/dose', { colourant: 'Plum', portion: '1 cup' });
    expect(text).not.toMatch(/in lye:/);
  });

  test('warns in a plan as well', async () => {
    const { text, files } = await room.member.run('/plan', {
      oils: 'olive 100%',
      size: '1000 g oils',
      portions: '2 cups Dusk; rest plain',
    });
    const whole = files.find(({ name }) => name === 'answer.txt');
    const all = whole ? new TextDecoder().decode(whole.bytes()) : text;
    expect(all).toContain('Dusk goes beige in raw soap');
    expect(all).not.toMatch(/“Dusk” .*in lye/);
  });

  test('can be told later', async () => {
    const { member } = room;
    await member.run('/shelf add', { item: 'Zzz 12' });
    const told = await member.run('/shelf describe', { item: 'Zzz 12', ingredients: 'Mica, Iron Oxides' });
    expect(told.text).toMatch(/Holds in raw soap/);
    expect((await member.run('/dose', { colourant: 'Zzz 12', portion: '1 cup' })).text).toContain(
      '1 tsp Zzz 12',
    );
  });

  test('with metal in it is not let onto a shelf, nor told of an item there', async () => {
    const { member } = room;
    const list = { ingredients: 'Mica. +/- Aluminum Powder' };
    expect((await member.run('/shelf add', { item: 'Glimmer', ...list })).text).toMatch(/Never put metal/);
    expect((await member.run('/shelf describe', { item: 'Zzz 12', ...list })).text).toMatch(
      /Never put metal/,
    );
    expect((await member.run('/shelf list')).text).not.toContain('Glimmer');
  });

  test('settles what a name leaves open', async () => {
    const { member } = room;
    expect((await member.run('/shelf add', { item: 'Copper' })).text).toMatch(/metal itself/);
    const { text } = await member.run('/shelf add', { item: 'Copper', ingredients: 'Mica, Iron Oxides' });
    expect(text).toMatch(/on your shelf/);
  });
});

describe('/colourant label', () => {
  const label = (of: string, market: string) => room.member.run('/colourant label', { of, market });

  test.each([
    ['us', 'Ultramarines, Mica, Titanium Dioxide, Iron Oxides'],
    ['eu', 'CI 77007, Mica, CI 77891, CI 77491, CI 77492, CI 77499'],
  ])('for the %s: %s', async (market, line) => {
    expect(first((await label('ultramarine blue, gold mica', market)).text)).toBe(`## ${line}`);
  });

  test('takes jars and ingredient lists as well', async () => {
    expect(first((await label('Dusk, Carmine (CI 75470)', 'eu')).text)).toBe('## Mica, CI 77742, CI 75470');
  });

  test('weighs the colours of a kept recipe', async () => {
    const plan = {
      oils: 'olive 100%',
      size: '1000 g oils',
      portions: '2 cups gold mica; 1 cup ultramarine blue pastel; rest Dusk',
    };
    await room.member.run('/plan', { ...plan, 'save-as': 'Sunset' });
    const { text } = await room.member.run('/colourant label', { recipe: 'sunset', market: 'eu' });
    expect(first(text)).toMatch(/^## Mica, .*CI 77742.*CI 77007$/);
    expect(text).toContain('In order of weight');
  });

  test('leaves out what it does not know, and says so', async () => {
    const { text } = await label('gold mica, Xyzzyol', 'us');
    expect(first(text)).not.toContain('Xyzzyol');
    expect(text).toMatch(/Not on the line.*Xyzzyol/);
  });

  test.each([
    ['a metal', 'Mica, Bronze Powder', /Never put metal/],
    ['a word nobody knows', 'qwerty', /don't know/],
  ])('refuses %s', async (_, of, sentence) => {
    expect((await label(of, 'us')).text).toMatch(sentence);
  });
});
