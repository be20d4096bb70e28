import { spaced } from '../../../engine/over-lines.ts';
import type { lyeBench as english } from '../../en/lye/lye-bench.ts';

/** What is said to questions of safety at the bench: what is worn, what lye is cooled in, what is weighed. */
export const lyeBench: typeof english = {
  gear: {
    answer: [
      'Para la sosa: gafas estancas, guantes de nitrilo, neopreno o goma gruesa de casa, manga larga, zapato cerrado.',
    ],
    why: [
      'Guantes enteros y por encima de la muñeca: llénalos de agua una vez para ver si pierden.',
      'El látex o vinilo fino se rompe; el algodón empapa la sosa y la deja en la piel.',
      'Contra el vapor sirven más la corriente de aire y la cara apartada que una mascarilla; con asma, que la mezcle otra persona.',
      'Si entra sosa en el guante: fuera, y agua corriente.',
    ],
  },
  dust: {
    answer: ['Sí: mascarilla de polvo (FFP2 o N95) para polvos finos, y que no vuelen.'],
    why: [
      spaced`
        El dióxido de titanio, los óxidos, la arcilla, el carbón y la mica no son tóxicos en el jabón,
        pero su polvo no le hace bien al pulmón.
      `,
      'Con cuchara y despacio, moja el polvo bajo su líquido antes de remover, sin ventilador.',
      'Limpia con paño húmedo; no barras ni soples.',
      'Con asma, que mida otra persona.',
    ],
  },
  unattended: {
    answer: [
      'Ni abierta ni sola: el agua de sosa va con etiqueta, tapada sin apretar y tras una puerta cerrada con llave.',
    ],
    why: [
      'Una hora enfriándose en una pila, en un cuarto donde no entra nadie más, es lo normal.',
      spaced`
        De noche: fría, en una botella cerrada de HDPE o PP que nunca llevó bebida, con «SOSA:
        CÁUSTICA», bajo llave, lejos de niños y animales.
      `,
      'Abierta toma dióxido de carbono, hace costra y se debilita.',
    ],
  },
  'other-alkali': {
    answer: [
      'Solo hidróxido de sodio puro (pastillas) o de potasio (jabón blando), con la pureza en la etiqueta: ni ceniza ni cal.',
    ],
    why: [
      'El carbonato, el bicarbonato y la cal no hacen jabón con aceite.',
      spaced`
        Con lejía de ceniza se hacía antes un jabón blando y fuerte: tiene una fuerza que nadie conoce,
        así que no se puede pesar: quema o queda grasa.
      `,
      'Los limpiahornos y desatascadores llevan además otras cosas.',
      'De grado alimentario vale si dice NaOH y 98 % o más.',
    ],
  },
  'oil-swapped': {
    answer: [
      'No: cada aceite lleva su propia sosa.',
      'Con otro aceite, o con menos de uno, la sosa se calcula de nuevo.',
    ],
    why: [
      '1000 g de coco llevan unos 174 g de NaOH con 5 % de sobreengrasado, 1000 g de oliva unos 129 g: la sosa de uno quema en el otro.',
      'Sin mezclar aún: dime los aceites como son, por ejemplo «cuánta sosa para 700 g de oliva y 300 g de manteca».',
      'Ya mezclado: «puse 100 g de sosa en 700 g de oliva» dice cuánto se desvía; hasta entonces, guantes y nada de piel.',
    ],
  },
  'less-lye': {
    answer: [
      'Menos sosa no hace un jabón más suave, solo blando y graso.',
      'De 5 a 8 % de sobreengrasado es suave; 20 % si es todo coco.',
    ],
    why: [
      'En una pastilla bien pesada y curada no queda sosa.',
      'Con la mitad de sosa, la mitad del aceite sigue siendo aceite: no cuaja y se enrancia.',
      'Para una pastilla suave: mucha oliva, poco coco, cinco semanas de curado o más.',
      '/plan superfat:8',
    ],
  },
  scale: {
    answer: [
      'La sosa, en una báscula que marque 1 g; para menos de 500 g de aceites, 0,1 g.',
      'Pasos de 5 g son demasiado.',
    ],
    why: [
      '5 g de más en 26 g de sosa es un quinto de más.',
      'Haz un lote de 1000 g o más, o usa una báscula más fina; pila nueva, nivelada, la jarra pesada antes.',
      'Una de cocina sirve si no vuelve a tocar comida y se lava.',
      'Nunca cucharas ni tazas.',
    ],
  },
  'scent-dose': {
    answer: [
      spaced`
        Como mucho lo que diga su certificado para jabón que se aclara (IFRA, categoría 9): normalmente
        hasta 3 % de los aceites, 30 g por kg.
      `,
    ],
    why: [
      'Los aceites esenciales también por peso, y muchos bastante menos: canela y clavo por debajo de 0,5 %, menta y cítricos con cuidado.',
      'Con 6 % o más pregunto; 8 o 10 % irrita la piel y puede cortar la masa.',
      'Sin aroma para bebés.',
      '/plan fragrance:«3%» lo pesa.',
    ],
  },
  'old-oil': {
    answer: [
      'Solo si sabes qué grasa es, está limpia y no huele a rancio; y mejor para lavar ropa que para la piel.',
    ],
    why: [
      'Fíltralo, deja que se asiente el agua y pésalo.',
      'Freír rompe el aceite, así que su sosa es incierta: de 5 a 8 % de sobreengrasado, guantes, y prueba si da calambre.',
      'El aceite rancio da jabón rancio con manchas naranjas.',
      'Mezclado, desconocido o de motor: no, nadie sabe su sosa.',
    ],
  },
  tared: {
    answer: ['Resta el peso del recipiente vacío de lo que marcó la báscula: lo que queda es la sosa.'],
    why: [
      'Por ejemplo, jarra de 50 g y 170 g en la báscula: 120 g de sosa.',
      'No adivines lo que pesa el recipiente: ponlo vacío y seco en la misma báscula, o pesa la sosa de nuevo.',
      'La próxima vez pon la báscula a cero con el recipiente encima.',
    ],
  },
  'never-taste': {
    answer: ['No: nunca la pruebes.', 'Lo que puede llevar sosa se trata como sosa.'],
    why: [
      'La sosa en agua no se ve.',
      spaced`
        Lejos de niños y animales, con gafas y guantes, rotulada, y deséchala como agua con sosa: poco a
        poco en mucha agua fría, según las normas de tu zona.
      `,
      'Luego pesa otra nueva.',
      'Si alguien la probó: /first-aid.',
    ],
  },
  'hair-on-bars': {
    answer: [
      'Quita pelos y polvo con un paño húmedo, o cepilla una capa fina.',
      'Con pastillas que aún curan, usa guantes.',
    ],
    why: [
      'Cubre la rejilla con una tela o malla que deje pasar el aire, lejos de animales.',
      'Si un animal lamió o mordió una pastilla, o se echó sobre jabón aún crudo: lava su pelo con agua y llama al veterinario.',
    ],
  },
  'indicator-pink': {
    answer: [
      'No por eso: el rosa solo dice «más de pH 8 a 10», y un jabón sano tiene de 9 a 10,5.',
      'No prueba que sobre sosa.',
    ],
    why: [
      'Guantes hasta saberlo.',
      'Primero los pesos: dime «eché 100 g de sosa en 700 g de oliva».',
      spaced`
        Luego cuatro semanas de curado y papel de pH en la espuma de una pastilla mojada: con 11 o más,
        cristales duros, gotas o manchas mucho más oscuras que el resto, no la uses.
      `,
      'Que no se ponga rosa tampoco prueba nada: las gotas solo ven donde caen.',
    ],
  },
  'puddle-on-top': {
    answer: [
      'Guantes y gafas: trátalo como sosa hasta saberlo.',
      'No lo toques ni lo limpies sin guantes, no lo uses.',
    ],
    why: [
      'Déjalo un día: una capa fina de aceite o el rocío de glicerina suelen entrar otra vez.',
      'Si sigue: papel de pH en la gota, no la lengua; 11 o más, o una capa clara bajo el aceite, es sosa que se separó.',
      spaced`
        Entonces revisa todos los pesos («eché 100 g de sosa en 700 g de oliva»): si son seguros, rehaz
        todo el pan con lo que soltó; si no, residuo cáustico según tus normas locales.
      `,
    ],
  },
  'soap-at-large': {
    answer: ['Eso es de jabón, pero no tengo una respuesta segura.'],
    why: [
      spaced`
        Sé de color en jabón de proceso en frío: cuánto, en qué humedecerlo, si aguanta la sosa, qué
        salió mal en una pastilla; y de sosa y agua para tus aceites.
      `,
      'Pregunta de otra forma, o /help lo enseña todo.',
    ],
  },
  unsure: {
    answer: ['A eso no tengo una respuesta segura.', 'Cerca de la sosa, lo dudoso se deja.'],
    why: [
      spaced`
        Lo que vale siempre: gafas y guantes; la sosa pesada, despacio en agua fría, en polipropileno o
        acero inoxidable, con corriente de aire; niños y animales fuera; nada más mezclado con ella;
        nada se prueba ni se come; se usa solo a las cuatro semanas y sin calambre.
      `,
      'Pregunta de otra manera, o una cosa cada vez, como «puedo usar una jarra de vidrio para la sosa».',
      'Si hay alguien herido: /first-aid.',
    ],
  },
};
