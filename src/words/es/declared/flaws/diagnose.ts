import type { says as en } from '../../../en/declared/flaws/diagnose.ts';

export const says: typeof en = {
  purpose: '¿Por qué le pasó eso a mi pastilla? Descríbelo, enseña una foto, o ambas',
  menu: 'Diagnosticar esta foto',
  words: 'Lo que ves y notas, y lo que hiciste: «motas azules por todas partes»',
  photo: 'La barra entera sobre algo liso, con todos los bordes a la vista',
  recipe: 'La receta con que se hizo, tuya o del grupo: sus números también cuentan',
};
