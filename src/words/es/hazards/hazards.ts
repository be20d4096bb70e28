import type { BarredReason, BatchPart } from '../../../engine/hazards/index.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

/** Of white powders that are no colour. */
const TALC = 'Su polvo daña los pulmones y puede llevar amianto: solo de grado cosmético y con mascarilla.';
const FINE_POWDER = 'Es un polvo fino: que no llegue a los pulmones, usa mascarilla.';

const { plain } = numbersIn('es');
const barred: Readonly<Record<BarredReason, string>> = {
  cadmium:
    'Los pigmentos de cadmio son venenosos y están prohibidos en cosmética. Para ese amarillo, naranja o rojo usa óxidos de hierro, una mica o laca Rojo 30',
  lead: spaced`
    Los pigmentos de plomo (albayalde, minio, amarillo de cromo) son venenosos y están prohibidos en
    cosmética. Usa dióxido de titanio para blanco, óxido de hierro amarillo para amarillo
  `,
  mercury:
    'El bermellón y el cinabrio son sulfuro de mercurio: venenoso y prohibido en cosmética. Para ese rojo usa laca Rojo 30',
  arsenic:
    'Es un pigmento de arsénico: venenoso y prohibido en cosmética. Para verde usa óxido de cromo verde; para amarillo, óxido de hierro amarillo',
  antimony:
    'Los pigmentos de antimonio (como el amarillo de Nápoles, que lleva plomo) son venenosos y están prohibidos en cosmética. Usa óxido de hierro amarillo',
  chromate:
    'Los cromatos son cromo(VI): causan cáncer y alergia, y están prohibidos en cosmética. El óxido de cromo verde es otra sustancia y sí puede usarse',
  oxidiser: spaced`
    El permanganato es un oxidante fuerte: quema y mancha la piel, reacciona con aceites y glicerina, que
    pueden arder, y no es color para cosmética. Para violeta usa ultramar violeta
  `,
  cobalt:
    'Los pigmentos de cobalto no están listados para jabón, y el cobalto causa alergia. Para azul usa azul ultramar',
  nickel:
    'Los pigmentos de níquel causan alergia y están prohibidos en cosmética. Usa óxido de hierro amarillo',
  'copper-poison':
    'Este pigmento de cobre es venenoso o corrosivo, y no está en ninguna lista de colores cosméticos. Para verde usa óxido de cromo verde, para azul ultramar',
  radioactive: 'Esto es radiactivo. No entra en el jabón',
  asbestos:
    'El polvo de amianto causa cáncer y está prohibido. Déjalo cerrado y pregunta a tu ayuntamiento dónde se entrega',
  'delisted-dye':
    'Este tinte se retiró de las listas o está prohibido en la piel. Usa una laca o un tinte listado, como laca Rojo 30 o Rojo 33',
  'us-delisted':
    'El Rojo 3 (eritrosina) y el amaranto (Rojo 2) se retiraron de la lista de EE. UU. para cosmética. Usa laca Rojo 30, Rojo 33 u óxido de hierro rojo',
  'burning-plant':
    'Esta planta quema o envenena la piel (sanguinaria, fitolaca). Para rojo usa rubia, arcilla roja u óxido de hierro rojo',
  metal:
    'Es metal: en la sosa se corroe, calienta y puede soltar hidrógeno, que arde. Usa mica dorada o plateada',
  paint: spaced`
    Esto se hace para papel, paredes o resina, no para la piel: nadie dice qué lleva, y puede ser plomo,
    cadmio o cobalto. Solo entra un pigmento vendido para jabón o cosmética, con su número CI en la
    etiqueta. Si lo tiene, pregunta con ese número
  `,
  crayon:
    'Las ceras de colores son para papel, no para la piel: sus pigmentos no están listados, no se dispersan y sangran. Usa una mica o un óxido',
  'candle-dye':
    'El colorante para velas es para cera, no para la piel; sangra, mancha y la sosa lo cambia. Usa una mica o un óxido',
  'cloth-dye':
    'Este tinte es para tela, cuero, madera o pelo, no para jabón: puede causar alergia. Usa una mica o un óxido',
  'food-colouring': spaced`
    El colorante alimentario en la sosa: casi todos se vuelven marrones o se apagan en días, y lo que queda
    sangra y mancha. Mejor un óxido, ultramar o mica. Si la etiqueta nombra el tinte (Azul 1, Rojo 40,
    E133), pregunta con ese nombre y te digo qué le hace la sosa
  `,
  'make-up': spaced`
    El maquillaje lleva cargas, aceites y colores en partes que nadie dice; a unos los destruye la sosa,
    otros solo se admiten en ojos o uñas. Usa una mica o un óxido. Si tiene lista de ingredientes, pégala y
    te digo qué le hace la sosa
  `,
};

/** Qué es en el lote un nombre que no es un color, y qué significa para quien lo quería como tal. */
export const batchPart: Readonly<Record<BatchPart, string>> = {
  liquid: spaced`
    va en lugar del agua, con su propio método: congelado, hervido sin gas, o en los aceites, nunca tal
    cual con la sosa (lo ácido gasta sosa, lo dulce calienta). /plan liquid:«leche de cabra» lo pesa
  `,
  sugar: spaced`
    es un azúcar: oscurece y calienta el jabón. Como mucho 30 g por kg de aceites, disuelto en agua, en los
    aceites, nunca en la sosa. /plan additives:«miel 15 g» cuenta su calor
  `,
  acid: spaced`
    es un ácido y gasta sosa, así que la sosa se pesa con él: /plan liquid:«vinagre» o additives:«ácido
    cítrico 10 g». Nunca sobre sosa seca ni agua de sosa fuerte: salpica. Nunca con ultramar
  `,
  fat: 'es una grasa: va con los aceites y gasta su propia sosa. /plan oils:«oliva 700 g, coco 300 g» la pesa',
  scent: spaced`
    es un aroma: se pesa según el certificado de quien lo hace para jabón (IFRA categoría 9), nunca por
    cucharadas. /plan fragrance:«3%». La vainilla oscurece el jabón
  `,
  salt: 'es una sal: endurece la pastilla y espesa la masa. /plan additives:«sal 20 g» la pesa',
  wax: 'es una cera o algo parecido: un poco endurece, y funde más caliente de lo que se vierte casi todo jabón. /plan oils:«oliva 950 g, cera de abejas 50 g»',
  lye: 'hace el jabón y no es un color. Se pesa al gramo, nunca por cucharadas: /plan la calcula con tus aceites',
  oil: spaced`
    es un aceite que no conozco: una grasa gasta su propia sosa (/plan oils), un aceite esencial es un
    aroma y se pesa según su certificado para jabón (/plan fragrance), y el mineral o de motor no hace jabón
  `,
  herb: 'no deja en la sosa ningún color que yo conozca. Lo que tiene de agua cuenta como agua; si lleva alcohol, la masa se corta: déjalo fuera',
  plain: 'no colorea nada que yo sepa',
};

export const hazardRefusals: Pick<RefusalSentences, 'colour-barred' | 'law-allows-too-little' | 'no-colour'> =
  {
    'law-allows-too-little': ({ text, law, percent }) => spaced`
      «${text}»: la ley de ${law === 'us' ? 'EE. UU.' : 'la UE'} permite como mucho un ${plain(percent)} %
      de la pastilla, menos de lo que mide ninguna cuchara. Usa otro color; o guarda tu bote en la
      estantería con su lista de ingredientes, y mantengo cada dosis bajo la ley.
    `,
    'no-colour': ({ text, kind }) =>
      kind === 'glow'
        ? spaced`
          «${text}» no es para jabón: lo que brilla en la oscuridad es aluminato de estroncio, en ninguna
          lista de colores cosméticos, o sulfuro de zinc luminiscente, que EE. UU. solo admite en
          maquillaje y uñas. Para un color vivo, un pigmento neón.
        `
        : kind === 'stone'
          ? spaced`
            «${text}» es la gema molida, con pirita y calcita: no está en ninguna lista de colores
            cosméticos ni reemplaza por cucharada al pigmento. ¿Tu etiqueta dice azul ultramar o CI 77007?
            Entonces pregunta con ese nombre.
          `
          : kind in batchPart
            ? spaced`
              No doy cantidad: «${text}» ${batchPart[kind as BatchPart]}. ¿Un color que solo se llama así?
              Pregunta con su nombre entero, como «mica rojo vino».
            `
            : spaced`
              «${text}» no da color: es una carga blanca que apenas aclara. Para blanco, dióxido de titanio.
              ${kind === 'talc' ? TALC : FINE_POWDER}
            `,
    'colour-barred': ({ text, reason, hue }) =>
      hue
        ? spaced`
          «${text}» como pigmento no entra en el jabón. ${barred[reason]}. Si es una mica que solo se llama
          así, pregunta con la lista de ingredientes de su etiqueta.
        `
        : `«${text}» no entra en el jabón. ${barred[reason]}.`,
  };
