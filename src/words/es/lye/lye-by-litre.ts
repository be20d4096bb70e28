import { spaced } from '../../../engine/over-lines.ts';
import type { lyeByLitre as english } from '../../en/lye/lye-by-litre.ts';
import { numbersIn } from '../../numbers.ts';

const { figure, one } = numbersIn('es');

/** What is said of recipes that measure oil by the litre and lye by weight. */
export const lyeByLitre: typeof english = {
  headline: ({ litres, check }) => {
    const oil = spaced`
      ${figure(litres, 1)} l de aceite pesan unos ${figure(check.oilGrams, 0)} g y gastan unos
      ${figure(check.usualGrams, 0)} g de ${check.lye.alkali}
    `;
    return check.verdict === 'lye-heavy'
      ? `No, no lo uses: ${oil}; ${figure(check.lye.grams, 0)} g son demasiados y queman.`
      : `Por litros no: ${oil} con 5 % de sobreengrasado. Pesa el aceite antes de fiarte de ${figure(check.lye.grams, 0)} g.`;
  },
  why: ({ check }) => spaced`
    Contado a 0,92 kg por litro, ${check.superfat.typical < 0 ? 'con sosa de más' : 'y a ojo'}:
    sobreengrasado ${one(check.superfat.typical)} %. Un litro no es bastante exacto para la sosa, y una
    botella lleva más o menos de lo que dice. Muchas recetas antiguas llevaban sosa de más, o eran para
    ropa con sosa floja. Si ya está hecho: guantes, lejos de la piel, fuera del alcance; esperar no lo
    arregla. Pesa el aceite y pregunta «cuánta sosa para ${figure(check.oilGrams, 0)} g de aceite de
    girasol»; el usado se cuela antes.
  `,
};
