import { describe, expect, test } from 'vitest';
import { LYE_CAUTIONS, type LyeCautionId } from '../../src/engine/batch/lye/lye-cautions.ts';
import { wordsIn } from '../../src/words/index.ts';

/** What each caution may not leave out. */
const MUST: Readonly<Record<LyeCautionId, { readonly en: RegExp; readonly es: RegExp }>> = {
  // CLP, Annex VI, index 011-002-00-6: H314, severe skin burns and eye damage.
  'lye-burns': { en: /skin and eyes/, es: /piel y los ojos/ },
  // CCOHS chemical profile, sodium hydroxide: chemical safety goggles, gloves, protective clothing.
  'lye-gear': { en: /goggles.*gloves.*sleeves/, es: /[Gg]afas.*guantes.*manga/ },
  // CCOHS: add the caustic to water, never the reverse.
  'lye-into-water': {
    en: /lye slowly to cold water, never water to lye/,
    es: /sosa despacio en agua fría, nunca el agua/,
  },
  'lye-air': { en: /outdoors|draught/, es: /aire libre|corriente/ },
  'lye-children': { en: /children and pets/i, es: /[Nn]iños y animales/ },
  'lye-by-scale': { en: /scale, never by spoon/, es: /báscula; nunca con cuchara/ },
  // CLP, supplier classifications: H290, corrosive to metals; aluminium gives off hydrogen (general chemistry).
  'lye-aluminium': { en: /aluminium.*hydrogen/, es: /aluminio.*hidrógeno/ },
  'lye-vessel': {
    en: /polypropylene or stainless steel, not glass/,
    es: /polipropileno.*acero inoxidable, no vidrio/,
  },
  'lye-label': { en: /Label the jug/, es: /Etiqueta la jarra/ },
  // New Jersey Right to Know fact sheet: rinse eyes at least 30 minutes, get medical help.
  'lye-first-aid': {
    en: /running water.*30 minutes.*medical help.*No vinegar/,
    es: /agua corriente.*30 minutos.*ayuda médica.*Sin vinagre/,
  },
  'tested-recipe': { en: /tested recipe.*local rules/, es: /receta probada.*normas de tu zona/ },
};

describe.each(['en', 'es'] as const)('lye, in %s', language => {
  const { lyeCautions } = wordsIn(language).batch;
  test.for(Object.entries(MUST))('%s', ([id, must]) => {
    expect(lyeCautions[id as LyeCautionId]).toMatch(must[language]);
  });
});

test('the order is that of the work, and first aid is never left out', () => {
  const ids = LYE_CAUTIONS.map(({ id }) => id);
  expect(ids.toSorted()).toEqual(Object.keys(MUST).toSorted());
  expect(ids.indexOf('lye-gear')).toBeLessThan(ids.indexOf('lye-into-water'));
  expect(ids).toContain('lye-first-aid');
});
