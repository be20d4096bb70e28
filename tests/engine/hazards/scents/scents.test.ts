import { describe, expect, test } from 'vitest';
import { parseFragrance } from '../../../../src/engine/batch/additives/fragrance.ts';
import { planBatch } from '../../../../src/engine/batch/planning/plan.ts';
import { SCENTS } from '../../../../src/engine/hazards/scents/scents.ts';
import { meantByText } from '../../../../src/records/shelf/meant.ts';
import { scents as en } from '../../../../src/words/en/hazards/scents.ts';
import { scents as es } from '../../../../src/words/es/hazards/scents.ts';
import { asked, refusalOf } from '../../batch/asked.ts';

/** With a limit told, so that only the name is asked after. */
const certified = (text: string) => `${text}, certificate 6%`;
const risksIn = (text: string) => (parseFragrance(certified(text)).risky ?? []).map(({ risk }) => risk);

describe('a scent that hurts by its name', () => {
  // What each is known for: allergens of Annex III, Regulation (EC) No 1223/2009; IFRA standards; poison centres on
  // methyl salicylate and camphor.
  test.each([
    ['3% cinnamon bark', 'cinnamal'],
    ['cassia essential oil 1%', 'cinnamal'],
    ['aceite esencial de canela 2%', 'cinnamal'],
    ['2% clove bud', 'eugenol'],
    ['clavo 2%', 'eugenol'],
    ['oregano 1%', 'phenols'],
    ['thyme ct thymol 1%', 'phenols'],
    ['tomillo 1 %', 'phenols'],
    ['3% lemongrass', 'citral'],
    ['citronela 3%', 'citral'],
    ['bergamot 3%', 'phototoxic'],
    ['3% bergamota', 'phototoxic'],
    ['3% lime', 'phototoxic'],
    ['toronja 3%', 'phototoxic'],
    ['3% tea tree', 'oxidises'],
    ['árbol de té 3%', 'oxidises'],
    ['wintergreen 1%', 'salicylate'],
    ['1% salicilato de metilo', 'salicylate'],
    ['camphor 1%', 'camphor'],
    ['alcanfor 1%', 'camphor'],
    ['3% peppermint', 'camphor'],
    ['menta 3%', 'camphor'],
    ['peru balsam 1%', 'balsam'],
    ['bálsamo del Perú 1%', 'balsam'],
    ['ylang-ylang 2%', 'sensitises'],
    ['fig leaf fragrance oil 3%, parfum', 'perfume'],
  ] as const)('%s is cautioned', (text, risk) => {
    expect(risksIn(text)).toEqual([risk]);
    const { warnings } = planBatch(asked({ fragrance: certified(text) }));
    expect(warnings.find(({ id }) => id === 'scent-hurts')?.values).toMatchObject({ risk });
  });

  test('each of several is cautioned, each kind once', () => {
    expect(risksIn('2% clove, cinnamon leaf and peppermint, spearmint')).toEqual([
      'eugenol',
      'cinnamal',
      'camphor',
    ]);
  });

  test.each([
    '3%',
    '3% lavender',
    'lavanda 3%',
    '3% bergamot FCF',
    '3% bergamota sin furocumarinas',
    '3% lemon eucalyptus',
    '3%, vanillin 8%',
    'perfume oil 3%',
  ])('%s needs none', text => {
    expect(risksIn(text)).toEqual([]);
  });
});

describe('a scent that burns is weighed only under the limit that its maker certifies', () => {
  test.each(['1% clove', '2% cinnamon bark', 'tomillo 1%', '3% lemongrass', 'wintergreen 0.5%', 'ylang 2%'])(
    '%s alone gives no grams',
    text => {
      const refusal = refusalOf(() => parseFragrance(text));
      expect(refusal.id).toBe('scent-needs-certificate');
      for (const words of [en, es])
        expect(words.refusals['scent-needs-certificate'](refusal.values as never)).toMatch(
          /IFRA.*9.*0[.,]5%/u,
        );
    },
  );

  test.each([
    ['1% clove, certificate 0.5%', 0.5],
    ['clavo 1%, certificado: 0,4%', 0.4],
    ['IFRA max 0.2 %, cinnamon bark 1%', 0.2],
    ['3% lavender, IFRA limit 2%', 2],
  ])('%s is over it', (text, most) => {
    const refusal = refusalOf(() => parseFragrance(text));
    expect(refusal.id).toBe('scent-over-certificate');
    expect(refusal.values).toMatchObject({ most });
  });

  test.each([
    ['0.5% clove, certificate 0.5%', 0.5, 0],
    ['clavo 0,4%, certificado 0,5%', 0.4, 0],
    ['0.3% cinnamon leaf (IFRA category 9: 0.9%)', 0.3, 0],
    ['2% of oils, vanillin 8%, IFRA limit 5%', 2, 8],
    ['3% peppermint', 3, 0],
  ])('%s is within', (text, percentOfOils, vanillinPercent) => {
    expect(parseFragrance(text)).toMatchObject({ percentOfOils, vanillinPercent });
  });
});

test('“perfume” beside another scent is only the word for one', () => {
  expect(risksIn('2% clove perfume oil parfum')).toEqual(['eugenol']);
  expect(risksIn('2% parfum')).toEqual(['perfume']);
  expect(risksIn('2% parfum, clove')).toEqual(['eugenol']);
});

describe('a scent that stays out', () => {
  test.each([
    ['3% eau de toilette', 'alcohol'],
    ['my husband’s aftershave 2%', 'alcohol'],
    ['body spray 3%', 'alcohol'],
    ['vanilla extract 3%', 'alcohol'],
    ['agua de colonia 3%', 'alcohol'],
    ['3% perfume con alcohol', 'alcohol'],
    ['candle fragrance oil 3%', 'not-for-skin'],
    ['3% reed diffuser oil', 'not-for-skin'],
    ['ambientador 2%', 'not-for-skin'],
    ['3% aroma para velas', 'not-for-skin'],
    // Prohibited by the index of the IFRA Standards, 46th amendment.
    ['boldo 1%', 'prohibited'],
    ['birch tar 1%', 'prohibited'],
    ['1% fig leaf absolute', 'prohibited'],
    ['pennyroyal 2%', 'prohibited'],
    ['almendra amarga 1%', 'prohibited'],
  ] as const)('%s: %s', (text, reason) => {
    const refusal = refusalOf(() => parseFragrance(text));
    expect(refusal.id).toBe('scent-barred');
    expect(refusal.values).toMatchObject({ reason });
    for (const words of [en, es]) {
      const said = words.refusals['scent-barred'](refusal.values as never);
      expect(said).not.toMatch(/undefined/u);
      expect(said.length).toBeLessThan(240);
    }
  });

  test('perfume is no ingredient that holds in raw soap', () => {
    for (const text of ['perfume', 'my perfume', 'cologne', 'agua de colonia'])
      expect(refusalOf(() => meantByText(text)).values).toMatchObject({ reason: 'alcohol' });
    expect(meantByText('Parfum').report.components).toHaveLength(1);
  });

  test('a perfumer’s oil of such a name passes', () => {
    expect(risksIn('bitter almond fragrance oil 3%')).toEqual([]);
    expect(risksIn('fragancia hoja de higuera 3%')).toEqual([]);
  });
});

test('every name of the table is found as what it is, in no other row', () => {
  const rowOf = new Map<string, string>();
  for (const { names, risk, barred } of SCENTS)
    for (const name of names.split('; ')) {
      const kind = risk ?? `barred ${barred}`;
      expect(`${name}: ${rowOf.get(name) ?? kind}`).toBe(`${name}: ${kind}`);
      rowOf.set(name, kind);
      const found = (() => {
        try {
          return risksIn(`2% ${name}`)[0];
        } catch (refusal) {
          return `barred ${(refusal as { values: { reason: string } }).values.reason}`;
        }
      })();
      expect(`${name}: ${found}`).toBe(`${name}: ${kind}`);
    }
});

test('every caution speaks of the certificate in both languages', () => {
  const risks = SCENTS.flatMap(({ risk }) => (risk ? [risk] : []));
  expect(risks.length).toBeGreaterThan(8);
  for (const risk of risks)
    for (const words of [en, es])
      expect(words.warnings['scent-hurts']({ scent: 'x', risk })).toMatch(/IFRA/u);
});
