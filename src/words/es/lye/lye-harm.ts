import { spaced } from '../../../engine/over-lines.ts';
import type { lyeHarm as english } from '../../en/lye/lye-harm.ts';

/** What is said where somebody may be hurt near lye: what got into food, fire, gas, current, and weights that went wrong. */
export const lyeHarm: typeof english = {
  swallowed: {
    answer: [
      'Enjuaga la boca y escupe, no provoques el vómito y llama ya a toxicología o a tu número de emergencias.',
    ],
    why: [
      'Llama aunque no duela nada.',
      'Le cuesta respirar, babea, no puede tragar, se duerme: ambulancia.',
      'Solo si está bien despierto y puede tragar: unos sorbos de agua, nada más; ni vinagre ni limón.',
      'Pasos y teléfonos: /first-aid what:lye-swallowed.',
    ],
  },
  'lye-in-food': {
    answer: ['Nadie lo come: tíralo todo, cerrado y lejos de niños y animales.'],
    why: [
      'La sosa quema la boca y el esófago; hornear o hervir no la quita, y no se puede separar.',
      spaced`
        Guantes; doble bolsa o un bote cerrado con etiqueta, también el resto de ese azúcar, sal o
        harina; enjuaga olla y cucharas con mucha agua.
      `,
      spaced`
        Si alguien comió o probó: que enjuague la boca y escupa, sin vomitar, nada ácido, y llama ya a
        toxicología o a tu número de emergencias.
      `,
      '/first-aid what:lye-swallowed',
    ],
  },
  'maybe-lye': {
    answer: [
      'No lo pruebes nunca: trátalo como sosa.',
      'Guantes y gafas, ciérralo, ponle etiqueta y entrégalo como residuo cáustico.',
    ],
    why: [
      'La sosa parece sal, azúcar o bicarbonato, y calienta el agua como ellos no hacen.',
      'Nadie come de ese bote ni lo que se hizo con él; si alguien lo hizo: enjuagar la boca, sin vomitar, toxicología ya.',
      'Lejos de niños y animales.',
      spaced`
        Para jabón, solo lo que en su propia etiqueta se llama hidróxido de sodio, con su pureza: de un
        polvo adivinado nadie sabe la fuerza.
      `,
    ],
  },
  'not-for-washing': {
    answer: ['No: el jabón casero es para piel sana de manos y cuerpo, y para nada más.'],
    why: [
      'Es alcalino: irrita y quema una herida, un tatuaje reciente, los dientes, los ojos o la zona íntima, y no mata piojos.',
      'Una herida: agua limpia corriente, y al médico si es honda o está roja.',
      'Piojos: pregunta en la farmacia.',
      'Fruta, ensalada y carne: solo agua, porque el jabón se queda y se come.',
    ],
  },
  'soap-in-wound': {
    answer: ['Agua corriente ya, 20 minutos si el jabón era crudo o había sosa.'],
    why: [
      'Solo agua, nada de vinagre.',
      'El jabón curado solo escuece: aclara, tapa y listo.',
      spaced`
        La masa cruda, el agua de sosa o el jabón fresco siguen quemando dentro: hoy al médico, y ya si
        el corte es hondo, se pone blanco o duele más después.
      `,
      'Si no para de sangrar: aprieta un paño limpio y llama.',
      'La próxima vez, guantes y una tirita debajo.',
    ],
  },
  'amounts-swapped': {
    answer: ['Para: no lo uses, no lo calientes, no le eches agua.', 'Lleva demasiada sosa y muy poca agua.'],
    why: [
      'Nada mezclado aún: pesa otra vez, nunca menos agua que sosa.',
      'Si no, gafas y guantes, los demás fuera.',
      'En la jarra: la sosa fuerte se pone muy caliente y con agua hierve y salpica; deja que se enfríe donde no entre nadie.',
      'En la olla o el molde: déjalo, lejos de la piel.',
      'Ya frío: un bote de plástico con etiqueta (PP o HDPE), residuo cáustico según tus normas locales.',
      'Para saber cuánto se pasa: dime «he puesto 300 g de sosa en 900 g de oliva».',
      'Luego empieza de nuevo, la sosa al agua fría.',
    ],
  },
  'oil-forgotten': {
    answer: ['No lo uses: la sosa del aceite que falta queda libre y quema.'],
    why: [
      'Olvidar la mitad del aceite es más o menos el doble de sosa; solo 200 g de coco dejan unos 35 g de NaOH.',
      'Guantes y gafas.',
      'Aún líquido en la olla: pesa ese aceite, templado, y bátelo ahora.',
      spaced`
        En el molde o cuajado: solo si todos los pesos son seguros, fúndelo despacio con el aceite que
        falta, cura cuatro semanas y prueba que no dé calambre.
      `,
      'Si no son seguros: residuo cáustico según tus normas locales.',
      'Esperar no lo cura.',
      'Para comprobarlo: «he puesto 86 g de sosa en 400 g de oliva».',
    ],
  },
  'ph-high': {
    answer: ['No: con pH 11 o más no lo uses ni lo regales, y ponte guantes.'],
    why: [
      'Un jabón sano tiene de 9 a 10,5.',
      'Con menos de cuatro semanas: déjalo curar y prueba otra vez a las cuatro semanas, una tira nueva en la espuma de la barra mojada.',
      'Con más: le sobra sosa, y esperar no ayuda.',
      spaced`
        Repasa los pesos («he puesto 150 g de sosa en 1000 g de oliva»); se rehace con el aceite que
        falta solo si todos son seguros, si no, residuo cáustico según tus normas locales.
      `,
    ],
  },
  'ash-or-lye': {
    answer: [
      'Guantes hasta saberlo: una capa fina y seca es ceniza de sosa, granos duros o que piquen son sosa.',
    ],
    why: [
      spaced`
        Ceniza: fina y pareja, por donde le da el aire, y se va al frotar con un guante mojado; en el
        jabón curado no hace daño, cepíllala o aclárala.
      `,
      'Sosa: granos, cristales o gotas, a manchas, también dentro al cortar, que siguen duros o pican.',
      'No lo pruebes nunca.',
      'A las cuatro semanas, papel de pH en el sitio mojado: con 11 o más, o si da calambre, no lo uses y repasa los pesos.',
    ],
  },
  'lye-into-water': {
    answer: ['La sosa al agua fría, despacio, siempre.', 'Nunca el agua sobre la sosa.'],
    why: [
      'Gafas, guantes, ventana abierta.',
      spaced`
        Pesa el agua fría en una jarra de polipropileno (PP 5) o acero y echa la sosa poco a poco
        mientras remueves, la cara lejos del vapor, hasta que esté clara.
      `,
      'Se pone a unos 90 °C (194 °F), pero no explota.',
      'Agua sobre un montón de sosa hierve al momento y salpica.',
      'La nieve cae sobre el lago: la sosa cae sobre el agua.',
    ],
  },
  'bleach-mixed': {
    answer: [
      'Nunca: la lejía de limpiar no se mezcla con nada, y menos con alcohol, ácido o amoniaco.',
      'Suelta gas tóxico.',
    ],
    why: [
      'Con ácido, cloro; con amoniaco, cloraminas; con alcohol, vapores clorados.',
      'Los moldes no necesitan desinfección: agua caliente y lavavajillas, aclarar y secar.',
      'Si ya se han juntado: déjalo, sal al aire libre, abre la ventana por fuera si puedes, y /first-aid si alguien tose.',
      'Con la sosa tampoco se mezcla.',
    ],
  },
  'zap-child': {
    answer: ['No: nunca un niño, ni alumnos.', 'Nadie prueba jabón con la lengua de un niño.'],
    why: [
      'La sosa libre quema la boca al momento.',
      'Un adulto prueba con papel de pH en la barra mojada: con 11 o más, no se usa.',
      'A los niños, barras curadas y probadas.',
      'Si un niño ha chupado: enjuagar la boca, sin vomitar, y llamar a toxicología.',
      '/first-aid what:lye-swallowed',
    ],
  },
  'hands-full': {
    answer: [
      'No: mientras hay sosa, las dos manos y los dos ojos en ella.',
      'Sin teléfono, sin niño en brazos, sin cigarrillo.',
    ],
    why: [
      'Una gota en la cara de un niño le cuesta un ojo, y quien mira a otro lado vierte mal.',
      'Que otra persona se lleve al niño, fuera del cuarto; el teléfono apagado; nadie bebe, fuma ni come en esa mesa.',
      'Si hoy no hay tiempo, otro día: no se estropea.',
    ],
  },
  'bare-hands': {
    answer: ['No: guantes para el cuenco, los utensilios y el primer corte.', 'El jabón crudo quema.'],
    why: [
      'Dos días la masa y el jabón fresco son cáusticos, y a menudo duele más tarde.',
      'Cuenco y cucharas: papel, con guantes y gafas, un día de reposo, y luego se lavan.',
      'Para cortar a las 24 horas: aún guantes.',
      'Sin guantes, cuando esté curado y no dé calambre.',
      'En la piel: agua corriente, 20 minutos.',
      'Escribe «sosa en mi piel» si pica.',
    ],
  },
  'no-window': {
    answer: [
      'No: nada de sosa en un cuarto sin ventana.',
      'Mézclala fuera, o junto a una ventana abierta con corriente.',
    ],
    why: [
      'El vapor lleva gotas cáusticas, y un cuarto pequeño se llena enseguida.',
      'La campana devuelve el aire y no es corriente.',
      'La masa suelta poco: disuelve la sosa fuera o en una puerta abierta, que se enfríe allí vigilada, y luego éntrala.',
      'Niños fuera de la casa o con la puerta cerrada.',
      'En una clase: la sosa ya disuelta, gafas y guantes para cada uno.',
      'Quien tose, al aire libre.',
    ],
  },
  birds: {
    answer: ['No: los pájaros fuera del cuarto, mejor de la casa, antes de que la sosa toque el agua.'],
    why: [
      'Sus pulmones toman vapores y gotas más rápido que los nuestros: lo que a ti te hace toser puede matar a un pájaro.',
      'Vuelve cuando el agua de sosa esté fría y tapada, el cuarto aireado una hora y toda la masa en el molde.',
      'Nada de espray ni aromas fuertes junto a la jaula.',
      'Un pájaro que boquea o se queda hinchado: aire fresco y veterinario ya.',
    ],
  },
  'weak-gear': {
    answer: [
      spaced`
        No: una mascarilla de papel o tela no para el vapor cáustico, ni chanclas y pantalón corto una
        salpicadura, ni gafas de sol una gota.
      `,
    ],
    why: [
      'Contra el vapor: corriente de aire o fuera, agua fría, la cara lejos; para si toses.',
      'Gafas cerradas de protección, guantes sobre la muñeca, manga y pantalón largos, zapato cerrado con el pantalón por encima.',
      'También en verano: es media hora.',
      'Una mascarilla de polvo (FFP2 o N95) solo ayuda con los polvos.',
    ],
  },
  'lye-by-food': {
    answer: ['No: la sosa no va nunca al lado de la comida, ni en la nevera ni en la despensa.'],
    why: [
      'Alguien la tomará por leche, agua, sal o azúcar.',
      spaced`
        Sácala ya, con gafas y guantes: una botella o bote de plástico cerrado y con etiqueta (HDPE o
        PP) que nunca tuvo comida, bajo llave, lejos de niños y animales.
      `,
      'Lo que salpicó no se come: tíralo y pasa mucha agua por el estante.',
      'Si alguien lo probó: enjuagar, sin vomitar, toxicología ya.',
    ],
  },
};
