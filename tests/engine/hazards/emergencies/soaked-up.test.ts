import { describe, expect, test } from 'vitest';
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';
import { isHarmMatter } from '../../../../src/engine/questions/lye/topics/topics.ts';

// General knowledge of both languages, no source: flowers, cloth and wood soak up a liquid, and nobody swallowed it.
describe('what soaks up a liquid swallowed nothing', () => {
  test.each([
    'The flowers drank the rest. How much sodium hydroxide?',
    'the wooden mould drank some oil. can I still use the lye',
    'The oats drank all the water, now the lye',
    'Las flores se bebieron el aceite. ¿Cuánta sosa?',
    'la caléndula se tragó parte del aceite antes de la sosa',
    'el molde se bebió el aceite, y la sosa?',
  ])('%s', text => {
    expect(readEmergencies(text).map(({ id }) => id)).not.toContain('lye-swallowed');
    expect(isHarmMatter(text)).toBe(false);
  });
  test.each([
    'my son drank the lye',
    'my little flower drank the lye',
    'the flowers drank the rest. my girl drank the lye',
    'mi hijo se bebió la sosa',
    'las flores se bebieron el aceite y mi hija se tragó la sosa',
  ])('who did is helped at once: %s', text =>
    expect(readEmergencies(text).map(({ id }) => id)).toContain('lye-swallowed'),
  );
});
