import type { compared as en } from '../../en/conversation/compared.ts';
import { numbersIn } from '../../numbers.ts';

const { plain } = numbersIn('es');
const list = (names: readonly string[]) => names.join(', ');

/** What is said of two colourants and more side by side. */
export const compared: typeof en = {
  stronger: ({ one, other, times }) =>
    `${one} es más fuerte: unas ${plain(times)} veces ${other}, cucharada a cucharada`,
  asStrong: ({ one, other }) => `${one} y ${other} son más o menos igual de fuertes, cucharada a cucharada`,
  fullInACup: ({ spoons }) => `Color pleno: ${spoons} por taza.`,
  kinds: {
    oxide: 'un pigmento mineral (óxido de hierro), mate y opaco',
    ultramarine: 'un pigmento mineral (ultramar), limpio y claro',
    chromium: 'un pigmento mineral (verde de cromo), mate y opaco',
    mica: 'una mica, pigmento o colorante sobre escamas con brillo',
    neon: 'un neón, colorante dentro de resina',
    white: 'un pigmento blanco',
    lake: 'una laca, colorante fijado en una base',
    dye: 'un colorante que se disuelve',
    carbon: 'negro de carbón, mate',
    clay: 'una arcilla suave y terrosa, que espesa un poco la masa',
    botanical: 'una planta en polvo, que varía y puede dejar motas',
  },
  whatItIs: ({ name, kind, hue }) =>
    hue === undefined ? `${name} es ${kind}` : `${name} es ${kind}: ${hue}`,
  coatDecides: 'Qué la recubre decide lo que hace la sosa: lee su lista a /colourant check.',
  compareNote:
    'Esto es por tipo (práctica común). Dos botes del mismo tipo varían por lote: solo las pastillas de prueba lo dicen, mira /calibrate.',
  compareWhich: ({ names }) =>
    names.length === 0
      ? '¿Qué dos colores? Tu estantería está vacía.'
      : `¿Cuáles dos? En tu estantería: ${list(names)}.`,
};
