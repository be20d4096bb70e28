import { spaced } from '../../../over-lines.ts';

/** Wider words that say a text is urgent, asks for a remedy, or speaks of something else. Written as `lexicon-who.ts`. */
export const ABOUT_WORDS = {
  /** Washing it off, or what people wrongly reach for. */
  remedy: spaced`
    rinse, rinsed, rinsing, flush, flushed, flushing, wash it off, washed it off, washing it off, wash him,
    wash her, wash it out, washed it, wash off, under the tap, under the faucet, at the sink,
    in the shower, under cold water, cold water, running water, running it under, hold it under, water or,
    or water, neutralise, neutralize, neutralises, neutralizes, neutralising, neutralizing, vinegar,
    lemon juice, milk, give him milk, give her milk, make him sick, make her sick, throw up,
    make him vomit, induce vomiting, baking soda, bicarb, saline, eye drops, cream, burn cream, ointment,
    aloe, butter on, honey on, ice, ice pack, toothpaste, bandage, plaster, antihistamine, put on it,
    put on, charcoal tablets, wiped it off, towel, took it off, took off, enjuagar, enjuago, enjuague,
    enjuagado, enjuagando, enjuagarme, enjuagarlo, enjuaga, lavado, lave, lavo, lavar, lavando, lavarlo,
    lavarla, lavarme, me lave, le lave, chorro de agua, agua fria, agua corriente, bajo la llave, llave,
    grifo, del grifo, canilla, la ducha, en el lavabo, lavamanos, pileta, vinagre, limon, leche,
    que vomite, hacerla vomitar, hacerlo vomitar, vomitar, bicarbonato, neutralizar, neutraliza,
    neutralizo, suero, gotas, crema, pomada, cremita, unguento, pasta de dientes, pasta dental,
    clara de huevo, aceite de oliva en la, sabila, aloe, hielo, mantequilla, antialergico, antihistaminico,
    con que lo lavo, con que la lavo, con que le, lo seco, secando, trapo, toalla, le pongo, le doy,
    le echo, me pongo, me echo, le doy agua, dar agua, dar leche, carbon activado
  `,
  /** Who is called. */
  call: spaced`
    911, 999, 112, 111, 000, 131, 107, 061, emergency services, ambulance, paramedics, er, a&e, a and e,
    emergency room, urgent care, hospital, doctor, gp, nurse, nhs, poison control, poisons line,
    poison line, poisons information, vet, vets, fire brigade, fire department, firemen, pharmacist,
    call someone, should i call, should i ring, ring the, take her to, take him to, urgencias, guardia,
    la guardia, salita, posta, la posta, consultorio, samu, same, cruz roja, ambulancia, hospital, medico,
    doctor, doctora, enfermera, farmacia, bomberos, toxicologia, toxicologico, veterinario, veterinaria,
    la llevo, lo llevo, a donde lo llevo, a donde la llevo, llamo, llamo a, a quien llamo, llamar
  `,
  /** What now? */
  plea: spaced`
    help, help me, please help, pls, plz, sos, urgent, asap, quick, quickly, hurry, omg, oh god, oh no,
    what do i do, what do we do, what should i do, what should we do, what should he, what should she,
    what to do, what now, now what, how long, how long does, how bad, how serious, is it dangerous,
    is this dangerous, is it bad, is it ok, is it serious, is that bad, is that ok, is it normal,
    is she ok, is he ok, will she be ok, will he be ok, will it be ok, will i be ok, should i worry,
    should i be worried, worried, scared, panicking, freaking out, freaking, do i need to, does he need,
    does she need, can i put, should i put, should i, dangerous, toxic, poisonous, safe to touch, ayuda,
    ayudenme, ayudame, auxilio, socorro, urgente, rapido, por favor, porfa, porfavor, que hago, q hago,
    k hago, que hacemos, que le hago, que le pongo, que le doy, que le echo, que le tiro, que me pongo,
    que me echo, que debo, que tengo que, hay que, es grave, es peligroso, es malo, es normal, pasa algo,
    cuanto tiempo, estoy asustada, estoy asustado, asustada, asustado, desesperada, desesperado,
    preocupada, preocupado, nerviosa, se pasa solo, se pasa sola, se le pasa, espero, lo saco, la saco,
    lo toco, con la mano, tengo miedo, me preocupa, no se que hacer, q le hago, q le pongo
  `,
  /** Everybody out. */
  flee: spaced`
    outside now, we are outside, were outside, went outside, ran out, ran outside, got out,
    got everyone out, left the room, left the house, opened the windows, opened all the windows,
    opened the door, window open, backed away, stepped back, standing back, backed off, kids in the room,
    nobody goes in, ya nos salimos, nos salimos, salimos, sali, sali al patio, me sali, salimos al patio,
    salimos corriendo, al balcon, estoy afuera, estamos afuera, afuera, abri las ventanas, abri la ventana,
    abrimos, abri todo, ventile, nos fuimos, me aparte, me aleje, nos alejamos, cerre la puerta
  `,
  /** It is going on. */
  now: spaced`
    right now, just now, now, just, this minute, this second, minute ago, minutes ago, min ago, mins ago,
    seconds ago, sec ago, hour ago, an hour ago, half an hour, hours ago, today, tonight, this morning,
    last night, since then, already, still, keeps, wont stop, cant stop, getting worse, started, starting,
    ahora, ahorita, ahora mismo, recien, hace un rato, hace un ratito, hace un momento, hace unos minutos,
    hace nada, hace 5, hace 10, hace 20, hace media hora, hace una hora, minutos, acaba de, acabo de,
    acaban de, todavia, sigue, siguen, no para, no paro, no deja, cada vez mas, cada vez peor, hoy, anoche,
    esta manana, de repente, se me, se le, me esta, le esta, esta saliendo
  `,
  /** A shut room. */
  shutin: spaced`
    door shut, door closed, window shut, windows shut, window closed, windows closed, no window,
    no windows, no ventilation, bathroom, laundry, garage, shed, basement, closet, pantry, small kitchen,
    indoors, inside, no mask, without a mask, never mask, mask up, mask, todo cerrado, cerrado,
    puerta cerrada, ventana cerrada, sin ventana, sin ventilacion, sin ventilar, lavadero, logia, cuartito,
    cuarto, bano, galpon, garaje, cochera, sotano, bodega, patio techado, cocina chica, sin mascarilla,
    sin barbijo, sin cubrebocas, sin tapabocas, tapabocas, mascarilla, barbijo
  `,
  /** A question of technique, which is no cry for help. */
  technique: spaced`
    how much, how many, how do i make, how do i get, how to make, can i use, can i make, can i swap,
    can i sub, can i replace, what temp, what temperature, what percent, what percentage, which oil,
    which oils, which colour, which mica, usage rate, ppo, recipe for, recipe, superfat, calculator,
    best way, easiest, idea, ideas, design, swirl, how long do i cure, cure time, curing, shelf life,
    rebatch, can i add, substitute, ratio, water discount, beginner recipe, what can i do with, is it true,
    difference between, recommend, cuanto, cuanta, cuantos, cuantas, cuanta sosa, cuanta soda, que receta,
    receta, que colorante, que mica, que aceite, que aceites, que pigmento, que molde, puedo usar,
    puedo hacer, se puede, puedo reemplazar, puedo cambiar, como hago, como se hace, como saco, como logro,
    sirve, que temperatura, a que temperatura, porcentaje, sobreengrasado, cura, curado, tiempo de curado,
    calculadora, recomiendan, recomendas, recomienda, idea, ideas, diferencia, dosis, maximo, minimo,
    por kilo
  `,
  /** Shops and labels. */
  trade: spaced`
    price, priced, pricing, sell at, sold out, label, labels, inci, ingredients list, invoice, wholesale,
    packaging, wrapper, wrappers, wrap, gift, wedding, order, orders, market, craft fair, logo, branding,
    brand, shipping, reviews, storage, supplier, buy, bought, buying, shop, store, precio, precios, vender,
    vendo, etiqueta, etiquetas, factura, empaque, envoltorio, envolver, regalo, boda, comunion, bautizo,
    pedido, encargo, mercado, feria, marca, envio, proveedor, comprar, compre, compro, tienda, caja, negocio
  `,
  /** Looks of a bar: the soap has it, not somebody. */
  looks: spaced`
    mica, micas, colour, colours, colourant, pigment, oxide, charcoal, titanium, swirl, layer, layers,
    stripe, streak, streaks, streaky, specks, spots, dots, veins, crackle, glycerin rivers, ash, soda ash,
    gel, gelled, gel phase, cured, cure, weeks old, months old, bar, bars, loaf, cut, cutting, unmoulded,
    crumbly, crumbles, brittle, soft, rancid, dos, seized, riced, ricing, separated, accelerated, scent,
    scented, fragrance, essential oil, eo, fo, lather, bubbly lather, top, surface, inside the bar,
    mould shape, texture, zap, zap test, photo, faded, morphed, brown, orange, bleeding, stained, hump,
    cracked top, colourante, colores, colour, colorante, pigmento, oxido, carbon, remolino, capa, capas,
    vetas, veta, rayas, manchas, puntos, puntitos, venas, ceniza, gelificar, gelifico, curado, curados,
    curar, semanas, meses, pastilla, pastillas, barra, barras, corte, cortar, cortarlo, desmolde,
    desmoldar, desmolde, desmigaja, quebradizo, blando, rancio, corto, se corto, separo, separada, acelera,
    acelero, traza rapida, aroma, fragancia, esencia, espuma, superficie, textura, toques, foto, desteñido,
    marron, cafe, naranja, mancha
  `,
  /** Told as a plan, a rule or a thing that did not happen. */
  hypothetic: spaced`
    thinking of, planning, next week, next month, tomorrow, before i start, havent started, not started,
    want to make, want to try, looking for, going to make, would like, always, never, i know, read that,
    heard, wondering, curious, in case, just checking, if ever, any tips, quiero, queria, quisiera,
    me gustaria, voy a hacer, voy a, manana, proxima semana, el mes que viene, antes de, todavia no,
    aun no, siempre, nunca, ya se, lei, escuche, curiosidad, por si, por si acaso, consejos, busco,
    si algun dia
  `,
  /** All is well. */
  fine: spaced`
    all good, all fine, went fine, nobody hurt, no harm, no damage, safe and sound, healed, haha, lol,
    jaja, jajaja, love it, gorgeous, beautiful, lovely, pretty, perfect, cute, divina, divino, precioso,
    preciosa, lindo, linda, hermoso, hermosa, perfecto, todo bien, todo perfecto, sin danos, sin problemas,
    turned out great, came out great, quedo bien, quedo hermoso, as usual, like it always does,
    normal right, stayed in the pot, stirred it down, como siempre, ya frio, ya fria, its cold, cold now,
    cool now, cooled, solid now, frio y duro
  `,
} as const;
