import type { says as en } from '../../../en/declared/members/privacy.ts';

export const says: typeof en = {
  purpose: 'Qué guardo de ti: verlo, llevártelo, borrarlo',
  show: { purpose: 'Qué se guarda de ti y hasta cuándo' },
  export: { purpose: 'Todo lo tuyo en un archivo, fotos incluidas' },
  erase: {
    purpose: 'Borra lo que se guarda de ti, todo o una parte',
    what: {
      says: 'Qué borrar',
      choices: {
        everything: 'Todo',
        shelf: 'Mi estantería',
        preferences: 'Mis preferencias',
        recipes: 'Mis recetas',
        batches: 'Mis lotes',
        recent: 'Planes y recetas de color recientes',
        evidence: 'Mis informes',
        flaws: 'Mis preguntas sobre defectos',
        challenges: 'Mi parte en los retos',
      },
    },
  },
};
