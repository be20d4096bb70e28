import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openTalk, type Talk, understoodOf } from './talking.ts';

/* What came of an answer, and what is asked of another matter: common practice (no source). */

let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(() => talk[Symbol.asyncDispose]());

const lastOf: Talk['lastOf'] = (...turns) => talk.lastOf(...turns);

describe('a colour that came out as another', () => {
  test.each([
    [['how much green oxide for 3 cups', 'did that, its minty not green'], 'en'],
    [['cuánto óxido verde para 3 tazas', 'lo hice y quedó menta, no verde'], 'es'],
    [['how much red oxide for 500 g oils', 'it came out pink not red'], 'en'],
    [['cuánto óxido rojo para 500 g de aceites', 'salió rosado y no rojo'], 'es'],
  ] as const)(
    '%j: paler than it was to be is deepened, and the pale shade is not aimed at',
    async (turns, language) => {
      const answer = await lastOf(turns, language);
      expect(understoodOf(answer)).toMatchObject({ technique: 'darker-lighter' });
      expect(answer.headline).toMatch(/^Darker: more of the same|^Más oscuro: más de lo mismo/u);
    },
  );

  test.each([
    [['how much red oxide for 500 g oils', 'it came out brown not red'], 'en'],
    [['cuánto óxido rojo para 500 g de aceites', 'quedó marrón y no rojo'], 'es'],
  ] as const)('%j: another hue is a flaw, and no new target', async (turns, language) => {
    expect(understoodOf(await lastOf(turns, language))).toMatchObject({ command: 'diagnose' });
  });

  test.each([
    [['how much mica for 500 g oils', 'i want pink not red'], 'en', 'pink mica'],
    [['cuánta mica para 500 g de aceites', 'la quiero rosa, no roja'], 'es', 'rosa mica'],
  ] as const)('%j is a wish', async (turns, language, colourant) => {
    expect(understoodOf(await lastOf(turns, language)).given).toMatchObject({ colourant });
  });
});

describe('what belongs to the matter before', () => {
  test.each([
    [['soda ash on my dark bars how do i get it off', 'came back', 'would alcohol spray do'], 'en'],
    [['cómo evito la ceniza de soda', 'y con alcohol en spray?'], 'es'],
  ] as const)('%j: alcohol after ash is sprayed, away from flames', async (turns, language) => {
    const answer = await lastOf(turns, language);
    expect(understoodOf(answer)).toMatchObject({ technique: 'ash-avoid' });
    expect(answer.headline).toMatch(/91 (?:to|a) 99 %.*(?:flames|llamas)/u);
  });

  test('alcohol after batter that went thick is another thing', async () => {
    const turns = ['my batter is getting thick what now', 'would alcohol spray do'];
    expect(understoodOf(await lastOf(turns)).technique).not.toBe('ash-avoid');
  });

  test.each([
    [['layers keep breaking through each other', 'but then they split apart when cut'], 'en'],
    [['mis capas se mezclan entre ellas', 'pero luego se despegan al cortar'], 'es'],
  ] as const)('%j: the layers came apart', async (turns, language) => {
    const { data } = await lastOf(turns, language);
    expect((data as { causes: readonly { id: string }[] }).causes[0]?.id).toBe('layers-apart');
  });
});

test.each([
  ['my batter went thick before i got to pour', 'en'],
  ['my batter went hard in the bowl', 'en'],
  ['la masa se endureció en el bowl', 'es'],
  ['se me endureció la masa antes de verter', 'es'],
] as const)('“%s”: the steps come first', async (turn, language) => {
  const { headline } = await lastOf([turn], language);
  expect(headline).toMatch(/^Stop the stick blender\.|^Para la batidora\./u);
});
