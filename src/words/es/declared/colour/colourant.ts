import type { says as en } from '../../../en/declared/colour/colourant.ts';

export const says: typeof en = {
  purpose: 'Si aguanta la sosa, si se puede usar y qué ha visto este grupo',
  options: {
    colour: 'Un producto de tu estantería, un colorante («mica dorada») o una lista de ingredientes',
    process: {
      says: 'Cómo se hizo el jabón',
      choices: {
        ambient: 'Sin calor añadido, sin gel',
        gel: 'Pasó por gel, o se calentó para eso',
        other: 'De otra manera',
      },
    },
  },
  check: {
    purpose: 'Lee una etiqueta: qué hace la sosa con cada ingrediente, dosis y normas',
    ingredients: 'Los ingredientes como en la etiqueta: «Mica (CI 77019), Carmine (CI 75470)»',
    item: 'O un producto de tu estantería, o un colorante como «mica dorada»',
  },
  label: {
    purpose: 'Los colores de una pastilla como debe listarlos su etiqueta',
    market: { says: 'Dónde se venderá', choices: { us: 'Estados Unidos', eu: 'Unión Europea' } },
    of: 'Los colores que lleva: «azul ultramar, mica dorada», o una lista de ingredientes',
    recipe: 'O una receta guardada, por su nombre',
  },
  report: {
    purpose: 'Cuenta al grupo cómo quedó un color en tu pastilla curada',
    result: {
      says: 'Qué fue del color',
      choices: {
        held: 'Aguantó',
        shifted: 'Se volvió otro color',
        faded: 'Se apagó',
        bled: 'Sangró en el color vecino',
      },
    },
    weeks: 'Semanas desde el vertido cuando miraste',
    strength: 'Cuánto: toque, pastel, medio, pleno, o cucharaditas por taza',
    base: 'La masa: «base clara de oliva», «con blanco»',
    note: 'Algo más que convenga saber',
    photo: 'Una foto de la pastilla',
  },
  evidence: { purpose: 'Qué ha visto este grupo de un color, o de todos' },
  withdraw: { purpose: 'Retira tu propio informe' },
  share: {
    purpose: 'Responsables: compartir cuentas con grupos que también comparten, o dejarlo',
    on: 'Sí para compartir, no para dejarlo',
  },
};
