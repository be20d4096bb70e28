import { spaced } from '../../../engine/over-lines.ts';
import type { lyeBasics as english } from '../../en/lye/lye-basics.ts';

/** What everybody who handles lye has to know: what is lye and what is none, what it may be kept in, and what to do when it went wrong. */
export const lyeBasics: typeof english = {
  'clean-up': {
    answer: ['No la neutralices: barre la sosa seca y luego lava el sitio con mucha agua.'],
    why: [
      'Primero gafas y guantes; niños y mascotas lejos.',
      'Escamas secas: bárrelas en seco a un bote de plástico, nunca con la mano.',
      'Líquido: empápalo con papel o trapos y aclara varias veces con mucha agua fría.',
      spaced`
        Alfombra o madera: recoge cada escama en seco antes de echar agua y luego aclara; si sigue
        resbaladizo o se calienta, sigue aclarando.
      `,
      'Nunca vinagre ni otro ácido sobre la piel ni sobre el derrame: calienta.',
      'Solo las últimas trazas de una mesa ya aclarada pueden limpiarse con vinagre flojo.',
      spaced`
        Agua de sosa sobrante: ponle etiqueta y guárdala cerrada para el próximo lote, o pregunta a tu
        servicio local de residuos; lo que puede ir por el desagüe lo dicen las normas locales.
      `,
      'Nunca a un fregadero o tubería de aluminio.',
    ],
  },
  'drain-cleaner': {
    answer: ['No: nunca uses desatascador como sosa.'],
    why: [
      spaced`
        Aunque la etiqueta diga sosa puede llevar trozos de aluminio (sueltan hidrógeno), lejía, sales,
        perfume o tinte, y no se sabe su fuerza.
      `,
      'Compra hidróxido de sodio puro, con la pureza en la etiqueta.',
    ],
  },
  'baking-soda': {
    answer: ['No: el bicarbonato o el carbonato no hacen jabón del aceite.'],
    why: [
      'Son sales del ácido carbónico, demasiado flojas.',
      'Solo lo hacen el hidróxido de sodio (pastillas) o el de potasio (jabón blando).',
      'Lo otro queda en una pasta grasienta.',
    ],
  },
  bleach: {
    answer: ['No: la lejía de la ropa no es sosa.'],
    why: [
      'La lejía doméstica es hipoclorito de sodio en agua.',
      'No hace jabón, y con ácidos suelta cloro tóxico.',
      'Necesitas hidróxido de sodio (NaOH, sosa cáustica).',
    ],
  },
  'glass-jug': {
    answer: ['Vidrio no: la sosa lo ataca y el calor puede romperlo.'],
    why: [
      'Usa una jarra que aguante el calor, de polipropileno (PP, marca 5), o de acero inoxidable.',
      'El vidrio que aguantó muchas veces se rompe sin aviso, también el resistente al calor.',
    ],
  },
  aluminium: {
    answer: ['No: nunca aluminio, estaño ni zinc con sosa.'],
    why: [
      'La sosa los disuelve y suelta hidrógeno, que arde.',
      'Usa acero inoxidable o polipropileno (PP 5).',
    ],
  },
  'no-goggles': {
    answer: ['No empieces sin gafas y guantes: una gota de sosa puede costar un ojo.'],
    why: [
      'Las gafas normales no bastan: gafas cerradas por todos lados, guantes para químicos, manga larga.',
      'Si te faltan a medias, apártate, tapa la jarra sin cerrarla y póntelos antes de seguir.',
    ],
  },
  'lye-twice': {
    answer: ['No lo uses: con el doble de sosa sobra sosa y quema la piel.'],
    why: [
      'Guantes y gafas puestos.',
      spaced`
        La masa solo se salva si sabes justo lo que lleva: dime «eché 300 g de sosa en 1000 g de oliva»
        y te digo cuánto se pasa, y se rehace con los aceites que faltan.
      `,
      'Si no sabes las cantidades, deséchala como residuo cáustico según tus normas locales.',
    ],
  },
  'wrong-unit': {
    answer: ['No lo uses todavía: con la unidad equivocada puede sobrar mucha sosa.'],
    why: [
      '1 oz son 28,35 g.',
      spaced`
        Apunta lo que marcaba la báscula de cada cosa y en qué unidad, y calcula lo que de verdad entró;
        luego dime «eché 150 g de sosa en 1000 g de oliva».
      `,
      'Si dudas, trátalo como si sobrara sosa: guantes, nada de piel, deséchalo según tus normas locales.',
    ],
  },
  'lye-forgotten': {
    answer: ['No eches sosa a ojo, y no uses el jabón hasta saberlo.'],
    why: [
      'Pesa lo que queda en el bote de sosa, o la olla frente a sus aceites y su agua: la diferencia lo dice.',
      'La masa sin sosa nunca espesa y sigue siendo aceite.',
      'Si no puedes saberlo, trátala como cáustica, con guantes, y deséchala según tus normas locales.',
    ],
  },
  'harder-by-lye': {
    answer: ['No: más sosa no da un jabón más duro, da uno que quema.'],
    why: [
      'La sosa que los aceites no gastan se queda en la pastilla como sosa.',
      spaced`
        Para más dureza: más grasas duras (palma, sebo, manteca de cacao), menos agua, sal o lactato de
        sodio, y más curado; recalcula la sosa con cada cambio de aceites.
      `,
    ],
  },
  'too-little-water': {
    answer: ['Nunca menos agua que sosa en peso: no se disuelve.'],
    why: [
      'Los cristales sin disolver se quedan en la pastilla y queman.',
      'Lo usual es de 1,5 a 2 veces el peso de la sosa (al 33 % son 2,03 veces).',
      spaced`
        Si el agua de sosa estaba clara y todo disuelto, el jabón puede estar bien, solo más espeso y
        caliente; si había cristales, guantes, no lo uses, y rehazlo con agua o deséchalo.
      `,
    ],
  },
};
