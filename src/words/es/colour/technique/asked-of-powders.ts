import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueAskedOfPowders as english } from '../../../en/colour/technique/asked-of-powders.ts';

/** Respuestas a lo que se pregunta de un polvo: en qué se moja, qué blanco, cuánto aguanta. */
export const techniqueAskedOfPowders: typeof english = {
  'wet-in-scent': {
    answer: [
      'Mejor no: la esencia puede acelerar la masa y el polvo se le agruma.',
      'Aceite ligero, y la esencia aparte, al final.',
    ],
    why: [
      '1 cdta de polvo en 1 cda de aceite ligero que se descuenta de la receta.',
      'Así una esencia que corre no toca el color, y su cantidad queda en lo que permite su ficha.',
    ],
  },
  'wet-in-alcohol': {
    answer: [
      'Mejor aceite o glicerina.',
      'Unas gotas de alcohol mojan un polvo terco, pero arde y apura la masa.',
    ],
    why: [
      spaced`
        Si acaso: solo gotas, fuerte y sin color, sin llama ni hornalla cerca, con la ventana abierta, y
        que se vaya antes de poner el aceite.
      `,
      'Nunca en masa tibia ni en el agua de la sosa: hierve.',
      'Un aceite ligero y diez minutos de remojo hacen lo mismo.',
    ],
  },
  'wet-in-glycerin': {
    answer: [
      'Sí, la glicerina sirve para casi todos los polvos: 1 cdta de polvo en 1 cda más o menos, bien lisa.',
    ],
    why: [
      'Sostiene el polvo más que el aceite y no gasta sosa.',
      'Intégrala bien en su parte, o queda en bolsas mojadas de color.',
      'Más de una o dos cucharadas por 500 g de aceites ablanda la pastilla y suda antes.',
    ],
  },
  'without-white': {
    answer: [
      'Sí: el blanco se come color; sin él la mitad da la misma fuerza, sobre el amarillo de los aceites.',
    ],
    why: [
      'El dióxido de titanio aclara y agrisa lo que tiene al lado.',
      'Sin él los colores son más hondos y algo translúcidos, y el azul tira a verde sobre aceites amarillos.',
      'Empieza con la mitad, mira una cucharada sobre papel blanco y suma por cuartos de cucharadita.',
    ],
  },
  'zinc-or-titanium': {
    answer: [
      'El dióxido de titanio cubre más o menos el doble: para blanco de verdad, ese.',
      'El óxido de zinc es más suave.',
    ],
    why: [
      'El óxido de zinc necesita casi el doble para lo mismo, y puede espesar un poco la masa.',
      'Los dos aguantan la sosa.',
      'Más de 2 cdta de dióxido de titanio por 500 g de aceites cuartea y desmiga.',
      'Cualquiera de los dos: de grado cosmético, mojado como diga su etiqueta.',
    ],
  },
  'old-powder': {
    answer: [
      'Óxidos, ultramares, micas y arcillas no caducan secos y cerrados.',
      'Plantas y tintes se apagan en un año o dos.',
    ],
    why: [
      'Grumos por humedad: sécalo, machácalo y tamízalo, con mascarilla.',
      'Olor, moho o mojado: fuera.',
      'Mojados en aceite duran lo que el aceite, en agua un día.',
      'Lo viejo sin lista de lo que lleva no entra en el jabón.',
      'Una pastilla de prueba dice si aún tiene fuerza.',
    ],
  },
  pinch: {
    answer: [
      'Una pizca es más o menos 1/16 cdta, una pizquita 1/32.',
      'Más seguro: 1 cdta de polvo en 1 cda de aceite, a gotas.',
    ],
    why: [
      'Un cuarto de cucharadita de esa pasta lleva cerca de 1/16 cdta de polvo.',
      'Remuévela antes.',
      'Suma, mira sobre papel blanco, suma otra vez: atrás no se vuelve.',
    ],
  },
  'use-up-strong': {
    answer: [
      'Sí: rállalo en masa sin color como confeti, o refúndelo con cuatro o cinco veces su peso de jabón sin color.',
    ],
    why: [
      'La cuenta: el triple de la dosis usual quiere al menos dos partes sin color por una, seis veces más quiere cinco.',
      'O cúralo y déjalo para un paño oscuro.',
      'Si da calambre o escuece no es cosa del color: no lo uses.',
    ],
  },
};
