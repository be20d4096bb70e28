import { spaced } from '../../../engine/over-lines.ts';
import type { techniqueBeside as english } from '../../en/colour/technique-beside.ts';

/** Lo que se dice a lo que rodea al color del jabón: primero qué hacer, luego por qué. */
export const techniqueBeside: typeof english = {
  'vanilla-brown': {
    answer:
      'La vainillina oscurece el jabón durante semanas y ningún blanco lo para: sin esencia lo que deba quedar claro.',
    why: spaced`
      Con 1 % de vainillina en la esencia acaba beige, con 5 % marrón, con 10 % o más marrón oscuro; su
      ficha dice cuánta lleva. El dióxido de titanio solo lo aclara. No es un fallo ni hace daño, pero no
      se quita. Cuenta con ello: la esencia en una parte que pueda ser marrón o negra, nada en blancos y
      pasteles; o una esencia sin vainillina.
    `,
  },
  'ash-avoid': {
    answer:
      'La ceniza de sosa no hace daño: vapor o un paño húmedo la quitan. Para evitarla: tapa el molde, menos agua, gel.',
    why: spaced`
      La capa fina, seca y blanca de encima es carbonato de sosa y aire, no tu pigmento blanco. Tapa el
      molde sin que entre aire el primer día, sosa a cerca del 33 %, vertido en traza ligera bien hecha y
      no frío. Hay quien rocía alcohol isopropílico (91 % o más) sobre lo recién vertido: nunca cerca de
      una llama, ventana abierta. Granos duros, cristales mojados o que pica no es ceniza: guantes, y no lo
      uses.
    `,
  },
  piping: {
    answer:
      'Con manga en traza espesa: el pico queda firme, como crema de mantequilla. Colorea en líquido y espera.',
    why: spaced`
      Aparta un tercio de la masa, echa el color en traza ligera y déjala 10 a 40 minutos, removiendo de
      vez en cuando. Se escurre: demasiado pronto. Dura en la manga: tarde, así que llena media cada vez.
      Lo de debajo tiene que estar firme. La manga puede reventar con masa cruda.
    `,
  },
  'rebatch-colour': {
    answer:
      'Sí: rállalo, fúndelo suave con un poco de agua y echa color humedecido. El color viejo se queda dentro.',
    why: spaced`
      Así que ve a más oscuro: marrón, negro,
      verde o azul hondo; varios colores dan marrón. 1 a 2 cda de agua por 500 g de jabón, tapado,
      en olla lenta o baño maría de 70 a 80 °C (158 a 176 °F), al final el color en aceite,
      y apretado en el molde: rústico, sin remolinos. El jabón joven quema: guantes. Lo que pica,
      suda o tiene bolas blancas duras no es cosa de color: antes /diagnose.
    `,
  },
  'colour-in-mould': {
    answer:
      'Ya no de manera pareja. Mientras esté blando: gotas de mica en aceite por encima, tiradas con un palito.',
    why: spaced`
      1 cdta de mica en 2 o 3 cdta de aceite ligero, unas gotas, una o dos pasadas cerca de la superficie;
      más hondo deja manchas y aire. Vertido hace un minuto y aún líquido: de vuelta a la jarra y el color
      humedecido a mano. Ya firme: déjalo, y espolvorea o pinta la tapa. Sin color queda crema.
    `,
  },
  'cover-mould': {
    answer:
      'Tapado las primeras 24 horas: menos ceniza y colores más vivos. Con leche, miel o azúcar: abierto y fresco.',
    why: spaced`
      Una tapa o un cartón, y una toalla alrededor si el sitio es frío y quieres gel. Para blanco y
      pasteles, sin toalla. Toca el lado al cabo de una hora: caliente y con grieta arriba, se destapa.
      Horno solo templado a 60 °C (140 °F) como mucho y apagado; nada de nevera con comida.
    `,
  },
  'mould-care': {
    answer:
      'Moldes: deja secar un día lo que queda, despégalo y luego agua caliente con lavavajillas, con guantes.',
    why: spaced`
      La masa cruda quema: espera a que sea jabón. Si la silicona guarda algo de color o de olor no pasa
      nada: una hora en agua caliente con jabón quita casi todo. La madera no va al lavavajillas, y nada de
      cepillo metálico. Forrar sin arrugas: papel (de congelar o de horno) cortado a la medida de dentro,
      esquinas marcadas con una regla, dos tiras cruzadas, sujetas con un poco de aceite o cinta por fuera.
      La silicona no lo necesita.
    `,
  },
  'pour-order': {
    answer:
      'Lo que espesa antes va antes: la jarra con esencia y las que llevan dióxido de titanio o arcilla.',
    why: spaced`
      En capas, de abajo arriba: lo más oscuro al fondo y al final lo que quieres encima. En la olla y en
      gotas: primero la base, luego los colores finos, y el más fuerte al final y poco. Remueve a mano las
      otras jarras cada uno o dos minutos mientras tiñes.
    `,
  },
  'scent-amount': {
    answer:
      'Fragancia: alrededor del 3 % de los aceites, 30 g por kilo (media onza por libra), y nunca más que el límite de su ficha.',
    why: spaced`
      La ficha (IFRA, jabón que se aclara) dice el máximo de ese aroma, y puede ser mucho menos del 3 %:
      canela y clavo 0,5 % o menos. Se pesa, sin cucharas. Va lo último y a mano. Nada para bebés. El color
      se calcula aparte: dime cuál y para cuánto.
    `,
  },
  'scent-lasts': {
    answer:
      'Para que dure el olor: un 3 % de los aceites dentro de su límite, vertido fresco, curado con aire y a oscuras, y luego cerrado.',
    why: spaced`
      Los cítricos se van en semanas; maderas, resinas, pachuli y casi todas las fragancias se quedan. Sin
      gel y a 30 a 35 °C (86 a 95 °F) se pierden menos los ligeros. Que la arcilla o el almidón lo fijen no
      lo he visto probado. Más de lo que permite la ficha no es camino: irrita la piel.
    `,
  },
  'scent-mix': {
    answer: 'Sí: mezcla los aromas en un vaso y échalos al final; juntos no más de un 3 % de los aceites.',
    why: spaced`
      Y cada uno dentro del límite de su ficha. Si uno acelera, acelera todo; si uno lleva vainillina, todo
      se oscurece. Huele antes una gota de cada uno en papel y deja reposar la mezcla un día.
    `,
  },
  'cure-time': {
    answer: 'Cuatro a seis semanas, con color o sin él; casi todo oliva, mejor tras unos meses.',
    why: spaced`
      En rejilla con aire, dado la vuelta cada semana, lejos del sol, que destiñe las plantas. El color no
      lo alarga ni lo acorta; casi todos aclaran un poco al secar. Guantes las primeras 48 horas; sobre la
      piel desde las cuatro semanas. /batch poured te avisa.
    `,
  },
  'what-is-trace': {
    answer:
      'Traza: un hilo de masa se queda un momento encima. La emulsión es justo antes: sin vetas de aceite, como leche.',
    why: spaced`
      Con la batidora apagada, levántala y deja gotear. Emulsión: un solo color, sin brillo de aceite, y
      sigue así al reposar; aquí entran los colores. Ligera: natillas claras, el hilo apenas se marca.
      Media: queda encima, como un flan. Espesa: el pico se sostiene. Espesa pero fría, mate y con vetas de
      aceite es traza falsa.
    `,
  },
  'too-much-colour': {
    answer:
      'Lo normal es 1 cdta por 500 g de aceites, 2 lo más. De ahí en adelante: espuma de color, paños manchados, se desmiga.',
    why: spaced`
      Menos de los fuertes: ultramar y óxidos 1/2 a 1 cdta, carbón 1 a 1 1/2, añil 1/4 a 1/2. Aún en la
      olla: mezcla masa sin color, o repártela como parte oscura de varios lotes. Ya hecho: buen jabón si
      la sosa se pesó bien; pruébalo en un trapo viejo, o rállalo en jabón sin color. Dime cuál y cuánto:
      «2 cda de mica es mucho para 500 g de aceites».
    `,
  },
  'powder-dust': {
    answer:
      'Papel húmedo encima, recogido hacia dentro, y luego agua jabonosa. Sin soplar, barrer ni cepillar.',
    why: spaced`
      Guantes, mascarilla (FFP2 o N95), ventana cerrada hasta que se pose, sin ventilador. La próxima vez:
      con cuchara, despacio, a ras del vaso y debajo de su aceite, con un paño húmedo debajo. La aspiradora
      echa el polvo fino por detrás, si no tiene filtro fino.
    `,
  },
  'lye-nerves': {
    answer: 'Respeto sí, miedo no hace falta: gafas, guantes, y la sosa despacio sobre agua fría.',
    why: spaced`
      Nunca agua sobre sosa. Antes, todo pesado y a mano, manga larga, zapato cerrado, ventana abierta,
      sin niños ni mascotas,
      una hora sin que nadie llame. Se calienta sola a unos 80 a 90 °C (176 a 194 °F) y echa vapor: aparta la cara,
      déjala hasta 35 °C (95 °F). Una salpicadura: agua corriente en seguida,
      al menos 20 minutos. Empieza con una receta sencilla de 500 g de aceites y un color: /plan la pesa.
    `,
  },
  'stained-things': {
    answer:
      'Primero quita la grasa con papel, luego jabón y agua caliente. Silicona y plástico guardan algo de color.',
    why: spaced`
      Guantes mientras la masa esté cruda. Carbón, óxidos y mica quedan encima y salen con lavavajillas;
      cúrcuma, tintes y lacas tiñen plástico, madera y tela. Manos: aceite y luego jabón. Piedra y juntas:
      cuanto antes. Ni lejía ni ácido donde aún haya sosa. Una espátula y una jarra para los oscuros. Una
      pastilla que mancha: menos color, 1 cdta por 500 g de aceites.
    `,
  },
  'swirl-tools': {
    answer:
      'Un pincho, un palillo, el mango de una cuchara o una percha forrada de plástico: lo que sea fino y limpio.',
    why: spaced`
      Nunca alambre de aluminio, zinc o estañado: la sosa se lo come. Acero inoxidable, bambú, silicona y
      plástico PP van bien; la madera, desde entonces solo para jabón. Lo fino dibuja líneas finas, la
      cuchara anchas. Un peine: pinchos clavados en una tira de plástico firme.
    `,
  },
  'easiest-swirl': {
    answer:
      'El más fácil: en la olla, un color y blanco. Luego de gota y a cucharadas; percha; separadores y peine al final.',
    why: spaced`
      En la olla no pide útiles y perdona espesa y líquida. La percha pide dos o tres capas en traza ligera
      y una a tres pasadas. Separadores (taiwan) y pavo real piden masa pareja y líquida mucho rato: antes,
      una receta lenta. Dos colores con contraste se ven más que cinco.
    `,
  },
  'split-batter': {
    answer:
      'Por peso y en emulsión: la mitad de base y el resto a partes iguales, cada una en su jarra con el color listo.',
    why: spaced`
      La masa es unas 1,4 veces los aceites. 1200 g en tres colores: 600, 300 y 300, o 400 cada uno. Se
      separa antes porque así todas quedan igual de líquidas y basta remover a mano; si coloreas la olla
      grande, espesa y no queda base. Un acento pide 10 a 15 %. /plan portions:«1/2 plain; 1/4 red oxide;
      1/4 charcoal» reparte y dosifica.
    `,
  },
  botanicals: {
    answer: 'Casi todos los pétalos, flores y hojas se ponen marrones; solo la caléndula guarda su amarillo.',
    why: spaced`
      Dentro se oscurecen en días y dejan cercos. Encima, secos, apretados en traza espesa o al día
      siguiente; algo oscurecen igual. Café molido, avena y semillas quedan como son y raspan: finos, y
      como mucho 1 cdta por 500 g de aceites. Nada fresco: se pone marrón y se pudre.
    `,
  },
  'milk-colour': {
    answer:
      'La leche se pone beige o naranja con el calor: congelada, la sosa a cucharadas, todo fresco y sin gel.',
    why: spaced`
      Su azúcar se tuesta con la sosa, la de cualquier leche. No pases de 30 °C (86 °F) con la sosa y no
      tapes el molde. Así queda crema: el blanco es marfil, con 1 cdta de dióxido de titanio por 500 g de
      aceites; azules y lilas se agrisan, así que un poco más, o tonos cálidos. O leche en polvo en la
      traza, 1 cda por 500 g de aceites.
    `,
  },
  'honey-sugar': {
    answer:
      'Miel, azúcar, cerveza y vino lo ponen de beige a marrón y lo calientan: como mucho 1 a 2 cdta por 500 g de aceites.',
    why: spaced`
      Disuelta en un poco del agua de la receta, en traza ligera, nunca en sosa caliente. Vertido fresco,
      sin toalla, y mirando si se agrieta. Cerveza y vino hervidos sin gas y helados, o suben. Del vino
      tinto no queda violeta. Le van los tonos cálidos, no los pasteles ni el azul.
    `,
  },
  'yellow-base': {
    answer:
      'Aceites más claros, o 1/2 a 1 cdta de dióxido de titanio por 500 g de aceites en esa parte antes del color.',
    why: spaced`
      El amarillo y el verde del aceite de oliva,
      usado o sin refinar se suman a todo: el azul sale verdoso, el lila gris,
      el rosa salmón. Los más claros: coco refinado, manteca de cerdo, oliva suave,
      girasol alto oleico. Una pizca de violeta quita el amarillo del blanco. Sobre aceite oscuro o usado: carbón,
      cacao, ladrillo, verde hondo, nada de pasteles.
    `,
  },
  'unlabelled-powder': {
    answer: 'Déjalo fuera del jabón: sin lista de lo que lleva nadie sabe qué hace en la piel ni en la sosa.',
    why: spaced`
      Una prueba en un vaso enseña si el color aguanta, no si es seguro: puede ser de manualidades, resina
      o pared con metales pesados, o azulete. Pide al vendedor ingredientes y números CI; con la lista,
      /colourant check la lee. Ni probarlo ni olerlo.
    `,
  },
  'cosmetic-grade': {
    answer:
      'No: cosmético, apto para piel o labios habla de la piel, no de la sosa. Muchos así cambian en crudo.',
    why: spaced`
      Lo que sirve es «estable en proceso en frío» y la lista: los CI 77… son minerales y casi todos
      aguantan, pero no CI 77510 (azul de hierro) ni CI 77742 (violeta de manganeso). Grado alimentario
      tampoco dice nada. Una pizca en una cucharada de masa y mírala a los dos días. /colourant check lee
      la lista para las dos cosas.
    `,
  },
  'shine-sparkle': {
    answer: 'La mica brilla solo donde le da la luz: espolvoréala o píntala encima. Dentro queda mate.',
    why: spaced`
      El jabón en frío es opaco: el dorado da mostaza y el perlado blanco. Encima: seca con colador, o 1
      cdta en 2 o 3 cdta de aceite ligero. El gel lo hace algo translúcido y más vivo; la cara cortada se
      puede pasar por vapor o frotar con un paño suave. Brillantina de manualidades no.
    `,
  },
  'dust-on-top': {
    answer:
      'Sí: un velo fino con colador sobre la tapa fresca, o 1 cdta de mica en 2 o 3 cdta de aceite ligero, a gotas.',
    why: spaced`
      La mica seca queda suelta: se va a las manos y con el primer lavado. Se pega mejor cuando la tapa aún
      está pegajosa. Con aceite, unas gotas por pastilla: de más tarda días. En jabón curado: con pincel y
      un poco de alcohol, lejos de llamas. El dorado solo sigue dorado aquí.
    `,
  },
  'mica-settles': {
    answer: 'Es normal: el polvo se hunde en el aceite. Remueve hasta el fondo justo antes de echarla.',
    why: spaced`
      No se disuelve, y no se pierde nada. Si hay barro espeso: unas gotas de aceite y un batidorcito.
      Humedécela pronto, que se empape, y tápala. La glicerina la sostiene más rato, el agua menos.
    `,
  },
  'clays-colour': {
    answer:
      'Sí, tonos tierra suaves que se quedan: 1 cdta por 500 g de aceites, hasta 3 a pleno color, en tres veces su volumen de agua.',
    why: spaced`
      Rosa: de rosa viejo a ladrillo. Roja: terracota. Amarilla: ocre. Verde: gris verdoso, caqui con
      aceite amarillo. Morada: malva grisáceo. Caolín: blanco roto; bentonita: beige gris, y es la que más
      espesa. Barro del río no: nadie sabe qué lleva.
    `,
  },
  'steep-in-oil': {
    answer:
      'Sí, para achiote, alcaneta, pimentón o cúrcuma: 1 a 2 cda en 250 ml (1 taza) de aceite ligero, colado, sin granos.',
    why: spaced`
      En caliente, al baño maría de 50 a 60 °C (122 a 140 °F), dos horas; en frío y a oscuras, cuatro a
      seis semanas. Cuélalo con tela o filtro de café. Sustituye una parte de los aceites de la receta, del
      5 al 25 % según lo hondo que quieras, y cuenta entre ellos. Achiote: amarillo a naranja. Alcaneta:
      lila a gris azulado. Pimentón: durazno. En polvo da más, pero deja motas y raspa. Los verdes de hojas
      se van igual.
    `,
  },
  'coloured-suds': {
    answer:
      'La espuma debe salir casi blanca: mucho color o un tinte la tiñe. Feo, rara vez malo; la mitad la próxima.',
    why: spaced`
      Por encima de 1 cdta por 500 g de aceites (carbón y óxidos 1, ultramar y añil 1/2) se ve en la espuma
      y en la tela. Tintes, lacas y muchos neones la tiñen siempre. Prueba la pastilla en un trapo viejo
      antes de regalarla. Puede bajar en la cura. Si pica no es cosa de color: para, y /first-aid.
    `,
  },
  'hot-soap': {
    answer:
      'Sí: el agua de sosa llega a 80 a 90 °C (176 a 194 °F), y el jabón en el molde a 60 a 80 °C (140 a 176 °F).',
    why: spaced`
      Es el gel: templado desde una hora después, más oscuro en el centro, frío al otro día. Con leche,
      miel, azúcar, algunas esencias o una barra grande y tapada sube más. Grieta arriba,
      bulto o burbujas: destápalo, aire, una bandeja debajo, la cara lejos,
      guantes. El anillo en la pastilla cortada es solo gel a medias.
    `,
  },
  'scent-speeds': {
    answer:
      'Corren las florales y de especias: rosa, jazmín, lila, clavo, canela. Lavanda y casi todos los cítricos son tranquilos.',
    why: spaced`
      La próxima: 30 °C (86 °F), sosa al 28 o 30 %, aceites lentos, primero los colores, la esencia al
      final y a mano, o solo en la parte sin color. Pruébala: unas gotas en una cucharada de masa, o en 100
      g. Ayuda lo que diga el vendedor de aceleración. Clavo y canela irritan la piel: solo lo que diga su
      certificado.
    `,
  },
  'changed-in-pot': {
    answer:
      'Viértelo: algunos cambian en la masa cruda y vuelven en días. Marrón o gris después de una semana, así queda.',
    why: spaced`
      No eches más ahora, no se puede juzgar. Un rosa que va a naranja o un ultramar apagado suelen volver
      cuando se gasta la sosa; azul de hierro, violeta de manganeso, carmín y colorantes de comida no. Mira
      su lista para la próxima: /colourant check. El jabón en sí es bueno.
    `,
  },
  'label-selling': {
    answer:
      'Cada color por su nombre INCI o su número CI: la mica es «Mica, CI 77891, CI 77491», como diga su ficha.',
    why: spaced`
      UE y Reino Unido: los colorantes pueden ir al final en cualquier orden, por número CI (Reglamento
      1223/2009, artículo 19). Dióxido de titanio CI 77891, óxidos de hierro CI 77491, 77492, 77499,
      ultramar CI 77007, óxido de cromo CI 77288, carbón «Charcoal Powder». «Puede contener» es para gamas
      de maquillaje. Lo que vendes pide allí su evaluación de seguridad. No soy abogado: pregunta a tu
      autoridad.
    `,
  },
  'blend-two': {
    answer:
      'Azul y amarillo: verde apagado. Rojo y blanco: rosa. Rojo y azul: ciruela. Negro y blanco: gris. Rojo y amarillo: naranja.',
    why: spaced`
      Los tonos opuestos (rojo y verde, azul y naranja, amarillo y violeta) dan marrón o gris. Los óxidos
      son terrosos, y lo que hacen también. Nombra los dos polvos y lo enseño: /preview mix:«1/4 tsp
      ultramarine + 1/4 tsp yellow oxide».
    `,
  },
  'colour-families': {
    answer:
      'Marrón: cacao, café. Amarillo a naranja: achiote, cúrcuma, pimentón. Rosa: rubia, arcilla rosa. Azul: añil.',
    why: spaced`
      Violeta: alcaneta, más gris que violeta. Verde: hojas y espirulina, que van a caqui; la arcilla verde
      se queda. Remolacha, jamaica, frutos rojos, maíz morado, guisante azul y col morada se vuelven
      marrones o grises en la sosa. Nombra uno y te digo qué será de él.
    `,
  },
  'darker-lighter': {
    answer:
      'Más oscuro: más de lo mismo, hasta el doble. Más claro: la mitad de color, o un poco de dióxido de titanio.',
    why: spaced`
      En la olla: de cuarto en cuarto de cucharadita, humedecido, a mano. La masa cruda se ve más oscura y
      amarilla que la pastilla. El blanco lo hace lechoso además de claro; la masa sin color lo baja sin
      eso. El negro agrisa: una pizca como mucho. El gel lo hace más hondo, y sin blanco en esa parte. El
      jabón hecho ya no se cambia. Dime color y cantidad: «ultramar, 500 g de aceites, la mitad».
    `,
  },
  'small-batch': {
    answer:
      'Con balanza de 1 g, 500 g de aceites al menos; con 0,1 g, hasta unos 100 g. Un color: una cucharada de masa.',
    why: spaced`
      Medio gramo de sosa es el 3,5 % de la sosa de 100 g de aceites, y eso es casi todo un sobreengrasado
      del 5 % (aritmética). Así que reparte un lote normal en vasitos y colorea cada uno con una pizca:
      1/32 cdta en 2 cda. Una jarra estrecha y alta deja llegar a la batidora; con menos de 200 g, a mano.
      Los vasitos abrigados, para que gelifiquen como la barra.
    `,
  },
};
