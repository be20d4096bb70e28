import type { says as en } from '../../../en/declared/colour/match.ts';

export const says: typeof en = {
  purpose: 'Una receta en cucharas para el color que quieres, con lo de tu estantería',
  target: 'El color: «#6b3fa0», o un nombre inglés como «teal» o «rebeccapurple»',
  photo: 'O una foto de una pastilla: eliges uno de sus colores',
  portion: 'Cuánta masa: «2 tazas», «500 ml». 1 taza si no dices nada',
  from: {
    says: 'De dónde. De tu estantería si no dices nada',
    choices: { shelf: 'Mi estantería', catalogue: 'Cualquier pigmento' },
  },
  with: 'Solo con estos: «óxido rojo, óxido amarillo, blanco»',
  most: 'Cuántos colorantes como mucho, sin contar un blanco. 3 si no dices',
  base: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites. Crema si no dices',
  gel: '¿Pasa por gel? No, si no dices nada',
};
