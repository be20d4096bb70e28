import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueAsked as english } from '../../../en/colour/technique/asked.ts';

/** Lo que se responde a lo que se pregunta de una cosa del taller (`src/engine/questions/technique/asked`). Práctica del oficio. */
export const techniqueAsked: typeof english = {
  'melt-fats': {
    answer:
      'Las grasas duras se derriten del todo, hasta que el aceite quede claro, y se enfrían a 30 o 40 °C (86 a 104 °F).',
    why: spaced`
      Pesa primero, derrite suave, al baño maría o a fuego mínimo, las más duras antes y los aceites
      líquidos después: enfrían la olla. Lo que queda sólido cuaja en puntos blancos, y una manteca fría
      parece traza. Solo entonces entra la sosa ya fría. Nunca dejes el aceite solo al fuego.
    `,
  },
  'wet-in-scent': {
    answer:
      'Mejor no: la esencia puede acelerar la masa y el polvo se le agruma. Aceite ligero, y la esencia aparte, al final.',
    why: spaced`
      1 cdta de polvo en 1 cda de aceite ligero que se descuenta de la receta. Así una esencia que corre no
      toca el color, y su cantidad queda en lo que permite su ficha.
    `,
  },
  'wet-in-alcohol': {
    answer:
      'Mejor aceite o glicerina. Unas gotas de alcohol mojan un polvo terco, pero arde y apura la masa.',
    why: spaced`
      Si acaso: solo gotas, fuerte y sin color, sin llama ni hornalla cerca, con la ventana abierta, y que
      se vaya antes de poner el aceite. Nunca en masa tibia ni en el agua de la sosa: hierve. Un aceite
      ligero y diez minutos de remojo hacen lo mismo.
    `,
  },
  'wet-in-glycerin': {
    answer:
      'Sí, la glicerina sirve para casi todos los polvos: 1 cdta de polvo en 1 cda más o menos, bien lisa.',
    why: spaced`
      Sostiene el polvo más que el aceite y no gasta sosa. Intégrala bien en su parte, o queda en bolsas
      mojadas de color. Más de una o dos cucharadas por 500 g de aceites ablanda la pastilla y suda antes.
    `,
  },
  'water-held-back': {
    answer: 'Sí: aparta una o dos cucharadas del agua de la receta. En la jarra, nunca menos agua que sosa.',
    why: spaced`
      La sosa queda igual, solo se reparte su agua. Una cucharada son 15 g: con 100 g de sosa en 200 g de
      agua no cambia nada. Si mojas en aceite, descuéntalo de los aceites. El agua de más solo deja la
      pastilla blanda un poco más.
    `,
  },
  'salt-and-colour': {
    answer:
      'La sal lo deja más claro y lechoso: de un tercio a la mitad más de color. Córtalo entre una y cuatro horas.',
    why: spaced`
      Los cristales de sal son blancos y la pastilla se vuelve opaca. Los minerales siguen fieles, las
      plantas se van como siempre. La sal, al final, en traza media y solo fina: la gruesa o la del mar
      Muerto raspa o toma agua. Los moldes individuales ahorran el corte.
    `,
  },
  'salt-hardens': {
    answer:
      'Más o menos 1 cdta de sal común por 500 g de aceites, disuelta en el agua antes de echar la sosa.',
    why: spaced`
      Endurece antes y suelta mejor del molde; más le quita espuma. No gasta sosa. Ni en el agua ya con
      sosa ni en la masa: ahí quedan granos. Una barra de sal con la mitad del peso de los aceites es otra
      cosa, y se corta en horas.
    `,
  },
  'sensitive-skin': {
    answer:
      'No se puede prometer nada: a lo sumo una pastilla curada, sin aroma, poco o nada de color. Piel enferma, primero el médico.',
    why: spaced`
      Seis semanas de curado o más, y sin calambre en un adulto. Lo que más irrita son aromas, plantas y
      especias fuertes; lo que menos, los minerales. Prueba un día en un punto del brazo. Si enrojece o
      pica: para y enjuaga. Un jabón no cura nada, y no se da ni se vende como si curara.
    `,
  },
  'rinse-tools': {
    answer:
      'No hace falta ni lejía de la ropa (cloro) ni vinagre: papel, guantes, un día de espera, y agua caliente con detergente.',
    why: spaced`
      Nunca mezcles los dos, ni con otro limpiador: gas de cloro. El vinagre sobre sosa calienta y salpica;
      en la piel no ayuda, el agua sí. Al día siguiente lo que queda en la olla es jabón y se lava como
      jabón. Las ollas de jabón no vuelven a la comida.
    `,
  },
  'blender-stuff': {
    answer:
      'Brazo y campana de acero inoxidable, o plástico fuerte. Nunca aluminio: la sosa lo ataca y suelta hidrógeno.',
    why: spaced`
      Lo dicen un imán y la etiqueta: el metal gris claro que se opaca es aluminio. El plástico toma color
      y olor, sin daño. Solo para jabón, y límpiala con papel y guantes antes de lavarla.
    `,
  },
  'colour-scales': {
    answer:
      'Sí: el color va con la masa. El doble de aceites lleva el doble de polvo, la mitad lleva la mitad.',
    why: spaced`
      Solo si crece todo el lote; un molde mayor con el mismo lote lleva lo mismo. Mójalo en la misma
      medida: 1 cdta en 1 cda. En lotes chicos la cuchara es gruesa: pasta de 1 cdta en 1 cda, y cuéntala
      por cuartos de cucharadita. La sosa se calcula otra vez para toda la receta.
    `,
  },
  'without-white': {
    answer:
      'Sí: el blanco se come color; sin él la mitad da la misma fuerza, sobre el amarillo de los aceites.',
    why: spaced`
      El dióxido de titanio aclara y agrisa lo que tiene al lado. Sin él los colores son más hondos y algo
      translúcidos, y el azul tira a verde sobre aceites amarillos. Empieza con la mitad, mira una
      cucharada sobre papel blanco y suma por cuartos de cucharadita.
    `,
  },
  'zinc-or-titanium': {
    answer:
      'El dióxido de titanio cubre más o menos el doble: para blanco de verdad, ese. El óxido de zinc es más suave.',
    why: spaced`
      El óxido de zinc necesita casi el doble para lo mismo, y puede espesar un poco la masa. Los dos
      aguantan la sosa. Más de 2 cdta de dióxido de titanio por 500 g de aceites cuartea y desmiga.
      Cualquiera de los dos: de grado cosmético, mojado como diga su etiqueta.
    `,
  },
  'how-many-strokes': {
    answer: 'De tres a cinco y para; en la olla una o dos vueltas, con percha de una a tres pasadas.',
    why: spaced`
      Cada una más mezcla los colores, hasta que queda uno solo: más de diez es barro. Traza ligera a
      media, para que la línea se sostenga. Blanco o masa sin color entre los que juntos dan marrón. Para
      cuando aún parezca grueso: el corte enseña líneas más finas.
    `,
  },
  'layer-fell': {
    answer:
      'La de abajo estaba muy blanda: espera a que sostenga una cucharada, y vierte de bajo por una espátula. Es buen jabón.',
    why: spaced`
      Lo que se juntó queda como remolino. La próxima, traza media, de 5 a 20 minutos entre capas, la
      segunda igual de espesa o menos, vertida a la altura de una cuchara sobre la espátula.
    `,
  },
  'recipe-in-cups': {
    answer:
      'Solo por peso: las tazas son muy imprecisas para la sosa. Pesa cada aceite y dime los gramos y el sobreengrasado.',
    why: spaced`
      Una taza de aceite son unos 205 a 220 g, de manteca sólida cualquier cosa: un décimo de error es el
      doble del sobreengrasado usual de 5 %. Escríbelo así: «500 g oliva, 200 g coco, sobreengrasado 5%», y
      calculo la sosa. Una receta antigua se calcula de nuevo, también su sosa.
    `,
  },
  'buy-lye': {
    answer:
      'Hidróxido de sodio puro, con su pureza en la etiqueta, 98 % o más y nada más. Tiendas y precios no los sé.',
    why: spaced`
      Lo tienen proveedores de jabón y de química, y algunas ferreterías. No: desatascador con otras cosas,
      gel, perfume, cloro, virutas de metal, ni un bote sin etiqueta. Seca, entera,
      con tapa que un niño no abra. Pregunta en tu grupo quién hay cerca; la norma local puede pedir tus datos.
    `,
  },
  pomace: {
    answer:
      'Casi nada: el orujo de oliva lleva casi la misma sosa, pero traza antes y es más verde. Dilo en la receta.',
    why: spaced`
      Para remolinos bate menos y vierte antes. Su verde se nota bajo los colores claros: algo de blanco, o
      elige tonos cálidos. Nómbralo «orujo de oliva» y se toma su propia cifra.
    `,
  },
  scrub: {
    answer:
      'Fino como harina, por un colador de té; lo que no pasa, raspa. 1 cda por 500 g de aceites, la mitad para la cara.',
    why: spaced`
      Piedra pómez, avena, amapola, plantas secas molidas: en traza media, o se hunden. Café molido,
      cáscaras y arena son para manos y pies. Nada sobre piel herida o irritada. Al moler sale polvo:
      mascarilla. Las plantas se ponen marrones en la sosa, raspen o no.
    `,
  },
  'repeat-colour': {
    answer:
      'Pesa el polvo en vez de medirlo con cuchara, y deja igual aceites, temperaturas, traza, gel y molde.',
    why: spaced`
      Casi siempre lo cambian el gel, otro lote del bote o un aceite más amarillo. Apunta gramos, lote y
      temperatura; compara los dos a la misma edad, cuatro semanas. /batch poured lo guarda. Bote nuevo:
      una pastilla de prueba junto a la vieja.
    `,
  },
  'old-powder': {
    answer:
      'Óxidos, ultramares, micas y arcillas no caducan secos y cerrados. Plantas y tintes se apagan en un año o dos.',
    why: spaced`
      Grumos por humedad: sécalo, machácalo y tamízalo, con mascarilla. Olor, moho o mojado: fuera. Mojados
      en aceite duran lo que el aceite, en agua un día. Lo viejo sin lista de lo que lleva no entra en el
      jabón. Una pastilla de prueba dice si aún tiene fuerza.
    `,
  },
  'are-natural': {
    answer:
      'Minerales, pero casi todos fabricados: óxidos, ultramares y el color de las micas salen de fábrica, porque los de tierra traen plomo.',
    why: spaced`
      La misma sustancia que en la naturaleza, pero limpia. Las escamas de mica se extraen o se fabrican.
      Arcillas, carbón y plantas son lo que muchos llaman natural; arcillas y añil quedan, casi todas las
      plantas se van. /colourant check dice cómo llama la ley a cada uno.
    `,
  },
  embeds: {
    answer:
      'Hechas días antes, firmes pero no secas, con la misma receta; van en masa de traza media, que las sostiene.',
    why: spaced`
      En traza ligera se hunden, en espesa queda aire debajo. Córtalas o enróllalas entre uno y tres días,
      y moja un poco los lados para que peguen. Las largas, donde el corte las cruce: una barra amarilla en
      medio es un sol en cada pastilla. Guantes, es jabón joven.
    `,
  },
  pinch: {
    answer:
      'Una pizca es más o menos 1/16 cdta, una pizquita 1/32. Más seguro: 1 cdta de polvo en 1 cda de aceite, a gotas.',
    why: spaced`
      Un cuarto de cucharadita de esa pasta lleva cerca de 1/16 cdta de polvo. Remuévela antes. Suma, mira
      sobre papel blanco, suma otra vez: atrás no se vuelve.
    `,
  },
  'use-up-strong': {
    answer:
      'Sí: rállalo en masa sin color como confeti, o refúndelo con cuatro o cinco veces su peso de jabón sin color.',
    why: spaced`
      La cuenta: el triple de la dosis usual quiere al menos dos partes sin color por una, seis veces más
      quiere cinco. O cúralo y déjalo para un paño oscuro. Si da calambre o escuece no es cosa del color:
      no lo uses.
    `,
  },
};
