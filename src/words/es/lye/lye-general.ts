import { spaced } from '../../../engine/over-lines.ts';
import type { lyeGeneral as english } from '../../en/lye/lye-general.ts';

/** What is said to general questions of lye, its water and how it is reckoned, where no recipe is at hand. */
export const lyeGeneral: typeof english = {
  'liquid-lye': {
    answer: [
      'La sosa no cambia: agua, leche, té, café, cerveza y savia no la gastan.',
      'Solo el ácido la gasta.',
    ],
    why: [
      'El azúcar tuesta y calienta, no gasta sosa que cuente.',
      spaced`
        La grasa de la leche es algo más de sobreengrasado: 300 g de leche entera traen unos 11 g de
        grasa, un punto por kg de aceites; la nata se pesa como grasa.
      `,
      'Vinagre, limón y ácido cítrico sí gastan sosa y se calculan: /plan liquid:«leche de cabra» o liquid:«vinagre» hace todo.',
      'Siempre helado, la sosa poco a poco, gafas y guantes.',
    ],
  },
  'liquid-amount': {
    answer: ['Ocupa el lugar del agua gramo por gramo: tanta agua menos, y nunca menos líquido que sosa.'],
    why: [
      'Toda o una parte.',
      'Lo más seguro: disuelve la sosa en su mismo peso de agua fría, deja enfriar, y el resto, leche, cerveza o té, va a los aceites.',
      'En polvo (leche, yogur): unos 10 g por cada 100 g de líquido, en los aceites, sin quitar agua.',
      'Cerveza y vino, hervidos antes sin gas.',
      '/plan liquid:«mitad cerveza» lo pesa.',
    ],
  },
  'koh-and-naoh': {
    answer: ['Sí: un poco de KOH da una pastilla más cremosa, 5 a 10 %; el de afeitar lleva un 60 % de KOH.'],
    why: [
      'Partes de lo que gastan los aceites, no de gramos, pues el KOH pesa 1,40 veces más (1,56 al 90 %).',
      'Con más de un 10 % la pastilla queda blanda.',
      'Nunca se cambia uno por otro a igual peso.',
      'Los dos se disuelven en la misma agua fría, uno tras otro.',
      '/plan lye:«both» calcula los dos pesos.',
    ],
  },
  'sap-to-naoh': {
    answer: ['Sí: × 0,713, que es 40,00 / 56,11.', 'Un valor en mg KOH por g se divide además entre 1000.'],
    why: [
      'Oliva de 190 mg KOH/g gasta 0,190 g de KOH o 0,135 g de NaOH por gramo, con 0 % de sobreengrasado; × 0,95 para un 5 %.',
      'De NaOH a KOH, × 1,403, y / 0,90 si es del 90 %.',
      'Los valores son márgenes (oliva 184 a 196, Codex CXS 33): deja el sobreengrasado.',
    ],
  },
  'acid-lye': {
    answer: [
      'Sí: un gramo de ácido cítrico gasta 0,62 g de NaOH (0,57 g el monohidrato), 100 g de vinagre al 5 %, 3,3 g.',
    ],
    why: [
      'Por masas molares: 3 × 40,0 / 192,1 y 40,0 / 60,05.',
      'Pregunta con el peso («cuánta sosa gastan 10 g de ácido cítrico»), o /plan additives:«ácido cítrico 10 g» la suma.',
      'El ácido va en el agua fría antes que la sosa, nunca sobre sosa seca ni agua de sosa fuerte, nunca con ultramar.',
      'Después el ácido no arregla ninguna pastilla.',
    ],
  },
  'lye-roughly': {
    answer: [
      'Casi todas las recetas llevan de 12 a 14 g de NaOH por 100 g de aceites; el puro coco, 17.',
      'Más de 19 g no lo gasta ninguno.',
    ],
    why: [
      spaced`
        Eso descubre una receta loca, no hace ninguna: cada aceite gasta la suya (oliva 12,9, manteca de
        cerdo 13,2, coco 17,3 g con 5 %; ceras y jojoba, la mitad).
      `,
      'De KOH, 1,4 a 1,56 veces más.',
      'Dime aceites y gramos, como «cuánta sosa para 500 g de oliva y 200 g de coco», y la peso.',
    ],
  },
  'animal-fat': {
    answer: [
      'Sí: la grasa limpia y derretida de oso, ganso, ciervo u oveja gasta como la manteca o el sebo.',
    ],
    why: [
      'Manteca 192 a 203, sebo 190 a 202 mg KOH/g (Codex CXS 211): unos 13 g de NaOH por 100 g con 5 %.',
      spaced`
        Las blandas (oso, ganso, pato, caballo) como manteca, las duras (ciervo, oveja, cabra) como
        sebo; de memoria, así que deja un 8 %: «cuánta sosa para 500 g de manteca de cerdo,
        sobreengrasado 8».
      `,
      'Derrítela con agua, espuma, pésala seca: sal, carne y agua estropean la cuenta.',
    ],
  },
  'caustic-for-soda': {
    answer: [
      'No, es otra cosa: los cristales de sosa son carbonato, para lavar.',
      'Nunca sosa cáustica en su lugar.',
    ],
    why: [
      spaced`
        Una receta con cristales de sosa no es de jabón: friega o ablanda el agua; la cáustica quema
        piel, ojos y tela, y hierve en agua caliente.
      `,
      'El jabón pide hidróxido de sodio y aceites pesados.',
      '«Soda» sola en una hoja vieja: averigua cuál era antes de pesar nada.',
    ],
  },
  'lather-without-coconut': {
    answer: ['Sin coco ni palmiste: ricino de 5 a 10 %, un poco de azúcar, babasú si tienes.'],
    why: [
      spaced`
        Manteca, sebo y girasol dan crema, no burbujas. 10 a 20 g de azúcar por kg de aceites, disueltos
        en parte del agua antes de la sosa; cerveza o leche por agua hacen lo mismo.
      `,
      'Más de 10 a 15 % de ricino queda pegajoso.',
      'La sosa se calcula otra vez: «cuánta sosa para 600 g de manteca de cerdo, 300 g de girasol, 100 g de ricino».',
    ],
  },
  'purity-ignored': {
    answer: [
      'Porque va a lo seguro: sosa del 98 % contada como 100 % solo deja unos 2 puntos más de sobreengrasado.',
    ],
    why: [
      'Nunca deja la pastilla cáustica, así que casi nadie lo cuenta.',
      'Por debajo de un 96 %, y siempre con KOH (85 a 95 %), cuéntalo: /plan lye:«NaOH 97%».',
      'La sosa vieja o húmeda es más floja que su etiqueta y nadie sabe cuánto.',
      'Pura de nombre y con cifra ha de ser.',
    ],
  },
  'scale-off': {
    answer: ['No daña: si todos los pesos son de esa báscula, todos se desvían igual y la receta vale.'],
    why: [
      'Cuentan las partes, no los gramos: un 5 % más de aceites, sosa y agua es el mismo jabón, solo más.',
      spaced`
        Sí importa si la sosa o los aceites salen de otra báscula, de un paquete o de una jarra, o si se
        desvía en gramos y no en porcentaje: calcula lo que entró y dímelo.
      `,
      'Compruébala con una moneda o un litro de agua (1000 g).',
    ],
  },
  'hot-lye': {
    answer: [
      'No: espera a 35 a 45 °C (95 a 113 °F), y los aceites igual.',
      'La sosa caliente salpica y acelera.',
    ],
    why: [
      'El agua de sosa recién hecha llega a 80 a 95 °C (176 a 203 °F).',
      spaced`
        Pon la jarra abierta en un barreño de agua fría, nada dentro de la jarra, gafas y guantes, y
        espera; y con no más de unos 10 °C (18 °F) de diferencia.
      `,
      'Si ya la echaste: cara apartada, remueve despacio, no lo tapes ni lo envuelvas.',
    ],
  },
  'lye-for-food': {
    answer: [
      'Para comida solo sosa de grado alimentario (E 524), con receta probada y con útiles que nunca tocaron jabón.',
    ],
    why: [
      'La técnica puede llevar metales.',
      spaced`
        La alimentaria vale también para jabón si dice 98 % o más, pero el bote de aceitunas o pretzels
        va aparte y con etiqueta, y nada que tuvo sosa de jabón, color o aroma vuelve a la cocina.
      `,
      'Lo que salió mal con sosa en la comida no se come.',
    ],
  },
  'bars-per-kilo': {
    answer: ['Unas diez: 1 kg de aceites da cerca de 1,4 kg de masa, diez u once pastillas de 130 g.'],
    why: [
      '1000 g de aceites, unos 140 g de sosa, unos 280 g de agua; un décimo o más se seca en la cura.',
      '«10 pastillas de 120 g» o tu molde en /plan size te dice los aceites.',
    ],
  },
  'lye-tub': {
    answer: [
      'No para comida, juguetes ni nada que toquen niños.',
      'Enjuagado y marcado, solo para sosa o útiles de jabón.',
    ],
    why: [
      'La sosa se queda bajo el borde y en la tapa.',
      'Gafas y guantes: enjuágalo muchas veces con mucha agua fría, sécalo, quita la etiqueta vieja.',
      'Nunca lleva comida ni bebida, sea del material que sea.',
    ],
  },
  'shop-fat': {
    answer: [
      'Sí, si la etiqueta nombra una sola grasa, sin agua ni sal: cerdo, palma, coco, girasol, oliva.',
    ],
    why: [
      'La margarina lleva agua y sal; la «manteca vegetal» es una mezcla: nombra lo que dice la etiqueta, con porcentajes.',
      'Refinada y clara toma mejor el color.',
      'Luego pregunta «cuánta sosa para 500 g de manteca de cerdo».',
    ],
  },
  'more-oil': {
    answer: ['No quema: más aceite es más sobreengrasado, un 5 % más de aceite son unos 5 puntos.'],
    why: [
      '50 g más en 1000 g de aceites: de 5 a un 9,5 %.',
      'Hasta 10 es una pastilla suave; más, blanda y antes rancia.',
      spaced`
        No añadas sosa a ojo; en la olla puede calcularse la de ese aceite: «cuánta sosa para 50 g de
        oliva, sobreengrasado 5», disuelta en su peso de agua fría y mezclada mientras está líquida.
      `,
    ],
  },
};
