import type { says as en } from '../../../en/declared/challenges/season.ts';

export const says: typeof en = {
  purpose: 'La paleta en que tu grupo hace jabón esta temporada: proponer, votar, fijar',
  show: { purpose: 'La paleta de la temporada y las propuestas para la próxima' },
  propose: {
    purpose: 'Propón una paleta; ocupa el lugar de la que propusiste',
    title: 'Cómo se llama',
    colours: 'De dos a seis colores: «turquesa, #4b3f9e, dorado»',
  },
  vote: { purpose: 'Vota por una paleta; cuenta tu último voto', palette: 'La paleta por su título' },
  settle: { purpose: 'Cierra la votación: gana la más votada (responsables)' },
};
