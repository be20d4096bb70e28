import { spaced } from '../../../engine/over-lines.ts';
import type { lyeAsked as english } from '../../en/lye/lye-asked.ts';

/** What is said to what is asked of a thing near lye: whether it changes the lye, how long it keeps, which is which. */
export const lyeAsked: typeof english = {
  'takes-no-lye': {
    answer: ['La sosa no cambia: arcilla, color, miel, azúcar, sal, avena y aroma no gastan nada de ella.'],
    why: [
      'Se calcula solo con aceites, grasas y ceras.',
      'Solo el ácido gasta algo (vinagre, limón, ácido cítrico), y la leche o la nata traen un poco de grasa.',
      spaced`
        Cuida lo demás: miel y azúcar calientan, 30 g por kg de aceites como mucho; la arcilla bebe
        agua, mójala antes; algunos aromas espesan de golpe.
      `,
      '/plan additives:«miel 15 g» lo cuenta.',
    ],
  },
  'wax-counted': {
    answer: [
      'Sí, cuéntala: la cera de abejas gasta sosa como un aceite, pero la mitad, unos 0,067 g de NaOH por gramo.',
    ],
    why: [
      spaced`
        Su índice de saponificación es de 87 a 104 mg KOH/g (Farmacopea Europea); 20 g gastan 1,3 g con
        5 % de sobreengrasado, poco junto a los aceites.
      `,
      'La cera de soja es un aceite endurecido y gasta como tal; la parafina, nada.',
      '«Cuánta sosa para 500 g de oliva y 20 g de cera de abejas».',
      'Se funde a 65 °C (149 °F), con cuidado.',
    ],
  },
  'names-of-lye': {
    answer: [
      'Para pastillas son lo mismo: sosa, soda cáustica e hidróxido de sodio (NaOH).',
      'La potasa (KOH) es otra.',
    ],
    why: [
      'Manda la etiqueta, no el nombre: «hidróxido de sodio» o NaOH, CAS 1310-73-2, 98 % o más y nada más.',
      'El KOH (1310-58-3) da jabón blando y lleva otro peso.',
      'No es sosa: carbonato, bicarbonato, lejía de ropa; el desatascador puede llevar aluminio.',
      'Un bote sin etiqueta no se usa ni se prueba nunca; todo bajo llave.',
    ],
  },
  'flakes-or-pearls': {
    answer: [
      'El mismo peso: escamas, perlas y granos son la misma sosa, gramo por gramo, si la pureza es igual.',
    ],
    why: [
      'Por eso se pesa, nunca por cucharadas: una cucharada de perlas tiene más que una de escamas.',
      'La etiqueta ha de decir hidróxido de sodio, 98 % o más, y nada más.',
      'Las escamas tardan más en disolverse, las perlas ruedan y saltan: gafas y guantes.',
    ],
  },
  'soda-or-potash': {
    answer: ['Sosa (NaOH) para pastillas duras; potasa (KOH) para pasta y jabón líquido, queda blando.'],
    why: [
      'Nunca una por otra a igual peso: los mismos aceites gastan 1,40 veces más KOH puro, 1,56 al 90 %.',
      'Las dos juntas: 5 a 10 % de KOH da una pastilla más cremosa, un 60 % es para afeitar.',
      '/plan lye:«both» calcula los dos pesos.',
    ],
  },
  'tap-water': {
    answer: ['Mejor destilada.', 'Del grifo sirve si es blanda y se bebe; la dura deja nata y puntitos.'],
    why: [
      'La cal forma un poco de jabón que no se disuelve, enturbia la sosa y quita espuma; el hierro enrancia.',
      'No gasta sosa que cuente: los pesos no cambian.',
      'Desionizada, purificada o de lluvia filtrada y hervida valen igual.',
      'Siempre fría.',
    ],
  },
  'lye-water-keeps': {
    answer: ['Sí: clara y fría dura semanas, cerrada y con etiqueta, en HDPE (2) o PP (5), bajo llave.'],
    why: [
      'Ni vidrio, ni metal, ni PET, ni nada de bebidas.',
      'Escribe fuerza, fecha y «corrosivo».',
      'Pésala al guardar y al usar: si perdió agua está más fuerte.',
      'La piel blanca o los copos son carbonato: usa solo lo claro, y si hay mucho, haz otra.',
      'Al 50 % se hace sólida por debajo de unos 12 °C (54 °F): templa el cuarto con la garrafa cerrada, nunca al fuego.',
      'Fría quema igual.',
    ],
  },
  'cooling-time': {
    answer: ['De una a dos horas sola; 20 a 30 minutos con la jarra en un barreño de agua fría.'],
    why: [
      'Empieza a 80 a 95 °C (176 a 203 °F) y ha de quedar a 35 a 45 °C (95 a 113 °F).',
      'Sin tapar o con la tapa suelta, fuera de alcance, y nadie la deja sola.',
      'Nada dentro de la jarra para enfriarla: el agua sobre sosa caliente salpica.',
      'Con hielo en lugar de parte del agua desde el principio se calienta menos.',
    ],
  },
  'superfat-on-which': {
    answer: ['Se le quita a la sosa: los aceites quedan como están, y un 5 % es la sosa entera × 0,95.'],
    why: [
      'No se echa nada de más.',
      'Se calcula la sosa que gastarían todos los aceites y se deja fuera ese porcentaje, así queda ese aceite libre.',
      'Añadir un 5 % más de aceite da casi lo mismo; no hagas las dos cosas sin querer.',
      '«Cuánta sosa para 500 g de oliva, sobreengrasado 5».',
    ],
  },
  'superfat-low': {
    answer: ['Lo usual en pastillas es 5 %: de 2 a 4 % deja poco margen a la báscula, 0 es solo para ropa.'],
    why: [
      spaced`
        Con la sosa pesada al gramo y aceites conocidos, un 3 % da una pastilla buena, que limpia más y
        hace más espuma; para manos que se lavan mucho, 5 a 8.
      `,
      'En un kilo, un 3 % son 4 g de sosa hasta 0.',
      'Por debajo de 2 %, solo para ropa y con guantes.',
    ],
  },
  'superfat-from-lye': {
    answer: [
      'Sí: sobreengrasado = 1 − sosa que entró / sosa que gastarían los aceites.',
      'Dime ambas y lo calculo.',
    ],
    why: [
      'Por ejemplo «puse 130 g de sosa en 700 g de oliva y 300 g de coco».',
      'Hace falta cada aceite con su peso, y qué álcali era: NaOH o KOH, y su pureza.',
      'Con la sosa sola no se puede saber.',
    ],
  },
  'less-lye-went-in': {
    answer: ['No quema: con menos sosa sobra aceite y sale más blando, graso y se enrancia antes.'],
    why: [
      'Hasta un 10 % menos es una pastilla suave; con un 15 % o más queda blanda o no cuaja.',
      'No añadas a ojo.',
      'Cuánta falta: «puse 100 g de sosa en vez de 130 en 1000 g de oliva», y te digo qué sobra.',
    ],
  },
  'rest-of-lye': {
    answer: ['Solo mientras esté líquida, y solo si sabes al gramo lo que falta: si no, déjalo.'],
    why: [
      spaced`
        Pesa la sosa que falta, disuélvela en su mismo peso de agua fría, deja que baje a unos 40 °C
        (104 °F) y bátela poco a poco; gafas y guantes.
      `,
      'Dime la receta y lo que entró, y calculo el resto.',
      'Nunca seca en la masa, nunca a ojo, nunca si ya cuajó: sin ella el jabón solo sale blando y graso.',
    ],
  },
  'scale-by-grams': {
    answer: [
      'Si marca de más, entró menos sosa y no quema.',
      'Si marca de menos, entró más: no lo uses aún.',
    ],
    why: [
      'Unos gramos de error pesan más en lo más pequeño, la sosa: 5 g son un 7 % de 70 g y un 1 % de 500 g de aceite.',
      'Quita (o suma) lo mismo a cada peso y dime lo que entró de verdad: «puse 75 g de sosa en 500 g de oliva».',
      'Si falla en el mismo porcentaje siempre, la receta vale.',
      'Pruébala con una moneda o un litro de agua (1000 g), y pesa la sosa en una que marque 1 g.',
    ],
  },
  'lye-heavy-laundry': {
    answer: ['No: un jabón con sosa de más quema las manos también al lavar, y la sosa queda en la tela.'],
    why: [
      'El de ropa lleva 0 a 2 % de sobreengrasado, no menos de nada.',
      'Guantes, ciérralo y ponle etiqueta.',
      'Si todos los pesos son seguros se arregla con justo los aceites que faltan; si no, entrégalo como residuo cáustico.',
    ],
  },
  'lye-on-label': {
    answer: [
      'Se usan las dos: en qué se convirtió (sodium olivate), o los aceites y sodium hydroxide como entran.',
    ],
    why: [
      'UE y Reino Unido: nombres INCI, por peso; los jabones como «sodium olivate, sodium cocoate, aqua, glycerin».',
      'EE.',
      'UU.: el jabón simple es más libre.',
      'Si el hidróxido se gastó del todo no hace falta que esté además.',
      'Mandan tus normas locales: pregunta a tu autoridad.',
      'No soy abogado.',
    ],
  },
  'children-cured': {
    answer: ['Sí, con pastillas curadas: cuatro semanas, que no piquen, y la sosa guardada.'],
    why: [
      'Sellar, envolver, pintar encima con mica y agua: todo bien.',
      'Con las recientes no: el jabón crudo quema dos días y más, y las virutas llegan a ojos y boca.',
      'La purpurina de manualidades no es para jabón.',
    ],
  },
  'lye-smell': {
    answer: ['A nada.', 'Al disolverse sube un vaho que pica en nariz y garganta: aparta la cara.'],
    why: [
      'Mézclala con corriente de aire o fuera.',
      'Si huele a lejía, amoníaco o huevo podrido es otra cosa: sal al aire libre y luego pregunta.',
    ],
  },
  'ash-lye-once': {
    answer: [
      'Lejía de potasa, de agua pasada por ceniza de leña: sobre todo carbonato de potasio, cocido horas con grasa.',
    ],
    why: [
      'Con cal viva pasaba a hidróxido de potasio.',
      'Daba jabón blando; con sal se endurecía.',
      'Su fuerza era a ojo, por eso a menudo irritaba.',
      'Hoy el hidróxido puro y pesado es más suave y seguro.',
    ],
  },
  'trace-signs': {
    answer: [
      'Las gotas de la batidora se quedan un momento encima, como natillas claras: eso es traza ligera.',
    ],
    why: [
      'Ya no flota aceite y todo es de un color.',
      'La media sostiene una línea, como yogur; la espesa, un pico.',
      spaced`
        Bate a golpes de pocos segundos y remueve entre medias, aceites y agua de sosa cerca de 40 °C
        (104 °F), la batidora bajo la superficie.
      `,
      'Para colores, mejor la ligera.',
    ],
  },
  wrapping: {
    answer: ['Las curadas, en algo que respire: papel, caja de cartón o una faja de papel.', 'Film no.'],
    why: [
      'Siguen secando y en plástico sudan.',
      'El papel de horno no deja ver la grasa; el impreso fino puede desteñir.',
      'Fresco, seco y a oscuras guardan aroma y color.',
    ],
  },
  'soda-ash-avoided': {
    answer: [
      'Tapa la superficie enseguida y pon menos agua: la ceniza de sosa no daña, sale del jabón crudo y el aire.',
    ],
    why: [
      spaced`
        Papel de horno o film pegado encima, abrigado para que gelifique, agua unas 2 veces la sosa o
        menos (sosa al 33 % o más), el jabón no muy frío, tapado un día o dos.
      `,
      'La que ya hay: vapor, un paño húmedo o un cepillo, con guantes.',
      'Granos que pican no son ceniza, son sosa.',
    ],
  },
};
