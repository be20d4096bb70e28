import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueNamed as english } from '../../../en/colour/technique/named.ts';

/** Respuestas a una parte de una técnica, cuando la pregunta la nombra. */
export const techniqueNamed: typeof english = {
  'ash-steam': {
    answer: [
      'Sí: vapor por encima un minuto, o un enjuague con agua fresca, con guantes, y a secar.',
      'Es inofensiva.',
    ],
    why: [
      'Es ceniza de soda: carbonato, solo en la superficie.',
      'Con la plancha o una olla, a un palmo, cuando la pastilla tiene unos días.',
      'Vuelve un poco; con el uso se va.',
      'Si está blanca por dentro o pica en la lengua no es ceniza: no la uses.',
    ],
  },
  'ash-alcohol': {
    answer: [
      'Alcohol: una rociada fina de isopropílico de 91 a 99 % sobre la cara fresca y se tapa.',
      'Lejos de llamas y con ventana abierta.',
    ],
    why: [
      'Sirve contra la ceniza que va a salir, hay quien repite a los diez minutos; la que ya está no la quita: eso es vapor o un enjuague.',
      'Nunca en la masa ni en la sosa: hierve y se corta.',
      'Tapar un día y menos agua hacen más.',
    ],
  },
  'oil-or-water': {
    answer: [
      'Micas, óxidos y carbón en aceite ligero, 1 cda por cdta; arcillas en agua; el dióxido de titanio, como diga su etiqueta.',
    ],
    why: [
      'Si dudas: una pizca en agua y otra en aceite, y vale donde quede liso.',
      'El ultramar admite los dos, en agua algo mejor.',
      'Ese aceite se resta de los aceites de la receta; el agua, de su agua.',
      'Dime el color y te digo cuánto: /dose.',
    ],
  },
  'gloves-raw': {
    answer: [
      'Sí, guantes los dos primeros días: el jabón fresco aún quema, en el molde, al desmoldar y al cortar.',
    ],
    why: [
      'Pasadas 48 horas y si no pica en la lengua, con las manos; como jabón, desde las cuatro semanas.',
      'Gafas mientras está líquido.',
    ],
  },
  'split-oil': {
    answer: ['Aceite arriba en la olla: no se unió.', 'Bate a golpes hasta que no se vea aceite y vierte.'],
    why: [
      'Fría, cuajaron grasas duras: caliéntala suave a unos 40 °C (104 °F) removiendo.',
      'Después de la esencia: bate, se une pero espesa rápido, así que sin remolino.',
      'Si no se une: acábala como proceso caliente y revisa el peso de la sosa.',
      'En el molde: guantes, todo de vuelta a la olla, y lo mismo.',
      'Aceite o agua encima al día siguiente: así no lo uses.',
    ],
  },
  'colours-left': {
    answer: [
      'Fuera la batidora.',
      'Mezcla a mano los colores ya humedecidos, jarra por jarra, y al molde a cucharadas.',
    ],
    why: [
      'Ya no un remolino fino: cucharadas, capas gruesas o un marmolado basto, apretado, y golpes del molde en la mesa.',
      'La jarra más espesa va primero, y la esencia no entra en las otras.',
      'Si no se deja remover: esa parte sin color.',
      'Es buen jabón si la sosa se pesó bien.',
    ],
  },
  'solid-now': {
    answer: ['Guantes: apriétala ya en el molde, o caliéntala suave y acábala como proceso caliente.'],
    why: [
      'Sigue siendo jabón, si la sosa se pesó bien; solo se perdió el remolino.',
      'Cierra los huecos y golpea el molde.',
      spaced`
        Proceso caliente: olla lenta o baño maría de unos 70 a 80 °C (158 a 176 °F), removiendo, una
        hora o más, hasta que esté liso y no pique.
      `,
      'Caliente y subiendo: a una olla mayor, sin tapa, la cara lejos.',
      'Fue la esencia o el calor: la próxima, esa al final y a 30 °C (86 °F).',
    ],
  },
  'teaspoon-in-grams': {
    answer: [
      'Una cucharadita rasa: mica 1 a 2 g, carbón 1,5, ultramar y óxidos 2 a 4, dióxido de titanio unos 3.',
    ],
    why: [
      'Depende del polvo y de cómo se llene: pesa una vez la cucharadita rasa de tu bote y apúntalo en la tapa.',
      'Dime cuál y lo calculo: /dose da cucharas y gramos.',
    ],
  },
  'a-bit-warm': {
    answer: ['Sirve, solo va más rápida: 30 a 38 °C (86 a 100 °F) dan más tiempo para un remolino.'],
    why: [
      'Ten todo a mano, bate solo hasta emulsión, la esencia al final.',
      'Un baño de agua fresca baja cinco grados; para antes de que las grasas duras se enturbien.',
    ],
  },
  'too-warm': {
    answer: [
      'Demasiado caliente para un remolino: espesa en minutos.',
      'Deja aceites y sosa en 30 a 38 °C (86 a 100 °F).',
    ],
    why: [
      'Los dos parecidos, no más de unos 10 °C (18 °F) de diferencia; ayuda un baño de agua fresca.',
      'Vertida caliente además gelifica antes y más: sin toalla.',
    ],
  },
  'for-lips': {
    answer: [
      '¿Qué color?',
      'El jabón se enjuaga, pero los labios tienen listas propias: lo dice /colourant check con tu región.',
    ],
    why: [
      'En EE.',
      'UU. ultramares y óxidos de cromo no son para labios (21 CFR 73); óxidos de hierro, mica y dióxido de titanio sí.',
      'Un color apto para labios puede cambiar igual en la sosa.',
    ],
  },
  'for-a-baby': {
    answer: [
      'Para un bebé mejor sin color ni esencia; si acaso, muy poca arcilla blanca o rosa.',
      'Pregunta antes al médico.',
    ],
    why: [
      'Curado seis semanas y sin que pique a un adulto.',
      'Depende de la edad: por debajo de tres años las normas para lo que se vende son más estrictas (Reglamento UE 1223/2009, anexo I).',
    ],
  },
  'titanium-lumps': {
    answer: [
      'Dióxido de titanio: 1 cdta en 1 cda de agua o aceite ligero, según su etiqueta, bien batido y colado.',
    ],
    why: [
      'El de agua hace bolas en aceite, y al revés: prueba una pizca en cada uno.',
      'Que se empape diez minutos.',
      'Ya en la masa: uno o dos segundos de batidora en esa porción.',
      'Las motas de una pastilla hecha se quedan, y no hacen daño si no son duras ni pican.',
    ],
  },
  'whole-grams': {
    answer: [
      'Gramos enteros: los polvos, por cucharas rasas; para la sosa, al menos 500 g de aceites, o una báscula de 0,1 g.',
    ],
    why: [
      spaced`
        Medio gramo es el 3,5 % de la sosa de 100 g de aceites, y eso es casi todo un sobreengrasado del
        5 % (aritmética); en 500 g es el 0,7 %.
      `,
      'Un gramo de mica es casi una cucharadita, así que no pesa una pizca.',
      'O mezcla 10 g de polvo en 30 g de aceite y toma un cuarto de eso para cada parte.',
      'La sosa nunca va por cucharas.',
    ],
  },
  'less-water': {
    answer: [
      'Sí, con menos agua espesa y endurece antes: 1,5 a 1,8 veces el peso de la sosa.',
      'No para remolinos finos.',
    ],
    why: [
      'La sosa queda igual, solo cambia su agua.',
      'Para 100 g de sosa, 150 a 180 g de agua; nunca menos agua que sosa, o no se disuelve.',
      'En la olla calienta más y en el molde gelifica menos, con menos ceniza y menos ríos, y se desmolda antes.',
      'Dos veces o más es lo usual al empezar.',
      'El agua que faltó no se echa después en la masa.',
    ],
  },
  'lumps-in-bar': {
    answer: [
      'Con guantes, aprieta uno: blando y en polvo es pigmento.',
      'Duro, húmedo, crujiente o que pica puede ser sosa: no lo uses.',
    ],
    why: [
      'Redondos y cerosos, por toda la pastilla: grasas que cuajaron (estearina), inofensivas ya curado.',
      'Puntos de polvo: dióxido de titanio sin humedecer, también inofensivo.',
      'La próxima, remójalo, bátelo y cuélalo.',
      '¿Cómo son: duros o blandos, secos o con líquido?',
      'Dímelo y sigo.',
    ],
  },
  'split-where': {
    answer: [
      '¿Dónde está: aún en la olla o ya vertido?',
      'En la olla: bate a golpes hasta que no se vea aceite.',
      'Vertido: guantes, no lo uses.',
    ],
    why: [
      'En la olla, fría y con grasas duras: caliéntala suave a unos 40 °C (104 °F) removiendo, y luego bate.',
      'En el molde con aceite o agua encima: todo de vuelta a la olla, con guantes y gafas, y a batir.',
      'Una pastilla hecha que se raja o se desmiga es otra cosa: dime qué ves.',
    ],
  },
};
