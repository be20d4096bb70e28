import type { says as en } from '../../../en/declared/batch/batch.ts';

export const says: typeof en = {
  purpose: 'Tu libro de lotes: qué vertiste, cómo curó y qué enseñó de tus botes',
  options: {
    batch: 'El lote por su nombre; si no, el último',
    on: 'Qué día: «2026-11-03», «ayer». Hoy si no dices nada',
    weights: 'Barras en la báscula, siempre las mismas: «112 g, 108 g»',
  },
  poured: {
    purpose: 'Guarda lo que vertiste; sus colores salen de tu estantería',
    recipe: 'Una receta guardada; sin nada, tu último plan',
    changes: 'Qué fue distinto: «2 cdta en vez de 1, sin gel, nevera»',
    made: 'Sin plan: «2 tazas violeta 1/2 cdta + mica dorada pastel; 1 taza sin color»',
    oils: 'Sus aceites, para fechas y calor: «coco 30%, oliva 70%»',
    size: 'Con aceites: «1000 g de aceites», «molde 25x9x7 cm»',
    base: 'El jabón sin color: blanca, crema, amarilla, verde, intensa, o sus aceites',
    name: 'Un nombre para él',
    photo: 'Una foto del vertido',
  },
  cut: { purpose: 'Ya está cortado' },
  weigh: { purpose: 'Pesa barras: cuando dejan de perder están curadas' },
  cured: {
    purpose: 'Ya curó: una foto junto a papel blanco muestra qué colores salieron',
    photo: 'Una barra junto a papel blanco, con luz de día',
    colours: 'O qué color tomó cada parte: «violeta #6b5aa8; dorado #c9a24b»',
  },
  show: { purpose: 'Un lote: qué llevó, en qué quedó y qué sigue' },
  list: {
    purpose: 'Tus lotes, por color, bote o fecha',
    colour: 'Un color que lleva: «violeta»',
    jar: 'Un bote que llevó',
    since: 'Desde qué día: «2026-11-01»',
    shared: 'Los que se muestran a este grupo',
  },
  dates: { purpose: 'Qué piden tus lotes y cuándo', remind: 'Avisos de este lote: sí o no' },
  note: { purpose: 'Apunta algo junto a un lote', text: 'Qué apuntar' },
  share: { purpose: 'Muestra un lote a este grupo' },
  unshare: { purpose: 'Retira un lote de este grupo' },
  remove: { purpose: 'Quita un lote con sus fotos; tu estantería queda igual' },
  export: { purpose: 'Todos tus lotes en CSV y JSON' },
};
