import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readLexically, toldIn } from '../../../../src/engine/hazards/emergencies/read.ts';
import { scenesIn } from '../../../../src/engine/hazards/emergencies/scenes.ts';

type Written = { readonly text: string; readonly id?: string };
const read = (text: string) => readLexically(text, scenesIn(text));
const setOf = (name: string) =>
  JSON.parse(readFileSync(join(import.meta.dirname, `emergencies-${name}.json`), 'utf8')) as Record<
    string,
    readonly Written[]
  >;

const idsIn = (text: string) => read(text).map(({ id, inDoubt }) => (inDoubt ? `${id}?` : id));

// Whose words they are and what explains them: common first aid, from memory.
test.each([
  ['what an animal swallowed nobody did', 'my dog licked the raw batter', ['animal-exposed']],
  [
    'but one’s own eye is not one’s own eye the dog’s',
    'the dog swallowed lye and I got lye in my eye',
    ['animal-exposed', 'lye-eye'],
  ],
  [
    'the gas of rotten eggs makes eyes run and people cough',
    'rotten egg smell from the ultramarine and vinegar, my eyes water and I cough',
    ['hydrogen-sulfide'],
  ],
  [
    'and stands before the eyes that it stings',
    'rotten eggs smell, really strong in my shed from the sulphur batch, and my eyes sting',
    ['hydrogen-sulfide', 'lye-eye'],
  ],
  [
    'in Spanish too',
    'Mezclé azul ultramar con vinagre, salió un olor a huevo podrido y me arden los ojos',
    ['hydrogen-sulfide', 'lye-eye'],
  ],
  [
    'and is what was breathed',
    'rotten egg smell after the acid, I breathed it and cough',
    ['hydrogen-sulfide'],
  ],
  [
    'a throat that burns of fumes has swallowed nothing',
    'I breathed the lye fumes and my throat burns',
    ['fumes-inhaled'],
  ],
  [
    'lye that eats a pot is in no mouth',
    'what do I do with lye that is eating its aluminium pot',
    ['hydrogen-from-metal'],
  ],
  [
    'raw soap that was tasted beside it is told',
    'the lye eats its aluminium pot and my son swallowed lye water',
    ['lye-swallowed', 'hydrogen-from-metal'],
  ],
  [
    'skin that burns after washing with a cured bar reacts',
    'I washed with my cured bar and my hands burn and itch in a rash',
    ['skin-reaction'],
  ],
  [
    'raw batter beside it burns',
    'I used the finished soap and got a rash, the raw batter burned my arm',
    ['lye-skin', 'skin-reaction'],
  ],
  ['metal on a cured bar gasses no more', 'the aluminium pot left grey marks on the cured bar', []],
  [
    'metal that foams over is metal',
    'the lye in the aluminium pot is foaming over the rim',
    ['hydrogen-from-metal'],
  ],
  [
    'and without metal a jug that foams over erupts',
    'the lye jug is foaming over the rim and boiling over',
    ['lye-eruption'],
  ],
  ['a look at a finished bar hurts nobody', 'finished bar looks like it has burned skin', []],
  ['who cannot see is in doubt', 'can’t see after the lye splash', ['lye-eye?']],
  ['a dog on a label is none', 'a label with a dog on it, lye soap, price 5', []],
  ['nor is one of soap', 'soap in the shape of a dog, the lye was at 40', []],
  [
    'what is worst comes first',
    'lye splashed my arm and my eye stings, coughing from the fumes',
    ['lye-eye', 'fumes-inhaled', 'lye-skin'],
  ],
  [
    'lips that swell are no mouth with lye in it',
    'se me hincharon los labios después de lavarme la cara con mi jabón de propóleo',
    ['skin-reaction'],
  ],
  ['what is likened to long ago is now', 'lye burns my hand now like years ago', ['lye-skin']],
  ['what is denied is not told', 'the dog did not lick any lye', []],
  ['nor of an eye', 'no lye in my eye', []],
  ['who cannot breathe denies nothing', 'no puedo respirar con los vapores de la sosa', ['fumes-inhaled']],
])('%s: %s', (_why, text, ids) => {
  expect(idsIn(text)).toEqual(ids);
});

// Hydrogen sulfide stings eyes and throats by itself: NIOSH Pocket Guide, hydrogen sulfide.
test.each([
  'rotten eggs smell, really strong in my shed from the sulphur batch, and my eyes sting',
  'Mezclé azul ultramar con vinagre, salió un olor a huevo podrido y me arden los ojos',
])('what patterns tell of the gas leaves out the eyes that it stings: %s', text => {
  const found = scenesIn(text);
  expect(found.scenes.has('eye')).toBe(true);
  expect(toldIn(text, found).map(({ id }) => id)).toEqual(['hydrogen-sulfide']);
});

test('what the words were read from is quoted as it was written, up to 120 signs', () => {
  for (const { text } of setOf('third').emergencies!)
    for (const { from } of read(text)) {
      expect(from.length).toBeGreaterThan(0);
      expect(text).toContain(from.replace(/…$/u, ''));
      expect(from.length).toBeLessThanOrEqual(120);
    }
  expect(read('hello! lye splashed in my eye, thank you')[0]?.from).toBe('lye splashed in my eye');
});

/*
 * What was learned from other texts mends most of what the lexicon misreads, and so hides what is wrong with the lexicon. These figures
 * are of the lexicon alone, over what other hands wrote: how often the right emergency is not first, how many others are told beside it,
 * and how many are told where nobody is hurt. Each may only go down. Whoever changes words or weights and sees one rise by a few looks
 * at those texts, and writes the figure down anew where the new reading is meant.
 */
test.each([
  ['own', { wrong: 2, beside: 29, alarms: 19 }],
  ['reviewed', { wrong: 3, beside: 3, alarms: 6 }],
  ['third', { wrong: 4, beside: 20, alarms: 4 }],
  ['fourth', { wrong: 32, beside: 27, alarms: 3 }],
  ['fifth', { wrong: 127, beside: 44, alarms: 7 }],
])('the lexicon alone reads the texts of %s no worse than it did', (name, most) => {
  const set = setOf(name);
  const hurt = [...(set.emergencies ?? []), ...(set['first-aid-questions'] ?? [])].map(({ text, id }) => ({
    id,
    told: read(text),
  }));
  const seen = {
    wrong: hurt.filter(({ id, told }) => told[0]?.id !== id).length,
    beside: hurt.flatMap(({ id, told }) => told.filter(one => one.id !== id)).length,
    alarms: set['no-alarm']!.flatMap(({ text }) => read(text)).length,
  };
  console.info(`${name}: ${JSON.stringify(seen)}`);
  expect(seen.wrong).toBeLessThanOrEqual(most.wrong);
  expect(seen.beside).toBeLessThanOrEqual(most.beside);
  expect(seen.alarms).toBeLessThanOrEqual(most.alarms);
});
