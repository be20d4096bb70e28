import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueTrace as english } from '../../../en/colour/technique/trace.ts';

/** Lo que se dice de la traza, del calor y de la masa que espesa o se separa. */
export const techniqueTrace: typeof english = {
  'thick-now': {
    answer: ['Para la batidora.', 'Remueve a mano y échala ya al molde.'],
    why: [
      'Si aún se vierte: olvida el remolino y echa los colores uno tras otro.',
      spaced`
        Como puré: a cucharadas, aprieta cada una y golpea el molde en la mesa para cerrar huecos; el
        color que quede, a mano en las últimas cucharadas, las vetas no importan.
      `,
      'Dura en la jarra: apriétala en el molde con guantes, o caliéntala suave y acábala como proceso caliente.',
      'Una jarra más espesa que las otras: esa primero, como capa.',
      'El jabón es bueno si la sosa se pesó bien.',
      'La próxima: 30 a 35 °C (86 a 95 °F), sosa al 28 o 30 %, la esencia al final y a mano.',
      'Si está caliente y sube: guantes, gafas, a una olla mayor o una bandeja, sin tapa.',
    ],
  },
  'riced-now': {
    answer: ['Con granos como de arroz: bátela a golpes cortos hasta alisarla y viértela en seguida.'],
    why: [
      'Casi siempre fue la esencia.',
      'Ya lisa espesa rápido, así que sin remolino.',
      spaced`
        Aceite arriba en la olla: se cortó o nunca se unió; bate hasta que no se vea aceite y, si
        cuajaron grasas duras, caliéntala suave a unos 40 °C (104 °F).
      `,
      'Si no se une: acábala como proceso caliente.',
      spaced`
        Si ya está en el molde y al día siguiente hay aceite o agua encima: no lo uses; mézclalo todo o
        refúndelo, y no uses nada que pique.
      `,
    ],
  },
  'thin-it': {
    answer: ['No: ni aceite ni agua deshacen la traza.', 'Remueve a mano y vierte ya.'],
    why: [
      'Más aceite sube el sobreengrasado y ablanda la pastilla.',
      'Una cucharada de agua tibia quizá da un minuto; más deja pastillas blandas y ríos de glicerina.',
      'Calentar solo ayuda si la espesaron grasas duras frías (traza falsa).',
    ],
  },
  'keep-fluid': {
    answer: [
      'Bate solo hasta que no se vea aceite y sigue a mano; aceites y sosa a 30 o 38 °C (86 a 100 °F).',
    ],
    why: [
      'Aceites lentos, 60 % o más: oliva, girasol alto oleico, salvado de arroz, manteca de cerdo; ricino 5 % como mucho, pocas mantecas.',
      'Sosa al 28 o 30 %, que son 2,3 a 2,6 partes de agua por una de sosa.',
      'Polvos ya humedecidos y todo a mano antes de echar la sosa.',
      'Una esencia ya probada, al final, a mano.',
      'No tan fría que las grasas duras se enturbien.',
    ],
  },
  'pot-time': {
    answer: [
      'Con aceites lentos y esencia tranquila, 10 a 30 minutos desde la emulsión; con una rápida, quizá uno.',
    ],
    why: [
      'Cada golpe de batidora cuesta minutos, y el calor también.',
      'Primero colores, moldes y útiles listos; la esencia al final.',
      'Para más tiempo: sosa al 28 o 30 %, 30 a 38 °C (86 a 100 °F), aceites lentos.',
    ],
  },
  'slow-oils': {
    answer: [
      'Lentos: oliva, girasol alto oleico, salvado de arroz, almendras, manteca de cerdo.',
      'Rápidos: ricino sobre 5 %, palma, mantecas.',
    ],
    why: [
      spaced`
        Una receta para remolinos, por práctica común: 50 a 60 % de aceite líquido lento, 20 a 25 % de
        coco, el resto manteca de cerdo o palma, ricino 0 a 5 %.
      `,
      'El orujo de oliva es más rápido que otro de oliva.',
      'Cada aceite lleva su sosa: /plan oils:«55% oliva, 25% coco, 20% manteca de cerdo» la pesa.',
    ],
  },
  'swirl-water': {
    answer: [
      'Sosa al 28 o 30 % para un remolino fino (2,3 a 2,6 partes de agua por una de sosa), 33 % para uno sencillo.',
    ],
    why: [
      'Con menos agua espesa antes: no para remolinos.',
      'Con más agua gelifica antes y salen ríos de glicerina en el blanco.',
      'Nunca menos agua que sosa.',
      '/plan water:«29% lye» la pesa.',
    ],
  },
  'swirl-temperature': {
    answer: ['Aceites y agua de sosa, los dos a 30 o 38 °C (86 a 100 °F) para remolinos.'],
    why: [
      'Más caliente espesa antes; más fría cuajan las grasas duras, que es traza falsa: palma, manteca y cacao tienen que verse claros.',
      'Y entre los dos no más de unos 10 °C (18 °F).',
      'A 45 °C (113 °F) la masa sirve, solo va más rápida.',
    ],
  },
  'blend-or-stir': {
    answer: [
      'Golpes de 2 o 3 segundos removiendo entre uno y otro, hasta que no se vea aceite; el resto a mano.',
    ],
    why: [
      'A menudo 20 a 60 segundos en total.',
      'Color y esencia se remueven a mano; un segundo de batidora en una porción solo contra grumos, porque espesa.',
      'Sin batidora, o se rompió: bate con varillas, tarda 20 a 60 minutos, más con mucha oliva, con descansos.',
      'Quédate al lado.',
      'Nada tras una hora: revisa el peso de la sosa.',
    ],
  },
  'which-trace': {
    answer: ['Traza ligera para remolinos, media para capas, espesa para manga.'],
    why: [
      'Ligera: como natillas claras, el hilo apenas se marca (en la olla, de gota, con separadores, peinado, rayas).',
      'Media: una cucharada queda encima (capas, remolino a cucharadas).',
      'Espesa: guarda el pico como crema de mantequilla (manga, tapas con relieve).',
      'Todos los colores de un vertido, igual de espesos.',
    ],
  },
  'false-trace': {
    answer: ['Caliéntala: si vuelve a estar líquida era traza falsa, grasas duras cuajadas y no jabón.'],
    why: [
      'Señas: fría, menos de unos 30 °C (86 °F), mate o granulosa, con vetas de aceite, con palma, manteca o mantecas.',
      'Caliéntala a unos 40 °C (104 °F) removiendo y bate hasta que siga espesa.',
      'Vertida así puede cortarse, con bolsas de aceite y sosa.',
    ],
  },
  'what-is-trace': {
    answer: [
      'Traza: un hilo de masa se queda un momento encima.',
      'La emulsión es justo antes: sin vetas de aceite, como leche.',
    ],
    why: [
      'Con la batidora apagada, levántala y deja gotear.',
      'Emulsión: un solo color, sin brillo de aceite, y sigue así al reposar; aquí entran los colores.',
      'Ligera: natillas claras, el hilo apenas se marca.',
      'Media: queda encima, como un flan.',
      'Espesa: el pico se sostiene.',
      'Espesa pero fría, mate y con vetas de aceite es traza falsa.',
    ],
  },
  'changed-in-pot': {
    answer: [
      'Viértelo: algunos cambian en la masa cruda y vuelven en días.',
      'Marrón o gris después de una semana, así queda.',
    ],
    why: [
      'No eches más ahora, no se puede juzgar.',
      spaced`
        Un rosa que va a naranja o un ultramar apagado suelen volver cuando se gasta la sosa; azul de
        hierro, violeta de manganeso, carmín y colorantes de comida no.
      `,
      'Mira su lista para la próxima: /colourant check.',
      'El jabón en sí es bueno.',
    ],
  },
};
