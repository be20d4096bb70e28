import { expect, test } from 'vitest';
import { putInPlace } from '../../../../src/engine/questions/leaning/carried.ts';
import { sameLyeMatter, techniqueInContext } from '../../../../src/engine/questions/leaning/in-context.ts';
import { spokenOfIn, thingOf } from '../../../../src/engine/questions/leaning/subject/things.ts';

/* What stands for something that was spoken of before (grammar of both languages). */
test.each<readonly [turn: string, whole: string | undefined]>([
  ['how do I stop it next time', 'how do I stop soda ash next time'],
  ['its all lumpy', 'soda ash is all lumpy'],
  ['that’s gone grey', 'soda ash is gone grey'],
  ['they’re fading', 'soda ash are fading'],
  ['they are soft', 'soda ash are soft'],
  ['can I use that', 'can I use soda ash'],
  ['do they bleed', 'do soda ash bleed'],
  ['cómo lo evito', 'cómo evito soda ash'],
  ['¿puedo evitarlo?', '¿puedo evitar soda ash?'],
  ['cómo los arreglo la próxima', 'cómo arreglo soda ash la próxima'],
  ['qué hago con esto', 'qué hago con soda ash'],
  ['no lo tiro', 'no tiro soda ash'],
  ['lo tiro', 'tiro soda ash'],
  // It says what it is of.
  ['that is gone', undefined],
  ['what about that way', undefined],
  ['rose clay', undefined],
])('“%s” of soda ash', (turn, whole) => {
  expect(putInPlace(turn, 'soda ash')).toBe(whole);
});

test.each<readonly [given: Readonly<Record<string, string>>, thing: string | undefined]>([
  [{ colourant: 'mica', item: 'kaolin' }, 'mica'],
  [{ item: 'kaolin' }, 'kaolin'],
  [{ mix: '2 tsp blue mica' }, 'blue mica'],
  [{ mix: 'blue mica' }, 'blue mica'],
  // Of two in a mix neither is meant.
  [{ mix: 'mica + kaolin' }, undefined],
  [{}, undefined],
])('a command with %j is about %s', (given, thing) => {
  expect(thingOf({ given })).toBe(thing);
  const last = { kind: 'command', job: undefined, command: 'dose', given } as const;
  expect(spokenOfIn({ last, ran: undefined })).toBe(thing);
  expect(spokenOfIn({ last: { kind: 'contest' }, ran: last })).toBeUndefined();
});
test('nothing is spoken of where there is no talk', () => {
  expect(spokenOfIn(undefined)).toBeUndefined();
});

type Near = Parameters<typeof techniqueInContext>[1]['joint'];
const near = (...all: readonly (readonly [matter: string, chance: number])[]): Near =>
  ({ near: all.map(([matter, chance]) => ({ matter, chance })) }) as unknown as Near;
const LAYERS = { kind: 'technique', id: 'layers-how' } as const;
test.each<readonly [turn: string, alone: Near, joint: Near, technique: string | undefined]>([
  // Likely together, and nothing by itself.
  ['how long between', near(['cure-time', 0.3]), near(['layers-how', 0.6]), 'layers-how'],
  ['how long between', near(), near(['layers-how', 0.6]), 'layers-how'],
  ['how long between', near(['cure-time', 0.3]), near(['layers-how', 0.5]), 'layers-how'],
  ['how long between', near(['cure-time', 0.3]), near(['layers-how', 0.49]), undefined],
  ['how long between', near(['cure-time', 0.3]), near(), undefined],
  ['how long between', near(['cure-time', 0.3]), near(['glass-jug', 0.9]), undefined],
  // Plainly of something by itself: of four words only from 0.9 on, of more from 0.75, of a figure from 0.5.
  ['how long between', near(['cure-time', 0.89]), near(['layers-how', 0.6]), 'layers-how'],
  ['how long between', near(['cure-time', 0.9]), near(['layers-how', 0.6]), undefined],
  [
    'how long do they need between',
    near(['cure-time', 0.74], ['layers-how', 0.05]),
    near(['layers-how', 0.6]),
    'layers-how',
  ],
  [
    'how long do they need between',
    near(['cure-time', 0.75], ['layers-how', 0.05]),
    near(['layers-how', 0.6]),
    undefined,
  ],
  ['how long between 5', near(['cure-time', 0.5]), near(['layers-how', 0.6]), undefined],
  ['how long between 5', near(['cure-time', 0.49]), near(['layers-how', 0.6]), 'layers-how'],
  // Of more than four words it has to be a little of the matter by itself.
  [
    'how long do they need between',
    near(['cure-time', 0.3], ['layers-how', 0.04]),
    near(['layers-how', 0.6]),
    undefined,
  ],
  ['how long do they need between', near(['cure-time', 0.3]), near(['layers-how', 0.6]), undefined],
  // Another matter than the one before: only where it is of nothing much alone, or of the same.
  ['how long between', near(['swirls-how', 0.39]), near(['no-lumps', 0.6]), 'no-lumps'],
  ['how long between', near(['swirls-how', 0.4]), near(['no-lumps', 0.6]), undefined],
  ['how long between', near(['no-lumps', 0.95]), near(['no-lumps', 0.6]), 'no-lumps'],
  // What names a thing of its own: two words at most, and surely the same matter.
  ['and charcoal', near(), near(['layers-how', 0.9]), 'layers-how'],
  ['and charcoal', near(), near(['layers-how', 0.89]), undefined],
  ['and charcoal', near(), near(['no-lumps', 0.95]), undefined],
  ['and my charcoal', near(), near(['layers-how', 0.95]), undefined],
])('“%s” behind layers', (turn, alone, joint, technique) => {
  expect(techniqueInContext(turn, { alone, joint, last: LAYERS })).toBe(technique);
});

const cloudy = (chance: number, topic = 'cloudy-lye') => ({ topic, chance }) as never;
const MATTER = { kind: 'matter', id: 'cloudy-lye' } as const;
test('a turn is of the matter of lye before only where it is surely so, and of nothing alone', () => {
  const same = (turn: string, joint: unknown, more: object = {}) =>
    sameLyeMatter(turn, { alone: undefined, joint: joint as never, last: MATTER, ...more });
  expect(same('how long then', cloudy(0.85))).toBe('cloudy-lye');
  expect(same('how long then', cloudy(0.84))).toBeUndefined();
  expect(same('how long then', cloudy(0.95, 'glass-jug'))).toBeUndefined();
  expect(same('how long then', undefined)).toBeUndefined();
  expect(same('how long then', cloudy(0.95), { alone: cloudy(0.9) })).toBeUndefined();
  expect(same('how long then', cloudy(0.95), { last: LAYERS })).toBeUndefined();
  expect(same('no sorry, the jug', cloudy(0.95))).toBeUndefined();
  expect(same('perdón, la jarra', cloudy(0.95))).toBeUndefined();
  expect(same('and 500 g', cloudy(0.95))).toBeUndefined();
});
