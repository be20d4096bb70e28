import { spaced } from '../../../engine/over-lines.ts';
import type { lyeHeat as english } from '../../en/lye/lye-heat.ts';

/** Lo que se dice del calor y del frío: la sosa que calienta, cómo se enfría, aceites, bloque y taller. */
export const lyeHeat: typeof english = {
  'cooling-lye': {
    answer: ['Solo agua fría, y la jarra se enfría por fuera: nada entra en la sosa caliente.'],
    why: [
      'La sosa calienta su agua de 40 a 60 °C (72 a 108 °F): en agua templada o hirviendo rompe a hervir y salpica.',
      'Pesa agua fría, o parte en hielo, y echa ahí la sosa despacio.',
      spaced`
        Después pon la jarra, abierta, en una pila con agua fría o hielo; no en una nevera o congelador
        con comida, donde se vuelca y se confunde.
      `,
      'Nunca agua ni hielo sobre sosa ya caliente.',
    ],
  },
  'lye-heats': {
    answer: [
      'Es lo usual: la sosa calienta el agua fría: de 80 a 95 °C (176 a 203 °F), y echa vapor unos minutos.',
    ],
    why: [
      spaced`
        Apártate, ventana abierta, sin inclinarte ni respirar el vapor; que se enfríe de 35 a 45 °C (95
        a 113 °F), abierta, donde no pase nadie.
      `,
      'Con agua fría o con hielo y la sosa a cucharadas sube menos.',
      'No es usual: que hierva, salpique, haga espuma, se ponga gris o ablande la jarra: aléjate y no le eches nada.',
      'Tos o una salpicadura: /first-aid.',
    ],
  },
  'lye-water-in-cold': {
    answer: [
      'No se estropea, pero cuaja: el agua de sosa del 30 al 50 % se pone sólida entre 0 y 15 °C (32 y 59 °F).',
    ],
    why: [
      spaced`
        Fuera, solo hasta que esté de 35 a 45 °C (95 a 113 °F): firme, con etiqueta, sin que le caiga
        nieve ni lluvia, sin niños ni animales cerca.
      `,
      'Ve por ella andando, con gafas y guantes: quien corre, derrama.',
      spaced`
        Con granos o costra: la jarra abierta en agua templada del grifo y remueve hasta que esté clara,
        o a lo que viertas le faltará sosa.
      `,
      'Nunca una jarra de vidrio con helada.',
    ],
  },
  'cold-room': {
    answer: [
      'Mejor donde haya de 18 a 24 °C (64 a 75 °F): con frío las grasas duras cuajan antes de ser jabón, con bolsas y ceniza.',
    ],
    why: [
      'El frío cuaja palma, manteca y mantecas en minutos: parece traza y no lo es.',
      spaced`
        Si ha de ser ahí: fuera solo la sosa, por el aire; aceites y molde a 38 o 45 °C (100 a 113 °F),
        todo oliva u otros aceites blandos, batido hasta traza de verdad, y luego el molde abrigado,
        dentro y fuera del alcance, un día.
      `,
      'Puede no gelificar, o solo en el centro, que se ve como un círculo.',
    ],
  },
  microwave: {
    answer: ['No: nunca calientes masa cruda ni agua de sosa en el microondas.'],
    why: [
      'Calienta a trozos, rebosa de golpe y lanza sosa caliente a quien abre la puerta.',
      'Si la masa está demasiado espesa, apriétala en el molde tal cual.',
      'Si se enfrió, déjala en un sitio templado o al baño maría por debajo de 45 °C (113 °F), con guantes y gafas.',
    ],
  },
  'hot-loaf': {
    answer: ['No: no lo envuelvas.', 'Destápalo, ponlo donde corra el aire y aparta la cara.'],
    why: [
      'A ese calor casi hierve y puede subir, rajarse o escupir sosa caliente.',
      'Guantes, gafas; una bandeja debajo; un ventilador al lado, o el molde sobre el suelo frío.',
      'No lo aprietes ni remuevas mientras sube.',
      'Ya frío, busca aceite o gotas claras separadas, y úsalo solo si no las hay y no da calambre.',
    ],
  },
  'hot-oven': {
    answer: ['No: en un horno tan caliente el jabón hierve, sube y se separa.'],
    why: [
      spaced`
        Para forzar el gel: horno a 60 °C (140 °F) como mucho, apagado, el molde tapado sobre una
        bandeja, una o dos horas, con alguien cerca.
      `,
      'Nunca toda la noche con calor, nunca con azúcar, leche o un aroma que caliente, y nunca con comida.',
      'Si ya está dentro: apaga, entreabre la puerta, guantes y gafas, y no lo muevas mientras esté blando.',
    ],
  },
  'hot-oils': {
    answer: [
      'No: deja que los aceites se enfríen antes, a 35 a 50 °C (95 a 122 °F), y el agua de sosa también.',
    ],
    why: [
      'Los aceites calientes con sosa espesan al momento, pueden hervir y salpicar, y el pan se recalienta.',
      'Pon la olla en agua fría, remueve, mide.',
      'Después echa el agua de sosa despacio, con gafas y guantes.',
    ],
  },
};
