import type { says as en } from '../../../en/declared/batch/plan.ts';

export const says: typeof en = {
  purpose: 'Planea un lote con color: sosa, agua, partes, calor y pasos. Sin nada: un formulario',
  recipe: 'Una receta guardada; las demás opciones la cambian',
  'save-as': 'Guárdala como receta con ese nombre',
  prices: 'Lo que cuestan tus aceites: «oliva 8 €/kg, coco 6 € por 500 g»',
  people: 'Para una clase: cuántas personas',
  stations: 'Para una clase: cuántas mesas. Una por persona si no dices',
  'plan-is-for': {
    says: 'Para una clase: si el tamaño es de una mesa o de toda la clase',
    choices: { station: 'Cada mesa', class: 'Toda la clase' },
  },
  process: {
    choices: {
      ambient: 'Sobre la mesa',
      insulated: 'Abrigado',
      oven: 'Horno templado y apagado',
      fridge: 'Nevera',
    },
    says: 'Dónde pasa la barra el primer día',
  },
  material: {
    choices: { silicone: 'Silicona', wood: 'Madera', plastic: 'Plástico', cardboard: 'Cartón' },
    says: 'De qué es el molde',
  },
  swirl: {
    choices: {
      'in-the-pot': 'En la olla',
      drop: 'A hilo',
      layered: 'En capas',
      hanger: 'Con percha',
      single: 'Un solo color',
    },
    says: 'Cómo viertes',
  },
  oils: 'Aceites: «coco 30%, oliva 50%, palma 20%», o pesos',
  size: '«1000 g de aceites», «1,2 l de masa», «molde 25x9x7 cm», «12 x 100 ml»',
  superfat: 'Por ciento de aceites sin saponificar. 5 si no dices nada',
  lye: 'NaOH, «KOH 90%», ambas: «NaOH 95% + KOH 5%», o lista: «solución al 50%»',
  water: '«33% sosa», «2:1» (agua a álcali) o «38% de aceites». Si no, 33% sosa',
  portions: '«2 tazas azul ultramar; 500 ml mica dorada pastel en agua; resto sin color»',
  fragrance: '«3%» de los aceites, con «vainillina 8%» si lo dice la etiqueta',
  additives: '«miel 10 g, sal 5%, arcilla 1 cda, ácido cítrico 5 g»',
  liquid: 'En vez de agua: «leche de cabra», «mitad cerveza», «nata 100 g en los aceites»',
  start: 'La masa al verter: «38 C», «100 F»',
  room: 'La habitación: «21 C», «70 F»',
  oven: 'El horno antes de apagarlo: «77 C»',
  purity: 'Por ciento de álcali en la sosa, según la etiqueta',
  scale: 'De cuánto en cuánto va tu báscula, gramos: 0,1 o 1',
  reserve: 'Por ciento de masa que se pega a la olla y los vasos. 2 si no dices',
};
