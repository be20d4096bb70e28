import type { says as en } from '../../../en/declared/members/shelf.ts';

export const says: typeof en = {
  purpose: 'Tus pigmentos: qué tienes, cuánto y cómo se portan',
  options: {
    item: 'El producto por su nombre en tu estantería',
    amount: 'Cuánto: «25 g», «1 oz», «1/2 cdta». Un número solo son gramos',
    colourant: 'Qué es: un colorante del catálogo, como «mica dorada»',
    pigment: 'Porcentaje de pigmento en peso, si vino ya disperso',
    ingredients: 'Lo que lista la etiqueta, para poder avisarte: «Mica, Titanium Dioxide, Carmine»',
    price: 'Lo que costó, en cualquier moneda: «8,50 €», «12 USD»',
    size: 'Cuánto compró ese precio: «50 g». La cantidad si no dices nada',
    lot: 'Lo que pone en el lote',
  },
  'dish-test': {
    purpose: 'Adónde fue una pizca de este lote en un plato de agua',
    result: {
      says: 'Qué hizo la pizca',
      choices: {
        water: 'Se mezcló con el agua',
        oil: 'Flotó o se quedó quieta; entró en aceite',
        neither: 'No entró ni en agua ni en aceite',
      },
    },
  },
  weigh: {
    purpose: 'Cuánto pesa una cucharadita rasa del tuyo',
    amount: 'Lo que pesa una cucharadita rasa: «2,4 g». Un número solo son gramos',
  },
  'new-lot': { purpose: 'Un lote nuevo: sus pruebas y pesos empiezan de cero' },
  describe: { purpose: 'Di qué es un producto, para que pueda dosificarlo' },
  compare: {
    purpose: 'Dos botes para la misma intensidad: fuerza, tono, coste',
    one: 'Un bote tuyo, o cualquier colorante',
    other: 'Y el otro',
  },
  'low-mark': {
    purpose: 'Con cuánto restante debo avisarte',
    amount: 'Cuánto queda entonces: «10 g», «1 cdta»; 0 solo cuando se acabe',
  },
  add: { purpose: 'Pon un colorante en tu estantería', item: 'Tu nombre para él, en cualquier idioma' },
  list: { purpose: 'Todo lo que hay en tu estantería' },
  show: { purpose: 'Un producto: existencias, lote, pruebas e historial' },
  use: { purpose: 'Saca un poco de tu estantería' },
  restock: { purpose: 'Añade más del mismo lote' },
  remove: { purpose: 'Quita un producto de tu estantería con su historial' },
  undo: { purpose: 'Deshaz lo que acabas de cambiar en tu estantería' },
};
