import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { CAUSES } from '../../../src/engine/flaws/causes.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import type { FindingId } from '../../../src/engine/flaws/findings.ts';
import type { RemedyId } from '../../../src/engine/flaws/remedies.ts';
import { EXAMPLES } from './examples.ts';

const first = (words: string) => diagnose(words).causes[0]?.id;
const found = (words: string, id: FindingId) => diagnose(words).findings.find(item => item.id === id);

describe('a diagnosis from words', () => {
  test('ranks causes, says why, and what to do now and next time', () => {
    const { causes, findings } = diagnose(
      'little orange dots on my 6 month old bars and they smell like crayons, no zap',
    );
    const [top] = causes;
    expect(top?.id).toBe('rancidity');
    expect(top?.because.map(item => item.finding)).toContain('orange-spots');
    expect(top?.because.every(item => item.weight > 0)).toBe(true);
    expect(top?.thisBatch.length).toBeGreaterThan(0);
    expect(top?.nextBatch.length).toBeGreaterThan(0);
    expect(findings.find(item => item.id === 'orange-spots')?.from).toBe('orange dots');
    expect(findings.find(item => item.id === 'zaps')?.present).toBe(false);
    for (const [i, cause] of causes.entries())
      expect(cause.probability).toBeLessThanOrEqual(causes[i - 1]?.probability ?? 1);
  });

  test('lye in unknown excess is not to be used', () => {
    const [top] = diagnose('it zaps everywhere and the strip reads 13, I misweighed the lye').causes;
    expect(top?.id).toBe('lye-excess');
    expect(top?.doNotUse).toBe(true);
    expect(top?.thisBatch[0]).toBe('do-not-use');
  });

  test.each([
    ['my hands are burning after I washed with it', 'skin'],
    ['it stings my skin', 'skin'],
    ['me arde la piel', 'skin'],
    ['some of the batter got in my eye and it burns', 'eye'],
  ] as const)('%s: first aid before any cause', (words, kind) => {
    expect(diagnose(words).firstAid).toBe(kind);
  });

  test.each(['no burning at all, just white powder on top', 'orange spots on the bars', 'it does not sting'])(
    '%s: no first aid',
    words => {
      expect(diagnose(words).firstAid).toBeUndefined();
    },
  );

  test.each(['', 'hello everyone, lovely weather', '🧼🧼🧼', 'how do I label my soap for a fair?'])(
    'words about nothing known (%j) get no verdict and three things to look at',
    words => {
      const { cantTell, lookAt, causes } = diagnose(words);
      expect(cantTell).toBe('nothing-known');
      expect(lookAt).toHaveLength(3);
      expect(causes[0]?.probability ?? 0).toBeLessThan(0.2);
    },
  );

  test('what was done, with no flaw seen, carries no verdict', () => {
    expect(diagnose('I scented it with vanilla and kept it by the window').cantTell).toBeDefined();
  });

  test('a finding taken back no longer counts', () => {
    const words = 'orange spots and a stale smell';
    const kept = diagnose(words).causes.find(item => item.id === 'rancidity')!.probability;
    const without = diagnose(words, { withdrawn: ['orange-spots'] });
    expect(without.findings.map(item => item.id)).not.toContain('orange-spots');
    expect(without.causes.find(item => item.id === 'rancidity')!.probability).toBeLessThan(kept);
  });

  test('a picture and an answer join the words as evidence', () => {
    const photo = { finding: 'powdery-film', probability: 0.9, via: 'photo', from: 'photo' } as const;
    const { causes, findings } = diagnose('it looks odd', { evidence: [photo] });
    expect(causes[0]?.id).toBe('soda-ash');
    expect(findings.find(item => item.via === 'photo')?.id).toBe('powdery-film');
  });

  test('words beyond 5,000 characters are left out and said to be', () => {
    const long = `orange spots. ${'blah '.repeat(2000)} white powder on top`;
    expect(diagnose(long).cut).toBe(true);
    expect(diagnose(long).findings.map(item => item.id)).not.toContain('powdery-film');
  });

  property.prop([fc.string({ unit: 'binary', maxLength: 400 })])('nothing typed makes it throw', words => {
    const { causes } = diagnose(words);
    for (const { probability } of causes) {
      expect(probability).toBeGreaterThanOrEqual(0);
      expect(probability).toBeLessThanOrEqual(1);
    }
  });
});

describe('soap that may hold free lye', () => {
  const HANDS_ON: readonly RemedyId[] = [
    'use-as-it-is',
    'only-looks',
    'cut-warm-or-thin-wire',
    'confetti-or-rebatch',
    'clean-cut-face',
    'level-and-cap-crack',
    'wipe-and-dry',
    'use-soon-and-apart',
  ];

  test.each([
    'it stings my hands and the bar is crumbly with white crunchy bits',
    'my hands tingle after washing and it has white powder on top',
    'itchy skin after the shower, the bar has orange spots',
    'me arde la piel y la barra se desmorona',
    'it zaps in spots, the white part is crackled',
    'some slices have hard crunchy white bits',
    'the pH strip reads 13, otherwise it is only a bit crumbly',
  ])('is kept from hands whichever cause comes first: %s', words => {
    const { doNotUse, causes } = diagnose(words);
    expect(doNotUse).toBe(true);
    for (const { thisBatch } of causes) {
      expect(thisBatch.slice(0, 3)).toEqual(['do-not-use', 'keep-gloves-on', 'no-guessed-repair']);
      expect(thisBatch.filter(id => HANDS_ON.includes(id))).toEqual([]);
    }
  });

  test('no description of a lye cause among the examples goes without the warning', () => {
    const lye = EXAMPLES.filter(({ cause }) => CAUSES[cause].doNotUse);
    expect(lye.length).toBeGreaterThan(50);
    expect(lye.filter(({ text }) => !diagnose(text).doNotUse)).toEqual([]);
  });

  test('and few of the others cry wolf', () => {
    const others = EXAMPLES.filter(({ cause }) => !CAUSES[cause].doNotUse);
    const warned = others.filter(({ text }) => diagnose(text).doNotUse);
    expect(warned.length / others.length).toBeLessThan(0.02);
  });

  test('batter that split and hurt nobody may be blended together again; batter that burnt somebody not', () => {
    const split = 'the batter split in the pot, oil on top of the batter, it never came together';
    expect(diagnose(split).causes[0]?.thisBatch).toContain('stick-blend-back-together');
    const burnt = diagnose(`${split}, and it burns my hands`);
    expect(burnt.causes.flatMap(({ thisBatch }) => thisBatch)).not.toContain('stick-blend-back-together');
  });

  test.each([
    ['lye splashed on my arm', 'skin'],
    ['I got raw batter on my hand', 'skin'],
    ['a drop went in my eye', 'eye'],
    ['me cayó sosa en la mano', 'skin'],
  ] as const)('%s: first aid though nobody says it burns', (words, where) => {
    expect(diagnose(words).firstAid).toBe(where);
  });

  test.each(['the bars are drying on the rack', 'hot pink mica on top', 'white powder on top'])(
    '%s: no alarm',
    words => {
      expect(diagnose(words).firstAid).toBeUndefined();
      expect(diagnose(words).doNotUse).toBe(false);
    },
  );
});

describe('two causes at once', () => {
  test('undispersed pigment under soda ash is told as both', () => {
    const { together } = diagnose(
      'white powder on top and blue specks all over, used dry ultramarine, the powder wipes off',
    );
    expect(new Set(together?.causes)).toEqual(new Set(['soda-ash', 'undispersed-pigment']));
    expect(together?.probability).toBeGreaterThan(0.5);
  });

  test('one plain flaw is told alone', () => {
    expect(diagnose('orange spots and it smells like crayons').together).toBeUndefined();
  });
});

describe('metal in the words', () => {
  test('metal powder that burnt somebody is refused with the place that hurts', () => {
    expect(() => diagnose('I put copper powder in my soap and it burns my hands')).toThrow(
      expect.objectContaining({ id: 'metal-and-hurt', values: expect.objectContaining({ where: 'skin' }) }),
    );
  });

  test.each([
    'I put copper powder in my soap and it went green',
    'used aluminium flakes for sparkle, now it fizzes',
    'le puse polvo de bronce al jabón',
  ])('a metal powder in soap is refused: %s', words => {
    expect(() => diagnose(words)).toThrow(expect.objectContaining({ id: 'metal-never-in-lye' }));
  });

  test.each([
    'grey marks where it touched the aluminium pan',
    'copper mica on top, oily puddles',
    'I used zinc oxide powder and it is chalky',
    'there is no copper powder in it, only orange spots',
  ])('a pan, a mica or an oxide is not: %s', words => {
    expect(diagnose(words).findings.length).toBeGreaterThan(0);
  });

  test.each([
    'gold dust comes off on your fingers every time you pick it up',
    'silver dust rubs off on everything',
    'el polvo de oro se sale en los dedos',
  ])('the dust of a mica that comes off is no metal: %s', words => {
    expect(first(words)).toBe('loose-mica');
  });

  test.each(['I put gold dust in and it comes off on my fingers', 'copper powder comes off on my hands'])(
    'what went in, and a powder, are refused all the same: %s',
    words => {
      expect(() => diagnose(words)).toThrow(expect.objectContaining({ id: 'metal-never-in-lye' }));
    },
  );

  test('a metal pan with a stain is told as metal', () => {
    expect(first('grey marks where it touched the aluminium pan')).toBe('reactive-metal');
  });
});

describe('a flaw by its look', () => {
  test.each([
    ['the top half came off clean in my hand like a lid', 'layers-apart'],
    ['las dos capas se separaron al cortar, como tapa', 'layers-apart'],
    ['casi ni se nota el color, apenas un tinte', 'underdosed-colour'],
    ['the middle is dark and glossy and both ends are dull', 'partial-gel'],
    ['half the loaf deep and shiny, the ends dull', 'partial-gel'],
  ])('%s: %s', (words, cause) => expect(first(words)).toBe(cause));

  test('“quedado” is no burn', () => {
    expect(diagnose('se me han quedado marrones').findings.map(({ id }) => id)).not.toContain('zaps');
  });
});

describe('the same story told another way', () => {
  const flips: readonly [string, string, FindingId][] = [
    ['There are orange spots.', 'There are no orange spots.', 'orange-spots'],
    ['It crumbles when I cut it.', "It doesn't crumble when I cut it.", 'brittle-crumbly'],
    ['It zaps.', 'no zap', 'zaps'],
    ['It has a white film on top.', 'It has no white film on top.', 'powdery-film'],
    ['The top cracked.', 'The top did not crack.', 'crack-on-top'],
    ['Tiene manchas naranjas.', 'No tiene manchas naranjas.', 'orange-spots'],
    ['It is soft.', 'It is not soft.', 'soft'],
    ['The bars are sweating.', 'The bars are not sweating.', 'water-beads'],
    ['It stains the washcloth.', "It doesn't stain the washcloth.", 'coloured-lather'],
    ['The batter seized.', 'The batter never seized.', 'thick-fast'],
    ['The lather is pink.', "The lather isn't pink.", 'coloured-lather'],
    ['Hay ceniza encima', 'sin ceniza encima', 'named-ash'],
  ];
  test.each(flips)('%s / %s', (there, notThere, id) => {
    expect(found(there, id)?.present).toBe(true);
    expect(found(notThere, id)?.present).toBe(false);
  });

  test('a denial ends where the next thought begins', () => {
    expect(found('not brittle but greasy', 'greasy')?.present).toBe(true);
    expect(found('not brittle but greasy', 'brittle-crumbly')?.present).toBe(false);
    expect(found('no zap, orange spots everywhere', 'orange-spots')?.present).toBe(true);
    expect(found("I don't know why it crumbles", 'brittle-crumbly')?.present).toBe(true);
    expect(found('not only soft, also greasy', 'soft')?.present).toBe(true);
  });

  test('a denial reaches every member of its list', () => {
    const words = 'there is no ash, zap or crumbling';
    for (const id of ['named-ash', 'zaps', 'brittle-crumbly'] as const)
      expect(found(words, id)?.present).toBe(false);
  });

  test('what was hoped for is not what was seen', () => {
    expect(found('supposed to be brown but it is white', 'turned-brown')).toBeUndefined();
  });

  test.each([
    ['orange spots and it smells rancid', 'ornage spots and it smels rancd'],
    ['translucent veins all through the white soap', 'translucnet viens all thru the white soap'],
    ['white powder on top that wipes off', 'white powdr on top that wipes off'],
    ['the batter seized when I added the fragrance', 'the batter siezed when I aded the fragrence'],
    ['my soap is sweating, beads of water', 'my soap is swaeting, beeds of water'],
    ['cracked along the top, it overheated', 'craked along the top, it overheatd'],
    ['the dye migrated into the white part', 'the dye migratd into the white part'],
  ])('a slip of the thumb changes nothing: %s', (right, slipped) => {
    expect(first(slipped)).toBe(first(right));
  });

  test.each([
    [
      'white part crumbles, 2 tsp titanium dioxide per cup',
      'white part crumbles, 10 ml titanium dioxide per 240 ml',
    ],
    ['brown and hot, soaped at 140 F', 'brown and hot, soaped at 60 C'],
    ['pale blue, 1/8 tsp mica in 2 cups', 'pale blue, 0.6 ml mica in 475 ml'],
  ])('another unit changes nothing: %s', (us, metric) => {
    const ranked = (words: string) =>
      diagnose(words)
        .causes.slice(0, 2)
        .map(item => item.id);
    expect(ranked(metric)).toEqual(ranked(us));
  });

  test.each([
    ['orange spots', 'it smells like crayons', 'the oils were old'],
    ['there are white specks', 'they feel waxy', 'I used a lot of palm oil'],
    ['it zaps', 'the bar is crumbly', 'I think I misweighed the lye'],
  ])('the order of the sentences does not matter: %s', (a, b, c) => {
    const orders = [`${a}. ${b}. ${c}.`, `${c}. ${a}. ${b}.`, `${b}. ${c}. ${a}.`];
    expect(new Set(orders.map(first)).size).toBe(1);
  });

  test('both spellings are read alike', () => {
    const us = 'the color bled, gray mold, discolored';
    const uk = 'the colour bled, grey mould, discoloured';
    expect(diagnose(us).findings.map(item => item.id)).toEqual(diagnose(uk).findings.map(item => item.id));
  });
});

describe('how makers say it', () => {
  test('what came instead of what was hoped for is what is there', () => {
    expect(found('supposed to be navy its baby blue', 'too-pale')?.present).toBe(true);
  });

  test('a phrase that holds its own denial is no denial', () => {
    expect(found("the gold on top won't stay on, mica", 'mica-rubs-off')?.present).toBe(true);
  });
});

describe('numbers in the words', () => {
  test('a share of the oils is held against the dose of its kind', () => {
    expect(found('5% red oxide', 'much-colour')?.present).toBe(true);
    expect(found('0.02% red oxide', 'little-colour')?.present).toBe(true);
    expect(found('0.6 % red oxide', 'much-colour')).toBeUndefined();
  });

  test('white pigment is held against its ceiling', () => {
    expect(found('2 tsp of titanium dioxide per cup', 'much-white-pigment')?.present).toBe(true);
    expect(found('1/2 tsp of titanium dioxide per cup', 'much-white-pigment')?.present).toBe(false);
    expect(found('four teaspoons of TD in one and a half cups', 'much-white-pigment')?.present).toBe(true);
    expect(found('20 ml de dióxido de titanio por taza', 'much-white-pigment')?.present).toBe(true);
  });

  test('a tablespoon a cup of oxide is too much, a pinch of a spoon too little', () => {
    expect(found('1 Tbsp red oxide per cup', 'much-colour')?.present).toBe(true);
    expect(found('1/32 tsp red oxide per cup', 'little-colour')?.present).toBe(true);
    expect(found('1/4 tsp red oxide per cup', 'much-colour')?.present).toBe(false);
  });

  test('superfat, water, hard fats, heat, acidity and vanillin are read', () => {
    expect(found('superfat was 0%', 'low-superfat')?.present).toBe(true);
    expect(found('38% water', 'much-water')?.present).toBe(true);
    expect(found('80% coconut', 'hard-oils')?.present).toBe(true);
    expect(found('soaped at 140F', 'ran-hot')?.present).toBe(true);
    expect(found('pH 13', 'high-ph')?.present).toBe(true);
    expect(found('pH 9', 'high-ph')?.present).toBe(false);
    expect(found('the fragrance has 8% vanillin', 'fragrance-vanilla')?.present).toBe(true);
    expect(found('the fragrance has 0% vanillin', 'fragrance-vanilla')?.present).toBe(false);
  });
});
