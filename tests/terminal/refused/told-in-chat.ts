import type { RefusedCases } from './row.ts';

export const toldInChat: RefusedCases = {
  'a recipe that is told in chat': [
    [
      {
        en: '/ask question:"how much lye for 500 g olive, 200 g coconut, 100 g shea. not the last but one"',
        es: '/ask question:"cuánta sosa para oliva 500 g, coco 200 g, karité 100 g. el penúltimo no"',
      },
      'oils-left-out',
      'stays out, and nothing else',
      'se queda fuera, y nada más',
    ],
    [
      {
        en: '/ask question:"if 500 g coconut takes 91 g of lye then 500 g of olive takes the same, right?"',
        es: '/ask question:"si con 500 g de coco llevo 91 g de sosa, con 500 de oliva lo mismo no? para el 0%"',
      },
      'pots-compared',
      'each oil takes lye of its own',
      'cada aceite lleva su propia sosa',
    ],
    [
      {
        en: '/ask question:"the tub says hydroxide but not which one, how much for 600 g olive and 200 g coconut"',
        es: '/ask question:"en el bote pone hidróxido pero no dice si sódico o potásico, tengo 600 g oliva y 200 coco, cuánto echo"',
      },
      'lye-which-unknown',
      'do not use it until it is known which it is',
      'no lo uses hasta saber cuál es',
    ],
    [
      {
        en: '/ask question:"how much lye for 500 g olive, 200 g coconut, superfat 5. the jars are 90 g each empty"',
        es: '/ask question:"cuánta sosa para 500 g de oliva, 200 g de coco, al 5%. los tarros vacíos pesan 90 g"',
      },
      'vessel-weighed',
      'is that in the weights of the oils',
      'está eso en los pesos de los aceites',
    ],
    [
      {
        en: '/ask question:"how much lye for 500 g olive, 200 g coconut, superfat 0.95"',
        es: '/ask question:"cuánta sosa para 500 g de oliva, 200 g de coco, sobreengrasado 0,95"',
      },
      'superfat-under-one',
      'a superfat of 5 %, told as a share of one',
      'un sobreengrasado del 5 %, dicho como parte de uno',
    ],
    [
      {
        en: '/ask question:"how much lye for 500 g olive, 200 g coconut, both lyes"',
        es: '/ask question:"cuánta sosa para 500 g de oliva, 200 g de coco, con las dos sosas"',
      },
      'lye-shares-untold',
      'how much of each? Write the shares',
      '¿cuánto de cada una? Escribe las partes',
    ],
    [
      {
        en: '/ask question:"how much lye for 500 g olive, 200 g coconut, 80 g cocoa"',
        es: '/ask question:"cuánta sosa para 500 g de oliva, 200 g de coco, 80 g cocoa"',
      },
      'cocoa-which',
      'cocoa butter or cocoa powder? Only the butter takes lye',
      '¿manteca de cacao o cacao en polvo? Solo la manteca gasta sosa',
    ],
    [
      {
        en: '/ask question:"how much lye for 500 g olive, 200 g coconut, superfat 5. the lye got damp"',
        es: '/ask question:"cuánta sosa para 500 g de oliva, 200 g de coco, al 5%. la sosa está húmeda"',
      },
      'lye-damp',
      'has lost strength, and nobody knows how much',
      'perdió fuerza, y nadie sabe cuánta',
    ],
    [
      '/ask question:"how much lye for 500 g olive, 200 g coconut, half of the coconut stays out"',
      'oil-shared',
      'Write each oil with the weight that is or goes in the pot',
      'Write each oil with the weight that is or goes in the pot',
    ],
    [
      '/ask question:"how much lye for 500 g olive, 200 g coconut, 300 g olive"',
      'oil-told-twice',
      'with what is or goes in the pot',
      'with what is or goes in the pot',
    ],
    [
      '/ask question:"how much lye for 500 g olive, 200 g coconut, superfat 5%, superfat 8%"',
      'superfat-twice',
      'A discount of lye is a superfat by another name',
      'A discount of lye is a superfat by another name',
    ],
    [
      '/ask question:"how much lye for 500 g olive and 200 g coconut, the coconut is still in the cupboard"',
      'oil-in-pot',
      'I cannot tell from',
      'Write only what is or goes in',
    ],
    [
      '/ask question:"how much lye for soft soap with 500 g olive and 200 g coconut"',
      'lye-of-soft-soap',
      'and their weights are not the same',
      'and their weights are not the same',
    ],
    [
      {
        en: '/ask question:"how much lye: aceite 1 kg coco 300 g agua"',
        es: '/ask question:"cuánta sosa: aceite 1 kg coco 300 g agua"',
      },
      'amounts-whose',
      'I cannot tell which weight belongs to which name',
      'Escribe cada peso delante de su nombre',
    ],
    [
      {
        en: '/ask question:"pal, 400 g coconut, 700 olive, oops I meant 300 g lard, how much lye"',
        es: '/ask question:"400 g de coco, 700 de oliva, uy quise decir 300 g de manteca, ¿cuánta sosa?"',
      },
      'recipe-corrected',
      'Write the recipe once more as it is to be',
      'Has corregido algo por el camino',
    ],
    [
      {
        en: '/ask question:"double this: 350 olive 150 coconut 72g lye 190 water"',
        es: '/ask question:"el doble de esto: 350 oliva 150 coco 72 g sosa 190 agua, ¿cuánta sosa?"',
      },
      'recipe-scaled',
      'the lye and the water by one and the same number',
      'la sosa y el agua por un mismo número y pregunta con esos pesos',
    ],
    [
      {
        en: '/ask question:"500 g olive, 200 g coconut, the fractionated one, lye?"',
        es: '/ask question:"700 g oliva 300 g coco, sosa entre 140 y 150 g, ¿bien?"',
      },
      'recipe-words',
      'Write only the oils with their weights',
      'Escribe solo los aceites con su peso y el sobreengrasado',
    ],
    [
      {
        en: '/ask question:"500 g olive and 300 g coconut, half of the coconut was spilled. How much lye?"',
        es: '/ask question:"500 g de oliva y 300 g de coco, se me cayó la mitad del coco. ¿Cuánta sosa?"',
      },
      'oil-lost',
      'Weigh each oil that is in the pot now and ask with that',
      'Pesa cada aceite que hay ahora en la olla y pregunta con eso',
    ],
    [
      {
        en: '/ask question:"planned 300 g coconut, used 300 g shea, 700 g olive, lye 141 g, ok?"',
        es: '/ask question:"cuánta sosa para 700 g de oliva, iba a poner 300 g de coco pero no"',
      },
      'recipe-planned',
      'What was to go in stands beside what did',
      'Lo que iba a llevar está junto a lo que lleva',
    ],
    [
      {
        en: `/ask question:"700 g olive 300 g coconut, I've a jug of masterbatched lye. how much do I pour?"`,
        es: '/ask question:"700 g oliva 300 g coco, tengo sosa ya disuelta, ¿cuánta pongo?"',
      },
      'lye-ready-strength',
      'is lye with water in it already',
      'así que pesa más que la sosa seca',
    ],
    [
      {
        en: `/ask question:"My mother-in-law's batch has 1 kg lard. Mine has half of that lard and 300 g coconut oil. Superfat 5%. How much lye for mine?"`,
        es: '/ask question:"La tanda de mi suegra lleva 1 kg de manteca de cerdo. La mía, la mitad de esa manteca y 300 g de aceite de coco. Sobreengrasado 5%. ¿Cuánta soda para la mía?"',
      },
      'recipe-of-another',
      'Write only what is or goes in the one that you ask for',
      'Escribe solo lo que hay o va en la que preguntas',
    ],
  ],
};
