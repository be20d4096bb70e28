import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { FindingId } from '../../../src/engine/flaws/findings.ts';
import { readWords } from '../../../src/engine/flaws/reading/read.ts';
import type { MessageView } from '../../../src/loopback/index.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { openRoom } from '../../loopback/room.ts';
import { barPhoto, bomb } from './photos.ts';

let room: Awaited<ReturnType<typeof openRoom>>;

beforeAll(async () => {
  room = await openRoom({ whole: true, host: { attachmentSizeLimit: 30 * 1024 * 1024 } });
});

afterAll(() => room[Symbol.asyncDispose]());

const words = (text: string) => room.member.run('/diagnose', { words: text });

const photo = (bytes: Uint8Array, more: Record<string, string> = {}) =>
  room.member.run('/diagnose', { photo: { name: 'bar.jpg', bytes }, ...more });

const first = (message: MessageView) => message.text.split('\n')[0];
const question = (message: MessageView) => /Question (\d) of 5: (.*\?)/.exec(message.text);

describe('/diagnose from words', () => {
  test('says the cause first, in sight of the group, then what to do and by whose word', async () => {
    const answer = await words('white powder on top that wipes off');
    expect(answer.ephemeral).toBe(false);
    expect(first(answer)).toMatch(/^## \d\d %: soda ash$/);
    expect(answer.text).toMatch(/This batch[\s\S]*Next time[\s\S]*For: .*\(your words\)/);
  });

  test('liquid in the pockets of a crumbly bar warns of lye before anything else', async () => {
    // Blamed on its white pigment, with the lye in the small print: liquid in pockets may be lye (common practice, no source).
    const answer = await words('el jabón quedó blanco, se desmorona y tiene bolsitas de líquido');
    expect(first(answer)).toMatch(/sosa libre, \d\d % seguro\. Guantes puestos\./u);
    const english = await words('my soap turned out white, crumbly and has little pockets of liquid');
    expect(english.text).toMatch(
      /^## Don’t use it\. \d\d %: two things at once, lye pockets.*\n+.*free lye \(\d\d %\).*gloves on\./iu,
    );
  });

  test('is answered within one request', async () => {
    const before = room.host.requests.length;
    await words('orange spots and it smells like crayons');
    expect(room.host.requests.length - before).toBe(1);
  });

  test('two flaws at once are told as two', async () => {
    const answer = await words(
      'white powder on top that wipes off, blue specks all over, used dry ultramarine',
    );
    expect(first(answer)).toMatch(/two things at once/);
    expect(answer.text).toMatch(/\nSoda ash: .*\nUndispersed pigment: /);
  });

  test('what burns is first aid first, and nobody is told to cut or use it', async () => {
    const answer = await words('it stings my hands and the bar is crumbly with white crunchy bits');
    expect(first(answer)).toMatch(/^## If it burns or stings: .*running water/);
    expect(answer.text).toMatch(/free lye[\s\S]*This batch\*\*\n- Do not use/);
    expect(answer.text).not.toMatch(/thin wire|Grate|use it as it is/);
    expect(answer.text).toContain('Do not use this soap');
  });

  test('free lye that is only possible is said with its chance before any advice', async () => {
    const answer = await words('white spots in my bar');
    expect(first(answer)).toMatch(/Don’t use it yet/);
    expect(answer.text).toMatch(/may hold free lye \(\d\d %\)/);
    expect(answer.text).not.toMatch(/\bsafe\b/);
  });

  test('a bar that crumbles is not cut or grated without a word of the lye it may hold', async () => {
    for (const said of ['my salt bar crumbled when I cut it', 'my salt loaf crumbled at the cut, 50% salt'])
      expect((await words(said)).text).toMatch(/crumbles can hold too much lye: gloves and goggles/);
    expect((await words('orange spots on old bars and a rancid smell')).text).not.toMatch(/crumbles can/);
  });

  test('a metal powder is refused, with first aid where it burnt somebody', async () => {
    expect((await words('I put copper powder in my soap and it went green')).text).toMatch(/Never put metal/);
    const hurt = await words('I put copper powder in my soap and it burns my hands');
    expect(hurt.ephemeral).toBe(true);
    // Whoever hurts is told what to do first, and nothing of the bar.
    expect(first(hurt)).toMatch(/running water now|stop using this soap/);
  });

  test('numbers in the words come back beside the remedy', async () => {
    const answer = await words('white part is chalky and crumbles, 2 tsp titanium dioxide per cup');
    expect(first(answer)).toMatch(/too much white pigment/);
    expect(answer.text).toMatch(/you had 2 tsp a cup\. Full is 1\/2 tsp, the most 1 tsp/);
  });

  test('words about nothing known get no verdict, and things to look at', async () => {
    const answer = await words('hello everyone, lovely weather');
    expect(first(answer)).toMatch(/can’t tell yet/);
    expect(answer.text).toMatch(/Look at these first/);
    expect(question(answer)?.[1]).toBe('1');
  });

  test('neither words nor photo: opens a form, which answers like the command', async () => {
    const form = await room.member.openForm('/diagnose');
    const answer = await room.member.submit(form, { words: 'white powder on top that wipes off' });
    expect(first(answer)).toMatch(/soda ash/);
  });

  test('what was ticked there counts like words, alone or beside them', async () => {
    const form = await room.member.openForm('/diagnose');
    expect(form.fields.map(({ customId, kind }) => [customId, kind])[0]).toEqual(['seen', 'some-of']);
    const answer = await room.member.submit(form, { seen: ['powdery-film'] });
    expect(first(answer)).toMatch(/soda ash/);
    const both = await room.member.submit(await room.member.openForm('/diagnose'), {
      seen: ['crackle-network'],
      words: 'only in the white part, 2 tsp titanium dioxide per cup',
    });
    expect(first(both)).toMatch(/white/);
    const nothing = await room.member.submit(await room.member.openForm('/diagnose'), {});
    expect(nothing.text).toMatch(/Tell me what you see/);
  });

  test.each(['en', 'es'] as const)('every box there is read as what it stands for (%s)', async language => {
    room.member.grant({ locale: language === 'en' ? 'en-US' : 'es-ES' });
    const form = await room.member.openForm('/diagnose');
    const { findings } = wordsIn(language).flaws;
    for (const { label, value } of form.fields[0]?.options ?? []) {
      expect(label).toBe(findings[value as FindingId]);
      const read = readWords(label).evidence.find(({ finding }) => finding === value);
      expect([label, read?.probability]).toEqual([label, expect.closeTo(0.98, 1)]);
    }
    expect(form.fields[0]?.options).toHaveLength(10);
    room.member.grant({ locale: 'en-US' });
  });

  test('is in Spanish for a Spanish client, buttons included', async () => {
    room.member.grant({ locale: 'es-ES' });
    const answer = await words('manchas blancas en la barra');
    room.member.grant({ locale: 'en-US' });
    expect(answer.text).toMatch(/sosa libre[\s\S]*Pregunta 1 de 5: ¿/);
    expect(answer.controls.map(({ label }) => label).slice(0, 3)).toEqual(['Sí', 'No', 'No lo sé']);
  });
});

describe('/diagnose from a photo', () => {
  test('marks what it sees, and says what came from the picture', async () => {
    const answer = await photo(await barPhoto('crackle-network'), { words: 'it got hot, the white part' });
    expect(first(answer)).toMatch(/white-pigment crackle/);
    expect(answer.text).toMatch(/crackled net of fine lines \(picture\); .*\(your words\)/);
    const [marked] = answer.files;
    expect(marked?.contentType).toBe('image/png');
    const { width, height } = await sharp(marked?.bytes()).metadata();
    expect(Math.min(width, height)).toBeGreaterThan(400);
    expect(JSON.stringify(answer.components)).toMatch(
      /numbered outlines: 1 a network of fine veins: seen, \d+ %/,
    );
  });

  test('shows the colours of the bar where its colour is what went wrong, and nowhere else', async () => {
    const faded = await photo(await barPhoto(), {
      words: 'the purple faded away after two months on a sunny window sill',
    });
    expect(faded.text).toMatch(/\*\*On the photo: [a-z ]+:\*\* #[\da-f]{6}, give or take \d+/);
    const ash = await photo(await barPhoto(), { words: 'white powdery soda ash on top' });
    expect(ash.text).not.toMatch(/On the photo: /);
  });

  test('a clean bar is no verdict', async () => {
    const answer = await photo(await barPhoto());
    expect(first(answer)).toMatch(/can’t tell yet/);
    expect(answer.text).toMatch(/I see the bar, and none of the flaws that I was taught/);
    expect(answer.text.match(/learned to see flaws from drawn bars, not from photographs/g)).toHaveLength(1);
  });

  test('no bar in view: the words are answered without it; alone it is a problem', async () => {
    const blank = await sharp({ create: { width: 640, height: 480, channels: 3, background: '#8a8a8a' } })
      .jpeg()
      .toBuffer();
    expect((await photo(blank)).text).toMatch(/^I see no soap here/);
    const answer = await photo(blank, { words: 'orange spots and it smells like crayons' });
    expect(first(answer)).toMatch(/rancidity/);
    expect(answer.text).toMatch(/I see no soap in the picture/);
  });

  test.each([
    [
      'a text called .jpg',
      async () => new TextEncoder().encode('not a picture'),
      /can’t open that as a photo/,
    ],
    ['a bomb', async () => bomb(), /claims 400 megapixels/],
    ['a cut-off picture', async () => (await barPhoto()).slice(0, 9000), /damaged or cut short/],
  ])('%s is refused in one sentence', async (_, make, sentence) => {
    const answer = await photo(await make());
    expect(answer.text).toMatch(sentence);
    expect(answer.text.length).toBeLessThan(200);
  });

  test('a file over 25 MB is never fetched', async () => {
    const answer = await photo(new Uint8Array(26 * 1024 * 1024));
    expect(answer.text).toMatch(/26 MB.*up to 25 MB/);
  });

  test('the menu of a message diagnoses its picture with its words, for who asked alone', async () => {
    const posted = await room.steward.postMessage('why is it like this? it got hot, the white part', [
      { name: 'bar.jpg', bytes: await barPhoto('crackle-network') },
    ]);
    const answer = await room.member.menu('Diagnose this picture', posted);
    expect(answer.ephemeral).toBe(true);
    expect(first(answer)).toMatch(/white-pigment crackle/);
    // A forwarded message says and shows nothing of its own.
    const forwarded = await room.member.menu('Diagnose this picture', room.steward.forward(posted));
    expect(forwarded.text).toBe(answer.text);
    const bare = await room.steward.postMessage('no picture here');
    expect((await room.member.menu('Diagnose this picture', bare)).text).toMatch(/no picture/);
  });
});

describe('a kept recipe', () => {
  test('is evidence, and its numbers come with the remedies', async () => {
    const { member } = room;
    await member.run('/plan', {
      oils: 'olive 50%, coconut 30%, rice bran 20%',
      size: '1000 g oils',
      water: '28% lye',
      portions: '500 ml titanium dioxide 2 tsp per cup; rest plain',
      process: 'insulated',
    });
    await member.run('/recipe save', { 'save-as': 'Too white' });
    const answer = await member.run('/diagnose', {
      words: 'a net of fine cracks in the white part',
      recipe: 'too white',
    });
    expect(first(answer)).toMatch(/white-pigment crackle/);
    expect(answer.text).toMatch(/much white pigment[^\n]*\(your plan\)/);
    expect(answer.text).toMatch(/you had 2 tsp a cup\. Full is 1\/2 tsp, the most 1 tsp/);
    expect(answer.text).toMatch(/Your plan: \d+ g of water, 28 % lye\. \d+ g makes 33 %/);
    expect(answer.text).toMatch(/estimated: core about/);
  });

  test('that nobody keeps is refused by name', async () => {
    const answer = await room.member.run('/diagnose', { words: 'ash', recipe: 'nope' });
    expect(answer.text).toMatch(/no recipe “nope”/);
  });
});

test('no fault of ours on the way', () => expect(room.faults).toEqual([]));
