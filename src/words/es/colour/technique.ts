import { spaced } from '../../../engine/over-lines.ts';
import type { technique as english } from '../../en/colour/technique.ts';
import { techniqueAsked } from './technique-asked.ts';
import { techniqueBench } from './technique-bench.ts';
import { techniqueBeside } from './technique-beside.ts';
import { techniqueMatters } from './technique-matters.ts';
import { colourGiven, techniqueNamed } from './technique-named.ts';
import { techniqueOutright } from './technique-outright.ts';

/** Lo que se dice a cómo se trabaja la masa con color: primero qué hacer, luego por qué y qué sigue. */
export const technique: typeof english = {
  rawBatter: 'Guantes y gafas puestos: la sosa y la masa cruda queman, la masa uno o dos días.',
  dust: 'Polvo fino: sin corrientes, mascarilla mientras esté seco, y se limpia en húmedo.',
  topics: {
    'thick-now': {
      answer: 'Para la batidora. Remueve a mano y échala ya al molde.',
      why: spaced`
        Si aún se vierte: olvida el remolino y echa los colores uno tras otro. Como puré: a cucharadas,
        aprieta cada una y golpea el molde en la mesa para cerrar huecos; el color que quede, a mano en las
        últimas cucharadas, las vetas no importan. Dura en la jarra: apriétala en el molde con guantes, o
        caliéntala suave y acábala como proceso caliente. Una jarra más espesa que las otras: esa primero,
        como capa. El jabón es bueno si la sosa se pesó bien. La próxima: 30 a 35 °C (86 a 95 °F), sosa al
        28 o 30 %, la esencia al final y a mano. Si está caliente y sube: guantes, gafas, a una olla mayor
        o una bandeja, sin tapa.
      `,
    },
    'riced-now': {
      answer: 'Con granos como de arroz: bátela a golpes cortos hasta alisarla y viértela en seguida.',
      why: spaced`
        Casi siempre fue la esencia. Ya lisa espesa rápido, así que sin remolino. Aceite arriba en la olla:
        se cortó o nunca se unió; bate hasta que no se vea aceite y, si cuajaron grasas duras, caliéntala
        suave a unos 40 °C (104 °F). Si no se une: acábala como proceso caliente. Si ya está en el molde y
        al día siguiente hay aceite o agua encima: no lo uses; mézclalo todo o refúndelo, y no uses nada
        que pique.
      `,
    },
    'thin-it': {
      answer: 'No: ni aceite ni agua deshacen la traza. Remueve a mano y vierte ya.',
      why: spaced`
        Más aceite sube el sobreengrasado y ablanda la pastilla. Una cucharada de agua tibia quizá da un
        minuto; más deja pastillas blandas y ríos de glicerina. Calentar solo ayuda si la espesaron grasas
        duras frías (traza falsa).
      `,
    },
    'keep-fluid': {
      answer:
        'Bate solo hasta que no se vea aceite y sigue a mano; aceites y sosa a 30 o 38 °C (86 a 100 °F).',
      why: spaced`
        Aceites lentos, 60 % o más: oliva, girasol alto oleico, salvado de arroz,
        manteca de cerdo; ricino 5 % como mucho, pocas mantecas. Sosa al 28 o 30 %,
        que son 2,3 a 2,6 partes de agua por una de sosa. Polvos ya humedecidos y todo a mano antes de echar la sosa. Una esencia ya probada,
        al final, a mano. No tan fría que las grasas duras se enturbien.
      `,
    },
    'pot-time': {
      answer:
        'Con aceites lentos y esencia tranquila, 10 a 30 minutos desde la emulsión; con una rápida, quizá uno.',
      why: spaced`
        Cada golpe de batidora cuesta minutos, y el calor también. Primero colores, moldes y útiles listos;
        la esencia al final. Para más tiempo: sosa al 28 o 30 %, 30 a 38 °C (86 a 100 °F), aceites lentos.
      `,
    },
    'slow-oils': {
      answer:
        'Lentos: oliva, girasol alto oleico, salvado de arroz, almendras, manteca de cerdo. Rápidos: ricino sobre 5 %, palma, mantecas.',
      why: spaced`
        Una receta para remolinos, por práctica común: 50 a 60 % de aceite líquido lento, 20 a 25 % de
        coco, el resto manteca de cerdo o palma, ricino 0 a 5 %. El orujo de oliva es más rápido que otro
        de oliva. Cada aceite lleva su sosa: /plan oils:«55% oliva, 25% coco, 20% manteca de cerdo» la pesa.
      `,
    },
    'swirl-water': {
      answer:
        'Sosa al 28 o 30 % para un remolino fino (2,3 a 2,6 partes de agua por una de sosa), 33 % para uno sencillo.',
      why: spaced`
        Con menos agua espesa antes: no para remolinos. Con más agua gelifica antes y salen ríos de
        glicerina en el blanco. Nunca menos agua que sosa. /plan water:«29% lye» la pesa.
      `,
    },
    'swirl-temperature': {
      answer: 'Aceites y agua de sosa, los dos a 30 o 38 °C (86 a 100 °F) para remolinos.',
      why: spaced`
        Más caliente espesa antes; más fría cuajan las grasas duras, que es traza falsa: palma, manteca y
        cacao tienen que verse claros. Y entre los dos no más de unos 10 °C (18 °F). A 45 °C (113 °F) la
        masa sirve, solo va más rápida.
      `,
    },
    'blend-or-stir': {
      answer:
        'Golpes de 2 o 3 segundos removiendo entre uno y otro, hasta que no se vea aceite; el resto a mano.',
      why: spaced`
        A menudo 20 a 60 segundos en total. Color y esencia se remueven a mano; un segundo de batidora en
        una porción solo contra grumos, porque espesa. Sin batidora, o se rompió: bate con varillas, tarda
        20 a 60 minutos, más con mucha oliva, con descansos. Quédate al lado. Nada tras una hora: revisa el
        peso de la sosa.
      `,
    },
    'when-colour': {
      answer: 'En emulsión o traza muy ligera, ya humedecido, y antes de la esencia.',
      why: spaced`
        En cuanto no se ve aceite no hay que esperar: reparte la masa y remueve cada color a mano. Un solo
        color para todo puede ir en los aceites antes de la sosa. En traza espesa ya no se reparte bien.
      `,
    },
    'colour-or-scent': {
      answer: 'Primero el color, la esencia al final.',
      why: spaced`
        Una esencia puede espesar en segundos. Remuévela a mano, o repártela entre los vasos justo antes de
        verter. Una que sabes tranquila puede ir en los aceites desde el principio.
      `,
    },
    'colour-in-lye-water': {
      answer: 'Mejor no: humedece el color aparte, en aceite o agua, y échalo en emulsión o en los aceites.',
      why: spaced`
        La mica flota en el agua de sosa, y la sosa fuerte cambia algunos tintes para siempre. Un solo
        color para todo puede ir, humedecido, en los aceites antes de la sosa. Añil y rubia hay quien los
        echa al agua de sosa: primero una prueba pequeña. La sosa va al agua fría, despacio, sin nada
        dentro que haga espuma o calor.
      `,
    },
    'dry-in': {
      answer:
        'Mejor no: el polvo seco deja motas. Humedece cada cucharadita en una cucharada de aceite ligero.',
      why: spaced`
        La mica a menudo lo perdona; óxidos, dióxido de titanio, carbón y arcilla no. La arcilla se
        humedece en unas tres veces su volumen de agua. /dose dice en qué va cada uno.
      `,
    },
    'which-trace': {
      answer: 'Traza ligera para remolinos, media para capas, espesa para manga.',
      why: spaced`
        Ligera: como natillas claras, el hilo apenas se marca (en la olla, de gota, con separadores,
        peinado, rayas). Media: una cucharada queda encima (capas,
        remolino a cucharadas). Espesa: guarda el pico como crema de mantequilla (manga,
        tapas con relieve). Todos los colores de un vertido, igual de espesos.
      `,
    },
    'false-trace': {
      answer: 'Caliéntala: si vuelve a estar líquida era traza falsa, grasas duras cuajadas y no jabón.',
      why: spaced`
        Señas: fría, menos de unos 30 °C (86 °F), mate o granulosa, con vetas de aceite, con palma, manteca
        o mantecas. Caliéntala a unos 40 °C (104 °F) removiendo y bate hasta que siga espesa. Vertida así
        puede cortarse, con bolsas de aceite y sosa.
      `,
    },
    'layers-how': {
      answer:
        'Traza media, y la siguiente cuando una cucharada queda encima sin hundirse: a menudo 5 a 20 minutos.',
      why: spaced`
        Molde a nivel, golpeado para sacar el aire. Vierte bajo, sobre el dorso de una cuchara o una
        espátula. Muy pronto se mezclan; muy tarde se separan: entonces raya la superficie con un tenedor.
        La masa que espera, en emulsión y sin batir.
      `,
    },
    'mica-line': {
      answer: 'Un velo fino de mica, tamizado sobre una capa firme, y la siguiente vertida desde muy bajo.',
      why: spaced`
        Una línea gruesa parte la pastilla: el jabón debe verse debajo. Deja un pelo libre en el borde.
        Vierte sobre una espátula para que no se lave. Corta la barra de lado, para que el hilo vaya a lo
        largo de la línea y no arrastre el polvo por la cara.
      `,
    },
    'drop-swirl': {
      answer:
        'Base en traza ligera a media en molde alto, y colores líquidos en líneas desde distintas alturas.',
      why: 'Desde alto se hunden, desde bajo quedan arriba. Dos o tres colores, cada uno en jarra con pico. Sin remover, o una pasada de percha al final.',
    },
    'pot-swirl': {
      answer:
        'Traza ligera; vierte los colores en la olla en tres o cuatro sitios, una o dos vueltas, y al molde.',
      why: spaced`
        Como crema líquida. Dos o tres colores además de la base, con contraste. No más de una o dos
        vueltas lentas, y vierte a lo largo de una línea: más remover da barro.
      `,
    },
    'hanger-swirl': {
      answer: 'Traza ligera, y una a tres pasadas con la percha: más da barro.',
      why: spaced`
        Primero capas o gotas de dos a cuatro colores, justo tan espesos que no se hundan. Baja por un lado
        hasta el fondo, cruza, sube y vuelve en lazos, y sal por donde entraste. Pon blanco o masa sin
        color entre colores que juntos dan marrón, como azul y naranja.
      `,
    },
    'spoon-swirl': {
      answer:
        'Cucharadas en traza ligera a media, alternando colores, y luego una cuchara o un palito por en medio.',
      why: 'Tan espesas que queden una junto a otra. Un ocho o unos pocos lazos, y para. Golpea el molde al final.',
    },
    'comb-swirl': {
      answer:
        'Líneas finas en traza ligera, una junto a otra; peine a lo ancho, de vuelta por en medio, y curvas.',
      why: spaced`
        Los botes con boquilla dan líneas parejas; el molde plano da sitio. Primero el peine en un sentido,
        luego en el otro entre sus líneas, y después curvas para las plumas. Masa lenta y sin esencia
        rápida, porque lleva tiempo.
      `,
    },
    'divider-swirl': {
      answer:
        'Cada color en traza ligera entre sus separadores, todos a la misma altura; sácalos rectos y dibuja.',
      why: spaced`
        Vierte todos poco a poco para que los separadores no se inclinen. Luego líneas con un palito:
        primero a lo ancho, después a lo largo, y quizá curvas. Que estén igual de espesos importa más que
        muy líquidos.
      `,
    },
    'how-many-colours': {
      answer: 'Con dos o tres y la base basta; cuatro como mucho para un primer remolino.',
      why: spaced`
        Cada uno quiere su jarra, ya humedecido, y al menos media taza (120 ml) de masa. Deja de un tercio
        a la mitad como base, con contraste. /plan reparte el lote y dosifica cada uno.
      `,
    },
    'gel-and-colour': {
      answer:
        'El gel hace casi todos los colores más intensos y algo translúcidos; sin gel quedan pálidos y lechosos.',
      why: spaced`
        Para que gelifique: tapado y envuelto, caliente, mirando si se agrieta. Para que no: masa fresca,
        moldes chicos, un sitio frío (nevera con comida no). A medias deja un anillo más oscuro. Los
        blancos quedan más blancos sin gel, y con menos agua hay menos ríos. /plan calcula si el tuyo
        gelifica.
      `,
    },
    'mix-colourants': {
      answer: 'Sí: óxidos, ultramares, arcillas y micas se mezclan, juntos no más que la dosis llena de uno.',
      why: spaced`
        Humedece cada uno a su modo: arcilla en agua, mica en aceite. Los tonos opuestos (rojo y verde,
        azul y naranja, amarillo y violeta) dan gris pardo. /preview mix:«1/4 tsp ultramarine + 1/4 tsp
        yellow oxide» enseña qué sale.
      `,
    },
    'premix-keeps': {
      answer:
        'Humedecido en aceite: semanas, cerrado y a oscuras, mientras el aceite esté fresco. En agua: el mismo día.',
      why: spaced`
        Ponle el día y cuánto polvo lleva la cucharada, y remueve antes de usar. Huele a viejo: fuera. El
        aceite guardado así cuenta entre los aceites del lote.
      `,
    },
    'carrier-counts': {
      answer: 'Sácalo de los aceites o del agua de la receta: así no cambia nada.',
      why: spaced`
        Una cucharada de aceite de más (14 g) en 1 kg de aceites lleva un sobreengrasado de 5 % a 6,3. El
        agua de más solo lo deja blando más tiempo. /dose dice qué hace en tu porción.
      `,
    },
    'spoon-or-grams': {
      answer: 'Gramos desde un gramo; por debajo, cucharadita rasa, nunca colmada.',
      why: spaced`
        Una cucharadita rasa pesa según el polvo: mica 1 a 2 g, carbón 1,5, ultramar y óxidos 2 a 4,
        dióxido de titanio unos 3. Pesa una vez la de tu bote. /dose da las dos cosas.
      `,
    },
    'of-oils-or-soap': {
      answer: 'De los aceites, en casi todas las recetas y grupos: agua y sosa no se cuentan.',
      why: spaced`
        1 kg de aceites da cerca de 1,4 kg de masa, así que una dosis por aceites es 1,4 veces más fuerte
        que la misma por masa. Dime cuál: «500 g de aceites» o «500 g de masa».
      `,
    },
    'first-colours': {
      answer:
        'Cinco hacen mucho: dióxido de titanio, carbón activado, azul ultramar, óxido rojo y óxido amarillo.',
      why: spaced`
        Todos aguantan sosa y luz. Azul y amarillo dan un verde tranquilo, rojo y carbón un marrón, y el
        blanco hace pastel cualquiera. Luego una mica cuya etiqueta solo nombre colores minerales. Empieza
        con un color en una receta sencilla, humedecido en un poco de aceite. /palette buy dice qué trae
        más junto a lo que tienes.
      `,
    },
    'mica-or-oxide': {
      answer:
        'La mica se mezcla fácil y es más viva; los óxidos son mates, fuertes y seguros, pero hay que deshacerlos.',
      why: spaced`
        Para empezar: mica cuya etiqueta solo nombre colores minerales (CI 77…), porque los tintes sobre
        mica pueden cambiar o correrse. Para un color que no debe cambiar: óxido o ultramar. Las arcillas
        dan tonos tierra y se humedecen en agua. /colourant check lee la lista de tu bote.
      `,
    },
    'whiter-soap': {
      answer:
        'Aceites pálidos, esencia sin vainilla, 1 a 1 1/2 cdta de dióxido de titanio por 500 g de aceites, y sin gel.',
      why: spaced`
        El crema viene de la oliva, las mantecas sin refinar, la leche y el calor. Deshaz bien el dióxido y
        no pongas más: de sobra agrieta, desmigaja y marca ríos. /dose colourant:«titanium dioxide»
        portion:«500 g oils».
      `,
    },
    'bright-colours': {
      answer: 'Aceites pálidos, sin dióxido de titanio en esa parte, la dosis llena, y que gelifique.',
      why: spaced`
        El blanco y el amarillo de los aceites apagan cualquier color; el gel lo aviva. Los óxidos son
        tranquilos: rojos, violetas y verdes vivos salen de micas y lacas, cuya etiqueta hay que comprobar
        para sosa. /match target:«verde vivo» enseña cuánto se acercan tus botes.
      `,
    },
    'pastel-colours': {
      answer:
        'Cerca de un cuarto de la dosis llena, con media cucharadita de dióxido de titanio por 500 g de aceites.',
      why: 'Sin blanco queda translúcido más que pastel. En /dose es strength:pastel.',
    },
    'colour-in-cure': {
      answer: 'Júzgalo a las cuatro semanas: cruda se ve más oscura y amarilla, y casi todo aclara al secar.',
      why: spaced`
        En los dos primeros días un color puede verse mal y volver; lo que a la semana es marrón o gris,
        así queda. La vainilla sigue oscureciendo semanas. Las plantas siguen perdiendo con la luz.
      `,
    },
    'colours-that-stay': {
      answer: 'Óxidos de hierro, ultramares, verde de cromo, carbón y micas minerales no se destiñen.',
      why: spaced`
        Los colores de plantas, la espirulina y muchos neones se van en semanas o meses, en la ventana
        antes. Cura y guarda las pastillas lejos del sol. Dime el color y te digo cómo aguanta.
      `,
    },
    'colours-that-bleed': {
      answer:
        'Óxidos, ultramares, carbón, arcillas y micas minerales no se corren; tintes, lacas y muchos neones sí.',
      why: spaced`
        Mira si la etiqueta trae números de tinte (como CI 16035, 19140, 42090): pueden correrse al blanco
        y teñir la espuma. La masa caliente y húmeda los mueve más. /colourant check lee la lista.
      `,
    },
    'natural-colours': {
      answer:
        'Aguantan: carbón, arcillas, cacao (marrón), rubia (rosa), añil (azul), achiote (amarillo a naranja, palidece despacio).',
      why: spaced`
        Cúrcuma, pimentón, espirulina y hojas verdes empiezan bien y se van. Remolacha, jamaica, frutos
        rojos y col morada se vuelven marrones o grises en la sosa. Nombra uno y te digo qué será de él y
        cuánto va.
      `,
    },
    'test-colour': {
      answer:
        'Una pizca en una cucharada de masa, en un vasito abrigado; mírala a los dos días y a las cuatro semanas.',
      why: spaced`
        Al final de un lote no cuesta nada. Apunta en el vaso cuánto y de qué. La mitad a la luz y la mitad
        a oscuras dice si se va. /calibrate aprende tus botes de esas pastillas.
      `,
    },
    'store-colours': {
      answer:
        'Cerrados, secos, a oscuras y con etiqueta: minerales y micas duran muchos años, plantas cerca de uno.',
      why: 'Grumos por humedad: machaca y tamiza, siguen buenos. Mal olor o moho en un polvo de planta: fuera. Guarda la etiqueta con sus números CI.',
    },
    'no-lumps': {
      answer:
        'Aplasta 1 cdta de polvo en 1 cda de aceite ligero hasta que nada quede seco, 10 minutos, remueve y cuela.',
      why: spaced`
        Con un batidorcito o el dorso de la cuchara; la glicerina también vale, y el agua para arcillas y
        para el dióxido que se vende para agua. Grumos ya en la masa: uno o dos segundos de batidora en esa
        porción, o pásala por un colador.
      `,
    },
    'mica-floats': {
      answer: 'Es normal: remueve hasta que toda esté mojada y brille, y otra vez justo antes de echarla.',
      why: spaced`
        Se posa y flota porque son escamas, no se disuelve. Una gota más de aceite, un batidorcito, diez
        minutos. Si quedan vetas en la masa: remueve más a mano esa porción.
      `,
    },
    'powder-thickens': {
      answer:
        'Un poco: la arcilla bebe agua, el dióxido de titanio menos. Humedécelos antes y no pases de la dosis.',
      why: spaced`
        La arcilla en unas tres veces su volumen de agua, quitada de la de la sosa. Mucho polvo endurece el
        remolino y deja pastillas secas que se desmigan.
      `,
    },
    'egg-smell': {
      answer: 'Un poco de olor a azufre del ultramar es normal en la masa caliente y se va con la cura.',
      why: spaced`
        Se hace fuerte si toca un ácido: nada de vinagre, ácido cítrico ni zumos ácidos en ese lote. Si es
        fuerte: ventana abierta y fuera del cuarto hasta que se vaya.
      `,
    },
    'children-colours': {
      answer:
        'Óxidos de hierro, ultramares, dióxido de titanio, arcillas y micas sencillas, de grado cosmético y poca dosis.',
      why: spaced`
        El jabón se enjuaga; labios y ojos tienen listas propias: /colourant check item:«…» con tu región
        dice dónde está un color. Los pequeños no necesitan ninguno. Lo que vendes o regalas a muchos pide
        una evaluación de seguridad según tu ley.
      `,
    },
    'buy-where': {
      answer:
        'No conozco tiendas. Compra lo que diga grado cosmético y nombre sus ingredientes o números CI.',
      why: spaced`
        Nada de pigmentos de resina, uñas, velas, manualidades o construcción: allí nadie cuenta metales ni
        tintes. /palette buy dice qué colores traen más; la lista de la etiqueta va en /colourant check.
      `,
    },
    ...techniqueBeside,
    ...techniqueBench,
  },
  named: { ...techniqueNamed, ...techniqueOutright, ...techniqueAsked },
  given: colourGiven,
  matters: techniqueMatters,
};
