import { describe, expect, test } from 'vitest';
import { type Metal, metalIn, refuseMetal } from '../../../src/engine/colourants/metals.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

const choice = (id: string): unknown => expect.objectContaining({ id });

describe('metal never goes in', () => {
  test.each<[string, Metal]>([
    ['aluminium powder', 'aluminium'],
    ['Aluminum flakes', 'aluminium'],
    ['aluminum', 'aluminium'],
    ['polvo de aluminio', 'aluminium'],
    ['CI 77000', 'aluminium'],
    ['copper powder', 'copper'],
    ['powdered copper', 'copper'],
    ['copper flake', 'copper'],
    ['escamas de cobre', 'copper'],
    ['CI 77400', 'copper'],
    ['bronze powder', 'bronze'],
    ['polvo de bronce', 'bronze'],
    ['brass dust', 'brass'],
    ['zinc dust', 'zinc'],
    ['metallic glitter', 'unnamed'],
    ['metallic flake', 'unnamed'],
    ['metal powder', 'unnamed'],
    ['gold leaf', 'leaf'],
    ['gold mica with copper flakes', 'copper'],
    ['gold mica, aluminium powder', 'aluminium'],
  ])('%s is metal', (text, metal) => {
    expect(metalIn(text)).toEqual({ metal, certainty: 'metal' });
    expect(() => refuseMetal(text)).toThrow(new Refusal('metal-never-in-lye', { text, metal }));
  });

  test.each([
    ['copper', 'copper-mica'],
    ['cobre', 'copper-mica'],
    ['bronze', 'bronze-mica'],
    ['copper colour', 'copper-mica'],
    ['zinc', 'zinc-oxide'],
  ])('bare %s may mean %s: it is refused and asked back', (text, instead) => {
    expect(metalIn(text)?.certainty).toBe('unclear');
    expect(() => refuseMetal(text)).toThrow(
      expect.objectContaining({
        id: 'metal-or-mica',
        values: expect.objectContaining({ instead: choice(instead) }),
      }),
    );
  });

  test.each(['glitter', 'gold glitter', 'purpurina'])('%s may carry metal: its label is asked for', text => {
    expect(() => refuseMetal(text)).toThrow('glitter-read-label');
  });

  test.each([
    'aluminium lake',
    'Red 40 Aluminum Lake',
    'alumina',
    'aluminum hydroxide',
    'copper mica',
    'bronze mica',
    'copper-colour mica',
    'mica color bronce',
    'copper mica powder',
    'mica en polvo cobre',
    'copper chlorophyllin',
    'copper phthalocyanine blue',
    'zinc oxide',
    'óxido de zinc',
    'titanium dioxide powder',
    'gold mica',
    'gold',
    'silver mica',
    'iron oxide powder',
    'calcium aluminum borosilicate',
  ])('%s raises no alarm', text => {
    expect(metalIn(text)).toBeUndefined();
  });
});
