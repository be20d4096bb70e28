import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueOutright as english } from '../../../en/colour/technique/outright.ts';

/** Respuestas a preguntas cortas que dicen a las claras lo que piden. */
export const techniqueOutright: typeof english = {
  'rising-in-mould': {
    answer: [
      'Se recalentó.',
      'Gafas y guantes, niños fuera, una bandeja bajo el molde, destapado y con ventilador.',
    ],
    why: [
      'La cara lejos: está caliente y es cáustico.',
      'Si llega al borde: bájalo removiendo con una cuchara larga, o pasa un poco a una olla mayor.',
      'Sin toalla ni tapa, fuera del horno, al suelo frío.',
      'Si escupe, humea o se sale de la bandeja: apártate, déjalo y que nadie se acerque.',
      'Frío y firme es jabón si nada se separó.',
      'La próxima, más fresco y con menos miel, azúcar o leche.',
    ],
  },
  'zap-how': {
    answer: [
      'Frota una pastilla curada con la yema mojada y tócala con la punta de la lengua: un calambre como de pila es sosa libre.',
    ],
    why: [
      'Nunca masa cruda ni jabón de los primeros días, sin lamer la pastilla, nunca un niño.',
      'Si pica: enjuaga la boca con agua, escupe, deja la pastilla dos semanas y repite; si sigue picando: no la uses.',
      'Más seguro y sin lengua: tira de pH en la espuma (11 o más es sospechoso) y repasar los pesos.',
    ],
  },
  'fast-now': {
    answer: [
      'Para la batidora: al molde ya, a cucharadas y apretando.',
      'Casi siempre la apuró la esencia o el calor.',
    ],
    why: [
      spaced`
        Lo que la apura: esencias florales o de especias, masa a más de unos 40 °C (104 °F), mucha
        manteca, palma u orujo, batir de más, poca agua.
      `,
      '¿Qué esencia fue, y a qué calor?',
      'La próxima, 30 a 35 °C (86 a 95 °F), golpes de dos segundos, esa esencia al final y a mano.',
      'El jabón es bueno si la sosa se pesó bien.',
    ],
  },
  'titanium-oil-kind': {
    answer: ['Sí: el de aceite se moja en aceite ligero, no en agua, 1 cdta en 1 cda, con la misma dosis.'],
    why: [
      'Es el mismo blanco con una capa que quiere aceite; en agua flota y hace bolas.',
      'Descuenta ese aceite de los de la receta.',
      'Bátelo liso, diez minutos en remojo y cuélalo.',
    ],
  },
  'titanium-water-kind': {
    answer: ['Sí: el de agua se moja en agua, no en aceite, 1 cdta en 1 cda, con la misma dosis.'],
    why: [
      'En aceite hace bolas.',
      'Quita esa agua de la de la sosa, pero nunca menos agua que sosa.',
      'Bátelo liso, diez minutos en remojo y cuélalo; la glicerina también sirve.',
    ],
  },
  'titanium-which': {
    answer: [
      'Como diga su etiqueta: el dispersable en aceite va en aceite ligero, el de agua en agua, 1 cdta en 1 cda.',
    ],
    why: [
      'Sin etiqueta: una pizca en un plato de cada uno, y vale donde queda liso.',
      'La dosis es la misma.',
      'El aceite se descuenta de los aceites, el agua del agua; luego se bate y se cuela.',
    ],
  },
  'purple-turned': {
    answer: [
      'Casi siempre violeta de manganeso o un tinte: la sosa lo vuelve gris y con la cura no regresa.',
    ],
    why: [
      'Busca en la etiqueta CI 77742 o un número de tinte.',
      'La próxima, ultramar violeta (CI 77007), o una mica cuya lista solo nombre ese: /colourant check la lee.',
      'Un morado de planta, como la alcaneta, también se agrisa.',
      'El jabón es bueno.',
    ],
  },
  'powder-or-liquid': {
    answer: [
      'En frío, polvo: óxidos, ultramares y micas minerales aguantan.',
      'Los tintes líquidos suelen virar o correrse.',
    ],
    why: [
      'Los líquidos son casi siempre tintes para base de glicerina; alguno aguanta, así que antes una cucharada de masa.',
      'El polvo pide mojarse: 1 cdta en 1 cda de aceite ligero.',
      'Una dispersión comprada de un pigmento vale, pero no se sabe su fuerza: empieza con un cuarto.',
    ],
  },
  'plants-browned': {
    answer: [
      'Es normal: cáscara, pétalos y hierbas se ponen marrones en la sosa y no hacen daño.',
      'Para color, un mineral o achiote.',
    ],
    why: [
      'Es la planta y no aceite rancio, que se ve como manchas naranjas pegajosas con olor a viejo en pastillas de meses.',
      'Naranja que se queda: óxido naranja, o achiote macerado en aceite.',
      'Motas que se quedan: avena, amapola, pétalos de caléndula.',
    ],
  },
  'lye-and-plants': {
    answer: [
      'La sosa cambia casi todos: rojos y morados a marrón o gris, verdes a caqui.',
      'Los minerales aguantan.',
    ],
    why: [
      'Estas plantas aguantan mejor: rubia (rosa), añil (azul), achiote (naranja), cacao (marrón), carbón.',
      'Remolacha, jamaica y frutos rojos nunca se quedan.',
      'Nombra una y digo qué pasa con ella.',
    ],
  },
  'ombre-how': {
    answer: [
      'Degradado: vierte una parte sin color, añade un poco de color mojado al resto y vierte otra vez; cuatro o cinco pasos.',
    ],
    why: [
      'Traza ligera a media, todo de una olla, vertido bajo sobre una espátula.',
      'Masa lenta y esencia tranquila, porque lleva tiempo.',
      'El color crece rápido al final, cuando queda poco: /pour gradient calcula pasos iguales.',
    ],
  },
  'oils-for-mould': {
    answer: ['Unos 690 g de aceites por cada litro (1000 ml) de molde; lo demás es sosa y agua.'],
    why: [
      'Mide el molde con agua, o largo por ancho por alto en cm entre 1000.',
      'En pulgadas: largo por ancho por alto por 0,4 son los aceites en onzas.',
      'Un poco menos deja sitio arriba.',
      '/plan con ese tamaño lo reparte entre tus aceites y pesa la sosa.',
    ],
  },
  'batch-cost': {
    answer: [
      '/plan con prices dice lo que cuestan los aceites de un lote: «oliva 8 €/kg, coco 6 € por 500 g».',
    ],
    why: [
      'El precio de un bote se anota con él: /shelf add tiene price y size.',
      spaced`
        La sosa, la esencia, el envoltorio y la luz se suman a mano, y tus horas si las cuentas; todo
        entre las pastillas es lo que cuesta una.
      `,
      'Lo que cobras lo dejo en tus manos.',
    ],
  },
  'label-what': {
    answer: [
      'En general qué es, su peso, cada ingrediente por su nombre INCI, tu nombre y dirección y un número de lote.',
    ],
    why: [
      spaced`
        Los aceites como entran, con sodium hydroxide, o como el jabón que son ya; los colores por
        nombre INCI o número CI; la esencia con sus alérgenos.
      `,
      spaced`
        Deciden las normas de donde vendas, y algunas piden antes un informe de seguridad o un registro:
        pregunta a tu autoridad antes de la primera pastilla.
      `,
    ],
  },
};
