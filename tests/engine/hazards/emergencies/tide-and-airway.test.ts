import { describe, expect, test } from 'vitest';
import { firstAidReply } from '../../../../src/conversation/first-aid/first-aid.ts';
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';
import { wordsIn } from '../../../../src/words/index.ts';

const idsIn = (text: string) => readEmergencies(text).map(({ id }) => id);

describe('the tide is no dizziness', () => {
  test.each([
    'marea',
    'marea baja',
    'Marea alta pastel',
    'azul marea',
    'un jabón color marea',
    'mi bote de marea baja',
    'la marea',
    'receta Marea roja, 1 kg',
    'como la marea en la playa',
    'la marea azul se ve opaca',
    'rojo Marte',
    'violeta de Marte',
    'óxido Marte 2 cdtas',
    'Marea nocturna: azul ultramar y mica',
  ])('%s', text => {
    expect(idsIn(text)).toEqual([]);
  });

  test.each([
    'me mareo con la sosa',
    'estoy mareada por los vapores de la sosa',
    'mezclé la sosa y me mareo mucho',
    'el olor de la sosa me marea',
    'el vapor de la sosa marea',
    'la sosa la marea y le cuesta respirar',
    'respiré los vapores y estoy mareado',
    'con la marea baja mezclé la sosa y ahora me mareo, respiré los vapores',
  ])('%s', text => {
    expect(idsIn(text)).toContain('fumes-inhaled');
  });
});

describe('a swollen throat or failing breath after soap', () => {
  test.each([
    ['my throat is swelling after using the soap', 'en'],
    ['my throat swells after the soap', 'en'],
    ['her tongue is swollen since she washed with the new bar', 'en'],
    ['se me hincha la garganta después de usar el jabón', 'es'],
    ['tiene los labios y la lengua hinchados por el jabón nuevo', 'es'],
  ] as const)('%s: the call stands in the first line', (text, language) => {
    const told = readEmergencies(text);
    expect(told[0]).toMatchObject({ id: 'skin-reaction', airway: true });
    const { headline } = firstAidReply(['skin-reaction'], {
      say: wordsIn(language),
      locale: language === 'en' ? 'en-US' : 'es-ES',
      airway: true,
    });
    // Emergency numbers: 911 in the United States, 112 in the European Union.
    expect(headline).toMatch(language === 'en' ? /call 911/ : /llama ya a 112/);
  });

  test('a plain rash is no such thing, but its first line says when to call', () => {
    expect(readEmergencies('a rash on my arms after using the soap')[0]).not.toHaveProperty('airway');
    for (const [language, call] of [
      ['en', /hard breathing: call your emergency number now/],
      ['es', /le cuesta respirar: llama ya a tu número de emergencias/],
    ] as const)
      expect(firstAidReply(['skin-reaction'], { say: wordsIn(language) }).headline).toMatch(call);
  });
});
