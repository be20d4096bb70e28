import type { says as en } from '../../../en/declared/batch/recipe.ts';

export const says: typeof en = {
  purpose: 'Tus recetas de lotes: guardar, volver a planear, copiar, escalar, compartir',
  options: { recipe: 'Una receta por su nombre, tuya o del grupo', saveAs: 'Un nombre con que guardarla' },
  list: { purpose: 'Tus recetas y las compartidas en este grupo' },
  show: { purpose: 'Una receta, planeada de nuevo y tal como se escribió' },
  save: { purpose: 'Guarda el último plan que te hice' },
  copy: { purpose: 'Haz tuya una receta, con su nombre u otro' },
  rescale: {
    purpose: 'La misma receta para otro tamaño, con sus volúmenes',
    size: 'Cuántas veces («2», «1/2») o el tamaño nuevo: «1500 g de aceites»',
  },
  share: { purpose: 'Muestra una receta tuya a este grupo, tal como está' },
  unshare: { purpose: 'Retira una receta de este grupo: quien la hizo o quien administra' },
  remove: { purpose: 'Quita una de tus recetas' },
};
