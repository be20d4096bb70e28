import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueChoosing as english } from '../../../en/colour/technique/choosing.ts';

/** Lo que se dice a qué colores comprar y usar, y cuáles aguantan. */
export const techniqueChoosing: typeof english = {
  'gel-and-colour': {
    answer: [
      'El gel hace casi todos los colores más intensos y algo translúcidos; sin gel quedan pálidos y lechosos.',
    ],
    why: [
      'Para que gelifique: tapado y envuelto, caliente, mirando si se agrieta.',
      'Para que no: masa fresca, moldes chicos, un sitio frío (nevera con comida no).',
      'A medias deja un anillo más oscuro.',
      'Los blancos quedan más blancos sin gel, y con menos agua hay menos ríos.',
      '/plan calcula si el tuyo gelifica.',
    ],
  },
  'first-colours': {
    answer: [
      'Cinco hacen mucho: dióxido de titanio, carbón activado, azul ultramar, óxido rojo y óxido amarillo.',
    ],
    why: [
      'Todos aguantan sosa y luz.',
      'Azul y amarillo dan un verde tranquilo, rojo y carbón un marrón, y el blanco hace pastel cualquiera.',
      'Luego una mica cuya etiqueta solo nombre colores minerales.',
      'Empieza con un color en una receta sencilla, humedecido en un poco de aceite.',
      '/palette buy dice qué trae más junto a lo que tienes.',
    ],
  },
  'mica-or-oxide': {
    answer: [
      'La mica se mezcla fácil y es más viva; los óxidos son mates, fuertes y seguros, pero hay que deshacerlos.',
    ],
    why: [
      'Para empezar: mica cuya etiqueta solo nombre colores minerales (CI 77…), porque los tintes sobre mica pueden cambiar o correrse.',
      'Para un color que no debe cambiar: óxido o ultramar.',
      'Las arcillas dan tonos tierra y se humedecen en agua.',
      '/colourant check lee la lista de tu bote.',
    ],
  },
  'whiter-soap': {
    answer: [
      'Aceites pálidos, esencia sin vainilla, 1 a 1 1/2 cdta de dióxido de titanio por 500 g de aceites, y sin gel.',
    ],
    why: [
      'El crema viene de la oliva, las mantecas sin refinar, la leche y el calor.',
      'Deshaz bien el dióxido y no pongas más: de sobra agrieta, desmigaja y marca ríos.',
      '/dose colourant:«titanium dioxide» portion:«500 g oils».',
    ],
  },
  'bright-colours': {
    answer: ['Aceites pálidos, sin dióxido de titanio en esa parte, la dosis llena, y que gelifique.'],
    why: [
      'El blanco y el amarillo de los aceites apagan cualquier color; el gel lo aviva.',
      'Los óxidos son tranquilos: rojos, violetas y verdes vivos salen de micas y lacas, cuya etiqueta hay que comprobar para sosa.',
      '/match target:«verde vivo» enseña cuánto se acercan tus botes.',
    ],
  },
  'pastel-colours': {
    answer: [
      'Cerca de un cuarto de la dosis llena, con media cucharadita de dióxido de titanio por 500 g de aceites.',
    ],
    why: ['Sin blanco queda translúcido más que pastel.', 'En /dose es strength:pastel.'],
  },
  'colour-in-cure': {
    answer: ['Júzgalo a las cuatro semanas: cruda se ve más oscura y amarilla, y casi todo aclara al secar.'],
    why: [
      'En los dos primeros días un color puede verse mal y volver; lo que a la semana es marrón o gris, así queda.',
      'La vainilla sigue oscureciendo semanas.',
      'Las plantas siguen perdiendo con la luz.',
    ],
  },
  'colours-that-stay': {
    answer: ['Óxidos de hierro, ultramares, verde de cromo, carbón y micas minerales no se destiñen.'],
    why: [
      'Los colores de plantas, la espirulina y muchos neones se van en semanas o meses, en la ventana antes.',
      'Cura y guarda las pastillas lejos del sol.',
      'Dime el color y te digo cómo aguanta.',
    ],
  },
  'colours-that-bleed': {
    answer: [
      'Óxidos, ultramares, carbón, arcillas y micas minerales no se corren; tintes, lacas y muchos neones sí.',
    ],
    why: [
      'Mira si la etiqueta trae números de tinte (como CI 16035, 19140, 42090): pueden correrse al blanco y teñir la espuma.',
      'La masa caliente y húmeda los mueve más.',
      '/colourant check lee la lista.',
    ],
  },
  'natural-colours': {
    answer: [
      'Aguantan: carbón, arcillas, cacao (marrón), rubia (rosa), añil (azul), achiote (amarillo a naranja, palidece despacio).',
    ],
    why: [
      'Cúrcuma, pimentón, espirulina y hojas verdes empiezan bien y se van.',
      'Remolacha, jamaica, frutos rojos y col morada se vuelven marrones o grises en la sosa.',
      'Nombra uno y te digo qué será de él y cuánto va.',
    ],
  },
  'egg-smell': {
    answer: ['Un poco de olor a azufre del ultramar es normal en la masa caliente y se va con la cura.'],
    why: [
      'Se hace fuerte si toca un ácido: nada de vinagre, ácido cítrico ni zumos ácidos en ese lote.',
      'Si es fuerte: ventana abierta y fuera del cuarto hasta que se vaya.',
    ],
  },
  'children-colours': {
    answer: [
      'Óxidos de hierro, ultramares, dióxido de titanio, arcillas y micas sencillas, de grado cosmético y poca dosis.',
    ],
    why: [
      'El jabón se enjuaga; labios y ojos tienen listas propias: /colourant check item:«…» con tu región dice dónde está un color.',
      'Los pequeños no necesitan ninguno.',
      'Lo que vendes o regalas a muchos pide una evaluación de seguridad según tu ley.',
    ],
  },
  'buy-where': {
    answer: [
      'No conozco tiendas.',
      'Compra lo que diga grado cosmético y nombre sus ingredientes o números CI.',
    ],
    why: [
      'Nada de pigmentos de resina, uñas, velas, manualidades o construcción: allí nadie cuenta metales ni tintes.',
      '/palette buy dice qué colores traen más; la lista de la etiqueta va en /colourant check.',
    ],
  },
  'unlabelled-powder': {
    answer: [
      'Déjalo fuera del jabón: sin lista de lo que lleva nadie sabe qué hace en la piel ni en la sosa.',
    ],
    why: [
      spaced`
        Una prueba en un vaso enseña si el color aguanta, no si es seguro: puede ser de manualidades,
        resina o pared con metales pesados, o azulete.
      `,
      'Pide al vendedor ingredientes y números CI; con la lista, /colourant check la lee.',
      'Ni probarlo ni olerlo.',
    ],
  },
  'cosmetic-grade': {
    answer: [
      'No: cosmético, apto para piel o labios habla de la piel, no de la sosa.',
      'Muchos así cambian en crudo.',
    ],
    why: [
      spaced`
        Lo que sirve es «estable en proceso en frío» y la lista: los CI 77… son minerales y casi todos
        aguantan, pero no CI 77510 (azul de hierro) ni CI 77742 (violeta de manganeso).
      `,
      'Grado alimentario tampoco dice nada.',
      'Una pizca en una cucharada de masa y mírala a los dos días.',
      '/colourant check lee la lista para las dos cosas.',
    ],
  },
  'shine-sparkle': {
    answer: ['La mica brilla solo donde le da la luz: espolvoréala o píntala encima.', 'Dentro queda mate.'],
    why: [
      'El jabón en frío es opaco: el dorado da mostaza y el perlado blanco.',
      'Encima: seca con colador, o 1 cdta en 2 o 3 cdta de aceite ligero.',
      'El gel lo hace algo translúcido y más vivo; la cara cortada se puede pasar por vapor o frotar con un paño suave.',
      'Brillantina de manualidades no.',
    ],
  },
};
