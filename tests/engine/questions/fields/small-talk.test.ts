import { expect, test } from 'vitest';
import { pastAside, smallTalkIn } from '../../../../src/engine/questions/fields/small-talk.ts';

test.each([
  ['tell us a joke', 'joke'],
  ['¿sabes algún chiste?', 'joke'],
  ['whats your favourite colour', 'taste'],
  ['¿cuál es tu color preferido?', 'taste'],
  ['sorry, wrong group', 'wrongChat'],
  ['uy me equivoqué, era para el otro chat', 'wrongChat'],
  ['can you post me some clay', 'cannot'],
  ['¿me reservas un puesto?', 'cannot'],
  ['ur the best', 'praise'],
  ['sos un genio', 'praise'],
  ['Thanks a million, that blue came out gorgeous', 'praise'],
  ['gracias, me quedó precioso el rosa', 'praise'],
  ['night all', 'night'],
  ['me voy a dormir', 'night'],
] as const)('“%s” is small talk: %s', (text, kind) => {
  expect(smallTalkIn(text)).toBe(kind);
});

test.each([
  ['can you call an ambulance'],
  ['¿puedes llamar al médico?'],
  ['can you buy lye in a shop'],
  ['can you tell me how much mica for 500 g'],
  ['what is the best green'],
  ['do you like 33 % lye'],
  ['thanks, gorgeous blue, but it has white spots'],
  ['gracias, quedó precioso. ¿y cómo lo hago más oscuro?'],
])('“%s” is none: somebody wants help, or asks of soap', text => {
  expect(smallTalkIn(text)).toBeUndefined();
});

test('an aside is passed by, unless a figure, lye or a hurt stands in it', () => {
  expect(pastAside('My sister is visiting all week. Anyway, how do I get a good green')).toBe(
    'how do I get a good green',
  );
  expect(pastAside('Mi suegra vino a verme hoy. En fin, ¿cómo hago un gris?')).toBe('¿cómo hago un gris?');
  for (const text of [
    'I put 100 g lye in 700 g olive. Anyway how do I make it green',
    'The lye got on my hand earlier. Anyway how do I make it green',
    'Me quemé la mano con la masa. En fin, ¿cómo hago un gris?',
  ])
    expect(pastAside(text)).toBe(text);
});
