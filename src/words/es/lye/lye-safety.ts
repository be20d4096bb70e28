import { spaced } from '../../../engine/over-lines.ts';
import type { lyeSafety as english } from '../../en/lye/lye-safety.ts';

/** What is said to questions of safety about lye that name no recipe. */
export const lyeSafety: typeof english = {
  disposal: {
    answer: [
      'La sosa que sobra se guarda cerrada y con etiqueta para el próximo lote, o se entrega como residuo cáustico.',
    ],
    why: [
      'Sosa seca: otra vez a su bote, seco y cerrado.',
      'Agua de sosa: una botella de plástico (HDPE o PP) con etiqueta que nunca haya llevado comida ni bebida, bajo llave.',
      'Lo que puede ir por el desagüe, y cuánto diluido, lo dicen tus normas locales: pregunta al servicio de residuos.',
      'Nunca a un fregadero o tubería de aluminio, nunca junto con ácido, lejía o desatascador, nunca a la basura tal cual.',
      'Gafas y guantes.',
    ],
  },
  'drink-bottle': {
    answer: ['Nunca: nada de sosa en una botella, bote o vaso donde pueda haber comida o bebida.'],
    why: [
      'Alguien bebe de ella: así se traga la sosa.',
      'Las botellas finas además se ablandan con el agua de sosa caliente y el vidrio puede reventar.',
      spaced`
        Usa una jarra de polipropileno (PP, marca 5) o una botella de HDPE (marca 2) comprada para eso,
        con la etiqueta «SOSA: CÁUSTICA», llena solo en frío, bajo llave, lejos de niños y animales.
      `,
    ],
  },
  storing: {
    answer: ['Seca, hermética, en su bote con etiqueta, bajo llave, lejos de niños y animales.'],
    why: [
      'La sosa toma agua del aire: ciérrala enseguida.',
      spaced`
        Bote de plástico (HDPE o PP), nunca aluminio, hojalata ni tapón de vidrio; aparte de ácidos,
        lejía y comida; en un estante bajo, para que nada caiga encima.
      `,
      spaced`
        El agua de sosa dura meses en una botella de HDPE cerrada y con etiqueta que nunca llevó bebida,
        llena en frío; con su mismo peso de agua puede cuajar si refresca.
      `,
    ],
  },
  clumped: {
    answer: ['Mejor no: la sosa apelmazada ha tomado agua y ya nadie sabe su fuerza.'],
    why: [
      'Pesada por gramos lleva menos sosa de la que cuenta la receta, y la costra es carbonato: el jabón quedaría blando y graso.',
      'Para jabón, sosa nueva.',
      'No rompas los terrones con una herramienta: saltan astillas a los ojos.',
      'Entrégala como residuo cáustico según tus normas locales.',
    ],
  },
  children: {
    answer: ['No: niños y mascotas fuera del cuarto mientras haya sosa, agua de sosa o masa cruda.'],
    why: [
      'Una gota puede costar un ojo, y un niño es más rápido que tú.',
      spaced`
        Fuera desde que se pesa la sosa hasta que está lavado todo lo que tocó la masa, y el jabón
        fresco fuera de su alcance los dos primeros días.
      `,
      spaced`
        Lo que sí pueden: elegir colores y aromas, sellar y envolver pastillas curadas, o colorear
        contigo una base de glicerina, donde no se maneja sosa.
      `,
    ],
  },
  'more-lye': {
    answer: ['No: nunca eches sosa a ojo a un jabón hecho ni a la masa.'],
    why: [
      'La sosa sin disolver o sin mezclar se queda en un sitio y quema.',
      'Un jabón aceitoso casi siempre está mal mezclado, frío o a medio hacer, no falto de sosa.',
      'Calcula lo que entró: dime «eché 100 g de sosa en 700 g de oliva».',
      'Si de verdad falta sosa, se rehace con la diferencia pesada, disuelta en agua, y se prueba; si no, deséchalo.',
    ],
  },
  'zap-use': {
    answer: ['No: si da calambre en la lengua hay sosa libre.', 'No lo uses, no lo regales, no lo vendas.'],
    why: [
      'Guantes.',
      'Una pastilla de menos de una semana puede perderlo: prueba otra vez a las cuatro semanas.',
      'Si entonces sigue, sobra sosa o hay bolsas: revisa los pesos (dime «eché 150 g de sosa en 1000 g de oliva»).',
      spaced`
        Se puede rehacer con los aceites que faltan si cada peso es seguro; si no, deséchalo como
        residuo cáustico según tus normas locales.
      `,
    ],
  },
  'zap-test': {
    answer: [
      'No: la lengua no es un instrumento.',
      'Papel de pH en la espuma de una pastilla curada, y los pesos otra vez.',
    ],
    why: [
      'La sosa libre quema la boca enseguida, y la lengua solo encuentra el punto que toca.',
      'Moja una pastilla curada, haz espuma, y papel de pH o fenolftaleína: 11 o más es sospechoso; una buena cifra sola no prueba nada.',
      'Primero los números: dime «puse 100 g de sosa en 700 g de oliva».',
      'Quien la lamió y nota un pinchazo como de pila: enjuaga la boca con agua, escupe, y no uses la pastilla.',
    ],
  },
  'soap-ph': {
    answer: ['Un jabón sano tiene un pH de 9 a 10,5; 11 o más es sospechoso.'],
    why: [
      'El jabón es alcalino por naturaleza y no puede hacerse neutro.',
      spaced`
        Moja una pastilla curada, saca espuma y moja el papel en ella; las tiras leen bajo en el jabón,
        así que una buena cifra sola no prueba nada.
      `,
      'Fíate antes de la sosa pesada, de que no dé calambre y de cuatro semanas de curado.',
    ],
  },
  'spooned-lye': {
    answer: ['La sosa nunca se mide con cucharas ni tazas: pésala al gramo.'],
    why: [
      'Una cucharada de escamas, perlas o cristales pesa distinto, y unos gramos de más dan un jabón que quema.',
      'Hace falta una báscula que marque 1 g (0,1 g por debajo de 500 g de aceites).',
      'Dime los aceites y te digo los gramos, por ejemplo «cuánta sosa para 500 g de aceite de oliva».',
    ],
  },
  'no-lye': {
    answer: ['No: el jabón se hace de grasa y sosa; sin sosa no es jabón.'],
    why: [
      'En una pastilla curada y bien pesada no queda sosa: toda se ha vuelto jabón y glicerina.',
      'Quien no quiera manejar sosa usa una base de glicerina, donde otro lo hizo, o refunde jabón rallado.',
    ],
  },
  'lye-gone': {
    answer: ['Si se pesó bien, se mezcló bien y curó, en la pastilla terminada no queda sosa.'],
    why: [
      'La sosa y la grasa se vuelven jabón y glicerina; un sobreengrasado del 5 % deja grasa, no sosa.',
      'Casi todo ocurre en dos días; cura cuatro semanas.',
      'Un calambre en la lengua, cristales blancos o gotas claras que queman dicen que no: entonces no lo uses.',
    ],
  },
  'when-safe': {
    answer: ['Guantes las primeras 48 horas; se usa tras cuatro semanas de curado.'],
    why: [
      'La masa y el jabón fresco son cáusticos.',
      'A las 24 a 48 horas casi toda la sosa se ha gastado; entonces desmolda y corta, aún con guantes.',
      'A las cuatro a seis semanas, sin calambre ni cristales blancos, se puede usar.',
      'Un jabón al que le sobra sosa no se arregla esperando.',
    ],
  },
  'koh-for-naoh': {
    answer: [
      'No la misma cantidad: de KOH puro van 1,40 veces el peso de la NaOH, del habitual al 90 % 1,56 veces.',
    ],
    why: [
      'Y hace otro jabón: la potasa da una pasta blanda, la sosa pastillas duras.',
      'El mismo peso de NaOH donde iba KOH es muchísima sosa y quema.',
      'Calcúlalo de nuevo: /plan lye:«KOH 90%».',
    ],
  },
  'cure-lye-heavy': {
    answer: ['No: el curado seca el jabón, no quita la sosa que sobra.'],
    why: [
      'Una pastilla joven puede dar calambre una semana y perderlo; la que lo da a las cuatro semanas se queda su sosa.',
      'No la uses: rehazla con los aceites que faltan si cada peso es seguro, o deséchala según tus normas locales.',
    ],
  },
  'rebatch-lye-heavy': {
    answer: ['Solo si cada peso es seguro: entonces, con justo los aceites que faltan.'],
    why: [
      'Dime lo que entró («eché 150 g de sosa en 1000 g de oliva») y te digo cuánto se pasa.',
      'Guantes y gafas: es cáustico.',
      spaced`
        Rállalo, fúndelo despacio con un poco de agua en una olla de acero inoxidable tapada u olla
        lenta, mezcla los aceites que faltan, cuécelo hasta que esté parejo, moldéalo, cura cuatro
        semanas y mira el papel de pH en su espuma, sin lengua.
      `,
      'Si los pesos no son seguros, deséchalo como residuo cáustico.',
    ],
  },
  baby: {
    answer: [
      'Curado de cuatro a seis semanas y sin calambre, para adultos; para un bebé pregunta antes a un médico.',
    ],
    why: [
      'La piel del bebé es fina y el jabón es alcalino; las primeras semanas basta el agua.',
      'Mejor sin aroma, sin aceites esenciales y sin color.',
      spaced`
        Quien vende o regala jabón pensado para menores de tres años necesita en muchos países una
        evaluación de seguridad propia (UE: Reglamento 1223/2009).
      `,
    ],
  },
  'lye-on-skin': {
    answer: [
      'Quema, hondo, y muchas veces duele solo más tarde.',
      'Si ocurre: agua corriente enseguida, al menos 15 minutos.',
    ],
    why: [
      'Quita la ropa mojada, aclara con mucha agua fresca, nunca vinagre ni limón en la piel: calienta y hace perder tiempo.',
      'Después, un médico si es mayor que una moneda, en cara, mano o articulación, o si duele o blanquea.',
      'Por eso: guantes, manga larga, gafas cerradas y agua a mano antes de empezar.',
      'Si acaba de ocurrir, escribe «sosa en la piel».',
    ],
  },
  'lye-fumes': {
    answer: ['Sí: aparta la cara del vapor y mezcla con mucha corriente o fuera.'],
    why: [
      'Mientras la sosa se disuelve, el vapor lleva gotas finas cáusticas que dañan nariz, garganta y ojos; el polvo del bote, igual.',
      'Agua fría, sosa despacio, brazo estirado, ventana abierta, nadie más en el cuarto; con asma, que la mezcle otra persona.',
      'Quien tose, silba al respirar o le duele la garganta sale al aire fresco y llama a un médico o al centro de intoxicaciones.',
    ],
  },
  vessel: {
    answer: ['La sosa va en polipropileno (PP, marca 5) o acero inoxidable, y en nada más.'],
    why: [
      'Debe aguantar sosa fuerte y caliente: el PP aguanta 100 °C (212 °F), los plásticos finos o quebradizos se ablandan y rajan.',
      spaced`
        Nunca aluminio, estaño, zinc, cobre, latón, hierro fundido, antiadherente ni vidrio, tampoco el
        resistente al calor: la sosa lo ataca hasta que un día revienta.
      `,
      'Cuchara o espátula de silicona o acero inoxidable; la madera se deshilacha y guarda sosa.',
      'Nada que cierre del todo.',
      'Úsalo solo para la sosa, nunca más para comida.',
    ],
  },
};
