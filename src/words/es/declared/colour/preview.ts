import type { says as en } from '../../../en/declared/colour/preview.ts';

export const says: typeof en = {
  purpose: 'Mira el color curado de una mezcla antes de verter, con una carta de muestras',
  mix: 'Qué lleva: «violeta ultramar pastel + dióxido de titanio 1/4 cdta»',
  portion: 'En cuánta masa: «2 tazas». 1 taza si no dices nada',
  base: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites. Crema si no dices',
  gel: '¿Pasa por gel? No, si no dices nada; la carta muestra ambos',
};
