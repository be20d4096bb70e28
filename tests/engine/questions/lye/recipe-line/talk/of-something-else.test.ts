import { describe, expect, test } from 'vitest';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

const TOLD = '600 g olive oil, 250 g coconut oil, 50 g castor oil';
const DICHO = '600 g de oliva, 250 g de coco, 50 g de ricino';
const isRead = (question: string) => !isAskedBack(question);

describe('a clause of something else than the recipe changes nothing in the pot', () => {
  test.each([
    "The car's still in the garage",
    'I spilt half the tea',
    'I cut the cake in half',
    'The kettle is still full',
    'The coffee went down the sink',
    'I forgot my glasses',
    "It's raining sideways",
    'my sister took the dog',
  ])('%s', said => {
    expect(isRead(`${TOLD}. ${said}. How much lye?`)).toBe(true);
  });
  test.each([
    'Tiré la sopa fría',
    'El coche sigue en el garaje',
    'Se me volcó el mate',
    'Llueve muchísimo',
    'Me falta medio molde por forrar',
    'Mi hermana se llevó el perro',
  ])('%s', said => {
    expect(isRead(`${DICHO}. ${said}. ¿Cuánta sosa?`)).toBe(true);
  });
  // Alike, but of what is in the pot, or may be.
  test.each([
    "The castor's still in the garage",
    'I spilt half the castor',
    'My sister took some of it',
    'I poured half of it down the sink',
    'I forgot the castor',
    'The dog ate some of the blend',
    'The mould holds half',
  ])('asked: %s', said => {
    expect(isAskedBack(`${TOLD}. ${said}. How much lye?`)).toBe(true);
  });
  test.each([
    'Tiré la mitad del ricino',
    'El ricino sigue en el garaje',
    'Se me volcó el ricino',
    'El ricino se lo llevó mi hermana',
    'El molde es para la mitad',
  ])('asked: %s', said => {
    expect(isAskedBack(`${DICHO}. ${said}. ¿Cuánta sosa?`)).toBe(true);
  });
  test('where nothing is named it stands still, whatever stands beside', () => {
    // No subject: what is in the car is the last that was named.
    expect(isAskedBack(`${TOLD}, still in the car, how much lye?`)).toBe(true);
  });
});

describe('what is told of an oil that leaves it in the pot', () => {
  test.each([
    'The castor came from my cousin in Wales',
    'The castor is thick as treacle',
    "The castor's been strained twice",
    'The castor smells fine',
    'The castor was a present',
    'The castor went in last',
    'The castor is for lather',
  ])('%s', said => {
    expect(readInChat(`${TOLD}. ${said}. How much lye?`).given.oils).toContain('50 g castor');
  });
  test.each([
    'El ricino me lo regaló mi compadre',
    'El ricino ya lo colé dos veces',
    'El ricino huele a nada',
    'El ricino está espeso como miel',
    'El ricino lo compré en el mercado',
  ])('%s', said => {
    expect(isRead(`${DICHO}. ${said}. ¿Cuánta sosa?`)).toBe(true);
  });
  // Alike, but it is elsewhere, another's, less, or more than oil.
  test.each([
    'The castor came from my cousin in Wales, so I sent it back',
    'The castor is thick as treacle so I left her out',
    'The castor was a present. It went to my aunt',
    "The castor is Aunt Effie's",
    'The castor has the herbs still in it',
    'The castor is in the shed',
    'The castor is half water',
    "The castor's from the market, it's in the bin",
    'The castor is for the other batch',
  ])('asked: %s', said => {
    expect(isAskedBack(`${TOLD}. ${said}. How much lye?`)).toBe(true);
  });
  test.each([
    'El ricino me lo prestó mi compadre',
    'El ricino me lo regaló mi compadre, pero lo devolví',
    'El ricino es de mi comadre',
    'El ricino está en la alacena',
    'El ricino tiene las hierbas adentro',
    'El ricino es puro aroma',
  ])('asked: %s', said => {
    expect(isAskedBack(`${DICHO}. ${said}. ¿Cuánta sosa?`)).toBe(true);
  });
});

describe('who does not know of the recipe is asked', () => {
  test.each([
    '600 g sunflower 200 g coconut, KOH, the bag does not say the strength. how much KOH',
    'Potasa para 600 g de girasol y 200 g de coco. La bolsa no pone pureza. ¿Cuánta?',
    '600 g olive 200 g coconut, superfat 5 or maybe 15, how much lye',
    '600 g olive 200 g coconut, superfat 55, how much lye',
    'la olla con todo pesa 3 kg, sebo y coco mitad y mitad, ¿sosa?',
    'oliva 500 g, coco 250 g, y el resto como siempre, ¿sosa?',
    'me vendieron soda, no sé si es cáustica o de lavar. oliva 500 g, coco 200 g, ¿cuánta?',
    '20 oz olive, 10 oz coconut, not sure if they are fluid ounces. lye?',
    // What is told from memory, or in two units.
    '600 g de oliva, 200 g de coco, creo. ¿sosa?',
    '600 olive and 200 coconut, ounces I think. lye?',
    'si no me falla la memoria, 600 g de oliva y 200 g de coco, ¿sosa?',
    '600 g de oliva y 200 g de coco en onzas, ¿sosa?',
    // A fat with what is no fat in it.
    '500 g de grasa de pollo con su gelatina y 200 g de coco, ¿sosa?',
    '500 g olive with the twigs and 200 g coconut, how much lye',
    // So much soap that is wanted, and no weight for it.
    '600 g de oliva y 200 g de coco, que me dé para 12 pastillas. ¿sosa?',
    // Who lost count, or did not get to the end.
    '600 g olive 200 g coconut. The phone rang and I lost count. lye?',
    '600 g de oliva y 200 g de coco. Se cortó la luz y no terminé de pesar. ¿sosa?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));
  test.each([
    'not sure how much lye, 600 g olive 200 g coconut',
    'no sé cuánta sosa llevan 600 g de oliva y 200 g de coco',
    'salt bar, 900 g coconut 100 g castor, superfat 20, lye?',
    'is 70 g lye enough for 300 g coconut and 200 g olive',
    'potasa para 400 g de oliva y 100 g de coco, la potasa pone 85% de pureza creo',
  ])('but not who only does not know how much lye: %s', question => expect(isRead(question)).toBe(true));
});

describe('a superfat that is put right is the one that is told last', () => {
  test.each([
    ['600 g de oliva y 200 g de coco, sobreengrasado al 5... no, ponle 8. ¿sosa?', 8],
    ['600 g de oliva y 200 g de coco, sobreengrasado 5, bueno 8. ¿sosa?', 8],
    ['600 g de oliva y 200 g de coco, sobreengrasado del 5. Rectifico: del 8. ¿sosa?', 8],
    ['600 g de oliva y 200 g de coco, subo el sobreengrasado de 5 a 8. ¿sosa?', 8],
    ['600 g olive and 200 g coconut, superfat is 5. Correction: 8. lye?', 8],
    ['600 g olive and 200 g coconut, superfat 5, well 8. lye?', 8],
    ['600 g de oliva y 200 g de coco, nada de sobreengrasado. ¿sosa?', 0],
    ['600 g de oliva y 200 g de coco, sin sobreengrasar. ¿sosa?', 0],
  ])('%s', (question, superfat) => expect(readInChat(question).given.superfat).toBe(superfat));
  test.each([
    ['600 g de oliva y 200 g de coco. ¿Sobreengrasado? 8. ¿sosa?', 8],
    ['600 g de oliva y 200 g de coco. Sobreengrasado, el 8. ¿sosa?', 8],
  ])('asked and told in one: %s', (question, superfat) =>
    expect(readInChat(question).given.superfat).toBe(superfat),
  );
  test('and where it is told and not read, the usual one never stands for it', () =>
    expect(isAskedBack('600 g de oliva y 200 g de coco, sobreengrasado del uno por ciento. ¿sosa?')).toBe(
      true,
    ));
});
