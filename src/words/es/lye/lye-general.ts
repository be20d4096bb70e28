import { spaced } from '../../../engine/over-lines.ts';
import type { lyeGeneral as english } from '../../en/lye/lye-general.ts';

/** What is said to general questions of lye, its water and how it is reckoned, where no recipe is at hand. */
export const lyeGeneral: typeof english = {
  'liquid-lye': {
    answer: 'La sosa no cambia: agua, leche, té, café, cerveza y savia no la gastan. Solo el ácido la gasta.',
    why: spaced`
      El azúcar tuesta y calienta, no gasta sosa que cuente. La grasa de la leche es algo más de
      sobreengrasado: 300 g de leche entera traen unos 11 g de grasa, un punto por kg de aceites; la nata
      se pesa como grasa. Vinagre, limón y ácido cítrico sí gastan sosa y se calculan: /plan liquid:«leche
      de cabra» o liquid:«vinagre» hace todo. Siempre helado, la sosa poco a poco, gafas y guantes.
    `,
  },
  'liquid-amount': {
    answer: 'Ocupa el lugar del agua gramo por gramo: tanta agua menos, y nunca menos líquido que sosa.',
    why: spaced`
      Toda o una parte. Lo más seguro: disuelve la sosa en su mismo peso de agua fría, deja enfriar,
      y el resto, leche, cerveza o té, va a los aceites. En polvo (leche,
      yogur): unos 10 g por cada 100 g de líquido, en los aceites, sin quitar agua. Cerveza y vino,
      hervidos antes sin gas. /plan liquid:«mitad cerveza» lo pesa.
    `,
  },
  'koh-and-naoh': {
    answer: 'Sí: un poco de KOH da una pastilla más cremosa, 5 a 10 %; el de afeitar lleva un 60 % de KOH.',
    why: spaced`
      Partes de lo que gastan los aceites, no de gramos, pues el KOH pesa 1,40 veces más (1,56 al 90 %).
      Con más de un 10 % la pastilla queda blanda. Nunca se cambia uno por otro a igual peso. Los dos se
      disuelven en la misma agua fría, uno tras otro. /plan lye:«both» calcula los dos pesos.
    `,
  },
  'sap-to-naoh': {
    answer: 'Sí: × 0,713, que es 40,00 / 56,11. Un valor en mg KOH por g se divide además entre 1000.',
    why: spaced`
      Oliva de 190 mg KOH/g gasta 0,190 g de KOH o 0,135 g de NaOH por gramo, con 0 % de sobreengrasado; ×
      0,95 para un 5 %. De NaOH a KOH, × 1,403, y / 0,90 si es del 90 %. Los valores son márgenes (oliva
      184 a 196, Codex CXS 33): deja el sobreengrasado.
    `,
  },
  'acid-lye': {
    answer:
      'Sí: un gramo de ácido cítrico gasta 0,62 g de NaOH (0,57 g el monohidrato), 100 g de vinagre al 5 %, 3,3 g.',
    why: spaced`
      Por masas molares: 3 × 40,0 / 192,1 y 40,0 / 60,05. Pregunta con el peso («cuánta sosa gastan 10 g de
      ácido cítrico»), o /plan additives:«ácido cítrico 10 g» la suma. El ácido va en el agua fría antes
      que la sosa, nunca sobre sosa seca ni agua de sosa fuerte, nunca con ultramar. Después el ácido no
      arregla ninguna pastilla.
    `,
  },
  'lye-roughly': {
    answer:
      'Casi todas las recetas llevan de 12 a 14 g de NaOH por 100 g de aceites; el puro coco, 17. Más de 19 g no lo gasta ninguno.',
    why: spaced`
      Eso descubre una receta loca, no hace ninguna: cada aceite gasta la suya (oliva 12,9, manteca de
      cerdo 13,2, coco 17,3 g con 5 %; ceras y jojoba, la mitad). De KOH, 1,4 a 1,56 veces más. Dime
      aceites y gramos, como «cuánta sosa para 500 g de oliva y 200 g de coco», y la peso.
    `,
  },
  'animal-fat': {
    answer: 'Sí: la grasa limpia y derretida de oso, ganso, ciervo u oveja gasta como la manteca o el sebo.',
    why: spaced`
      Manteca 192 a 203,
      sebo 190 a 202 mg KOH/g (Codex CXS 211): unos 13 g de NaOH por 100 g con 5 %. Las blandas (oso,
      ganso, pato, caballo) como manteca, las duras (ciervo, oveja, cabra) como sebo; de memoria,
      así que deja un 8 %: «cuánta sosa para 500 g de manteca de cerdo,
      sobreengrasado 8». Derrítela con agua, espuma, pésala seca: sal, carne y agua estropean la cuenta.
    `,
  },
  'caustic-for-soda': {
    answer:
      'No, es otra cosa: los cristales de sosa son carbonato, para lavar. Nunca sosa cáustica en su lugar.',
    why: spaced`
      Una receta con cristales de sosa no es de jabón: friega o ablanda el agua; la cáustica quema piel,
      ojos y tela, y hierve en agua caliente. El jabón pide hidróxido de sodio y aceites pesados. «Soda»
      sola en una hoja vieja: averigua cuál era antes de pesar nada.
    `,
  },
  'lather-without-coconut': {
    answer: 'Sin coco ni palmiste: ricino de 5 a 10 %, un poco de azúcar, babasú si tienes.',
    why: spaced`
      Manteca, sebo y girasol dan crema, no burbujas. 10 a 20 g de azúcar por kg de aceites, disueltos en
      parte del agua antes de la sosa; cerveza o leche por agua hacen lo mismo. Más de 10 a 15 % de ricino
      queda pegajoso. La sosa se calcula otra vez: «cuánta sosa para 600 g de manteca de cerdo, 300 g de
      girasol, 100 g de ricino».
    `,
  },
  'free-alkali-test': {
    answer: 'Sí: la fenolftaleína en un corte fresco dice sí o no; valorando en alcohol da una cifra.',
    why: spaced`
      Una gota en el corte: rosa es sosa libre ahí, incoloro no prueba el resto. Para una cifra, como en
      ISO 456: 10 g de jabón en etanol neutro caliente, luego ácido clorhídrico 0,1 mol/l hasta que se va
      el rosa; cada ml son 4 mg de NaOH, 0,04 %. Lejos de llamas, el etanol arde. Hasta un 0,1 % es común
      en jabón de tocador. Con aceite desconocido no sustituye a los pesos.
    `,
  },
  'purity-ignored': {
    answer:
      'Porque va a lo seguro: sosa del 98 % contada como 100 % solo deja unos 2 puntos más de sobreengrasado.',
    why: spaced`
      Nunca deja la pastilla cáustica, así que casi nadie lo cuenta. Por debajo de un 96 %, y siempre con
      KOH (85 a 95 %), cuéntalo: /plan lye:«NaOH 97%». La sosa vieja o húmeda es más floja que su etiqueta
      y nadie sabe cuánto. Pura de nombre y con cifra ha de ser.
    `,
  },
  'scale-off': {
    answer: 'No daña: si todos los pesos son de esa báscula, todos se desvían igual y la receta vale.',
    why: spaced`
      Cuentan las partes, no los gramos: un 5 % más de aceites, sosa y agua es el mismo jabón, solo más. Sí
      importa si la sosa o los aceites salen de otra báscula, de un paquete o de una jarra, o si se desvía
      en gramos y no en porcentaje: calcula lo que entró y dímelo. Compruébala con una moneda o un litro de
      agua (1000 g).
    `,
  },
  'hot-lye': {
    answer: 'No: espera a 35 a 45 °C (95 a 113 °F), y los aceites igual. La sosa caliente salpica y acelera.',
    why: spaced`
      El agua de sosa recién hecha llega a 80 a 95 °C (176 a 203 °F). Pon la jarra abierta en un barreño de
      agua fría, nada dentro de la jarra, gafas y guantes, y espera; y con no más de unos 10 °C (18 °F) de
      diferencia. Si ya la echaste: cara apartada, remueve despacio, no lo tapes ni lo envuelvas.
    `,
  },
  'ph-enough': {
    answer:
      'No: una buena cifra sola no prueba nada. 11 o más dice que no se use; menos, falta ver el resto.',
    why: spaced`
      Las tiras marcan bajo en jabón y tocan un solo punto. Un jabón sano está entre 9 y 10,5. Lo que lo
      dice: pesos que estaban bien («eché 100 g de sosa en 700 g de oliva»), cuatro semanas de cura, ni
      cristales ni gotas en el corte, que no pique. Nunca la lengua.
    `,
  },
  'why-cure': {
    answer:
      'No es por la sosa: se gasta en días. Las semanas secan la pastilla: más dura, más suave, dura más.',
    why: spaced`
      Una pastilla fresca lleva un cuarto de agua; pierde un décimo de su peso o más en cuatro a seis
      semanas. Aun así: guantes las primeras 48 horas, y usarlo tras cuatro semanas y si no pica. Una
      pastilla con sosa de más no se arregla esperando.
    `,
  },
  'lye-free-claim': {
    answer: 'No: todo jabón se hace con sosa. «Ya no lleva sosa» es cierto, si se pesó bien y curó.',
    why: spaced`
      En la etiqueta va lo que quedó de ella: oleato de sodio y demás, o los aceites y el hidróxido de
      sodio. Lo que se afirma ha de ser cierto en casi todos los países (UE: Reglamento 655/2013). Las
      pastillas detergentes se hacen sin sosa, y no son jabón.
    `,
  },
  selling: {
    answer:
      'Casi siempre sí, según las normas de donde vendas: pregunta a tu autoridad antes de la primera pastilla.',
    why: spaced`
      UE: el jabón es un cosmético: evaluación de seguridad por receta, notificación, etiqueta con
      ingredientes (INCI), peso, lote, fecha y responsable (Reglamento 1223/2009). EE. UU.: el jabón simple
      va más libre; según lo que prometas es cosmético o medicamento. Regalado en una feria también cuenta.
      No soy abogado: /colourant check dice qué se sabe de los colores.
    `,
  },
  'melt-and-pour-lye': {
    answer: 'Sin sosa: la base de derretir y verter ya es jabón, otro manejó la sosa.',
    why: spaced`
      Se derrite, se colorea, se aromatiza y se vierte. Nunca se le añade sosa ni más aceite. Yo sé de
      color en jabón de proceso en frío: mis dosis no valen para ella.
    `,
  },
  slimy: {
    answer:
      'Es cosa de la oliva, no de la sosa: toma agua y queda baboso. Más cura y una jabonera que escurra.',
    why: spaced`
      El de pura oliva pide de tres a seis meses, mejor un año; que se seque entre usos. La próxima vez 10
      a 20 % de coco u otra grasa dura, menos agua, 10 a 15 g de sal por kg de aceites en el agua. Si la
      baba pica o quema es otra cosa: enjuaga, no lo uses.
    `,
  },
  'lye-for-food': {
    answer:
      'Para comida solo sosa de grado alimentario (E 524), con receta probada y con útiles que nunca tocaron jabón.',
    why: spaced`
      La técnica puede llevar metales. La alimentaria vale también para jabón si dice 98 % o más, pero el
      bote de aceitunas o pretzels va aparte y con etiqueta, y nada que tuvo sosa de jabón, color o aroma
      vuelve a la cocina. Lo que salió mal con sosa en la comida no se come.
    `,
  },
  'smell-fades': {
    answer:
      'Casi siempre: el olor a cerveza, leche o manteca se va en cuatro a ocho semanas de cura al aire.',
    why: spaced`
      El jabón crudo huele poco. Agrio, a pintura o rancio y cada vez más, con manchas naranjas: el aceite
      se estropea. A amoniaco más de unos días: leche quemada. Vapores que hacen toser: al aire libre,
      /first-aid.
    `,
  },
  'hot-process-cure': {
    answer: 'Sí: la cocción gasta la sosa, pero la pastilla aún ha de secar, de dos a cuatro semanas.',
    why: spaced`
      Se puede usar antes, solo se gasta pronto y es más fuerte al principio. Pruébalo antes: papel de pH
      en su espuma, nunca la lengua. Yo sé de proceso en frío; en caliente los colores van después de cocer.
    `,
  },
  'bars-per-kilo': {
    answer: 'Unas diez: 1 kg de aceites da cerca de 1,4 kg de masa, diez u once pastillas de 130 g.',
    why: spaced`
      1000 g de aceites, unos 140 g de sosa, unos 280 g de agua; un décimo o más se seca en la cura. «10
      pastillas de 120 g» o tu molde en /plan size te dice los aceites.
    `,
  },
  'lye-tub': {
    answer:
      'No para comida, juguetes ni nada que toquen niños. Enjuagado y marcado, solo para sosa o útiles de jabón.',
    why: spaced`
      La sosa se queda bajo el borde y en la tapa. Gafas y guantes: enjuágalo muchas veces con mucha agua
      fría, sécalo, quita la etiqueta vieja. Nunca lleva comida ni bebida, sea del material que sea.
    `,
  },
  'shop-fat': {
    answer: 'Sí, si la etiqueta nombra una sola grasa, sin agua ni sal: cerdo, palma, coco, girasol, oliva.',
    why: spaced`
      La margarina lleva agua y sal; la «manteca vegetal» es una mezcla: nombra lo que dice la etiqueta,
      con porcentajes. Refinada y clara toma mejor el color. Luego pregunta «cuánta sosa para 500 g de
      manteca de cerdo».
    `,
  },
  'more-oil': {
    answer: 'No quema: más aceite es más sobreengrasado, un 5 % más de aceite son unos 5 puntos.',
    why: spaced`
      50 g más en 1000 g de aceites: de 5 a un 9,5 %. Hasta 10 es una pastilla suave; más, blanda y antes
      rancia. No añadas sosa a ojo; en la olla puede calcularse la de ese aceite: «cuánta sosa para 50 g de
      oliva, sobreengrasado 5», disuelta en su peso de agua fría y mezclada mientras está líquida.
    `,
  },
};
