import { expect, test } from 'vitest';
import type { EmergencyId } from '../../../../src/engine/hazards/index.ts';
import type { Before, Talk } from '../../../../src/engine/questions/leaning/before.ts';
import { ofLyeBefore } from '../../../../src/engine/questions/leaning/behind/after-lye.ts';
import { dangerAfter, isOfSoundSoap } from '../../../../src/engine/questions/leaning/danger/danger.ts';
import type { Danger } from '../../../../src/engine/questions/leaning/danger/danger-kind.ts';
import { asksToGoOn } from '../../../../src/engine/questions/leaning/danger/go-on.ts';
import { askedInDanger } from '../../../../src/engine/questions/leaning/danger/turns.ts';

/* What is asked of soap or lye that may hurt, later in a talk; that lye in the bar burns skin however long it cures is common practice. */

const matter = (id: string): Before => ({ kind: 'matter', id }) as Before;
const hurt = (...ids: readonly EmergencyId[]): Before => ({ kind: 'emergency', ids });
const command = (name: string, burns?: true): Before => ({
  kind: 'command',
  job: undefined,
  command: name,
  given: {},
  ...(burns && { burns }),
});

test.each<readonly [earlier: Danger | undefined, last: Before, now: Danger | undefined]>([
  [undefined, matter('oil-forgotten'), 'lye-heavy'],
  [undefined, matter('cloudy-lye'), 'lye-water'],
  [undefined, matter('metal-in-lye'), 'lye-metal'],
  [undefined, matter('glass-jug'), undefined],
  [undefined, hurt('lye-eruption'), 'lye-water'],
  [undefined, hurt('lye-skin', 'hydrogen-from-metal'), 'lye-metal'],
  [undefined, hurt('lye-skin'), undefined],
  [undefined, command('diagnose', true), 'lye-heavy'],
  [undefined, command('diagnose'), undefined],
  // It stays until something else is plainly asked; a flaw and a matter are of the same.
  ['lye-heavy', matter('glass-jug'), 'lye-heavy'],
  ['lye-heavy', { kind: 'technique', id: 'no-lumps' }, 'lye-heavy'],
  ['lye-heavy', command('diagnose'), 'lye-heavy'],
  ['lye-heavy', command('dose'), undefined],
  ['lye-heavy', { kind: 'contest' }, undefined],
  ['lye-heavy', matter('cloudy-lye'), 'lye-water'],
  // Lye that met metal has done so, whatever lies at the bottom.
  ['lye-metal', matter('cloudy-lye'), 'lye-metal'],
  ['lye-metal', matter('oil-forgotten'), 'lye-heavy'],
  ['lye-water', matter('metal-in-lye'), 'lye-metal'],
  ['lye-water', hurt('lye-skin'), 'lye-water'],
])('%s, then %j: %s', (earlier, last, now) => {
  expect(dangerAfter(earlier, last)).toBe(now);
});
test('what is said of sound soap is told of none that burns', () => {
  expect(['cure-time', 'selling', 'glass-jug'].map(isOfSoundSoap)).toEqual([true, true, false]);
});

test.each<readonly [turn: string, asked: string | undefined]>([
  ['can I bin it', 'bad-batch-away'],
  ['la puedo tirar a la basura', 'bad-batch-away'],
  ['how will i know its safe', 'proved'],
  ['cómo lo compruebo', 'proved'],
  ['will the pink stay', 'colour'],
  ['does the swirl hold', 'colour'],
  ['se queda el color', 'colour'],
  ['can I wash floors with it', 'lye-heavy-laundry'],
  ['lavar la ropa', 'lye-heavy-laundry'],
  ['can I just let it cure longer', 'cure-lye-heavy'],
  ['lo dejo curar más', 'cure-lye-heavy'],
  ['how do I fix it', 'rebatch-lye-heavy'],
  ['cómo lo arreglo', 'rebatch-lye-heavy'],
  ['can I use it anyway', 'used'],
  ['lo puedo regalar', 'used'],
  // A colour that is only there, a dose, another batch.
  ['pretty swirl', undefined],
  ['how much mica for 500 g', undefined],
  ['can I use my other batch', undefined],
])('of soap with too much lye “%s”', (turn, asked) => {
  const told = askedInDanger(turn, 'lye-heavy');
  expect(told?.kind === 'matter' ? told.id : told?.kind).toBe(asked);
});
test.each<readonly [turn: string, water: string | undefined, metal: string | undefined]>([
  ['there is a crust', 'undissolved-lye', 'metal-in-lye'],
  ['granitos', 'undissolved-lye', 'metal-in-lye'],
  ['it is cloudy', 'cloudy-lye', 'metal-in-lye'],
  ['turbia', 'cloudy-lye', 'metal-in-lye'],
  ['down the drain', 'disposal', 'metal-in-lye'],
  ['its a tin jug', 'metal', 'metal'],
  ['el jarro es de aluminio', 'metal', 'metal'],
  // Steel holds lye; batter and colours are no lye water.
  ['stainless metal jug', undefined, undefined],
  ['mica at the bottom', undefined, undefined],
  ['smells nice', undefined, undefined],
])('of lye water that is out of hand “%s”', (turn, water, metal) => {
  const told = (['lye-water', 'lye-metal'] as const).map(danger => askedInDanger(turn, danger));
  expect(told.map(one => (one?.kind === 'matter' ? one.id : one?.kind))).toEqual([water, metal]);
});

test.each<readonly [turn: string, asks: boolean]>([
  ['can i carry on', true],
  ['can i carry on, it no longer burns', true],
  ['puedo seguir, ya no me arde', true],
  ['can i carry on, it burns', false],
  ['puedo seguir, me arde', false],
  ['it no longer burns', false],
])('after lye on skin “%s” asks to go on: %s', (turn, asks) => {
  expect(asksToGoOn(turn, ['lye-skin'])).toBe(asks);
  // What got into an eye, or was swallowed, is not over.
  expect(asksToGoOn(turn, ['lye-eyes' as EmergencyId])).toBe(false);
  expect(asksToGoOn(turn, ['lye-skin', 'lye-swallowed' as EmergencyId])).toBe(false);
});

const talk = (last: Before, words?: string): Talk => ({ last, ran: undefined, words });
const OF_LYE_WATER = talk({ kind: 'technique', id: 'mica-settles' }, 'why is my lye cloudy');
const OF_MICA = talk({ kind: 'technique', id: 'mica-settles' }, 'why does mica sink');
test.each<
  readonly [turn: string, behind: Talk | undefined, topic: string | undefined, named: readonly string[]]
>([
  ['grains at the bottom', talk(matter('cloudy-lye')), 'undissolved-lye', []],
  ['hay granitos', talk(matter('cloudy-lye')), 'undissolved-lye', []],
  ['grains at the bottom', talk(matter('glass-jug')), 'glass-jug', []],
  ['how long', talk(matter('cloudy-lye')), 'cloudy-lye', []],
  // It names a thing of its own.
  ['how long', talk(matter('cloudy-lye')), undefined, ['charcoal']],
  ['my mica sank', talk(matter('cloudy-lye')), undefined, []],
  ['y el aceite', talk(matter('cloudy-lye')), undefined, []],
  // Lye water that was answered as a matter of colour.
  ['grains at the bottom', OF_LYE_WATER, 'unsure', []],
  ['se fue al fondo', OF_LYE_WATER, 'unsure', []],
  ['it sank in the oil', OF_LYE_WATER, undefined, []],
  ['how long', OF_LYE_WATER, undefined, []],
  ['grains at the bottom', OF_MICA, undefined, []],
  ['grains at the bottom', talk({ kind: 'technique', id: 'mica-settles' }), undefined, []],
  ['grains at the bottom', undefined, undefined, []],
  ['how long', talk({ kind: 'contest' }), undefined, []],
])('“%s” behind %j', (turn, behind, topic, named) => {
  const told = ofLyeBefore(turn, { named }, behind);
  expect(told?.kind === 'goes-on' ? told.topic : told?.kind).toBe(topic);
});
