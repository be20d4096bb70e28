import type { help as en } from '../en/help.ts';

export const help: typeof en = {
  headline: 'Pregúntame por el color del jabón en frío.',
  row: v => `/${v.name}: ${v.purpose}${v.subcommands.length > 0 ? ` (${v.subcommands.join(', ')})` : ''}`,
  start: 'Para empezar: /dose, con el colorante y cuánta masa apartas, por ejemplo «2 tazas».',
  lye: 'La masa cruda y la sosa queman. Guantes y gafas puestos, niños y animales lejos; nada de esto sustituye una receta probada ni las normas de tu lugar.',
};
