import { describe, expect, test } from 'vitest';
import { metalInSentence } from '../../../src/engine/colourants/metal-in-sentence.ts';

// Which metals make hydrogen with lye and which corrode in it: general chemistry, from memory.
describe('metal powder is found beside whatever else is named', () => {
  test.each([
    ['how much zinc metal powder for 500 g oils', 'zinc'],
    ['metallic zinc dust beside my mica for shine', 'zinc'],
    ['cuánto polvo de cinc metálico para 500 g de aceites', 'zinc'],
    ['polvo de zinc con mica plateada 500 g aceites', 'zinc'],
    ['can I colour soap with aluminium flake', 'aluminium'],
    ['silver mica with a bit of aluminum powder', 'aluminium'],
    ['powdered aluminium for a grey swirl', 'aluminium'],
    ['escamas de aluminio en el jabón', 'aluminium'],
    ['how much gold mica and bronze powder for 500 g oils', 'bronze'],
    ['mica dorada y purpurina de bronce, 500 g de aceites', 'bronze'],
    ['bronce en polvo para 1 kg de aceite', 'bronze'],
    ['copper filings in soap', 'copper'],
    ['polvo de latón en jabón', 'brass'],
    ['tin powder for shine', 'tin'],
    ['polvo de estaño para que brille', 'tin'],
  ] as const)('%s', (sentence, metal) => {
    expect(metalInSentence(sentence)?.metal).toBe(metal);
  });
});

test.each([
  'bronze mica for 500 g oils',
  'mica de polvo de bronce',
  'how much zinc oxide powder for 500 g oils',
  'óxido de zinc en polvo',
  'copper mica powder',
  'bronze powder mica',
  'bronze colour powder',
  'a tin of mica powder',
  'gold powder for 1 cup',
  'stirred in an aluminium pan, powder stuck',
  'aluminium leaf tray for the mould',
  'iron oxide powder',
  'copper chlorophyllin powder',
])('no metal powder: %s', sentence => expect(metalInSentence(sentence)).toBeUndefined());
