import type { says as en } from '../../../en/declared/flaws/flaws.ts';

export const says: typeof en = {
  purpose: 'Qué resultaron ser los defectos aquí, y sus fotos',
  learned: {
    purpose: 'Qué resultaron ser los defectos aquí y cómo mueve eso las probabilidades (encargados)',
  },
  reset: { purpose: 'Olvidar qué resultaron ser los defectos aquí (encargados)' },
  given: { purpose: 'Las fotos que diste a la colección del grupo, para retirarlas' },
  pictures: {
    purpose: 'Las fotos que dieron los miembros, con lo que resultaron ser, en un archivo (encargados)',
  },
  drop: {
    purpose: 'Borrar una foto de la colección: una con una cara, o que no es jabón (encargados)',
    file: 'Su nombre en el archivo de /flaws pictures: «3f09c2a1b7de.jpg»',
  },
};
