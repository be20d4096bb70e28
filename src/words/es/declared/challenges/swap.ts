import type { says as en } from '../../../en/declared/challenges/swap.ts';

export const says: typeof en = {
  purpose: 'Botes que se ofrecen entre miembros: nada se muestra si no lo ofreces',
  options: { item: 'Un bote por su nombre en tu estantería' },
  offer: { purpose: 'Ofrece un bote tuyo a este grupo', for: 'Qué te gustaría a cambio' },
  list: { purpose: 'Qué se ofrece aquí' },
  withdraw: { purpose: 'Retira tu oferta' },
};
