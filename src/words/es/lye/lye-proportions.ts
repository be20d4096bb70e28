import { spaced } from '../../../engine/over-lines.ts';
import type { lyeProportions as english } from '../../en/lye/lye-proportions.ts';

/** What is said of superfat, and of how much water goes with the lye. */
export const lyeProportions: typeof english = {
  'superfat-meaning': {
    answer: [
      'El sobreengrasado es el porcentaje de los aceites que la sosa deja como aceite.',
      'El descuento de sosa es lo mismo.',
    ],
    why: [
      'Un 5 % es un 5 % menos de sosa de la que los aceites podrían gastar: una reserva, pues aceites y básculas varían, y es más suave.',
      'Lo usual: 5 en pastillas, 2 a 3 en líquido, 15 a 20 solo con coco, 0 a 1 solo para ropa.',
      'Por debajo de 0 hay más sosa de la que gastan y la pastilla quema.',
      'Algunas hojas ponen un descuento encima del sobreengrasado: se suman.',
      '/plan superfat:5',
    ],
  },
  'superfat-high': {
    answer: ['Con 5 a 8 % basta; desde un 10 % la pastilla sale más blanda y se enrancia antes.'],
    why: [
      'Más aceite da menos espuma y manchas naranjas antes, sobre todo con aceites blandos; solo el puro coco aguanta 15 a 20 %.',
      'Para piel sensible hacen más los aceites y el cuidado: mucha oliva, poco coco, sin aroma, seis semanas de cura.',
      'Ningún jabón trata eccema, psoriasis ni otra enfermedad: eso es del médico, y no prometas nada.',
    ],
  },
  'superfat-at-trace': {
    answer: ['En proceso en frío da igual: la sosa toma de todos los aceites, entre cuando entre cada uno.'],
    why: [
      'En la traza casi toda la sosa sigue libre, y las grasas intercambian sus ácidos hasta que se gasta: ningún aceite queda aparte.',
      'Lo que guardas para la traza se cuenta para la sosa como el resto.',
      'En caliente, tras la cocción, el aceite añadido al final sí queda: entonces no se cuenta.',
    ],
  },
  'water-amount': {
    answer: ['El agua solo disuelve y lleva la sosa: de 1,5 a 2,5 veces su peso, lo usual es 2.'],
    why: [
      'No cambia la sosa que gastan los aceites, por eso las recetas difieren.',
      'Menos (hasta 1,5): espesa pronto, más calor, dura antes, menos ceniza.',
      'Más (2,5 o más): líquida y lenta, blanda al principio, gelifica antes, seca y encoge más; al final es la misma pastilla.',
      'Nunca menos agua que sosa.',
      '«Cuánta agua para 70 g de sosa» o /plan water:«33% lye».',
    ],
  },
  'more-water': {
    answer: [
      'Un poco más o menos de agua no daña: con más solo va más lento y está más blando al principio.',
    ],
    why: [
      'El agua no forma parte del jabón.',
      spaced`
        Con mucha más espesa tarde, puede sudar o gelificar, queda blando días y encoge al secar: déjalo
        más tiempo en el molde, cura seis semanas o más.
      `,
      'No la hiervas, no añadas sosa.',
      'El único límite: nunca menos agua que sosa.',
      'Si se separa o sigue líquido a los dos días, lo que falla es otro peso: dímelos todos.',
    ],
  },
  'strength-and-ratio': {
    answer: ['Casi: sosa al 33 % son 2,03 partes de agua por 1 de sosa, y 2:1 es el 33,3 %.'],
    why: [
      'La fuerza es sosa / (sosa + agua); la proporción es agua / sosa. 25 % es 3:1, 30 % 2,33:1, 40 % 1,5:1, 50 % 1:1, lo más fuerte.',
      '«Agua como porcentaje de los aceites» es otra cosa y cambia con la receta.',
      'Cualquiera en /plan water:«33% lye», «2:1» o «30% of oils».',
    ],
  },
};
