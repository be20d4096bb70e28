import { spaced } from '../../../engine/over-lines.ts';
import type { lyeCare as english } from '../../en/lye/lye-care.ts';

/** What is said of lye dosed by guess, of what goes on in the jug, and of who stands near and what they do. */
export const lyeCare: typeof english = {
  'lye-guessed': {
    answer: 'A ojo, no: agua de sosa de fuerza desconocida no entra en ningún jabón.',
    why: spaced`
      Si la jarra y el agua se pesaron antes: pesa ahora la jarra con todo; menos la jarra, menos el agua,
      el resto es sosa, si no hirvió ni estuvo abierta. Si echaste la mitad: pesa lo que queda en la jarra,
      y la jarra vacía; lo que falta es lo que entró. Si no sabes ninguno: gafas y guantes, deja que se
      enfríe, botella de HDPE con etiqueta, residuo cáustico según tus normas locales. Empieza de nuevo con
      pila nueva; primero la jarra en la báscula, tara, y luego la sosa.
    `,
  },
  'fluid-ounces': {
    answer:
      'La sosa va en onzas de peso, 28,35 g cada una, con báscula. Nunca onzas líquidas ni vaso medidor.',
    why: spaced`
      La onza líquida es un espacio: llena de perlas lleva más sosa que una onza de peso, llena de escamas
      menos. Si ya la mediste así, la cantidad es desconocida: no lo uses, guantes y gafas; pesa lo que
      queda en el bote contra lo que tenía, o empieza otra vez pesando en gramos.
    `,
  },
  'too-much-in': {
    answer:
      'No lo uses ni lo toques sin guantes: la sosa de más se queda en la pastilla y quema. Calcula cuánta es.',
    why: spaced`
      Gafas y guantes. Pregúntame con lo que entró de verdad, como «puse 180 g de sosa en 1000 g de oliva»:
      te digo el sobreengrasado. Por debajo de 0 %: solo si cada peso es seguro, se mezclan ya en la masa
      los aceites que faltan, pesados y templados, o se rehace con ellos la barra cuajada. Si no es seguro:
      bote de plástico cerrado y con etiqueta, residuo cáustico según tus normas locales. Esperar, el papel
      de pH o probarlo no lo hacen seguro.
    `,
  },
  'too-little-in': {
    answer: 'Con sosa de menos no quema: sobra aceite, queda blando y graso y se enrancia. No añadas a ojo.',
    why: spaced`
      Pregúntame con lo que entró,
      como «puse 100 g de sosa en 1000 g de oliva»: hasta 10 % de sobreengrasado es un jabón suave,
      20 % solo si es todo coco. Si falta mucha: pesa la que falta,
      disuélvela en al menos su peso de agua fría, deja que se enfríe,
      y mézclala mientras la masa siga líquida, con gafas y guantes. Nunca seca,
      nunca mañana. Hasta saber qué peso es el bueno, trátalo como cáustico.
    `,
  },
  'extra-lye': {
    answer: 'No: ni un gramo más. La sosa que el aceite no gasta se queda en la pastilla y quema.',
    why: spaced`
      No limpia más ni endurece más. En 500 g de oliva, 5 g más que la línea del 5 % la bajan a un −2 % más
      o menos. Redondea hacia abajo, nunca hacia arriba: 64,4 g son 64 g. El 5 % de sobreengrasado es la
      reserva normal; 0 % es el suelo, solo para ropa, nunca menos. De lo que pesaste pregunta «puse 70 g
      de sosa en 500 g de oliva».
    `,
  },
  'rest-later': {
    answer: 'No: toda la sosa entra de una vez. El resto, mañana, ya no se mezcla.',
    why: spaced`
      Para entonces la masa está dura o separada, y la sosa nueva se queda en bolsas que queman. Sin
      empezar: espera a tenerla toda, o haz menos: «cuánta sosa para 300 g de oliva» hasta lo que te
      alcance. Empezado: apunta lo que entró y pregunta «puse 40 g de sosa en 500 g de oliva»; se guarda
      con etiqueta, con guantes, fuera del alcance, y se rehace con el resto pesado y disuelto, o se
      desecha según tus normas locales.
    `,
  },
  'second-water': {
    answer: 'Sosa tiene la justa, no de más: solo está fuerte, espesa y caliente. No añadas agua ahora.',
    why: spaced`
      El agua lleva la sosa y no forma parte del jabón. Con sosa 1:1 la masa cuaja deprisa, se calienta,
      puede agrietarse o desmigarse: gafas y guantes, no la tapes, córtala pronto. Vale solo si la sosa
      estaba clara, toda disuelta y bien pesada. Cristales blancos o algo mojado que pica: no lo uses.
      Cuatro semanas de curado, como siempre.
    `,
  },
  'oil-spilled': {
    answer: 'No eches la sosa: menos aceite gasta menos sosa, y la que sobra quema.',
    why: spaced`
      Gafas puestas, cuidado con el aceite del suelo, que resbala. Pesa el aceite que queda,
      o pesa de nuevo el que se perdió y ponlo. Si no,
      pesa la sosa otra vez: pregunta «cuánta sosa para 600 g de oliva». Agua de sosa ya hecha: echa solo su parte en peso,
      como 600/800, y guarda el resto con etiqueta. Si ya la echaste: guantes, añade el aceite perdido,
      pesado, ahora que está líquido.
    `,
  },
  'two-figures': {
    answer: 'Dos cifras que se diferencian poco valen las dos, con otro sobreengrasado: toma la más baja.',
    why: spaced`
      500 g de oliva gastan unos 67,8 g de NaOH al 0 % y 64,4 g al 5 %. Los libros usan también otros
      valores del aceite (varían un 3 %) y otra pureza. Compara sobreengrasado, pureza, y si es NaOH o KOH;
      la cifra baja deja más aceite y nunca quema. Más de un 10 % de diferencia es otro aceite, KOH o una
      errata: no mezcles hasta saberlo. También yo puedo equivocarme: compruébame con otra fuente.
    `,
  },
  'water-unwritten': {
    answer:
      'Si solo no está escrita: el doble de la sosa, 140 g para 70 g. Si no la pusiste: ahora no eches agua.',
    why: spaced`
      El agua puede ser de 1,5 a 2,5 veces la sosa; pregunta «cuánta agua para 70 g de sosa». Si la sosa
      seca ya está en los aceites: nada de agua encima, se calienta y salpica; gafas, guantes, déjalo, y
      pregunta «olvidé el agua».
    `,
  },
  'metal-in-lye': {
    answer: 'Apártate, sin llamas ni chispas: hay metal en la sosa. Suelta hidrógeno, que puede explotar.',
    why: spaced`
      Agua de sosa gris, con burbujas o que huele es aluminio,
      zinc o estaño que se deshace. Todos fuera; ventana abierta, sin tocar gas,
      cigarrillos ni interruptores; no remuevas, no tapes,
      no eches nada. Espera fuera hasta que pare y esté frío. Luego gafas, guantes,
      y pinzas de acero o plástico para el metal; el líquido, en un bote de plástico abierto al aire libre,
      con etiqueta,
      sin cerrar mientras burbujee: residuo cáustico según tus normas locales. No sirve para jabón. Tos,
      mareo, salpicaduras: /first-aid.
    `,
  },
  'cloudy-lye': {
    answer:
      'Nube o copos blancos en la sosa fría suelen ser carbonato: deja que se pose y usa solo lo claro.',
    why: spaced`
      Lo trae la sosa vieja o húmeda, y el agua dura. Aún templada y con granos abajo: no está disuelta,
      sigue removiendo. Fría y clara por encima: pásala por malla de acero o poliéster, gafas, guantes;
      queda algo más floja, nunca más fuerte. Espesa y blanca, o con sosa apelmazada: no la uses, residuo
      cáustico según tus normas locales. Gris y con burbujas es metal: apártate.
    `,
  },
  'undissolved-lye': {
    answer:
      'Que no entre en el aceite hasta estar clara: remueve. Si se enfrió, la jarra abierta en agua templada del grifo.',
    why: spaced`
      Los granos que pasan al aceite queman semanas después. Si aún quema: agua fría alrededor. Al menos
      tanta agua como sosa en peso, mejor el doble. Ni pinchar ni fuego. Un terrón en el fondo: espera,
      remueve suave con silicona o acero, nunca a la fuerza, salpica. Cuajada, con cristales o helada por
      el frío (la del 50 % lo hace a 15 °C (59 °F)): la jarra abierta en agua templada del grifo, remueve
      hasta que esté clara; nunca microondas ni fuego. Si sigue turbia: deja que se pose.
    `,
  },
  'honey-in-lye': {
    answer: 'Nunca miel ni azúcar en sosa ya disuelta: se calienta, sube con espuma y se pone marrón.',
    why: spaced`
      Azúcar o sal: primero disuelta en el agua fría, y luego la sosa, despacio, con la jarra en hielo.
      Miel: en un poco de agua fría apartada, a los aceites o en traza fina. Como mucho 30 g de azúcar o
      miel por kg de aceites (una cucharada de miel son 21 g), de 10 a 20 g de sal; más recalienta o
      desmiga. Sin tapar y sin horno. Si ahora sube la espuma: apártate, la cara lejos, deja que baje.
      /plan additives:«miel 15 g»
    `,
  },
  'alcohol-in-lye': {
    answer:
      'No: nada de alcohol en el agua de sosa. Llega a 90 °C (194 °F) y el alcohol hierve a 78 °C (172 °F): salpica y arde.',
    why: spaced`
      Tampoco vodka contra la ceniza: hay quien lo rocía sobre la masa ya vertida, sin ninguna llama en la
      habitación. Contra la ceniza: menos agua, tapar el molde, gel, o cepillarla después. Vino y cerveza:
      hervidos hasta que no tengan gas ni alcohol, y helados.
    `,
  },
  'water-was-put-on': {
    answer:
      'Si se enfrió, está clara y no queda nada en el fondo, puede usarse. La próxima vez, la sosa al agua.',
    why: spaced`
      El peligro de echar agua sobre sosa es que hierve y salpica en ese momento; después es agua de sosa,
      si las dos se pesaron. Pésala: jarra, sosa y agua tienen que sumar; si falta, se evaporó agua (eso
      solo no cambia la sosa). Granos o costra: remueve en la jarra abierta, dentro de agua fría, hasta que
      esté clara. Gafas, guantes. Si te salpicó: agua corriente, /first-aid.
    `,
  },
  'unsteady-hands': {
    answer: 'La sosa no: que otra persona la pese, la mezcle y la vierta. Todo lo demás puede ser tuyo.',
    why: spaced`
      Con manos que tiemblan, ojos que ven poco o poca fuerza,
      un descuido es una quemadura. Elige colores y aromas, pesa aceites con una báscula que habla,
      corta y sella a los dos días con guantes. Nunca a solas. Jarra con asa, medio llena, en una bandeja,
      mesa baja, gafas y guantes para todos. O base de glicerina,
      que no lleva sosa suelta. Pregunta a tu médico si tus medicinas marean.
    `,
  },
  'class-rules': {
    answer:
      'La sosa solo la manejas tú, mezclada antes y al aire libre; sin agua corriente en el aula, no hay sosa.',
    why: spaced`
      Para cada uno: gafas cerradas, guantes, manga larga, zapato cerrado. Solo adultos, con mesa propia,
      a 2 m de la jarra, sin comida ni llamas, ventana abierta; un ayudante para seis. El agua de sosa,
      fría y con etiqueta, la echas tú. Nadie pasea con masa. Personas mayores o inseguras, embarazo,
      asma: colores, moldes y cortar pastillas curadas,
      o base de glicerina. Agua para enjuagar y teléfono a mano,
      los primeros auxilios dichos antes; pregunta al seguro y al local.
    `,
  },
  'food-kitchen': {
    answer: 'No: nada de sosa donde se hace comida para otros.',
    why: spaced`
      La sosa y el jabón crudo acaban en tablas, desagües y lavavajillas; la ley de alimentos deja las
      sustancias peligrosas fuera de esas cocinas, y tus compañeros no saben qué hay allí. Otra habitación
      con agua corriente y ventana, utensilios propios que no vuelven, todo con etiqueta y bajo llave.
    `,
  },
  'not-sober': {
    answer: 'No: nada de sosa después de beber, con sueño o con medicinas que marean. Hazlo mañana.',
    why: spaced`
      Un peso mal hecho quema después, un descuido enseguida. Los aceites aguantan, y la sosa seca en su
      bote cerrado también. Agua de sosa ya hecha: etiqueta, tapa floja y bajo llave hasta que estés
      sobrio. Si alguien bebió sosa es otra cosa: /first-aid what:lye-swallowed.
    `,
  },
  fan: {
    answer:
      'Ningún ventilador hacia ti ni hacia la sosa: lleva gotas y polvo a los ojos. Apágalo mientras mezclas.',
    why: spaced`
      El aire debe ir de ti a la ventana: mezcla junto a una ventana abierta, o fuera con el viento de lado
      y sin ráfagas. Un ventilador, si acaso, detrás, en la ventana, soplando hacia fuera. Gafas. Después
      puede enfriar la barra.
    `,
  },
  'flame-near': {
    answer: 'Ni llama, ni cigarrillo, ni piloto de gas al lado: apágalo antes, o mezcla en otro sitio.',
    why: spaced`
      La sosa no arde. Pero el alcohol y los aromas sí, el metal en la sosa suelta hidrógeno, una olla de
      grasa recalentada se prende, y la mano con el cigarrillo va a la boca. Una caldera aspira el vapor.
      Velas y gas apagados; calienta con placa eléctrica y apágala. Si algo arde: tapa, calor fuera, nunca
      agua, sal y llama.
    `,
  },
  'goggles-fog': {
    answer: 'Póntelas otra vez antes de seguir: apártate, límpialas lejos de la sosa y vuelve a ponértelas.',
    why: spaced`
      Una gota cuesta un ojo. Primero fuera los guantes, manos lavadas, y luego la cara. Contra el vaho:
      gafas cerradas con respiradero indirecto, una gota de lavavajillas frotada en seco por dentro,
      mascarilla más suelta, sitio más fresco, cara fuera del vapor. Si entró algo: agua corriente 15
      minutos, /first-aid.
    `,
  },
  'power-cut': {
    answer: 'Sigue a mano: con varillas, gafas y guantes puestos. Tarda más, no se estropea.',
    why: spaced`
      Si no ves: déjalo tapado, con etiqueta, la puerta cerrada, y espera. Bate sin parar hasta que ya no
      se separe; templar los aceites ayuda. Desenchufa antes de que vuelva la luz. Si en una hora no espesa
      y nadie puede quedarse: que no llegue ningún niño ni animal, no lo viertas líquido. Nunca a solas de
      noche sin luz, teléfono y agua corriente.
    `,
  },
  'left-halfway': {
    answer: 'No: no pares a mitad. La masa se separa o cuaja, y en la olla es cáustica.',
    why: spaced`
      Empieza solo con dos horas libres. Ni en la nevera, ni hasta mañana, ni en nada que sea de comida. Si
      tienes que irte: viértela en traza, o que se quede alguien con gafas. Si ya la dejaste: gafas,
      guantes, mira: aceite arriba y líquido abajo se bate otra vez, templado a 40 °C (104 °F), hasta que
      no se separe; dura: se saca y se rehace. Gotas mojadas que queman: no lo uses.
    `,
  },
  'batter-in-hair': {
    answer: 'Agua corriente ya, 20 minutos, con la cabeza ladeada para que no caiga nada en los ojos.',
    why: spaced`
      La masa y la sosa queman cuero cabelludo, orejas y ojos. Las gafas se quedan puestas mientras te
      aclaras; fuera la ropa mojada. Ni vinagre, ni champú antes. Escozor, rojez, ampollas, o algo en un
      ojo o un oído: sigue con el agua y llama al médico o a tu número de emergencias. /first-aid
      what:lye-skin
    `,
  },
  'soap-in-eye': {
    answer: 'Enjuaga ya: agua corriente templada sobre el ojo abierto, 15 minutos, sin lentilla.',
    why: spaced`
      El jabón curado escuece y se pasa. Si después sigue rojo, duele, se ve borroso o molesta la luz:
      médico hoy. Jabón crudo, masa o sosa en el ojo: enjuaga 20 minutos o más y llama mientras tanto a tu
      número de emergencias. /first-aid what:lye-eye
    `,
  },
  'red-skin': {
    answer:
      'Enjuaga ya con mucha agua templada, deja de usar ese jabón y, si es un bebé, llama hoy al médico.',
    why: spaced`
      El jabón nuevo puede llevar sosa libre, y la piel de un bebé es fina. Ni crema ni vinagre. Ampollas,
      llanto que no para, ojos rojos, hinchazón, le cuesta respirar: número de emergencias. Mira los pesos
      y los días de la pastilla; nadie la usa hasta entonces. /first-aid
    `,
  },
  'blocked-sink': {
    answer:
      'Ni sosa ni desatascador: en una tubería llena de jabón calienta, salpica hacia ti y la cuaja más.',
    why: spaced`
      Gafas y guantes, es cáustico. Saca lo que haya encima, pon un cubo bajo el sifón, desenróscalo y
      quita el tapón de jabón con una herramienta de mano; agua caliente solo cuando ya corra. Sifón de
      aluminio: hazlo enseguida. Si no, un fontanero al que se le dice qué hay. La próxima vez, limpia las
      ollas con papel y déjalas un día.
    `,
  },
  'bleach-went-in': {
    answer: 'No lo uses: la lejía no hace jabón. Ventana abierta, fuera si huele; nunca un ácido cerca.',
    why: spaced`
      Sosa y lejía solas sueltan poco, pero con ácido,
      vinagre o amoniaco (también leche quemada) sale un gas tóxico. No añadas nada,
      no lo calientes. Frío: bote de plástico con etiqueta, cerrado flojo,
      residuo peligroso según tus normas locales. Tos, ojos que escuecen, olor a cloro: todos fuera,
      /first-aid.
    `,
  },
  'used-early': {
    answer: 'Es pronto: antes, cuatro semanas de curado. Lo que regalaste, recógelo o diles que esperen.',
    why: spaced`
      Los dos primeros días es cáustico, las primeras semanas áspero, y un peso mal hecho se nota después.
      Diles: nada de piel, fuera del alcance de los niños, hasta el día que tú digas. Para ropa también:
      guantes. Escozor o rojez: aclara con mucha agua; si no se pasa, médico.
    `,
  },
  'old-bar': {
    answer: 'En la piel no: nadie sabe cómo se pesó su sosa, y los años no la quitan.',
    why: spaced`
      Olor a rancio, manchas naranjas, cristales, gotas, algo que pica: fuera, con guantes,
      según tus normas locales. Si se conoce la receta y se pesó,
      tiene buen aspecto y el papel de pH en su espuma da 10 o menos, para suelos o ropa,
      con guantes. De recuerdo: envuelto, con etiqueta, fuera del alcance de los niños.
    `,
  },
  'no-vinegar': {
    answer:
      'El ácido con la sosa da calor, justo en la piel, y cuesta minutos. El agua la diluye y se la lleva.',
    why: spaced`
      La sosa está en la piel antes de que encuentres la botella, y nadie acierta la cantidad. Por eso:
      agua corriente enseguida, 20 minutos, fuera la ropa mojada. En una mesa: primero barrer o secar,
      luego mucha agua; vinagre flojo solo para la última traza de un sitio ya aclarado, nunca en un
      charco. En una pastilla no arregla nada. Si te acabas de quemar: /first-aid what:lye-skin
    `,
  },
  'zap-young': {
    answer:
      'Los primeros días es normal que pique: guantes, espera y prueba otra vez a las cuatro semanas. Sin lengua.',
    why: spaced`
      La sosa y el aceite necesitan de 24 a 48 horas, algunas pastillas una semana. Guárdalo seco y fuera
      del alcance. A las cuatro semanas: papel de pH en la espuma, 11 o más es sospechoso. Mientras, revisa
      los pesos («puse 64 g de sosa en 500 g de oliva»): si estaban mal, esperar no sirve.
    `,
  },
  'no-lye-in-it': {
    answer: 'Sin sosa no hay jabón: es aceite y agua, y así se queda. No quema.',
    why: spaced`
      Primero asegúrate: lo que entró era sal o azúcar, según su etiqueta, y nada de sosa. Si solo son
      aceites no se pierde nada: quita el agua, pesa los aceites y empieza con sosa pesada para ellos
      («cuánta sosa para 500 g de oliva») en agua fría nueva. Con sal o azúcar dentro: mejor aceites
      nuevos. Dónde acabó la sosa (un salero, un plato) es urgente: búscala, nadie come de ahí.
    `,
  },
  'blender-smokes': {
    answer: 'Desenchufa, con las manos secas, o corta antes el fusible. No la saques de la olla en marcha.',
    why: spaced`
      Gafas y guantes; deja que se enfríe, sácala por la parte seca y sigue con varillas. No se vuelve a
      usar. Calambre, llama: fusible fuera, nunca agua encima, número de emergencias. Si el humo o la
      espuma salen de la olla: apártate y déjalo.
    `,
  },
  'rusty-lid': {
    answer: 'Gafas y guantes, límpialo con papel y luego agua; la sosa, bajo plástico, no bajo metal.',
    why: spaced`
      El vapor y la sosa húmeda se comen estaño, zinc y aluminio: una tapa se oxida, una campana pierde
      brillo. Restos viejos no son peligro; espuma gris y mojada sí: apártate, sin llamas. Sosa con óxido,
      terrones o humedad ya no se pesa para jabón: una tapa pegada o hinchada no se fuerza, entrégala como
      residuo cáustico según tus normas locales.
    `,
  },
  'purity-unknown': {
    answer:
      'Ningún jabón con sosa cuya etiqueta no diga hidróxido de sodio y su pureza: pregunta, o compra otra.',
    why: spaced`
      Un margen como 95–97 %: cuenta con la cifra alta, así nunca sobra: /plan lye:«NaOH 97%». Perlas,
      escamas y microperlas solo cambian de forma. Sin cifra, pero hidróxido de sodio puro por su nombre:
      cuéntala como 100 %, la pastilla queda algo más blanda. Desatascadores, mezclas, latas oxidadas o sin
      etiqueta: nunca.
    `,
  },
};
