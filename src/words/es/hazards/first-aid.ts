import { spaced } from '../../../engine/over-lines.ts';
import type { firstAid as english } from '../../en/hazards/first-aid.ts';
import { householdFirstAid } from './first-aid-household.ts';

/** See the English sentences for what they rest on. */
export const firstAid: typeof english = {
  /** Asked why a colour with ultramarine smells, where nobody feels it and no acid is told. */
  ultramarineWhiff: spaced`
    Un tufillo a huevo podrido con ultramar es un poco de sulfuro de hidrógeno, un gas venenoso: abre las
    ventanas, apártate hasta que se vaya y ningún ácido cerca. Si es fuerte, o a alguien le duele la
    cabeza, le escuecen los ojos o se marea: todos fuera, y luego /first-aid.
  `,
  headlines: {
    ...householdFirstAid.headlines,
    'lye-swallowed': 'Sosa o jabón crudo en la boca: enjuaga, no provoques el vómito, llama ya.',
    'lye-eye': 'Sosa o jabón crudo en el ojo: agua ya, antes de seguir leyendo.',
    'lye-skin': 'Sosa o jabón crudo en la piel: agua corriente ya.',
    'fumes-inhaled': 'Vapores o polvo respirados: al aire libre ya.',
    'hydrogen-from-metal':
      'La sosa ataca este metal y suelta hidrógeno, que puede explotar: nada de llamas, apártate.',
    'hydrogen-sulfide': 'El olor a huevo podrido es un gas venenoso (sulfuro de hidrógeno): todos fuera ya.',
    'lye-eruption': 'La sosa está fuera de control: apártate, déjala, que nadie se acerque.',
    'animal-exposed': 'Un animal tocó sosa o jabón crudo: agua, que no se lama, llama ya al veterinario.',
    'skin-reaction':
      'Una reacción de la piel: deja de usar este jabón y enjuaga. Cara o garganta hinchadas, o le cuesta respirar: llama ya a tu número de emergencias.',
  },
  steps: {
    ...householdFirstAid.steps,
    'lye-swallowed': ({ call, poison }) => [
      'Enjuaga la boca con agua y escúpela, varias veces.',
      `Llama ya a ${call}, aunque parezca estar bien${poison}. Le cuesta respirar, babea, no puede tragar o se duerme: ambulancia.`,
      'No provoques el vómito: quema por segunda vez.',
      'Nada de vinagre ni limón, nada para «neutralizar».',
      'Solo si está bien despierto y puede tragar: unos sorbos de agua, un vaso pequeño como mucho. Nada más.',
      'Que se siente erguido. Lleva el envase de la sosa.',
    ],
    'lye-eye': ({ call, poison }) => [
      'Mantén el ojo abierto bajo agua corriente suave, con el ojo dañado abajo. Fuera las lentillas si salen fácil.',
      'Sigue enjuagando al menos 30 minutos de reloj. El agua del grifo sirve.',
      `Mientras, que alguien llame a ${call}${poison}.`,
      'Después al hospital o al oculista enseguida, aunque mejore.',
      'Nada de vinagre, gotas ni frotar.',
    ],
    'lye-skin': ({ call, poison }) => [
      'Escamas secas: sacúdelas primero. Después agua corriente abundante, al menos 20 minutos.',
      'Bajo el agua, quita la ropa, los guantes, los zapatos y los anillos que tocó.',
      'Si sigue resbaladiza o escuece, aún queda sosa: sigue enjuagando.',
      'Nada de vinagre, limón ni cremas.',
      `Llama a ${call} si es un niño, la cara, manos, pies o ingles, algo mayor que una moneda, o piel blanca o con ampollas${poison}.`,
    ],
    'fumes-inhaled': ({ call, poison }) => [
      'Sal afuera, o a una ventana abierta de otro cuarto; enjuaga el polvo de boca y nariz. Llévate a los demás y a los animales.',
      'Siéntate erguido, afloja la ropa, respira con calma. No te tumbes.',
      `Llama ya a ${call} si cuesta respirar o silba el pecho, con asma, opresión, labios azules o desmayo.`,
      `Si la tos o la garganta no mejoran en unos minutos, llama también${poison}.`,
      'No vuelvas hasta que se ventile. Si alguien cayó adentro, que lo saquen los bomberos.',
    ],
    'hydrogen-from-metal': ({ call }) => [
      'Apaga llamas, cocina y cigarrillos. Nada de chispas. Abre las ventanas.',
      'Apártate; lejos niños y animales. No te inclines encima ni respires lo que sube.',
      'Sin tapa, sin vinagre, sin echarle agua. Está caliente y puede salpicar.',
      'Solo si está tranquilo y llevas gafas y guantes: sácalo afuera, lejos de ti. Si no, déjalo y espera.',
      `Llama a ${call} si se desborda, humea o el recipiente cede.`,
      'Después no se usa. La sosa solo toca acero inoxidable o plástico marcado 5 (PP).',
    ],
    'hydrogen-sulfide': ({ call, poison }) => [
      'Todos, también los animales, fuera al aire libre. Deja todo como está.',
      'No vuelvas a olerlo: la nariz deja de notar este gas.',
      `Llama enseguida a ${call} por mareo, dolor de cabeza, náuseas, falta de aire o desmayo${poison}.`,
      'Ojos que escuecen o lloran: enjuaga con agua. Siéntate erguido.',
      'Nadie vuelve a entrar por nada ni por nadie: eso es de los bomberos.',
      'No le añadas nada. Un ácido (vinagre, limón, ácido cítrico) y el ultramar o el azufre no se juntan nunca.',
    ],
    'lye-eruption': ({ call, poison }) => [
      'Apártate y que nadie entre, tampoco animales. No cojas la jarra.',
      'No le añadas nada: ni agua ni vinagre. No te inclines encima; no respires el vapor. Abre una ventana si la alcanzas.',
      'En la piel: agua corriente al menos 20 minutos. En un ojo: al menos 30 minutos, y al hospital.',
      `Llama a ${call} si alguien está herido o tose, o si se extiende o derrite cosas${poison}.`,
      'Espera a que esté quieto y frío. Después, con gafas, guantes y la piel cubierta: barre lo seco, absorbe lo mojado y lava con mucha agua.',
    ],
    'animal-exposed': () => [
      'Ponte guantes. Que no se lama: sujétalo con una toalla.',
      'En pelo, patas u ojos: agua corriente tibia al menos 20 minutos.',
      'En la boca: deja correr agua de lado, si se deja. No lo fuerces.',
      'Llama ya a un veterinario o a una línea de toxicología animal, aunque parezca estar bien.',
      'No le provoques el vómito. Nada de vinagre, leche ni aceite.',
      'Lleva el envase o la receta.',
    ],
    'skin-reaction': ({ call, poison }) => [
      `Labios, lengua, cara o garganta hinchados, o le cuesta respirar: llama ya a ${call}.`,
      'Enjuaga la piel con mucha agua fresca y sécala sin frotar. Nada de vinagre ni productos nuevos.',
      'Si quema como sosa: sigue enjuagando al menos 20 minutos.',
      `Médico o farmacia por ampollas, cerca de los ojos, en un bebé, o si se extiende o sigue mañana${poison}.`,
      'Nadie usa este jabón hasta saber por qué. Guarda la pastilla y su receta.',
    ],
  },
  also: v => `También: ${v.what}.`,
  short: {
    ...householdFirstAid.short,
    'lye-swallowed': 'sosa en la boca: enjuagar y escupir, sin vomitar, llamar ya',
    'lye-eye': 'sosa en un ojo: agua corriente, 30 minutos, y al hospital',
    'lye-skin': 'sosa en la piel: agua corriente, 20 minutos',
    'fumes-inhaled': 'vapores respirados: aire libre, sentarse erguido, llamar si cuesta respirar',
    'hydrogen-from-metal': 'metal en sosa: nada de llamas, apartarse',
    'hydrogen-sulfide': 'olor a huevo podrido: todos fuera, nadie vuelve a entrar',
    'lye-eruption': 'sosa fuera de control: apartarse, no añadir nada',
    'animal-exposed': 'el animal: agua tibia, 20 minutos, que no se lama, llamar al veterinario',
    'skin-reaction': 'reacción de la piel: dejar de usar el jabón, enjuagar',
  },
  airway: v => `Garganta o cara hinchadas, o le cuesta respirar: llama ya a ${v.call}.`,
  inMould: {
    headline: 'El jabón se recalentó. Gafas y guantes, niños fuera, una bandeja bajo el molde, destapado.',
    steps: ({ call, poison }) => [
      'Gafas, guantes, manga larga; niños y animales fuera. La cara lejos: está caliente y es cáustico.',
      'Una bandeja bajo el molde. Sin toalla ni tapa, fuera del horno, al suelo frío, con ventilador.',
      'Si llega al borde: bájalo removiendo con una cuchara larga, o pasa un poco a una olla mayor. No le añadas nada.',
      'Si escupe, humea o se sale de la bandeja: apártate, déjalo y que nadie se acerque.',
      `En la piel: agua corriente al menos 20 minutos. En un ojo: al menos 30 minutos, y al hospital. Llama a ${call} si alguien está herido${poison}.`,
    ],
  },
  yourNumber: 'tu número de emergencias',
  number: v => `${v.number} (${v.country}; en otro país, tu número de emergencias)`,
  poison: v => `; toxicología ${v.number} (${v.country})`,
  anyPoison: ', o a tu centro de toxicología',
  stillHere: householdFirstAid.stillHere,
  callNow: householdFirstAid.callNow,
  ifHurt: 'Si hay alguien herido:',
  misread: '¿Te leí mal y nadie corre peligro? Pregunta otra vez con las palabras «falsa alarma».',
  share: 'Mostrarlo a todos aquí',
  waterFirst: 'Sosa o jabón crudo en un ojo o en la piel: agua corriente ya, y después sigue leyendo.',
  which: '¿Qué pasó? Elige una, o cuéntamelo con tus palabras.',
  names: {
    ...householdFirstAid.names,
    'lye-swallowed': 'tragado, o en la boca',
    'lye-eye': 'en un ojo',
    'lye-skin': 'en la piel o la ropa',
    'fumes-inhaled': 'vapores o polvo respirados',
    'hydrogen-from-metal': 'aluminio, zinc o estaño con sosa',
    'hydrogen-sulfide': 'olor a huevo podrido',
    'lye-eruption': 'la jarra hierve, humea o se derrite',
    'animal-exposed': 'un animal tocó sosa o jabón crudo',
    'skin-reaction': 'sarpullido o picor por el jabón',
  },
};
