import { spaced } from '../../../engine/over-lines.ts';
import type { lyeCare as english } from '../../en/lye/lye-care.ts';

/** What is said of lye dosed by guess, of what goes on in the jug, and of who stands near and what they do. */
export const lyeCare: typeof english = {
  'unsteady-hands': {
    answer: ['La sosa no: que otra persona la pese, la mezcle y la vierta.', 'Todo lo demás puede ser tuyo.'],
    why: [
      'Con manos que tiemblan, ojos que ven poco o poca fuerza, un descuido es una quemadura.',
      'Elige colores y aromas, pesa aceites con una báscula que habla, corta y sella a los dos días con guantes.',
      'Nunca a solas.',
      'Jarra con asa, medio llena, en una bandeja, mesa baja, gafas y guantes para todos.',
      'O base de glicerina, que no lleva sosa suelta.',
      'Pregunta a tu médico si tus medicinas marean.',
    ],
  },
  'class-rules': {
    answer: [
      'La sosa solo la manejas tú, mezclada antes y al aire libre; sin agua corriente en el aula, no hay sosa.',
    ],
    why: [
      'Para cada uno: gafas cerradas, guantes, manga larga, zapato cerrado.',
      'Solo adultos, con mesa propia, a 2 m de la jarra, sin comida ni llamas, ventana abierta; un ayudante para seis.',
      'El agua de sosa, fría y con etiqueta, la echas tú.',
      'Nadie pasea con masa.',
      'Personas mayores o inseguras, embarazo, asma: colores, moldes y cortar pastillas curadas, o base de glicerina.',
      'Agua para enjuagar y teléfono a mano, los primeros auxilios dichos antes; pregunta al seguro y al local.',
    ],
  },
  'food-kitchen': {
    answer: ['No: nada de sosa donde se hace comida para otros.'],
    why: [
      spaced`
        La sosa y el jabón crudo acaban en tablas, desagües y lavavajillas; la ley de alimentos deja las
        sustancias peligrosas fuera de esas cocinas, y tus compañeros no saben qué hay allí.
      `,
      'Otra habitación con agua corriente y ventana, utensilios propios que no vuelven, todo con etiqueta y bajo llave.',
    ],
  },
  'not-sober': {
    answer: ['No: nada de sosa después de beber, con sueño o con medicinas que marean.', 'Hazlo mañana.'],
    why: [
      'Un peso mal hecho quema después, un descuido enseguida.',
      'Los aceites aguantan, y la sosa seca en su bote cerrado también.',
      'Agua de sosa ya hecha: etiqueta, tapa floja y bajo llave hasta que estés sobrio.',
      'Si alguien bebió sosa es otra cosa: /first-aid what:lye-swallowed.',
    ],
  },
  fan: {
    answer: [
      'Ningún ventilador hacia ti ni hacia la sosa: lleva gotas y polvo a los ojos.',
      'Apágalo mientras mezclas.',
    ],
    why: [
      'El aire debe ir de ti a la ventana: mezcla junto a una ventana abierta, o fuera con el viento de lado y sin ráfagas.',
      'Un ventilador, si acaso, detrás, en la ventana, soplando hacia fuera.',
      'Gafas.',
      'Después puede enfriar la barra.',
    ],
  },
  'flame-near': {
    answer: ['Ni llama, ni cigarrillo, ni piloto de gas al lado: apágalo antes, o mezcla en otro sitio.'],
    why: [
      'La sosa no arde.',
      spaced`
        Pero el alcohol y los aromas sí, el metal en la sosa suelta hidrógeno, una olla de grasa
        recalentada se prende, y la mano con el cigarrillo va a la boca.
      `,
      'Una caldera aspira el vapor.',
      'Velas y gas apagados; calienta con placa eléctrica y apágala.',
      'Si algo arde: tapa, calor fuera, nunca agua, sal y llama.',
    ],
  },
  'goggles-fog': {
    answer: [
      'Póntelas otra vez antes de seguir: apártate, límpialas lejos de la sosa y vuelve a ponértelas.',
    ],
    why: [
      'Una gota cuesta un ojo.',
      'Primero fuera los guantes, manos lavadas, y luego la cara.',
      spaced`
        Contra el vaho: gafas cerradas con respiradero indirecto, una gota de lavavajillas frotada en
        seco por dentro, mascarilla más suelta, sitio más fresco, cara fuera del vapor.
      `,
      'Si entró algo: agua corriente 15 minutos, /first-aid.',
    ],
  },
  'power-cut': {
    answer: ['Sigue a mano: con varillas, gafas y guantes puestos.', 'Tarda más, no se estropea.'],
    why: [
      'Si no ves: déjalo tapado, con etiqueta, la puerta cerrada, y espera.',
      'Bate sin parar hasta que ya no se separe; templar los aceites ayuda.',
      'Desenchufa antes de que vuelva la luz.',
      'Si en una hora no espesa y nadie puede quedarse: que no llegue ningún niño ni animal, no lo viertas líquido.',
      'Nunca a solas de noche sin luz, teléfono y agua corriente.',
    ],
  },
  'left-halfway': {
    answer: ['No: no pares a mitad.', 'La masa se separa o cuaja, y en la olla es cáustica.'],
    why: [
      'Empieza solo con dos horas libres.',
      'Ni en la nevera, ni hasta mañana, ni en nada que sea de comida.',
      'Si tienes que irte: viértela en traza, o que se quede alguien con gafas.',
      spaced`
        Si ya la dejaste: gafas, guantes, mira: aceite arriba y líquido abajo se bate otra vez, templado
        a 40 °C (104 °F), hasta que no se separe; dura: se saca y se rehace.
      `,
      'Gotas mojadas que queman: no lo uses.',
    ],
  },
  'batter-in-hair': {
    answer: ['Agua corriente ya, 20 minutos, con la cabeza ladeada para que no caiga nada en los ojos.'],
    why: [
      'La masa y la sosa queman cuero cabelludo, orejas y ojos.',
      'Las gafas se quedan puestas mientras te aclaras; fuera la ropa mojada.',
      'Ni vinagre, ni champú antes.',
      'Escozor, rojez, ampollas, o algo en un ojo o un oído: sigue con el agua y llama al médico o a tu número de emergencias.',
      '/first-aid what:lye-skin',
    ],
  },
  'soap-in-eye': {
    answer: ['Enjuaga ya: agua corriente templada sobre el ojo abierto, 15 minutos, sin lentilla.'],
    why: [
      'El jabón curado escuece y se pasa.',
      'Si después sigue rojo, duele, se ve borroso o molesta la luz: médico hoy.',
      'Jabón crudo, masa o sosa en el ojo: enjuaga 20 minutos o más y llama mientras tanto a tu número de emergencias.',
      '/first-aid what:lye-eye',
    ],
  },
  'red-skin': {
    answer: [
      'Enjuaga ya con mucha agua templada, deja de usar ese jabón y, si es un bebé, llama hoy al médico.',
    ],
    why: [
      'El jabón nuevo puede llevar sosa libre, y la piel de un bebé es fina.',
      'Ni crema ni vinagre.',
      'Ampollas, llanto que no para, ojos rojos, hinchazón, le cuesta respirar: número de emergencias.',
      'Mira los pesos y los días de la pastilla; nadie la usa hasta entonces.',
      '/first-aid',
    ],
  },
  'blocked-sink': {
    answer: [
      'Ni sosa ni desatascador: en una tubería llena de jabón calienta, salpica hacia ti y la cuaja más.',
    ],
    why: [
      'Gafas y guantes, es cáustico.',
      spaced`
        Saca lo que haya encima, pon un cubo bajo el sifón, desenróscalo y quita el tapón de jabón con
        una herramienta de mano; agua caliente solo cuando ya corra.
      `,
      'Sifón de aluminio: hazlo enseguida.',
      'Si no, un fontanero al que se le dice qué hay.',
      'La próxima vez, limpia las ollas con papel y déjalas un día.',
    ],
  },
  'bleach-went-in': {
    answer: ['No lo uses: la lejía no hace jabón.', 'Ventana abierta, fuera si huele; nunca un ácido cerca.'],
    why: [
      'Sosa y lejía solas sueltan poco, pero con ácido, vinagre o amoniaco (también leche quemada) sale un gas tóxico.',
      'No añadas nada, no lo calientes.',
      'Frío: bote de plástico con etiqueta, cerrado flojo, residuo peligroso según tus normas locales.',
      'Tos, ojos que escuecen, olor a cloro: todos fuera, /first-aid.',
    ],
  },
  'used-early': {
    answer: [
      'Es pronto: antes, cuatro semanas de curado.',
      'Lo que regalaste, recógelo o diles que esperen.',
    ],
    why: [
      'Los dos primeros días es cáustico, las primeras semanas áspero, y un peso mal hecho se nota después.',
      'Diles: nada de piel, fuera del alcance de los niños, hasta el día que tú digas.',
      'Para ropa también: guantes.',
      'Escozor o rojez: aclara con mucha agua; si no se pasa, médico.',
    ],
  },
  'old-bar': {
    answer: ['En la piel no: nadie sabe cómo se pesó su sosa, y los años no la quitan.'],
    why: [
      'Olor a rancio, manchas naranjas, cristales, gotas, algo que pica: fuera, con guantes, según tus normas locales.',
      'Si se conoce la receta y se pesó, tiene buen aspecto y el papel de pH en su espuma da 10 o menos, para suelos o ropa, con guantes.',
      'De recuerdo: envuelto, con etiqueta, fuera del alcance de los niños.',
    ],
  },
  'no-vinegar': {
    answer: [
      'El ácido con la sosa da calor, justo en la piel, y cuesta minutos.',
      'El agua la diluye y se la lleva.',
    ],
    why: [
      'La sosa está en la piel antes de que encuentres la botella, y nadie acierta la cantidad.',
      'Por eso: agua corriente enseguida, 20 minutos, fuera la ropa mojada.',
      spaced`
        En una mesa: primero barrer o secar, luego mucha agua; vinagre flojo solo para la última traza
        de un sitio ya aclarado, nunca en un charco.
      `,
      'En una pastilla no arregla nada.',
      'Si te acabas de quemar: /first-aid what:lye-skin',
    ],
  },
  'zap-young': {
    answer: [
      'Los primeros días es normal que pique: guantes, espera y prueba otra vez a las cuatro semanas.',
      'Sin lengua.',
    ],
    why: [
      'La sosa y el aceite necesitan de 24 a 48 horas, algunas pastillas una semana.',
      'Guárdalo seco y fuera del alcance.',
      'A las cuatro semanas: papel de pH en la espuma, 11 o más es sospechoso.',
      'Mientras, revisa los pesos («puse 64 g de sosa en 500 g de oliva»): si estaban mal, esperar no sirve.',
    ],
  },
  'no-lye-in-it': {
    answer: ['Sin sosa no hay jabón: es aceite y agua, y así se queda.', 'No quema.'],
    why: [
      'Primero asegúrate: lo que entró era sal o azúcar, según su etiqueta, y nada de sosa.',
      spaced`
        Si solo son aceites no se pierde nada: quita el agua, pesa los aceites y empieza con sosa pesada
        para ellos («cuánta sosa para 500 g de oliva») en agua fría nueva.
      `,
      'Con sal o azúcar dentro: mejor aceites nuevos.',
      'Dónde acabó la sosa (un salero, un plato) es urgente: búscala, nadie come de ahí.',
    ],
  },
  'blender-smokes': {
    answer: [
      'Desenchufa, con las manos secas, o corta antes el fusible.',
      'No la saques de la olla en marcha.',
    ],
    why: [
      'Gafas y guantes; deja que se enfríe, sácala por la parte seca y sigue con varillas.',
      'No se vuelve a usar.',
      'Calambre, llama: fusible fuera, nunca agua encima, número de emergencias.',
      'Si el humo o la espuma salen de la olla: apártate y déjalo.',
    ],
  },
};
