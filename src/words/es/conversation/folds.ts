import type { folds as en, FoldReason } from '../../en/conversation/folds.ts';
import type { RefusalSentences } from '../../sentence.ts';

const names: typeof en.names = {
  steps: 'Pasos',
  numbers: 'Cifras',
  portions: 'Partes',
  others: 'Otras formas',
  why: 'Por qué',
  colours: 'Colores',
  shelf: 'Estantería',
  safety: 'Seguridad',
  heat: 'Calor',
  timeline: 'Horario',
  law: 'Normas y fuentes',
  more: 'Más',
};

export const folds: typeof en = {
  names,
  next: {
    preview: 'Ver el color',
    otherStrength: 'Otra intensidad',
    dose: 'Dosificarlo',
    plan: 'Planear un lote',
    buy: '¿Qué me falta comprar?',
    open: 'Abrir una receta',
    copy: 'Copiarla',
  },
  opened: v => `${v.fold}: ${v.answer}`,
  named: v => `Plegado: ${v.folds.join(', ')}. Añade --all para leerlo entero.`,
  openBy: v => `Plegado: ${v.folds.join(', ')}. Escribe el nombre de uno para abrirlo, o «todo».`,
  all: 'todo',
};

export const foldRefusals: Pick<RefusalSentences, FoldReason> = {
  'fold-forgotten': () => 'Esa respuesta es demasiado antigua para abrirla. Haz otra vez la pregunta.',
};
