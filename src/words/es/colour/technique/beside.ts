import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueBeside as english } from '../../../en/colour/technique/beside.ts';

/** Lo que se dice a lo que rodea al color del jabón: primero qué hacer, luego por qué. */
export const techniqueBeside: typeof english = {
  'ash-avoid': {
    answer: [
      'La ceniza de sosa no hace daño: vapor o un paño húmedo la quitan.',
      'Para evitarla: tapa el molde, menos agua, gel.',
    ],
    why: [
      'La capa fina, seca y blanca de encima es carbonato de sosa y aire, no tu pigmento blanco.',
      'Tapa el molde sin que entre aire el primer día, sosa a cerca del 33 %, vertido en traza ligera bien hecha y no frío.',
      'Hay quien rocía alcohol isopropílico (91 % o más) sobre lo recién vertido: nunca cerca de una llama, ventana abierta.',
      'Granos duros, cristales mojados o que pica no es ceniza: guantes, y no lo uses.',
    ],
  },
  'rebatch-colour': {
    answer: [
      'Sí: rállalo, fúndelo suave con un poco de agua y echa color humedecido.',
      'El color viejo se queda dentro.',
    ],
    why: [
      spaced`
        Así que ve a más oscuro: marrón, negro, verde o azul hondo; varios colores dan marrón. 1 a 2 cda
        de agua por 500 g de jabón, tapado, en olla lenta o baño maría de 70 a 80 °C (158 a 176 °F), al
        final el color en aceite, y apretado en el molde: rústico, sin remolinos.
      `,
      'El jabón joven quema: guantes.',
      'Lo que pica, suda o tiene bolas blancas duras no es cosa de color: antes /diagnose.',
    ],
  },
  'colour-in-mould': {
    answer: [
      'Ya no de manera pareja.',
      'Mientras esté blando: gotas de mica en aceite por encima, tiradas con un palito.',
    ],
    why: [
      '1 cdta de mica en 2 o 3 cdta de aceite ligero, unas gotas, una o dos pasadas cerca de la superficie; más hondo deja manchas y aire.',
      'Vertido hace un minuto y aún líquido: de vuelta a la jarra y el color humedecido a mano.',
      'Ya firme: déjalo, y espolvorea o pinta la tapa.',
      'Sin color queda crema.',
    ],
  },
  'cover-mould': {
    answer: [
      'Tapado las primeras 24 horas: menos ceniza y colores más vivos.',
      'Con leche, miel o azúcar: abierto y fresco.',
    ],
    why: [
      'Una tapa o un cartón, y una toalla alrededor si el sitio es frío y quieres gel.',
      'Para blanco y pasteles, sin toalla.',
      'Toca el lado al cabo de una hora: caliente y con grieta arriba, se destapa.',
      'Horno solo templado a 60 °C (140 °F) como mucho y apagado; nada de nevera con comida.',
    ],
  },
  'mould-care': {
    answer: [
      'Moldes: deja secar un día lo que queda, despégalo y luego agua caliente con lavavajillas, con guantes.',
    ],
    why: [
      'La masa cruda quema: espera a que sea jabón.',
      'Si la silicona guarda algo de color o de olor no pasa nada: una hora en agua caliente con jabón quita casi todo.',
      'La madera no va al lavavajillas, y nada de cepillo metálico.',
      spaced`
        Forrar sin arrugas: papel (de congelar o de horno) cortado a la medida de dentro, esquinas
        marcadas con una regla, dos tiras cruzadas, sujetas con un poco de aceite o cinta por fuera.
      `,
      'La silicona no lo necesita.',
    ],
  },
  'cure-time': {
    answer: ['Cuatro a seis semanas, con color o sin él; casi todo oliva, mejor tras unos meses.'],
    why: [
      'En rejilla con aire, dado la vuelta cada semana, lejos del sol, que destiñe las plantas.',
      'El color no lo alarga ni lo acorta; casi todos aclaran un poco al secar.',
      'Guantes las primeras 48 horas; sobre la piel desde las cuatro semanas.',
      '/batch poured te avisa.',
    ],
  },
  'lye-nerves': {
    answer: ['Respeto sí, miedo no hace falta: gafas, guantes, y la sosa despacio sobre agua fría.'],
    why: [
      'Nunca agua sobre sosa.',
      'Antes, todo pesado y a mano, manga larga, zapato cerrado, ventana abierta, sin niños ni mascotas, una hora sin que nadie llame.',
      'Se calienta sola a unos 80 a 90 °C (176 a 194 °F) y echa vapor: aparta la cara, déjala hasta 35 °C (95 °F).',
      'Una salpicadura: agua corriente en seguida, al menos 20 minutos.',
      'Empieza con una receta sencilla de 500 g de aceites y un color: /plan la pesa.',
    ],
  },
  'stained-things': {
    answer: [
      'Primero quita la grasa con papel, luego jabón y agua caliente.',
      'Silicona y plástico guardan algo de color.',
    ],
    why: [
      'Guantes mientras la masa esté cruda.',
      'Carbón, óxidos y mica quedan encima y salen con lavavajillas; cúrcuma, tintes y lacas tiñen plástico, madera y tela.',
      'Manos: aceite y luego jabón.',
      'Piedra y juntas: cuanto antes.',
      'Ni lejía ni ácido donde aún haya sosa.',
      'Una espátula y una jarra para los oscuros.',
      'Una pastilla que mancha: menos color, 1 cdta por 500 g de aceites.',
    ],
  },
  'coloured-suds': {
    answer: [
      'La espuma debe salir casi blanca: mucho color o un tinte la tiñe.',
      'Feo, rara vez malo; la mitad la próxima.',
    ],
    why: [
      'Por encima de 1 cdta por 500 g de aceites (carbón y óxidos 1, ultramar y añil 1/2) se ve en la espuma y en la tela.',
      'Tintes, lacas y muchos neones la tiñen siempre.',
      'Prueba la pastilla en un trapo viejo antes de regalarla.',
      'Puede bajar en la cura.',
      'Si pica no es cosa de color: para, y /first-aid.',
    ],
  },
  'hot-soap': {
    answer: [
      'Sí: el agua de sosa llega a 80 a 90 °C (176 a 194 °F), y el jabón en el molde a 60 a 80 °C (140 a 176 °F).',
    ],
    why: [
      'Es el gel: templado desde una hora después, más oscuro en el centro, frío al otro día.',
      'Con leche, miel, azúcar, algunas esencias o una barra grande y tapada sube más.',
      'Grieta arriba, bulto o burbujas: destápalo, aire, una bandeja debajo, la cara lejos, guantes.',
      'El anillo en la pastilla cortada es solo gel a medias.',
    ],
  },
  'label-selling': {
    answer: [
      'Cada color por su nombre INCI o su número CI: la mica es «Mica, CI 77891, CI 77491», como diga su ficha.',
    ],
    why: [
      'UE y Reino Unido: los colorantes pueden ir al final en cualquier orden, por número CI (Reglamento 1223/2009, artículo 19).',
      spaced`
        Dióxido de titanio CI 77891, óxidos de hierro CI 77491, 77492, 77499, ultramar CI 77007, óxido
        de cromo CI 77288, carbón «Charcoal Powder».
      `,
      '«Puede contener» es para gamas de maquillaje.',
      'Lo que vendes pide allí su evaluación de seguridad.',
      'No soy abogado: pregunta a tu autoridad.',
    ],
  },
  'blend-two': {
    answer: [
      'Azul y amarillo: verde apagado.',
      'Rojo y blanco: rosa.',
      'Rojo y azul: ciruela.',
      'Negro y blanco: gris.',
      'Rojo y amarillo: naranja.',
    ],
    why: [
      'Los tonos opuestos (rojo y verde, azul y naranja, amarillo y violeta) dan marrón o gris.',
      'Los óxidos son terrosos, y lo que hacen también.',
      'Nombra los dos polvos y lo enseño: /preview mix:«1/4 tsp ultramarine + 1/4 tsp yellow oxide».',
    ],
  },
  'colour-families': {
    answer: [
      'Marrón: cacao, café.',
      'Amarillo a naranja: achiote, cúrcuma, pimentón.',
      'Rosa: rubia, arcilla rosa.',
      'Azul: añil.',
    ],
    why: [
      'Violeta: alcaneta, más gris que violeta.',
      'Verde: hojas y espirulina, que van a caqui; la arcilla verde se queda.',
      'Remolacha, jamaica, frutos rojos, maíz morado, guisante azul y col morada se vuelven marrones o grises en la sosa.',
      'Nombra uno y te digo qué será de él.',
    ],
  },
  'darker-lighter': {
    answer: [
      'Más oscuro: más de lo mismo, hasta el doble.',
      'Más claro: la mitad de color, o un poco de dióxido de titanio.',
    ],
    why: [
      'En la olla: de cuarto en cuarto de cucharadita, humedecido, a mano.',
      'La masa cruda se ve más oscura y amarilla que la pastilla.',
      'El blanco lo hace lechoso además de claro; la masa sin color lo baja sin eso.',
      'El negro agrisa: una pizca como mucho.',
      'El gel lo hace más hondo, y sin blanco en esa parte.',
      'El jabón hecho ya no se cambia.',
      'Dime color y cantidad: «ultramar, 500 g de aceites, la mitad».',
    ],
  },
  'small-batch': {
    answer: [
      'Con balanza de 1 g, 500 g de aceites al menos; con 0,1 g, hasta unos 100 g.',
      'Un color: una cucharada de masa.',
    ],
    why: [
      'Medio gramo de sosa es el 3,5 % de la sosa de 100 g de aceites, y eso es casi todo un sobreengrasado del 5 % (aritmética).',
      'Así que reparte un lote normal en vasitos y colorea cada uno con una pizca: 1/32 cdta en 2 cda.',
      'Una jarra estrecha y alta deja llegar a la batidora; con menos de 200 g, a mano.',
      'Los vasitos abrigados, para que gelifiquen como la barra.',
    ],
  },
};
