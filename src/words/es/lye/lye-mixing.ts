import { spaced } from '../../../engine/over-lines.ts';
import type { lyeMixing as english } from '../../en/lye/lye-mixing.ts';

/** What is said of what a first batch is made of: its water and heat, its moulds, what is put in and what is not. */
export const lyeMixing: typeof english = {
  'other-water': {
    answer: ['No: la sosa va solo en agua normal y fría, mejor destilada.'],
    why: [
      'El agua de mar, de piscina o salada trae sal y suciedad: la sosa se disuelve mal y la barra se desmorona.',
      'Los refrescos con gas rebosan al momento, su azúcar calienta y su ácido gasta sosa.',
      'El caldo lleva sal, grasa y proteína: calienta y apesta.',
      'El agua oxigenada se descompone con calor y espuma, nunca.',
      'La sal o el azúcar, si se quiere, se pesa y se disuelve antes en el agua: /plan additives:«sal 10 g».',
    ],
  },
  'lye-in-oil': {
    answer: ['No: la sosa va primero en agua fría, y esa agua de sosa en los aceites.'],
    why: [
      'La sosa seca no se disuelve en aceite: quedan granos en el jabón que queman la piel semanas después.',
      spaced`
        Pesa al menos tanta agua como sosa, la sosa despacio, remueve hasta que esté clara, deja que
        baje a 35 a 45 °C (95 a 113 °F), y entonces a los aceites.
      `,
      spaced`
        Si ya está seca en el aceite: no eches agua, calienta y salpica; guantes, gafas, y deséchalo
        como residuo cáustico según tus normas locales.
      `,
    ],
  },
  'water-forgotten': {
    answer: ['No le eches agua ahora, y no lo uses.'],
    why: [
      'La sosa seca bajo el aceite calienta y salpica cuando le llega agua, y sin agua queda en granos que queman.',
      spaced`
        Gafas y guantes, los demás fuera; déjalo frío, pásalo a un bote de plástico (PP o HDPE) con
        etiqueta, entrégalo como residuo cáustico según tus normas locales, y empieza de nuevo: la sosa
        primero en agua fría.
      `,
      'Solo una masa con poca agua, no sin agua, puede seguir si toda la sosa estaba disuelta.',
    ],
  },
  'mixing-temperature': {
    answer: ['Los dos a 35 a 45 °C (95 a 113 °F), y con no más de unos 10 °C (18 °F) de diferencia.'],
    why: [
      spaced`
        El agua de sosa a 60 o 70 °C (140 o 158 °F) está demasiado caliente: pon su jarra en agua fría
        (nada dentro de la jarra), gafas puestas, y espera.
      `,
      spaced`
        Demasiado caliente espesa al momento, puede salpicar y se recalienta en el molde; por debajo de
        30 °C (86 °F) las grasas duras cuajan antes de ser jabón.
      `,
      'Leche, miel o azúcar: menos de 35 °C (95 °F).',
      'Mira que tu termómetro marque °C: 40 °C son 104 °F.',
    ],
  },
  'mould-stuff': {
    answer: [
      'Solo lo que no lleva metal y aguanta 80 °C (176 °F): silicona, PP (marca 5), madera o cartón forrado con papel de horno.',
    ],
    why: [
      spaced`
        Los briks y los tubos de patatas llevan aluminio o cartón por dentro: fórralos con papel de
        horno, enteros, sin cortes al aire; con aluminio a la vista, nunca: reacciona con la sosa y
        desprende hidrógeno.
      `,
      'Latas de aluminio u hojalata: no.',
      'Los vasitos de PP van bien, los finos de PS (marca 6) se ablandan.',
      'El tubo de PVC se ablanda y no suelta: fórralo, o mejor PP.',
      'Nunca más para comida.',
    ],
  },
  'not-an-oil': {
    answer: ['No: ni aceite de motor, de máquina, mineral o de bebé, ni el de las latas de pescado.'],
    why: [
      spaced`
        Los aceites de motor y minerales no son grasas: la sosa no hace jabón con ellos, queda toda
        libre y quema; el de motor usado es tóxico.
      `,
      'El de las latas lleva sal, agua y pescado: su sosa no se sabe y el olor se queda.',
      'Usa aceite de cocina fresco y pregunta «cuánta sosa para 500 g de aceite de oliva».',
    ],
  },
  'sand-and-shells': {
    answer: ['Solo encima, o un poco muy fina, lavada y seca; nada que corte en una barra que roza la piel.'],
    why: [
      spaced`
        La arena y las conchas de la playa traen sal, suciedad y bordes que cortan: lávalas y hiérvelas,
        sécalas, y quita las conchas antes de usarlo.
      `,
      'La sosa no daña la concha (carbonato de calcio) ni la arena de cuarzo.',
      'La arena raspa: como mucho 1 cdta de la más fina por 500 g de aceites, nunca para la cara, un niño o piel herida.',
      'Como molde: forra la concha, o se pega.',
      'Mira las normas locales: en muchas playas está prohibido llevárselas.',
    ],
  },
  'no-trace': {
    answer: [
      'No eches más sosa.',
      'Templa la masa a unos 40 °C (104 °F), bate a golpes cortos y revisa los pesos.',
    ],
    why: [
      'La oliva y mucha agua pueden tardar una hora a mano; las grasas frías parecen espesas y no lo están.',
      'Si tras 30 minutos de batidora sigue líquida, lo probable es poca sosa, agua de más o un aceite equivocado.',
      'Repasa cada peso (dime «eché 64 g de sosa y 150 g de agua en 500 g de oliva»).',
      'Gafas y guantes puestos: quema mientras no sea jabón.',
      'En la duda no se moldea: se guarda con etiqueta y se desecha según tus normas locales.',
    ],
  },
  'kitchen-spice': {
    answer: ['Mejor no: canela, clavo, guindilla, pimienta y mostaza irritan la piel, más aún en crudo.'],
    why: [
      spaced`
        Las especias de cocina no son cosméticos: canela y clavo están entre las causas más comunes de
        alergia en la piel, y la guindilla quema ojos y manos.
      `,
      'Además arañan y se ponen marrones.',
      spaced`
        Para ese marrón usa óxido de hierro rojo o marrón, o cacao; para amarillo, cúrcuma o achiote en
        aceite: pregunta «cuánto achiote para 500 g de aceites».
      `,
    ],
  },
  puree: {
    answer: ['Como mucho 1 cda (15 g) por 500 g de aceites, cocido y muy fino, en lugar de otra tanta agua.'],
    why: [
      'Su azúcar calienta: sosa, aceites y cuarto frescos, menos de 35 °C (95 °F), sin tapar ni horno.',
      'Más, o con trozos, cría moho, oscurece o ablanda.',
      'Su agua cuenta: /plan con additives:«puré de calabaza 15 g» la quita del agua y nunca deja menos agua que sosa.',
      'A los aceites, nunca sobre la sosa.',
      'Su color casi siempre queda en beis.',
    ],
  },
  'fresh-plants': {
    answer: ['No: los pétalos, hojas y frutas frescos se ponen marrones en la sosa y crían moho.'],
    why: [
      'Traen agua que nadie cuenta, y se pudren.',
      'Secos, solo encima, y aun así pueden oscurecer; solo los de caléndula guardan su amarillo.',
      'La fruta en puré: cocida, fina, como mucho 1 cda por 500 g de aceites, en lugar de parte del agua.',
    ],
  },
  'craft-glitter': {
    answer: ['No: la purpurina de manualidades no es para la piel, ni para el jabón de un niño.'],
    why: [
      'Su película puede llevar aluminio, que la sosa ataca, tintes que destiñen y bordes que arañan piel y ojos.',
      'Usa purpurina o mica cosmética de la que tengas la lista de ingredientes, y pregúntame «aguanta la sosa: mica, CI 77891».',
    ],
  },
  'household-scent': {
    answer: ['No: ni suavizante, ni colonia, ni ambientador, ni esencia de cocina en el jabón.'],
    why: [
      'El suavizante no es para la piel y estropea la masa.',
      'La colonia y las esencias llevan alcohol: la masa se calienta y se corta, y el alcohol arde.',
      'La vainilla además oscurece.',
      'Usa un aroma hecho para jabón, pesado según su certificado (IFRA, categoría 9), o ninguno.',
    ],
  },
  ink: {
    answer: ['No: la tinta de bolígrafo, rotulador o impresora no es para la piel y no va en el jabón.'],
    why: [
      'Sus tintes no están evaluados para la piel, sus disolventes irritan, y casi todos se pierden o destiñen en la sosa.',
      'Usa un óxido, un ultramar o una mica: pregunta «cuánto azul ultramar para 500 g de aceites».',
    ],
  },
  'hot-oils-of-scent': {
    answer: [
      'Nunca «mucho», nunca por gotas o ml: pesado en gramos, hasta lo que permita el certificado de ese aceite.',
    ],
    why: [
      spaced`
        Los aceites de canela, clavo, tomillo, orégano y hierba limón queman la piel, dan alergias y
        cortan la masa: su dosis para jabón que se aclara (IFRA, categoría 9) es una pequeña parte de lo
        usual, y la corteza de canela casi nada.
      `,
      'Sin certificado, no lo uses; nada para niños, embarazo o piel dañada.',
      '/plan fragrance:«3%» da los gramos de un aroma cuyo certificado lo permita.',
    ],
  },
};
