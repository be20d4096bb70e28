import { spaced } from '../../../../engine/over-lines.ts';
import type { techniquePowders as english } from '../../../en/colour/technique/powders.ts';

/** Lo que se dice de los polvos en la tarea: cuándo entran, en qué se mojan, cuántas cucharas y qué hacen ahí. */
export const techniquePowders: typeof english = {
  'when-colour': {
    answer: ['En emulsión o traza muy ligera, ya humedecido, y antes de la esencia.'],
    why: [
      'En cuanto no se ve aceite no hay que esperar: reparte la masa y remueve cada color a mano.',
      'Un solo color para todo puede ir en los aceites antes de la sosa.',
      'En traza espesa ya no se reparte bien.',
    ],
  },
  'colour-or-scent': {
    answer: ['Primero el color, la esencia al final.'],
    why: [
      'Una esencia puede espesar en segundos.',
      'Remuévela a mano, o repártela entre los vasos justo antes de verter.',
      'Una que sabes tranquila puede ir en los aceites desde el principio.',
    ],
  },
  'colour-in-lye-water': {
    answer: ['Mejor no: humedece el color aparte, en aceite o agua, y échalo en emulsión o en los aceites.'],
    why: [
      'La mica flota en el agua de sosa, y la sosa fuerte cambia algunos tintes para siempre.',
      'Un solo color para todo puede ir, humedecido, en los aceites antes de la sosa.',
      'Añil y rubia hay quien los echa al agua de sosa: primero una prueba pequeña.',
      'La sosa va al agua fría, despacio, sin nada dentro que haga espuma o calor.',
    ],
  },
  'dry-in': {
    answer: [
      'Mejor no: el polvo seco deja motas.',
      'Humedece cada cucharadita en una cucharada de aceite ligero.',
    ],
    why: [
      'La mica a menudo lo perdona; óxidos, dióxido de titanio, carbón y arcilla no.',
      'La arcilla se humedece en unas tres veces su volumen de agua.',
      '/dose dice en qué va cada uno.',
    ],
  },
  'mix-colourants': {
    answer: ['Sí: óxidos, ultramares, arcillas y micas se mezclan, juntos no más que la dosis llena de uno.'],
    why: [
      'Humedece cada uno a su modo: arcilla en agua, mica en aceite.',
      'Los tonos opuestos (rojo y verde, azul y naranja, amarillo y violeta) dan gris pardo.',
      '/preview mix:«1/4 tsp ultramarine + 1/4 tsp yellow oxide» enseña qué sale.',
    ],
  },
  'premix-keeps': {
    answer: [
      'Humedecido en aceite: semanas, cerrado y a oscuras, mientras el aceite esté fresco.',
      'En agua: el mismo día.',
    ],
    why: [
      'Ponle el día y cuánto polvo lleva la cucharada, y remueve antes de usar.',
      'Huele a viejo: fuera.',
      'El aceite guardado así cuenta entre los aceites del lote.',
    ],
  },
  'carrier-counts': {
    answer: ['Sácalo de los aceites o del agua de la receta: así no cambia nada.'],
    why: [
      'Una cucharada de aceite de más (14 g) en 1 kg de aceites lleva un sobreengrasado de 5 % a 6,3.',
      'El agua de más solo lo deja blando más tiempo.',
      '/dose dice qué hace en tu porción.',
    ],
  },
  'spoon-or-grams': {
    answer: ['Gramos desde un gramo; por debajo, cucharadita rasa, nunca colmada.'],
    why: [
      'Una cucharadita rasa pesa según el polvo: mica 1 a 2 g, carbón 1,5, ultramar y óxidos 2 a 4, dióxido de titanio unos 3.',
      'Pesa una vez la de tu bote.',
      '/dose da las dos cosas.',
    ],
  },
  'of-oils-or-soap': {
    answer: ['De los aceites, en casi todas las recetas y grupos: agua y sosa no se cuentan.'],
    why: [
      '1 kg de aceites da cerca de 1,4 kg de masa, así que una dosis por aceites es 1,4 veces más fuerte que la misma por masa.',
      'Dime cuál: «500 g de aceites» o «500 g de masa».',
    ],
  },
  'test-colour': {
    answer: [
      'Una pizca en una cucharada de masa, en un vasito abrigado; mírala a los dos días y a las cuatro semanas.',
    ],
    why: [
      'Al final de un lote no cuesta nada.',
      'Apunta en el vaso cuánto y de qué.',
      'La mitad a la luz y la mitad a oscuras dice si se va.',
      '/calibrate aprende tus botes de esas pastillas.',
    ],
  },
  'store-colours': {
    answer: [
      'Cerrados, secos, a oscuras y con etiqueta: minerales y micas duran muchos años, plantas cerca de uno.',
    ],
    why: [
      'Grumos por humedad: machaca y tamiza, siguen buenos.',
      'Mal olor o moho en un polvo de planta: fuera.',
      'Guarda la etiqueta con sus números CI.',
    ],
  },
  'no-lumps': {
    answer: [
      'Aplasta 1 cdta de polvo en 1 cda de aceite ligero hasta que nada quede seco, 10 minutos, remueve y cuela.',
    ],
    why: [
      spaced`
        Con un batidorcito o el dorso de la cuchara; la glicerina también vale, y el agua para arcillas
        y para el dióxido que se vende para agua.
      `,
      'Grumos ya en la masa: uno o dos segundos de batidora en esa porción, o pásala por un colador.',
    ],
  },
  'mica-floats': {
    answer: ['Es normal: remueve hasta que toda esté mojada y brille, y otra vez justo antes de echarla.'],
    why: [
      'Se posa y flota porque son escamas, no se disuelve.',
      'Una gota más de aceite, un batidorcito, diez minutos.',
      'Si quedan vetas en la masa: remueve más a mano esa porción.',
    ],
  },
  'powder-thickens': {
    answer: [
      'Un poco: la arcilla bebe agua, el dióxido de titanio menos.',
      'Humedécelos antes y no pases de la dosis.',
    ],
    why: [
      'La arcilla en unas tres veces su volumen de agua, quitada de la de la sosa.',
      'Mucho polvo endurece el remolino y deja pastillas secas que se desmigan.',
    ],
  },
  'too-much-colour': {
    answer: [
      'Lo normal es 1 cdta por 500 g de aceites, 2 lo más.',
      'De ahí en adelante: espuma de color, paños manchados, se desmiga.',
    ],
    why: [
      'Menos de los fuertes: ultramar y óxidos 1/2 a 1 cdta, carbón 1 a 1 1/2, añil 1/4 a 1/2.',
      'Aún en la olla: mezcla masa sin color, o repártela como parte oscura de varios lotes.',
      'Ya hecho: buen jabón si la sosa se pesó bien; pruébalo en un trapo viejo, o rállalo en jabón sin color.',
      'Dime cuál y cuánto: «2 cda de mica es mucho para 500 g de aceites».',
    ],
  },
  'powder-dust': {
    answer: [
      'Papel húmedo encima, recogido hacia dentro, y luego agua jabonosa.',
      'Sin soplar, barrer ni cepillar.',
    ],
    why: [
      'Guantes, mascarilla (FFP2 o N95), ventana cerrada hasta que se pose, sin ventilador.',
      'La próxima vez: con cuchara, despacio, a ras del vaso y debajo de su aceite, con un paño húmedo debajo.',
      'La aspiradora echa el polvo fino por detrás, si no tiene filtro fino.',
    ],
  },
  'mica-settles': {
    answer: ['Es normal: el polvo se hunde en el aceite.', 'Remueve hasta el fondo justo antes de echarla.'],
    why: [
      'No se disuelve, y no se pierde nada.',
      'Si hay barro espeso: unas gotas de aceite y un batidorcito.',
      'Humedécela pronto, que se empape, y tápala.',
      'La glicerina la sostiene más rato, el agua menos.',
    ],
  },
};
