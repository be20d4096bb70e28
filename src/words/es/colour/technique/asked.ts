import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueAsked as english } from '../../../en/colour/technique/asked.ts';

/** Lo que se responde a lo que se pregunta de una cosa del taller (`src/engine/questions/technique/asked`). Práctica del oficio. */
export const techniqueAsked: typeof english = {
  'melt-fats': {
    answer: [
      'Las grasas duras se derriten del todo, hasta que el aceite quede claro, y se enfrían a 30 o 40 °C (86 a 104 °F).',
    ],
    why: [
      'Pesa primero, derrite suave, al baño maría o a fuego mínimo, las más duras antes y los aceites líquidos después: enfrían la olla.',
      'Lo que queda sólido cuaja en puntos blancos, y una manteca fría parece traza.',
      'Solo entonces entra la sosa ya fría.',
      'Nunca dejes el aceite solo al fuego.',
    ],
  },
  'water-held-back': {
    answer: [
      'Sí: aparta una o dos cucharadas del agua de la receta.',
      'En la jarra, nunca menos agua que sosa.',
    ],
    why: [
      'La sosa queda igual, solo se reparte su agua.',
      'Una cucharada son 15 g: con 100 g de sosa en 200 g de agua no cambia nada.',
      'Si mojas en aceite, descuéntalo de los aceites.',
      'El agua de más solo deja la pastilla blanda un poco más.',
    ],
  },
  'salt-and-colour': {
    answer: [
      'La sal lo deja más claro y lechoso: de un tercio a la mitad más de color.',
      'Córtalo entre una y cuatro horas.',
    ],
    why: [
      'Los cristales de sal son blancos y la pastilla se vuelve opaca.',
      'Los minerales siguen fieles, las plantas se van como siempre.',
      'La sal, al final, en traza media y solo fina: la gruesa o la del mar Muerto raspa o toma agua.',
      'Los moldes individuales ahorran el corte.',
    ],
  },
  'salt-hardens': {
    answer: [
      'Más o menos 1 cdta de sal común por 500 g de aceites, disuelta en el agua antes de echar la sosa.',
    ],
    why: [
      'Endurece antes y suelta mejor del molde; más le quita espuma.',
      'No gasta sosa.',
      'Ni en el agua ya con sosa ni en la masa: ahí quedan granos.',
      'Una barra de sal con la mitad del peso de los aceites es otra cosa, y se corta en horas.',
    ],
  },
  'sensitive-skin': {
    answer: [
      'No se puede prometer nada: a lo sumo una pastilla curada, sin aroma, poco o nada de color.',
      'Piel enferma, primero el médico.',
    ],
    why: [
      'Seis semanas de curado o más, y sin calambre en un adulto.',
      'Lo que más irrita son aromas, plantas y especias fuertes; lo que menos, los minerales.',
      'Prueba un día en un punto del brazo.',
      'Si enrojece o pica: para y enjuaga.',
      'Un jabón no cura nada, y no se da ni se vende como si curara.',
    ],
  },
  'rinse-tools': {
    answer: [
      'No hace falta ni lejía de la ropa (cloro) ni vinagre: papel, guantes, un día de espera, y agua caliente con detergente.',
    ],
    why: [
      'Nunca mezcles los dos, ni con otro limpiador: gas de cloro.',
      'El vinagre sobre sosa calienta y salpica; en la piel no ayuda, el agua sí.',
      'Al día siguiente lo que queda en la olla es jabón y se lava como jabón.',
      'Las ollas de jabón no vuelven a la comida.',
    ],
  },
  'blender-stuff': {
    answer: [
      'Brazo y campana de acero inoxidable, o plástico fuerte.',
      'Nunca aluminio: la sosa lo ataca y suelta hidrógeno.',
    ],
    why: [
      'Lo dicen un imán y la etiqueta: el metal gris claro que se opaca es aluminio.',
      'El plástico toma color y olor, sin daño.',
      'Solo para jabón, y límpiala con papel y guantes antes de lavarla.',
    ],
  },
  'colour-scales': {
    answer: [
      'Sí: el color va con la masa.',
      'El doble de aceites lleva el doble de polvo, la mitad lleva la mitad.',
    ],
    why: [
      'Solo si crece todo el lote; un molde mayor con el mismo lote lleva lo mismo.',
      'Mójalo en la misma medida: 1 cdta en 1 cda.',
      'En lotes chicos la cuchara es gruesa: pasta de 1 cdta en 1 cda, y cuéntala por cuartos de cucharadita.',
      'La sosa se calcula otra vez para toda la receta.',
    ],
  },
  'how-many-strokes': {
    answer: ['De tres a cinco y para; en la olla una o dos vueltas, con percha de una a tres pasadas.'],
    why: [
      'Cada una más mezcla los colores, hasta que queda uno solo: más de diez es barro.',
      'Traza ligera a media, para que la línea se sostenga.',
      'Blanco o masa sin color entre los que juntos dan marrón.',
      'Para cuando aún parezca grueso: el corte enseña líneas más finas.',
    ],
  },
  'layer-fell': {
    answer: [
      'La de abajo estaba muy blanda: espera a que sostenga una cucharada, y vierte de bajo por una espátula.',
      'Es buen jabón.',
    ],
    why: [
      'Lo que se juntó queda como remolino.',
      spaced`
        La próxima, traza media, de 5 a 20 minutos entre capas, la segunda igual de espesa o menos,
        vertida a la altura de una cuchara sobre la espátula.
      `,
    ],
  },
  'recipe-in-cups': {
    answer: [
      'Solo por peso: las tazas son muy imprecisas para la sosa.',
      'Pesa cada aceite y dime los gramos y el sobreengrasado.',
    ],
    why: [
      spaced`
        Una taza de aceite son unos 205 a 220 g, de manteca sólida cualquier cosa: un décimo de error es
        el doble del sobreengrasado usual de 5 %.
      `,
      'Escríbelo así: «500 g oliva, 200 g coco, sobreengrasado 5%», y calculo la sosa.',
      'Una receta antigua se calcula de nuevo, también su sosa.',
    ],
  },
  'buy-lye': {
    answer: [
      'Hidróxido de sodio puro, con su pureza en la etiqueta, 98 % o más y nada más.',
      'Tiendas y precios no los sé.',
    ],
    why: [
      'Lo tienen proveedores de jabón y de química, y algunas ferreterías.',
      'No: desatascador con otras cosas, gel, perfume, cloro, virutas de metal, ni un bote sin etiqueta.',
      'Seca, entera, con tapa que un niño no abra.',
      'Pregunta en tu grupo quién hay cerca; la norma local puede pedir tus datos.',
    ],
  },
  pomace: {
    answer: [
      'Casi nada: el orujo de oliva lleva casi la misma sosa, pero traza antes y es más verde.',
      'Dilo en la receta.',
    ],
    why: [
      'Para remolinos bate menos y vierte antes.',
      'Su verde se nota bajo los colores claros: algo de blanco, o elige tonos cálidos.',
      'Nómbralo «orujo de oliva» y se toma su propia cifra.',
    ],
  },
  scrub: {
    answer: [
      'Fino como harina, por un colador de té; lo que no pasa, raspa. 1 cda por 500 g de aceites, la mitad para la cara.',
    ],
    why: [
      'Piedra pómez, avena, amapola, plantas secas molidas: en traza media, o se hunden.',
      'Café molido, cáscaras y arena son para manos y pies.',
      'Nada sobre piel herida o irritada.',
      'Al moler sale polvo: mascarilla.',
      'Las plantas se ponen marrones en la sosa, raspen o no.',
    ],
  },
  'repeat-colour': {
    answer: [
      'Pesa el polvo en vez de medirlo con cuchara, y deja igual aceites, temperaturas, traza, gel y molde.',
    ],
    why: [
      'Casi siempre lo cambian el gel, otro lote del bote o un aceite más amarillo.',
      'Apunta gramos, lote y temperatura; compara los dos a la misma edad, cuatro semanas.',
      '/batch poured lo guarda.',
      'Bote nuevo: una pastilla de prueba junto a la vieja.',
    ],
  },
  'are-natural': {
    answer: [
      spaced`
        Minerales, pero casi todos fabricados: óxidos, ultramares y el color de las micas salen de
        fábrica, porque los de tierra traen plomo.
      `,
    ],
    why: [
      'La misma sustancia que en la naturaleza, pero limpia.',
      'Las escamas de mica se extraen o se fabrican.',
      'Arcillas, carbón y plantas son lo que muchos llaman natural; arcillas y añil quedan, casi todas las plantas se van.',
      '/colourant check dice cómo llama la ley a cada uno.',
    ],
  },
  embeds: {
    answer: [
      'Hechas días antes, firmes pero no secas, con la misma receta; van en masa de traza media, que las sostiene.',
    ],
    why: [
      'En traza ligera se hunden, en espesa queda aire debajo.',
      'Córtalas o enróllalas entre uno y tres días, y moja un poco los lados para que peguen.',
      'Las largas, donde el corte las cruce: una barra amarilla en medio es un sol en cada pastilla.',
      'Guantes, es jabón joven.',
    ],
  },
};
