import { spaced } from '../../../engine/over-lines.ts';
import type { lyeMisweighed as english } from '../../en/lye/lye-misweighed.ts';

/** What is said where lye, water or oils were weighed wrong, or nobody knows what went in. */
export const lyeMisweighed: typeof english = {
  'lye-guessed': {
    answer: ['A ojo, no: agua de sosa de fuerza desconocida no entra en ningún jabón.'],
    why: [
      spaced`
        Si la jarra y el agua se pesaron antes: pesa ahora la jarra con todo; menos la jarra, menos el
        agua, el resto es sosa, si no hirvió ni estuvo abierta.
      `,
      'Si echaste la mitad: pesa lo que queda en la jarra, y la jarra vacía; lo que falta es lo que entró.',
      'Si no sabes ninguno: gafas y guantes, deja que se enfríe, botella de HDPE con etiqueta, residuo cáustico según tus normas locales.',
      'Empieza de nuevo con pila nueva; primero la jarra en la báscula, tara, y luego la sosa.',
    ],
  },
  'fluid-ounces': {
    answer: [
      'La sosa va en onzas de peso, 28,35 g cada una, con báscula.',
      'Nunca onzas líquidas ni vaso medidor.',
    ],
    why: [
      'La onza líquida es un espacio: llena de perlas lleva más sosa que una onza de peso, llena de escamas menos.',
      spaced`
        Si ya la mediste así, la cantidad es desconocida: no lo uses, guantes y gafas; pesa lo que queda
        en el bote contra lo que tenía, o empieza otra vez pesando en gramos.
      `,
    ],
  },
  'too-much-in': {
    answer: [
      'No lo uses ni lo toques sin guantes: la sosa de más se queda en la pastilla y quema.',
      'Calcula cuánta es.',
    ],
    why: [
      'Gafas y guantes.',
      'Pregúntame con lo que entró de verdad, como «puse 180 g de sosa en 1000 g de oliva»: te digo el sobreengrasado.',
      spaced`
        Por debajo de 0 %: solo si cada peso es seguro, se mezclan ya en la masa los aceites que faltan,
        pesados y templados, o se rehace con ellos la barra cuajada.
      `,
      'Si no es seguro: bote de plástico cerrado y con etiqueta, residuo cáustico según tus normas locales.',
      'Esperar, el papel de pH o probarlo no lo hacen seguro.',
    ],
  },
  'too-little-in': {
    answer: [
      'Con sosa de menos no quema: sobra aceite, queda blando y graso y se enrancia.',
      'No añadas a ojo.',
    ],
    why: [
      spaced`
        Pregúntame con lo que entró, como «puse 100 g de sosa en 1000 g de oliva»: hasta 10 % de
        sobreengrasado es un jabón suave, 20 % solo si es todo coco.
      `,
      spaced`
        Si falta mucha: pesa la que falta, disuélvela en al menos su peso de agua fría, deja que se
        enfríe, y mézclala mientras la masa siga líquida, con gafas y guantes.
      `,
      'Nunca seca, nunca mañana.',
      'Hasta saber qué peso es el bueno, trátalo como cáustico.',
    ],
  },
  'extra-lye': {
    answer: ['No: ni un gramo más.', 'La sosa que el aceite no gasta se queda en la pastilla y quema.'],
    why: [
      'No limpia más ni endurece más.',
      'En 500 g de oliva, 5 g más que la línea del 5 % la bajan a un −2 % más o menos.',
      'Redondea hacia abajo, nunca hacia arriba: 64,4 g son 64 g.',
      'El 5 % de sobreengrasado es la reserva normal; 0 % es el suelo, solo para ropa, nunca menos.',
      'De lo que pesaste pregunta «puse 70 g de sosa en 500 g de oliva».',
    ],
  },
  'rest-later': {
    answer: ['No: toda la sosa entra de una vez.', 'El resto, mañana, ya no se mezcla.'],
    why: [
      'Para entonces la masa está dura o separada, y la sosa nueva se queda en bolsas que queman.',
      'Sin empezar: espera a tenerla toda, o haz menos: «cuánta sosa para 300 g de oliva» hasta lo que te alcance.',
      spaced`
        Empezado: apunta lo que entró y pregunta «puse 40 g de sosa en 500 g de oliva»; se guarda con
        etiqueta, con guantes, fuera del alcance, y se rehace con el resto pesado y disuelto, o se
        desecha según tus normas locales.
      `,
    ],
  },
  'second-water': {
    answer: ['Sosa tiene la justa, no de más: solo está fuerte, espesa y caliente.', 'No añadas agua ahora.'],
    why: [
      'El agua lleva la sosa y no forma parte del jabón.',
      'Con sosa 1:1 la masa cuaja deprisa, se calienta, puede agrietarse o desmigarse: gafas y guantes, no la tapes, córtala pronto.',
      'Vale solo si la sosa estaba clara, toda disuelta y bien pesada.',
      'Cristales blancos o algo mojado que pica: no lo uses.',
      'Cuatro semanas de curado, como siempre.',
    ],
  },
  'oil-spilled': {
    answer: ['No eches la sosa: menos aceite gasta menos sosa, y la que sobra quema.'],
    why: [
      'Gafas puestas, cuidado con el aceite del suelo, que resbala.',
      'Pesa el aceite que queda, o pesa de nuevo el que se perdió y ponlo.',
      'Si no, pesa la sosa otra vez: pregunta «cuánta sosa para 600 g de oliva».',
      'Agua de sosa ya hecha: echa solo su parte en peso, como 600/800, y guarda el resto con etiqueta.',
      'Si ya la echaste: guantes, añade el aceite perdido, pesado, ahora que está líquido.',
    ],
  },
  'two-figures': {
    answer: [
      'Dos cifras que difieren en poco pueden valer las dos, con otro sobreengrasado: toma la baja.',
      'Si difieren más, o solo hay una: no mezcles aún.',
    ],
    why: [
      '500 g de oliva gastan unos 67,8 g de NaOH al 0 % y 64,4 g al 5 %.',
      'Los libros usan también otros valores del aceite (varían un 3 %) y otra pureza.',
      'Compara sobreengrasado, pureza, y si es NaOH o KOH; la cifra baja deja más aceite y nunca quema.',
      'Más de un 10 % de diferencia es otro aceite, KOH o una errata: no mezcles hasta saberlo.',
      'También yo puedo equivocarme: compruébame con otra fuente.',
    ],
  },
  'water-unwritten': {
    answer: [
      'Si solo no está escrita: el doble de la sosa, 140 g para 70 g.',
      'Si no la pusiste: ahora no eches agua.',
    ],
    why: [
      'El agua puede ser de 1,5 a 2,5 veces la sosa; pregunta «cuánta agua para 70 g de sosa».',
      spaced`
        Si la sosa seca ya está en los aceites: nada de agua encima, se calienta y salpica; gafas,
        guantes, déjalo, y pregunta «olvidé el agua».
      `,
    ],
  },
  'purity-unknown': {
    answer: [
      'Ningún jabón con sosa cuya etiqueta no diga hidróxido de sodio y su pureza: pregunta, o compra otra.',
    ],
    why: [
      'Un margen como 95–97 %: cuenta con la cifra alta, así nunca sobra: /plan lye:«NaOH 97%».',
      'Perlas, escamas y microperlas solo cambian de forma.',
      'Sin cifra, pero hidróxido de sodio puro por su nombre: cuéntala como 100 %, la pastilla queda algo más blanda.',
      'Desatascadores, mezclas, latas oxidadas o sin etiqueta: nunca.',
    ],
  },
};
