import type { says as en } from '../../../en/declared/colour/dose.ts';

export const says: typeof en = {
  purpose: 'Cuánto colorante para la masa que apartas, y cómo humedecerlo',
  colourant: 'Un colorante por su nombre o número CI, o un bote de tu estantería',
  portion: 'Cuánta masa: «2 tazas», «500 ml», «500 g de aceites»',
  strength: 'Toque, pastel, medio, pleno, o cucharaditas por taza. Lo usual si no dices nada',
  carrier: 'En qué quieres humedecerlo: agua, aceite o glicerina',
  premix: '¿Ya humedecido? «30%» de pigmento, o tu pasta: «1 cdta en 1 cda de aceite»',
  with: 'Otro colorante en la misma porción: «mica dorada pastel»',
  recipe: 'Una receta guardada, si es su masa: la respuesta es más exacta',
};
