import { spaced } from '../../../engine/over-lines.ts';
import type { lyeJug as english } from '../../en/lye/lye-jug.ts';

/** What is said of what goes on in the jug of lye: cloud, crystals, metal, and what fell in. */
export const lyeJug: typeof english = {
  'metal-in-lye': {
    answer: [
      'Apártate, sin llamas ni chispas: hay metal en la sosa.',
      'Suelta hidrógeno, que puede explotar.',
    ],
    why: [
      'Agua de sosa gris, con burbujas o que huele es aluminio, zinc o estaño que se deshace.',
      'Todos fuera; ventana abierta, sin tocar gas, cigarrillos ni interruptores; no remuevas, no tapes, no eches nada.',
      'Espera fuera hasta que pare y esté frío.',
      spaced`
        Luego gafas, guantes, y pinzas de acero o plástico para el metal; el líquido, en un bote de
        plástico abierto al aire libre, con etiqueta, sin cerrar mientras burbujee: residuo cáustico
        según tus normas locales.
      `,
      'No sirve para jabón.',
      'Tos, mareo, salpicaduras: /first-aid.',
    ],
  },
  'cloudy-lye': {
    answer: [
      'Nube o copos blancos en la sosa fría suelen ser carbonato: deja que se pose y usa solo lo claro.',
    ],
    why: [
      'Lo trae la sosa vieja o húmeda, y el agua dura.',
      'Aún templada y con granos abajo: no está disuelta, sigue removiendo.',
      'Fría y clara por encima: pásala por malla de acero o poliéster, gafas, guantes; queda algo más floja, nunca más fuerte.',
      'Espesa y blanca, o con sosa apelmazada: no la uses, residuo cáustico según tus normas locales.',
      'Gris y con burbujas es metal: apártate.',
    ],
  },
  'undissolved-lye': {
    answer: [
      'Que no entre en el aceite hasta estar clara: remueve.',
      'Si se enfrió, la jarra abierta en agua templada del grifo.',
    ],
    why: [
      'Los granos que pasan al aceite queman semanas después.',
      'Si aún quema: agua fría alrededor.',
      'Al menos tanta agua como sosa en peso, mejor el doble.',
      'Ni pinchar ni fuego.',
      'Un terrón en el fondo: espera, remueve suave con silicona o acero, nunca a la fuerza, salpica.',
      spaced`
        Cuajada, con cristales o helada por el frío (la del 50 % lo hace a 15 °C (59 °F)): la jarra
        abierta en agua templada del grifo, remueve hasta que esté clara; nunca microondas ni fuego.
      `,
      'Si sigue turbia: deja que se pose.',
    ],
  },
  'honey-in-lye': {
    answer: ['Nunca miel ni azúcar en sosa ya disuelta: se calienta, sube con espuma y se pone marrón.'],
    why: [
      'Azúcar o sal: primero disuelta en el agua fría, y luego la sosa, despacio, con la jarra en hielo.',
      'Miel: en un poco de agua fría apartada, a los aceites o en traza fina.',
      'Como mucho 30 g de azúcar o miel por kg de aceites (una cucharada de miel son 21 g), de 10 a 20 g de sal; más recalienta o desmiga.',
      'Sin tapar y sin horno.',
      'Si ahora sube la espuma: apártate, la cara lejos, deja que baje.',
      '/plan additives:«miel 15 g»',
    ],
  },
  'alcohol-in-lye': {
    answer: [
      'No: nada de alcohol en el agua de sosa.',
      'Llega a 90 °C (194 °F) y el alcohol hierve a 78 °C (172 °F): salpica y arde.',
    ],
    why: [
      'Tampoco vodka contra la ceniza: hay quien lo rocía sobre la masa ya vertida, sin ninguna llama en la habitación.',
      'Contra la ceniza: menos agua, tapar el molde, gel, o cepillarla después.',
      'Vino y cerveza: hervidos hasta que no tengan gas ni alcohol, y helados.',
    ],
  },
  'water-was-put-on': {
    answer: [
      'Si se enfrió, está clara y no queda nada en el fondo, puede usarse.',
      'La próxima vez, la sosa al agua.',
    ],
    why: [
      'El peligro de echar agua sobre sosa es que hierve y salpica en ese momento; después es agua de sosa, si las dos se pesaron.',
      'Pésala: jarra, sosa y agua tienen que sumar; si falta, se evaporó agua (eso solo no cambia la sosa).',
      'Granos o costra: remueve en la jarra abierta, dentro de agua fría, hasta que esté clara.',
      'Gafas, guantes.',
      'Si te salpicó: agua corriente, /first-aid.',
    ],
  },
  'rusty-lid': {
    answer: ['Gafas y guantes, límpialo con papel y luego agua; la sosa, bajo plástico, no bajo metal.'],
    why: [
      'El vapor y la sosa húmeda se comen estaño, zinc y aluminio: una tapa se oxida, una campana pierde brillo.',
      'Restos viejos no son peligro; espuma gris y mojada sí: apártate, sin llamas.',
      spaced`
        Sosa con óxido, terrones o humedad ya no se pesa para jabón: una tapa pegada o hinchada no se
        fuerza, entrégala como residuo cáustico según tus normas locales.
      `,
    ],
  },
};
