import { spaced } from '../../../engine/over-lines.ts';
import type { EuRestriction, UsArea } from '../../../engine/stability/listings.ts';
import type * as en from '../../en/colourants/stability.ts';

/** Adónde va un color en el jabón crudo. */
const towards: Readonly<Record<en.Towards, string>> = {
  beige: 'beige',
  'blue-violet-grey': 'violeta azulado a gris',
  bluer: 'más azul',
  'bright-pink': 'un rosa vivo que se corre',
  'duller-brown': 'más apagado y marrón',
  'green-beige': 'beige verdoso',
  'green-then-yellow': 'verde y luego amarillo',
  'grey-brown': 'marrón grisáceo',
  greyer: 'más gris',
  'maroon-brown': 'granate a marrón',
  'olive-brown': 'oliva a marrón',
  'pale-yellow': 'amarillo pálido',
  paler: 'más pálido',
  'peach-tan': 'melocotón y luego tostado',
  'pink-that-bleeds': 'un rosa que sangra',
  'purple-then-dull': 'morado y luego apagado',
  redder: 'más rojizo',
  'rose-or-purple': 'rosa o morado',
  rust: 'marrón óxido',
  'violet-blue': 'azul violeta, y se apaga',
  'violet-or-teal': 'violeta o verde azulado, y puede apagarse',
  'yellow-brown': 'amarillo y luego marrón',
  'yellow-that-bleeds': 'un amarillo que sangra',
  yellower: 'más amarillo',
};

/** De qué depende. */
const on: Readonly<Record<en.ConditionId, string>> = {
  'bleeds-from-lake': 'la sosa suelta el colorante de la laca y sangra en las vetas claras',
  'dissolves-partly': 'el blanco queda, pero una parte se disuelve y puede espesar la masa',
  'dye-migrates': 'el colorante se disuelve, así que pasa al color vecino y puede cambiar de tono',
  'film-and-dye': 'la película aguanta un tiempo, su color quizá no',
  'hot-strong-lye': 'la sosa caliente y fuerte lo lleva hacia el azul',
  'how-alkaline': 'el tono depende de lo alcalino que sea el jabón',
  'pearl-lost': 'el color queda, el brillo puede perderse',
  'salt-of-the-toner': 'decide la sal con que se hizo el pigmento',
  'shade-of-neon': 'rosas, morados y azules se apagan antes, los demás tonos suelen aguantar',
  tarnishes: 'no reacciona, pero puede oscurecerse',
};

const areas: Readonly<Record<UsArea, string>> = {
  yes: 'sí',
  no: 'no',
  'limited-products': 'solo ciertos productos',
  'listed-products-only': 'solo los productos listados',
  'up-to-3-percent': 'como máximo 3 %',
  'up-to-5-percent': 'como máximo 5 %',
  'dye-and-aluminium-lake': 'sí, como colorante y como laca de aluminio',
};

const restrictions: Readonly<Record<EuRestriction, string>> = {
  none: 'sin restricción por tipo de producto',
  'rinse-off-only': 'solo productos que se aclaran',
  'not-on-mucous-membranes': 'no en mucosas',
  'not-in-eye-products': 'no en productos para los ojos',
};

export const stability: typeof en.stability = {
  towards,
  on,
  kinds: {
    glitter: 'purpurina',
    metal: 'polvo de metal',
    plain: 'nada que coloree',
    unknown: 'no reconocido',
  },
  confidence: { high: 'bien conocido', medium: 'casi cierto', low: 'una suposición: haz una prueba' },
  alkali: {
    stable: () => 'Aguanta en jabón crudo.',
    conditional: v => `Depende: ${v.on}. Haz una pastilla de prueba.`,
    shifts: v => `Cambia en jabón crudo: se vuelve ${v.towards}.`,
    destroyed: v => `Se pierde en jabón crudo: se vuelve ${v.towards}.`,
    bleeds: () => 'Sangra: el colorante se disuelve y pasa al color vecino. Haz una pastilla de prueba.',
    never: () => 'Que nunca toque la sosa: el metal reacciona, y el aluminio desprende hidrógeno y calor.',
    unknown: () => 'No se sabe: prueba antes con una cucharada de masa.',
  },
  acidMeetsUltramarine:
    'No. El ácido destruye el ultramar y libera sulfuro de hidrógeno, que es venenoso; el ácido va entero al agua de la sosa primero, nunca sobre el pigmento.',
  warning: {
    destroyed: v => `${v.name} se vuelve ${v.towards} en jabón crudo.`,
    shifts: v => `${v.name} cambia en jabón crudo: se vuelve ${v.towards}.`,
    bleeds: v => `${v.name} sangra en el color vecino.`,
    conditional: v => `${v.name}: ${v.on}.`,
  },
  ifPresent: v => `${v.name}: solo si lo lleva («puede contener»). Pregunta a tu proveedor.`,
  notRecognised: v => `No reconozco: ${v.names.join('; ')}. Así que no puedo prometer nada sobre ello.`,
  predispersed: v =>
    `Ya viene disperso en ${v.carrier}, así que no se sabe su fuerza: empieza con un cuarto, compara, sube y apunta lo que funcionó.`,
  permitted: {
    us: v =>
      `EE. UU., 21 CFR ${v.section}. Uso externo: ${areas[v.external]}. Labios: ${areas[v.lips]}. Zona de los ojos: ${areas[v.eye]}.`,
    usTerms: v => `Condiciones (en inglés, como en la lista): ${v.terms}.`,
    usCertified: 'La FDA debe certificar cada lote.',
    usLake: 'Las lacas figuran de forma provisional en 21 CFR 81.1 y 82; cada lote se certifica.',
    usNotListed: v => `EE. UU.: ${v.name} no está en las listas de colores cosméticos (21 CFR 73, 74, 82).`,
    usNoRow: v => `EE. UU.: nuestra copia de las listas no trae ${v.name}. Compruébalo antes de vender.`,
    eu: v => `UE, anexo IV, entrada ${v.entry}: ${restrictions[v.restriction]}.`,
    euMost: v => `Como máximo ${v.most}.`,
    euConditions: v => `Condiciones (en inglés, como en la lista): ${v.conditions}.`,
    euNoRow: v => `UE: nuestra copia del anexo IV no trae ${v.name}. Compruébalo antes de vender.`,
    noColour: v => `${v.name} cuenta como ingrediente, no como color.`,
    dated: v => `Texto de ${v.asOf}.`,
    undated: 'De memoria, sin comprobar con el texto.',
    fluorescent: spaced`
      Pigmentos neón de resina: sin entrada en EE. UU.; de los colores fluorescentes, allí solo se listan
      unos pocos colorantes certificados. En la UE, cada colorante que llevan debe estar en el anexo IV:
      pregunta al proveedor cuál es.
    `,
    change: 'Las normas cambian y deciden las locales: mira el texto vigente antes de vender.',
    lyeFirst:
      'Que algo esté listado no dice nada de la sosa: lo que no debe tocarla queda fuera, listado o no.',
    trueSoap: spaced`
      EE. UU.: una pastilla que es sobre todo jabón de sosa y grasa y se vende solo como jabón no es un
      cosmético (21 CFR 701.20); cualquier otra promesa la convierte en uno, y rigen las normas de color.
    `,
    euResponsible: spaced`
      UE: todo jabón que se vende es un cosmético; una persona responsable responde de su evaluación,
      expediente y notificación (Reglamento (CE) n.º 1223/2009).
    `,
  },
  label: {
    us: 'Etiqueta de EE. UU.: los colores pueden ir tras los demás ingredientes en cualquier orden (21 CFR 701.3).',
    eu: spaced`
      Etiqueta de la UE: los colores pueden ir tras los demás ingredientes en cualquier orden, con su
      número CI (Reglamento (CE) n.º 1223/2009, artículo 19).
    `,
    unsure: v => `Pregunta a tu proveedor si de verdad los lleva: ${v.names.join(', ')}.`,
  },
  evidence: {
    share: v => `Aguanta en el ${v.mean} de las pastillas (con 90 % de certeza: entre ${v.low} y ${v.high}).`,
    reports: v =>
      v.reports === 0
        ? 'Aquí nadie ha informado todavía: sale solo de la química.'
        : v.reports === 1
          ? 'De la química y un informe.'
          : `De la química y ${v.reports} informes.`,
    results: { held: 'aguantó', shifted: 'cambió', faded: 'se apagó', bled: 'sangró' },
  },
};
