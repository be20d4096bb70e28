import { spaced } from '../../../over-lines.ts';
import { ANIMAL_WORDS } from './animals.ts';
import { ERUPTING_WORDS } from './erupting.ts';
import { NO_SCENE_WORDS } from './harmless.ts';

/** Words for what does harm, where it is and who is there, English and Spanish. Written as in `harm.ts`. */
export const SCENE_WORDS = {
  ...NO_SCENE_WORDS,
  caustic: spaced`
    lye, lyes, lye water, lye solution, lye flakes, lye crystals, lye beads, lie, the lie, lie water,
    lie flakes, lie crystals, lie solution, lie burn, caustic, caustics, caustic soda, caustik, naoh, koh,
    sodium hydroxide, potassium hydroxide, hydroxide, masterbatch, potash, alkaline solution, sosa,
    sosa caustica, lejia, lejia de sosa, soda caustica, soda, hidroxido, hidroxido de sodio,
    hidroxido de potasio, potasa, caustica, escamas de sosa, escamas de soda, perlas de sosa,
    perlas de soda, bolitas de sosa, legia, sosas, lye mix, lye mixture, soza, soda cuastica, agua de sosa,
    agua con sosa, agua con soda, solucion de sosa, solucion de soda, drain opener, oven cleaner,
    the alkali, solucion caustica, masterbatched lye
  `,
  /** A grain of lye, where nobody names it. */
  grain: spaced`
    bead, beads, flake, flakes, crystal, crystals, pellet, pellets, granule, granules, prill, prills,
    escama, escamas, perla, perlas, bolita, bolitas, cristal, cristales, grain of it
  `,
  raw: spaced`
    batter, batters, raw soap, soap batter, soap mix, soap mixture, soap dough, fresh soap, uncured,
    uncured soap, unsaponified, freshly made soap, still raw, just blended, just mixed, just made,
    just poured, just unmoulded, poured an hour ago, poured yesterday, poured today, poured last night,
    unmoulded yesterday, unmoulded today, soap bowl, soap pot, soap bucket, soap goo, goop, soap goop,
    liquid soap batter, not cured, hasnt cured, masa, masa del jabon, masa de jabon, mezcla,
    mezcla del jabon, la mezcla, pasta de jabon, pasta del jabon, la pasta, de la pasta, jabon crudo,
    jabon fresco, jabon recien, recien hecho, recien hecha, recien desmoldado, recien vertido,
    desmolde ayer, desmolde hoy, hice ayer, hice hoy, hice anoche, hice esta manana, sin curar,
    aun no curado, todavia no curado, la traza, jabon liquido crudo, made yesterday, made this morning,
    made today, made last night, from yesterday, the mould i poured, i poured 10 min ago,
    while i was stick blending, while stick blending, mientras batia, mientras batimos, estaba batiendo,
    jabon todavia crudo, fresh loaf, unset soap, soap before it sets
  `,
  /** Soap being made or used: enough where the harm itself is plain. */
  making: spaced`
    soap, soaps, soapmaking, soaping, soaper, bar, bars, jabon, jabones, pastilla, pastillas, lye, sosa,
    soda, lejia, batch, tanda, lote, mould, molde, batter, masa, mezcla, recipe, receta, shampoo bar,
    syndet, hacer jabon, haciendo jabon, jaboncito, jabonera, loaf, champu solido, saop, javon, jugs, jug,
    jarra, mixing, stirring, stirred, removiendo, revolviendo, removi, revolvi, castile, castilla, soaped,
    my jugs, lye jug, cp, hp, cold process, proceso en frio, melt and pour
  `,
  fume: spaced`
    fume, fumes, vapour, vapours, vapor, vapors, steam, steams, steaming, gas, gases, gasses, smoke,
    smokes, smoky, cloud, clouds, mist, ammonia, humo, humos, humito, humareda, vapores, vaho, nube,
    gas de, amoniaco, tufo, bocanada, aire de la sosa, air above, whiff, olor fuerte, olor de la sosa,
    olor a sosa, smell of the lye, smell of lye, lye smell, lye dust, lye powder, dust of the lye,
    dust from the lye, polvo de sosa, polvo de soda, polvillo de la sosa, polvillo de soda,
    polvo de la sosa, polvo de la soda, polvillo de sosa
  `,
  alu: spaced`
    aluminium, aluminum, alluminium, alumnium, aluminio, aluminun, alu, aluminium pot, aluminium pan,
    dull metal, dull grey metal, grey metal, soft metal, light metal, lightweight metal, dull metal one,
    grey metal one, light for its size, light for the size, lighter than it looks, weighs nothing,
    non magnetic, nonmagnetic, not magnetic, magnet doesnt stick, magnet wont stick, magnet does not stick,
    a magnet falls off, cast pan, cast pot, cast alloy, alloy, biscuit tin, biscuit tins, tins,
    shortbread tin, sweet tin, metal gris, metal opaco, metal sin brillo, metal liviano, metal ligero,
    metal blando, liviana para su tamano, liviano para su tamano, pesa muy poco, no se pega el iman,
    el iman no pega, el iman no se pega, no agarra iman, no agarra el iman, no pega el iman,
    no coge el iman, no atrae el iman, no lo agarra el iman, aleacion, lata de galletas, latas de galletas,
    palangana vieja, balde viejo de metal, foil, tinfoil, tin foil, kitchen foil, papel aluminio,
    papel de aluminio, zinc, cinc, zink, galvanised, galvanized, galvanizado, galvanizada, galva, chapa,
    chapa galvanizada, tin can, tin pan, hojalata, lata de, estano, pewter, peltre, muffin pan, muffin tin,
    cake tin, bread tin, loaf tin, pie tin, cookie sheet, baking sheet, baking tray, disposable tray,
    foil tray, foil pan, camping pot, mess tin, moka pot, cafetera, cafetera italiana,
    cafetera de aluminio, olla de aluminio, beer can, non stick pan, magnesium, metal spoon, metal bowl,
    metal pot, metal bucket, metal whisk, metal pan, metal jug, metal container, cuchara de metal,
    olla de metal, bote de metal, balde de metal, recipiente de metal, cubo de metal, cubo de zinc,
    cubeta de metal, cubeta de lamina, budinera, molde de budin, tin jug, tin pot, tin bucket, tin bowl,
    tin mould, or tin, in a tin, in the tin, in my tin, the tin, una lata, la lata, de lata, balde de lata,
    lata de conserva, lata de cerveza, zinc bucket, zinc tub, tin tub, galvanised bucket, alloy,
    camping pan, papel plata, papel de plata, de metal
  `,
  /** A pot or tool that may be of such metal. */
  ware: spaced`
    pan, saucepan, whisk, olla, cazuela, cazo, sarten, dollar store, cacerola, asadera, pot, bucket, tray,
    spoon, ladle, cuchara, cucharon, batidor, globo, balde, cubo, baking tray, bandeja, molde de metal,
    sieve, colador, bote, metal, molde, thermometer, termometro
  `,
  fizz: spaced`
    fizz, fizzes, fizzing, fizzy, fizzled, fizzin, bubble, bubbles, bubbling, bubblin, foam, foaming,
    foams, froth, frothing, frothy, hiss, hisses, hissing, sizzle, sizzling, sizzles, seething,
    effervescing, gassing, gas coming off, gas coming, turning black, turning grey, turning dark,
    going black, going grey, going dark, black stuff, grey foam, grey water, turned black, went black,
    went grey, turned grey, melting away, eating the, eating through the, disintegrating, burbuja,
    burbujas, burbujea, burbujeando, burbujeo, burbujitas, espuma, espumea, espumando, espumoso,
    efervescencia, sisea, siseando, chisporrotea, chisporroteando, chisporroteo, chirria, hierve,
    hirviendo, hirvio solo, hervir, esta negra, esta negro, poniendo negra, poniendo negro, se puso negra,
    se puso negro, se pone negra, se pone negro, oscurece, ennegrece, ennegreciendo, ennegrecio,
    gris oscuro, se esta deshaciendo, deshaciendo, se deshace, se esta comiendo, desintegrando, pompas,
    suelta gas, soltando gas, soltando burbujas, boiling, boiling by itself, is dissolving, its dissolving,
    dissolving in, dissolving the, se esta disolviendo, se disuelve la cuchara, ate the pan,
    eating the pan, burbujear, espumar, hervir solo, hierve sola, hierve solo, esta hirviendo, gas smell,
    theres a gas, a gas, sale gas, sale un gas, sale vapor, reacting, reacts, reacted, reaccionando,
    reacciona, corroding, corroe, corroyendo, pitting, holes in the pan, se agujerea, agujereo, agujero,
    agujeros, se puso gris, se puso oscura, se puso oscuro, heating up, getting hot, gets hot, very hot,
    se calienta, calentando, quema el bote
  `,
  /** Past and over: the metal's marks on a finished bar. */
  finished: spaced`
    soap has, the bar has, bars have, soap is grey, soap came out, came out grey, jabon salio, salio gris,
    el jabon quedo, los jabones quedaron, unmoulded it, when i unmoulded, unmoulded, cut it, cured,
    marks on the soap, stains on, stains on the soap, black stains, dark smears, smears, underside of each,
    underside, holes eaten, has dissolved in places, later found out, against the mould, on the soap,
    dark grey bits, is that why, bars are grey, soap grey, tiny holes, my bars, curado, ya curado,
    all pitted now, white batter turned grey, little holes, later found, found out bowl, el jabon salio,
    el jabon esta gris, fondo del jabon, grey bits, dark bits, came off and theres, on the underside,
    soap came out grey, soap went black, grey streaks, the coating, dark grey everywhere, lost its shine,
    grey scum, only where it touched, only where, justo donde tocaba, on that side
  `,
  rotten: spaced`
    rotten egg, rotten eggs, rotten egg smell, rotten egg stench, rotten egg stink, eggs gone bad,
    egg gone bad, bad eggs, bad egg, eggy, smells like egg, smells like eggs, smell like egg,
    smell like eggs, smell of eggs, smell of egg, smelling of eggs, smelling like eggs, stinks of eggs,
    stinks like eggs, stinks like egg, egg smell, eggs smell, egg stink, rotten smell, sulphur smell,
    sulfur smell, smells of sulphur, smells of sulfur, smells like sulphur, smells like sulfur,
    smell sulphur, smell sulfur, sulphur stink, sulfury, sulphury, hydrogen sulphide, hydrogen sulfide,
    h2s, stink bomb, smells like sewer, smells like a sewer, like a sewer, sewer smell, sewer gas,
    smells like a drain, smells like drains, smells like farts, smells like fart, old eggs, huevo podrido,
    huevos podridos, huebo podrido, huevo echado a perder, huevos echados a perder, huevo malo,
    huevos malos, olor a huevo, olor a huevos, huele a huevo, huele a huevos, oliendo a huevo,
    oliendo a huevos, guele a huevo, apesta a huevo, peste a huevo, a huevo podrido, huevo pasado,
    huevos pasados, huele a azufre, olor a azufre, oliendo a azufre, apesta a azufre, huele a drenaje,
    oliendo a drenaje, olor a drenaje, huele a alcantarilla, olor a alcantarilla, huele a cloaca,
    olor a cloaca, huele a caneria, olor a caneria, huele a desague, olor a desague, sulfuro de hidrogeno,
    sulfhidrico, acido sulfhidrico, huele a pedo, olor a pedo, bomba fetida, huele a coladera,
    olor a coladera, huele podrido, olor a podrido, huele a podrido, pudding eggs, off eggs, egg fart,
    egg farts
  `,
  ...ERUPTING_WORDS,
  contact: spaced`
    splash, splashed, splashes, splashing, splashback, splatter, splattered, spatter, spattered, sprayed,
    spray, squirted, flicked, spill, spilled, spilt, spills, spilling, drip, dripped, drips, dripping,
    drop, dropped, drops, droplet, droplets, fell, fallen, flew, bounced, jumped, landed, poured, tipped,
    tip, knocked, knock, dumped, dump, touched, touch, touching, touches, stuck, rubbed, rub, rubbing,
    wiped, stepped, soaked, soaking, drenched, covered, leaked, leaking, leak, ran down, down my, grabbed,
    grab, dipped, dip, seeped, trapped, all over me, on me, on him, on her, on my, on his, on their, in my,
    in his, in her, in their, in one, in both, into my, into his, into her, inside my, inside the, salpico,
    salpicado, salpique, salpicon, salpicadura, salpica, salpicaron, salpicar, salpicara, cayo, caido, cae,
    cayeron, caer, cayera, caiga, callo, cayendo, caida, salto, saltado, salta, saltaron, saltar, salte,
    derramo, derramado, derrame, derramar, volco, volcado, volque, volcar, tiro, tirado, tire, moja, mojo,
    mojado, mojada, mojaron, toco, tocado, toque, tocar, tocando, metio, metido, meti, mete, entro,
    entrado, entrar, entrara, fue al, se fue, echo, echado, eche, piso, pisado, chorreo, chorreado, empapo,
    empapado, empapada, roto el guante, se ha roto, froto, frotado, restrego, restregado, al ojo,
    a los ojos, a un ojo, por encima, agarro, agarre, le dio, me dio, pringado, manchado, manche, mancho,
    embarro, embarre, se le pego, pegado, pegaron, brinco, volo, goteo, vuelca, tumbo, a saltado,
    le brinco, me brinco, went in, went into, went right, went all over, went up, went down, put her hand,
    put his hand, put my hand, stuck her, stuck his, stuck my, en el ojo, en los ojos, en la mano,
    en las manos, en la piel, en la cara, en el brazo, en la pierna, en el pie, en los pies, en un ojo,
    encima de, le entro, me entro, fall in, fell in, gets in, get in, got in, gets on, get on, got on,
    got lye, got it, got some, got batter, got a, got caustic, got soap, hit my, hit her, hit his,
    popped up, poured on, poured over, pour it, dentro, hit me, hit him, hit us, got under, gets under,
    ran inside, ran into, ran over, slid, rolled, slipped, slopped, sloshed, slosh, sloshed over, sat in,
    sat on, knelt, knelt in, leaned in, leaned on, brushed, smeared, smear, wiped it, flung, flew up,
    shot up, plopped, poked, grabbed the, picked up, reached in, dunked, put my finger, put his finger,
    put her finger, stuck a finger, finger in, hand in, foot in, se me pego, se me cayo, se le cayo,
    se me vino, se me vino encima, cayo en, cayo dentro, se me resbalo, resbalo, chisguete, chorro, gota,
    gotas, una gota, gotita, chispa, chispita, chispas, chispeo, salpicadas, manotazo, metio la mano,
    meti la mano, metio el dedo, meti el dedo, metio los dedos, rozo, roce, restregue, se restrego,
    se froto, me frote, se toco, me toque, agarraron, piso la, pise, me sente, se sento, entro polvo,
    se le metio, se me metio, fue a parar, dio en, squeezed, squished, squeezing, scooped, cleaned up,
    cleaned it up, mopped, mopped up, wiped up, picked, apreto, aprete, estrujo, limpie, limpio, amaso,
    a bit flicked, cayo una gota, me hizo, poured in my, in my lap
  `,
  ...ANIMAL_WORDS,
  /** Told of a customer, a first aid is asked for. */
  allergy: spaced`
    da alergia, da reaccion, dio reaccion, hizo reaccion, dio una reaccion, hace reaccion, dar alergia,
    de alergia, diera alergia, tiene alergia, tuviera alergia, es alergica, es alergico, allergy,
    allergies, allergic, is allergic, has an allergy, has a reaction, have a reaction,
    has an allergic reaction, reacts to, reaction to
  `,
  advise: spaced`
    se recomienda hacer, que se hace, que hacer, que debe hacer, que tiene que hacer, que hago,
    que le digo, que le digo que haga, que hacemos, what to do, what do i do, what should they do,
    what should she do, what should he do, what do they do, what do i tell, what do i tell them,
    what should i tell, what do you do, what do you recommend doing, first aid
  `,
  /** Somebody used it. */
  used: spaced`
    wash, washed, washing, washes, use, used, using, uses, bath, bathed, bathing, bathe, shower, showered,
    showering, lathered, started using, tried it, tried the, tried my, gave, customer, customers, client,
    buyer, lave, lavo, lavado, lavarme, lavarse, lavar, lavando, lavaron, lavarle, uso, usar, usado,
    usando, usa, use, bane, bano, banado, banarme, banarse, banarlo, banarla, banamos, ducha, duche,
    duchado, ducharme, ducharse, ducho, regale, vendi, clienta, clientas, cliente, compradora, probo mi,
    probe el, con mi jabon, con el jabon, from my soap, from the soap, after the soap, my soap gave
  `,
  /** Eggs that were put in. */
  yolk: 'yema, yemas, yolk, yolks, with egg, with eggs, con huevo, con huevos, added egg, added eggs, eggs in it',
  acid: spaced`
    citric acid, citric, vinegar, lemon juice, lemon, acid, acido citrico, acido, vinagre, limon,
    jugo de limon, zumo de limon, lactic acid, sodium bisulphate
  `,
  ultramarine: 'ultramarine, ultramarines, ultra marine, ultramar, ultramarino, ultramarina, ultramarinos',
  /** A person, so that an animal in the room does not take their place. */
  mine: spaced`
    my hand, my hands, my arm, my arms, my leg, my legs, my eye, my eyes, my face, my skin, my foot,
    my feet, my mouth, on me, in my eye, me cayo, me salto, me salpico, mi mano, mis manos, mi brazo,
    mi pierna, mi ojo, mis ojos, mi cara, mi hijo, mi hija, me quema, me arde, son, daughter, husband,
    wife, toddler, baby, kid, hijo, hija, marido, esposo, esposa, nene, nena, nino, nina
  `,
  people: spaced`
    i, me, my, he, she, him, her, kid, kids, child, children, boy, girl, son, daughter, baby, toddler,
    teen, teenager, nephew, niece, brother, sister, mum, mom, mother, dad, father, husband, wife, partner,
    boyfriend, girlfriend, friend, neighbour, neighbor, roommate, flatmate, grandma, grandpa, granny,
    grandson, granddaughter, student, guest, yo, me, hijo, hija, nino, nina, nene, nena, bebe, sobrino,
    sobrina, hermano, hermana, mama, papa, madre, padre, viejo, marido, esposo, esposa, mujer, pareja,
    novio, novia, amigo, amiga, vecino, vecina, companero, companera, abuelo, abuela, nieto, nieta, alumno,
    alumna, cunado, cunada, suegra, suegro, chico, chica
  `,
  specs: 'glasses, goggles, gafas, gafa, lentes, anteojos, visor, face shield',
  behind: spaced`
    got behind, went behind, behind them, under them, under the, bajo la, bajo las, debajo de, got under,
    went under, got in under, se metio por, por debajo, por detras
  `,
  /** An emergency in plain words, whatever it is. */
  help: spaced`
    help, help me, what do i do, what should i do, what do we do, what to do, what does she do,
    what should he do, is that ok, is this ok, is it ok, is it safe, hurry, emergency, 911, ambulance,
    poison control, poison centre, hospital, doctor, ayuda, auxilio, socorro, que hago, que hacemos,
    que le hago, que le pongo, que le echo, que le doy, que debo hacer, urgente, emergencia, ambulancia,
    medico, urgencias, es normal, lo dejo, la agarro, supposed to do, what are they supposed to do,
    first aid, primeros auxilios, que se hace, just noticed, just realised, just realized, noticed,
    realised, realized, me di cuenta, acabo de darme cuenta, darme cuenta, sigo, the er, go to the er,
    urgent care, poison line, call someone, who do i call, a quien llamo, llamo a alguien,
    vamos a urgencias, voy al medico, voy a urgencias, ayudenme, ayudame, ayudenos, por favor ayuda,
    dangerous, peligroso, peligrosa, toxic, toxico, es grave, is it serious, is it bad, pls help,
    please help, what now, now what, y ahora que, que tengo que hacer, going mental, turned out to be,
    turned out its, turned out it was, resulta que es, resulto ser, era de aluminio, is aluminium,
    its aluminium, was aluminium
  `,
} as const;
