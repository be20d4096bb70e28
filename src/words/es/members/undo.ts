import type * as en from '../../en/members/undo.ts';

const list = new Intl.ListFormat('es');

export const undo: typeof en.undo = {
  button: 'Deshacer',
  done: {
    'jar-removed': ({ name }) => `Deshecho: «${name}» vuelve a tu estantería, con su historial.`,
    'recipe-removed': ({ name }) => `Deshecho: «${name}» vuelve a estar entre tus recetas.`,
    'recipe-unshared': ({ name }) => `Deshecho: «${name}» vuelve a estar compartida con este grupo.`,
    report: ({ name }) => `Deshecho: lo que contaste de ${name} queda como antes.`,
    'report-gone': ({ name }) => `Deshecho: tu informe sobre ${name} vuelve a contar.`,
    ballot: ({ name }) => `Deshecho: tu voto en «${name}» queda como antes.`,
    poured: ({ name }) => `Deshecho: «${name}» ya no está en tu libro.`,
    'batch-removed': ({ name }) => `Deshecho: «${name}» vuelve a estar en tu libro.`,
    'batch-event': ({ name }) => `Deshecho: lo que anotaste de «${name}» ya no está.`,
  },
  several: ({ lefts }) => `Deshecho: ahora ${list.format(lefts)}.`,
  lot: ({ name, left }) =>
    `Deshecho: para «${name}» vuelve a contar el lote anterior, con sus pruebas${left === undefined ? '' : `; ${left} en total`}.`,
  already: 'Ya estaba deshecho: ahora no se ha cambiado nada.',
  within: ({ minutes }) => `Puedes deshacerlo durante ${minutes} minutos.`,
};

export const undoRefusals: typeof en.undoRefusals = {
  'undo-nothing': ({ minutes }) =>
    `No hay nada que deshacer: lo que cambia tus registros se puede deshacer durante ${minutes} minutos.`,
  'undo-too-late': ({ minutes }) =>
    `De eso hace más de ${minutes} minutos: corrígelo con el comando con que se hizo.`,
  'undo-changed-since': ({ name }) =>
    `Desde entonces se ha anotado otra cosa de «${name}», así que lo dejo como está: corrígelo a mano.`,
};
