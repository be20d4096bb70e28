import { spaced } from '../../../engine/over-lines.ts';
import type { lyeClass as english } from '../../en/lye/lye-class.ts';

/** What is said of who makes soap, washes with it or clears up after it, and what is done to hurry a bar. */
export const lyeClass: typeof english = {
  'first-soap': {
    answer: [
      'Gafas, guantes, báscula que marque 1 g, sosa (NaOH), agua, aceites, batidora de mano, jarra de plástico (PP 5) y molde.',
    ],
    why: [
      'Planéalo antes de comprar: /plan oils:«oliva 70%, coco 30%» size:«500 g aceites» pesa la sosa y el agua y dice cada paso.',
      'Empieza con un color: «cuánto ultramar para 1 taza».',
      'Un cuarto con corriente de aire, sin niños ni animales, una hora en que nadie llame.',
      'Se usa a las cuatro semanas.',
    ],
  },
  'after-pour': {
    answer: [
      'Fuera del molde a las 24 horas más o menos, firme como un queso; córtalo medio día después, con guantes.',
    ],
    why: [
      'Aún blando o pegajoso (mucha agua, leche, sin gel): un día o dos más, que no le hace daño.',
      'Lleno de sal se corta entre una y cuatro horas, o se desmiga.',
      'Antes: déjalo quieto, míralo las primeras horas y enfríalo si se abomba.',
      'Después, cuatro semanas en una rejilla, con una vuelta por semana.',
      '/batch poured lo guarda, y te escribo cuando toca cada cosa.',
    ],
  },
  'back-to-food': {
    answer: ['No: lo que ha tenido sosa o masa cruda no vuelve nunca a la comida.'],
    why: [
      'La sosa, el color y el aroma se quedan en juntas, cuchillas, silicona y rayas.',
      'Ten batidora, moldes, bandejas y cucharas solo para jabón, márcalos «JABÓN» y guárdalos lejos de la cocina.',
      'El acero inoxidable sin juntas podría quedar limpio, pero nadie ve si lo está.',
    ],
  },
  pregnant: {
    answer: [
      'Pregunta antes a tu médico.',
      'En el embarazo, la sosa, su vapor y los aromas fuertes se dejan a otra persona.',
    ],
    why: [
      'Puedes elegir colores, y cortar y sellar barras curadas con guantes.',
      spaced`
        Ni polvo de pigmentos, ni vapor de sosa, ni aceites esenciales si un médico o matrona no está de
        acuerdo: algunos se desaconsejan en el embarazo.
      `,
      'Jabón para tu piel: suave, curado, sin aroma.',
    ],
  },
  asthma: {
    answer: ['Pregunta antes a tu médico, y que otra persona mezcle la sosa.'],
    why: [
      'Su vapor, los polvos finos y los aromas fuertes pueden provocar un ataque.',
      spaced`
        Quédate fuera hasta que el agua de sosa esté clara y fría; trabaja con corriente o al aire
        libre; moja los polvos antes de que vuelen; sin aceites esenciales; el inhalador a mano.
      `,
      'Quien tose o silba al respirar sale al aire fresco; si no se pasa enseguida, llama a emergencias.',
    ],
  },
  'contact-lenses': {
    answer: [
      'No: quítate las lentillas.',
      'Gafas cerradas de protección, sobre las de ver si las necesitas.',
    ],
    why: [
      'Una gota de sosa se mete bajo la lente y se queda en el ojo, y la lente retrasa el aclarado.',
      'Las gafas de ver solas están abiertas por los lados.',
    ],
  },
  'pets-washed': {
    answer: ['No: no laves animales con él.', 'Pregunta al veterinario qué va bien.'],
    why: [
      'El jabón es alcalino para su piel, y se lo lamen.',
      'Los aceites esenciales pueden envenenarlos: sobre todo el de árbol de té, a perros y gatos.',
      'Guarda barras, masa y sosa donde no lleguen.',
    ],
  },
  'bad-batch-away': {
    answer: ['No: ni por el fregadero, ni al mar, al río, al jardín o al compost.'],
    why: [
      spaced`
        El jabón con demasiada sosa es un residuo cáustico: guantes, un bote de plástico cerrado y con
        etiqueta, y pregunta a tu servicio de residuos.
      `,
      'Una barra solo fea, curada y sin calambre se puede usar o rallar para la ropa.',
      'La masa cruda: deja que se endurezca antes.',
    ],
  },
  'washing-up': {
    answer: ['Guantes y gafas: limpia con papel, déjalo un día y lava a mano.', 'Nada de lavavajillas.'],
    why: [
      'La masa cruda quema y cuaja en las tuberías; al día siguiente lo que queda es jabón.',
      'Limpia ollas y utensilios con papel, y el papel a una bolsa cerrada lejos de niños y animales.',
      'Después agua caliente y lavavajillas a mano, aparte de los platos.',
      'En la máquina rebosa de espuma y deja película en los platos.',
      'El agua de sosa nunca va al fregadero a ojo: pregunta a tu servicio de residuos.',
    ],
  },
  outdoors: {
    answer: ['Sí, el aire allí es bueno: a cubierto de viento y lluvia, y sin nadie cerca.'],
    why: [
      'El viento mete escamas de sosa y polvos en los ojos, y la lluvia calienta la sosa.',
      'Una mesa firme, agua corriente a mano, niños, animales y gente lejos, y nada solo.',
      'No con heladas: la masa cuaja antes de ser jabón.',
      'En un garaje: puerta abierta y nada que arda.',
    ],
  },
  'electric-blanket': {
    answer: ['No: nada de manta o esterilla eléctrica sobre o bajo el jabón fresco, y menos toda la noche.'],
    why: [
      'El jabón se calienta solo; con más calor sube, se raja o salpica sosa caliente, y una manta tapada puede arder.',
      'Basta una toalla alrededor del molde, y ninguna con leche, miel o azúcar.',
      'Míralo en las primeras horas.',
    ],
  },
  'oven-to-hurry': {
    answer: ['Solo un horno calentado a 60 °C (140 °F) como mucho y apagado; no acorta el curado.'],
    why: [
      'Hace que gelifique, nada más: las cuatro semanas de curado quedan.',
      'El molde sobre una bandeja, una o dos horas, con alguien cerca, sin comida dentro.',
      'No con leche, miel, azúcar o un aroma que caliente: sube y salpica sosa caliente.',
      'Nunca encendido, nunca toda la noche, nunca el microondas.',
    ],
  },
  'fridge-with-food': {
    answer: ['No: el jabón crudo no va al lado de la comida.'],
    why: [
      'Dos días es cáustico, suda, y su aroma pasa a la comida.',
      'Si hay que enfriarlo (leche, miel): una caja cerrada y con etiqueta, sin nada de comer en esa nevera, lejos de los niños.',
      'Si no, un suelo frío y un ventilador.',
    ],
  },
  flame: {
    answer: ['No: nada de llama sobre el jabón.'],
    why: [
      'El alcohol, el aroma y el papel arden, y el jabón crudo caliente salpica sosa.',
      'Para que brille: cúralo y púlelo con un paño húmedo.',
    ],
  },
};
