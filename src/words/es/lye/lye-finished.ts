import { spaced } from '../../../engine/over-lines.ts';
import type { lyeFinished as english } from '../../en/lye/lye-finished.ts';

/** Lo que se dice del jabón ya hecho: su curado, sus pruebas, cómo se vende. */
export const lyeFinished: typeof english = {
  'free-alkali-test': {
    answer: ['Sí: la fenolftaleína en un corte fresco dice sí o no; valorando en alcohol da una cifra.'],
    why: [
      'Una gota en el corte: rosa es sosa libre ahí, incoloro no prueba el resto.',
      spaced`
        Para una cifra, como en ISO 456: 10 g de jabón en etanol neutro caliente, luego ácido
        clorhídrico 0,1 mol/l hasta que se va el rosa; cada ml son 4 mg de NaOH, 0,04 %.
      `,
      'Lejos de llamas, el etanol arde.',
      'Hasta un 0,1 % es común en jabón de tocador.',
      'Con aceite desconocido no sustituye a los pesos.',
    ],
  },
  'ph-enough': {
    answer: [
      'No: una buena cifra sola no prueba nada. 11 o más dice que no se use; menos, falta ver el resto.',
    ],
    why: [
      'Las tiras marcan bajo en jabón y tocan un solo punto.',
      'Un jabón sano está entre 9 y 10,5.',
      spaced`
        Lo que lo dice: pesos que estaban bien («eché 100 g de sosa en 700 g de oliva»), cuatro semanas
        de cura, ni cristales ni gotas en el corte, que no pique.
      `,
      'Nunca la lengua.',
    ],
  },
  'why-cure': {
    answer: [
      'No es por la sosa: se gasta en días.',
      'Las semanas secan la pastilla: más dura, más suave, dura más.',
    ],
    why: [
      'Una pastilla fresca lleva un cuarto de agua; pierde un décimo de su peso o más en cuatro a seis semanas.',
      'Aun así: guantes las primeras 48 horas, y usarlo tras cuatro semanas y si no pica.',
      'Una pastilla con sosa de más no se arregla esperando.',
    ],
  },
  'lye-free-claim': {
    answer: ['No: todo jabón se hace con sosa.', '«Ya no lleva sosa» es cierto, si se pesó bien y curó.'],
    why: [
      'En la etiqueta va lo que quedó de ella: oleato de sodio y demás, o los aceites y el hidróxido de sodio.',
      'Lo que se afirma ha de ser cierto en casi todos los países (UE: Reglamento 655/2013).',
      'Las pastillas detergentes se hacen sin sosa, y no son jabón.',
    ],
  },
  selling: {
    answer: [
      'Casi siempre sí, según las normas de donde vendas: pregunta a tu autoridad antes de la primera pastilla.',
    ],
    why: [
      spaced`
        UE: el jabón es un cosmético: evaluación de seguridad por receta, notificación, etiqueta con
        ingredientes (INCI), peso, lote, fecha y responsable (Reglamento 1223/2009).
      `,
      'EE.',
      'UU.: el jabón simple va más libre; según lo que prometas es cosmético o medicamento.',
      'Regalado en una feria también cuenta.',
      'No soy abogado: /colourant check dice qué se sabe de los colores.',
    ],
  },
  'melt-and-pour-lye': {
    answer: ['Sin sosa: la base de derretir y verter ya es jabón, otro manejó la sosa.'],
    why: [
      'Se derrite, se colorea, se aromatiza y se vierte.',
      'Nunca se le añade sosa ni más aceite.',
      'Yo sé de color en jabón de proceso en frío: mis dosis no valen para ella.',
    ],
  },
  slimy: {
    answer: [
      'Es cosa de la oliva, no de la sosa: toma agua y queda baboso.',
      'Más cura y una jabonera que escurra.',
    ],
    why: [
      'El de pura oliva pide de tres a seis meses, mejor un año; que se seque entre usos.',
      'La próxima vez 10 a 20 % de coco u otra grasa dura, menos agua, 10 a 15 g de sal por kg de aceites en el agua.',
      'Si la baba pica o quema es otra cosa: enjuaga, no lo uses.',
    ],
  },
  'smell-fades': {
    answer: [
      'Casi siempre: el olor a cerveza, leche o manteca se va en cuatro a ocho semanas de cura al aire.',
    ],
    why: [
      'El jabón crudo huele poco.',
      'Agrio, a pintura o rancio y cada vez más, con manchas naranjas: el aceite se estropea.',
      'A amoniaco más de unos días: leche quemada.',
      'Vapores que hacen toser: al aire libre, /first-aid.',
    ],
  },
  'hot-process-cure': {
    answer: ['Sí: la cocción gasta la sosa, pero la pastilla aún ha de secar, de dos a cuatro semanas.'],
    why: [
      'Se puede usar antes, solo se gasta pronto y es más fuerte al principio.',
      'Pruébalo antes: papel de pH en su espuma, nunca la lengua.',
      'Yo sé de proceso en frío; en caliente los colores van después de cocer.',
    ],
  },
};
