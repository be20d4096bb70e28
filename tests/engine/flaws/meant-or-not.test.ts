import { describe, expect, test } from 'vitest';
import { colourChanges } from '../../../src/engine/flaws/reading/colour-change.ts';
import { mentions } from '../../../src/engine/flaws/reading/concepts.ts';
import { refuseMetalPowder } from '../../../src/engine/flaws/reading/metal-powder.ts';
import { polarity } from '../../../src/engine/flaws/reading/polarity.ts';
import { readWords } from '../../../src/engine/flaws/reading/read.ts';
import { tokenise } from '../../../src/engine/text/tokens.ts';
import { refused } from '../quantities/refused.ts';

function readingOf(text: string) {
  const tokens = tokenise(text);
  const found = mentions(tokens);
  return { tokens, found, reading: polarity(tokens, found) };
}

/** How each word is meant: `-` denied, `~` hoped for, `?` guessed. */
function meant(text: string): string {
  const { tokens, reading } = readingOf(text);
  const mark = { yes: '', no: '-', unreal: '~' } as const;
  return tokens
    .flatMap(({ text: word, kind }, at) =>
      kind === 'word' ? [`${mark[reading.standing[at]!]}${word}${reading.guessed[at] ? '?' : ''}`] : [],
    )
    .join(' ');
}

describe('how words are meant', () => {
  test.each([
    ['no ash on it', 'no -ash -on -it'],
    // A comma ends a denial, but not in a list that "or" closes.
    ['no ash, spots or cracks', 'no -ash -spots -or -cracks'],
    ['no ash, spots and cracks', 'no -ash spots and cracks'],
    ['no ash, spots. or cracks', 'no -ash spots or cracks'],
    ['no ash. spots', 'no -ash spots'],
    ['no ash; spots', 'no -ash spots'],
    ['no ash/spots', 'no -ash -spots'],
    ['no ash and spots', 'no -ash and spots'],
    ['never any ash but spots', 'never -any -ash but spots'],
    [
      'no one two three four five six seven eight nine',
      'no -one -two -three -four -five -six -seven eight nine',
    ],
    // "Ash: none" denies what stood before it, up to four words back and no further than its sentence.
    ['zap: none', '-zap none'],
    ['ash none', '-ash none'],
    ['itch on my arms nope', '-itch on my arms nope'],
    ['itch on both of my arms nope', 'itch on both of my arms nope'],
    ['itch. nope', 'itch nope'],
    ['the ph is normal', 'the -ph is normal'],
    ['spots nope', 'spots nope'],
    ['not sure why it is brown', 'not sure why? it? is? brown?'],
    ['supposed to be navy, its baby blue', 'supposed to ~be ~navy its baby blue'],
    ['supposed to be navy came out grey', 'supposed to ~be ~navy came out grey'],
    ['could it be ash', 'could it be ash?'],
    ['maybe ash. it is white', 'maybe ash? it is white'],
    ['ash?', 'ash?'],
    ['is it brown, ash?', 'is it brown? ash?'],
    ['white all over. ash?', 'white all over ash?'],
  ])('%s', (text, marked) => {
    expect(meant(text)).toBe(marked);
  });

  test('a sentence, a comma and a new thought lie between what stands apart', () => {
    const between = (text: string) => {
      const { ruler } = readingOf(text).reading;
      return ruler.at(-1)! - ruler[0]!;
    };
    expect(between('ash spots')).toBe(1);
    // Small words count half.
    expect(between('ash on spots')).toBe(1.5);
    expect(between('ash, spots')).toBe(2);
    expect(between('ash. spots')).toBe(5);
    expect(between('ash but spots')).toBe(3);
  });
});

describe('a colour that went', () => {
  const changed = (text: string) => {
    const { found, reading, tokens } = readingOf(text);
    return colourChanges(found, reading).map(({ from, to }) =>
      tokens
        .slice(from, to)
        .map(token => token.text)
        .join(' '),
    );
  };
  test.each([
    ['my purple went grey', ['purple went grey']],
    ['my purple turned into a muddy brown', ['purple turned into a muddy brown']],
    ['the blue turned pink', ['blue turned pink']],
    ['supposed to be purple, it turned brown', ['purple , it turned brown']],
    // A yellow base alone explains these.
    ['the blue turned green', []],
    ['the pink turned peach', []],
    ['the red turned red', []],
    ['my purple went', []],
    ['went grey', []],
    ['grey went my purple', []],
    ['my purple did not turn grey', []],
    ['no purple turned grey', []],
    ['purple turned not grey', []],
    ['my purple soap that I made with my sister last year in the summer turned grey', []],
  ])('%s', (text, quotes) => {
    expect(changed(text)).toEqual(quotes);
  });
});

// Lye and aluminium, zinc or copper alloys make hydrogen and caustic foam: NIOSH Pocket Guide, sodium hydroxide.
describe('a metal powder that went into soap', () => {
  const told = (text: string, hurts?: 'skin' | 'eye') => refused(() => refuseMetalPowder(text, hurts));
  test.each([
    'I put copper powder in my soap',
    'polvo de cobre en mi jabón',
    'aluminium flakes in the batter',
    'hojas de oro',
    'I added gold dust and it comes off',
    'zinc dust comes off',
    'gold leaf comes off',
    'gold dust in it. comes off',
  ])('is refused: %s', text => {
    expect(told(text)).toBe('metal-never-in-lye');
    expect(told(text, 'skin')).toBe('metal-and-hurt');
  });
  test.each([
    'gold dust comes off on my fingers',
    'gold dust on the top rubs off',
    'copper dust that just falls off',
    'el polvo de oro se me queda en los dedos',
    'an aluminium pan',
    'no copper powder in it',
    'copper, powder',
    'polvo cobre',
    'dust of mica',
  ])('and what is none is not: %s', text => {
    expect(told(text)).toBe('answered');
    expect(told(text, 'eye')).toBe('answered');
  });
});

describe('what a description says, one entry a finding', () => {
  const probabilityOf = (text: string, finding: string) =>
    readWords(text).evidence.find(one => one.finding === finding)?.probability;
  test('what is said for sure is believed more than a guess, a guess more than a denial', () => {
    const sure = probabilityOf('orange spots on it', 'orange-spots')!;
    const guess = probabilityOf('maybe orange spots on it', 'orange-spots')!;
    const denied = probabilityOf('no orange spots on it', 'orange-spots')!;
    expect(sure).toBeGreaterThan(guess);
    expect(guess).toBeGreaterThan(0.5);
    expect(denied).toBeLessThan(0.5);
  });
  test('a contradiction is believed less, and more than silence', () => {
    const both = probabilityOf('orange spots on it. my sister sees no orange spots', 'orange-spots')!;
    expect(both).toBeLessThan(probabilityOf('orange spots on it', 'orange-spots')!);
    expect(both).toBeGreaterThan(0.5);
  });
  test('a number outweighs the words around it, and the last number holds', () => {
    expect(probabilityOf('very low superfat, superfat 12%', 'high-superfat')).toBeGreaterThan(0.9);
    expect(probabilityOf('superfat 1%. no, superfat 5%', 'low-superfat')).toBeLessThan(0.1);
  });
  test('a colour that took weeks to change did not change in lye', () => {
    expect(probabilityOf('my purple went grey', 'colour-changed-in-lye')).toBeGreaterThan(0.5);
    expect(probabilityOf('my purple went grey after six weeks', 'colour-changed-in-lye')).toBeUndefined();
  });
  test('is quoted as it was written, in at most 80 signs', () => {
    const { evidence } = readWords('Hello. ORANGE   spots on it!');
    expect(evidence.find(({ finding }) => finding === 'orange-spots')?.from).toBe('ORANGE spots');
    for (const { from } of readWords('white powder that wipes off with a damp cloth whenever I try it')
      .evidence)
      expect(from.length).toBeLessThanOrEqual(80);
  });
  test('rates are told once, though they speak of two findings', () => {
    expect(readWords('mica 2 tsp in 1 cup').rates).toHaveLength(1);
    expect(readWords('mica 2 tsp').rates).toEqual([]);
  });
  test('what is longer than a message is cut', () => {
    expect(readWords('ash '.repeat(1249)).cut).toBe(false);
    expect(readWords('ash '.repeat(1251)).cut).toBe(true);
  });
});
