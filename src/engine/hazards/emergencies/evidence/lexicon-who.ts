import { spaced } from '../../../over-lines.ts';

/**
 * Wider words for who is hurt, where, and how it shows, English and Spanish of many countries: each is weak evidence and
 * counts only in sum. Written as in `../lexicon/harm.ts`.
 */
export const WHO_WORDS = {
  /** Somebody else, as people call their own. */
  kin: spaced`
    gran, nan, nanna, nana, granny, grandma, grandad, granddad, grandpa, gramps, pop, mum, mom, mummy,
    mommy, mam, mama, dad, daddy, hubby, husband, wife, wifey, missus, fella, mate, buddy, bro, sis,
    bestie, friend, lad, lass, kid, kids, kiddo, kiddos, little one, lil one, little guy, little girl,
    little boy, toddler, baby, bub, bubs, infant, newborn, teen, teenager, year old, yr old, yo, boy, girl,
    my son, her son, his son, our son, son is, son has, son just, daughter, stepson, stepdaughter, nephew,
    niece, cousin, twins, aunt, auntie, aunty, uncle, in law, roommate, flatmate, housemate, roomie,
    neighbour, coworker, colleague, helper, apprentice, student, classmate, client, cleaner, babysitter,
    nanny, carer, guest, partner, boyfriend, girlfriend, fiance, somebody, someone, bf, gf, abuela, abuelo,
    abuelita, abuelito, yaya, yayo, nona, nono, tata, lela, lelo, mi vieja, mi viejo, hijo, hija, hijito,
    hijita, nene, nena, nenita, nenito, bebe, bebito, bebita, guagua, nino, nina, ninito, ninita, chiquito,
    chiquita, chiquillo, chiquilla, chamaco, chamaca, escuincle, peque, pequeno, pequena, crio, cria,
    criatura, cabro, cabra chica, cabro chico, cabrito chico, pibe, piba, guri, gurisa, chavo, chava,
    chavito, chavita, huerco, morro chico, chaval, chavala, mocoso, sobrino, sobrina, primo, prima, tio,
    tia, hermano, hermana, hermanito, hermanita, cunado, cunada, suegro, suegra, yerno, nuera, novio,
    novia, pololo, polola, pareja, marido, mujer, esposo, esposa, senora, senor, amigo, amiga, companero,
    companera, companero de piso, vecino, vecina, alumno, alumna, empleada, ayudante, muchacho, muchacha,
    muchachita, el chico, la chica, alguien, mi jefa, mi jefe, comadre, compadre
  `,
  /** More animals than anyone would list at first. */
  pets: spaced`
    spaniel, collie, corgi, husky, pug, boxer dog, shepherd, rottweiler, staffie, staffy, frenchie,
    whippet, greyhound, kelpie, heeler, cattle dog, doodle, spoodle, cockapoo, mutt, hound, pooch, tomcat,
    tabby, moggy, moggie, ginger cat, siamese, ragdoll cat, maine coon, chook, chooks, chickens, hen,
    bantam, goose, geese, duckling, ducklings, pigeon, parrot, cockatoo, galah, lorikeet, lovebird, finch,
    bird, birdie, budgies, macaw, ferret, ferrets, chinchilla, degu, tortoise, turtle, bearded dragon,
    lizard, frog, goldfish, koi, fish tank, lamb, ewe, calf, foal, donkey, mule, llama, piggy, pig,
    hedgehogs, perrito, perrita, perruno, quiltro, pichicho, firulais, lomito, lomitos, can de,
    pastor aleman, galgo, podenco, labradora, gatuno, gatita, gatote, minina, micha, cuyo, cuy, cobayo,
    cobaya, chancho, chanchito, cerdo, cochino, marrano, loro, lora, catita, cata australiana, cotorrita,
    perico, periquita, jilguero, paloma, ave, avecita, pajarraco, oca, ganso, pavo, patito, patitos,
    gallinita, pollitos, pollita, ternero, cordero, borrego, oveja, chivo, chiva, potro, potrillo, burro,
    mula, caballito, iguana, tortuga, pez, peces, pecera, erizo, hurona, chinchilla, animal, animalito,
    bicho, mascotita, bichito
  `,
  /** What is an animal's, or what one does when it hurts. */
  pawed: spaced`
    paw, paws, pads, paw pads, claws, beak, wing, wings, feathers, plumage, fur, coat, tail, snout, muzzle,
    whiskers, biting at, bites at, nibbling at, licking at, licking itself, licking himself,
    licking herself, licking its, grooming, scratching at, shaking its head, hiding, hides, limps, limping,
    whimpers, yelps, hissing at, wont eat, wont drink, off his food, off her food, patita, patitas, pata,
    patas, almohadillas, garra, garras, pico, ala, alas, plumas, pelaje, cola, hocico, trompa, bigotes,
    se muerde, mordiendose, se lame, lamiendose, se rasca, sacude, sacudiendo, cojea, cojeando, renguea,
    rengueando, se esconde, escondido, escondida, gime, chilla, aulla, maulla, lloriquea, no quiere comer,
    vet, vets, veterinario, veterinaria, veterinary, se ha revolcado, revolcado
  `,
  /** Eyes, where nobody writes "eye", and what else only eyes do. */
  sight: spaced`
    left one, right one, properly out of, out of the left one, out of the right one, clearly out of,
    the left one, the right one, out of one, out of the left, out of the right, my i, his i, her i,
    in the i, i socket, eye drops, eyedrops, eye bath, eyebath, saline, optrex, lens, lenses, contacts,
    contact lenses, goggles off, took my goggles off, without goggles, no goggles, wasnt wearing goggles,
    see properly, see straight, see anything, sight, cant see, cant really see, barely see,
    everything is blurry, everythings blurry, blinking a lot, keeps blinking, squinting, wont open it,
    cant open it, bloodshot, weepy, optician, ophthalmologist, peepers, la vista, su vista, mi vista,
    el izquierdo, el derecho, del izquierdo, del derecho, por el izquierdo, por el derecho, de un lado,
    arenita, arenilla, lagrimea, lagrimeo, llorosos, pestanea, parpadea, parpadear, parpadeando, se tallo,
    tallando, me talle, restrego, colirio, gotas para los ojos, suero fisiologico, pupilentes, oculista,
    oftalmologo, ver bien, no ve bien, no veo bien, no alcanzo a ver, ve doble, ve manchas, deslumbra,
    ojos rojos, ojo rojo, ojo hinchado, ojito, ojitos, vista nublada
  `,
  /** Hands, feet and clothes beyond the plain words. */
  limb: spaced`
    glove, gloves, gloved, cuff, wrist, knuckles, cuticle, cuticles, under my nails, fingernails, nail bed,
    nails, between my fingers, between the fingers, webbing, palms, forearms, sleeve, bare feet, barefoot,
    flip flops, sandals, thongs, slides, crocs, trainers, sneakers, shoe, boots, wellies, socks, tights,
    stockings, jeans, trousers, trackies, pants, leggings, skirt, lap, tummy, waist, hip, bellybutton,
    collar, neck, jaw, jawline, lip, eyebrow, temple, scalp, hairline, hair, ear lobe, earlobe, instep,
    ankle, soles, calf, calves, chest, cleavage, armpit, skin, cut on my, open cut, graze, hangnail,
    wedding ring, ring, watch strap, under my watch, guante, guantes, puno, muneca, munecas,
    entre los dedos, bajo las unas, unas, cuticula, nudillos, palma, palmas, antebrazo, antebrazos, manga,
    mangas, descalzo, descalza, pies, piecitos, chanclas, chalas, hawaianas, ojotas, alpargatas, huaraches,
    zapatillas, zapas, tenis, botas, calcetas, calcetines, medias, pantis, pantalon, pantalones, jeans,
    vaqueros, buzo, polera, poleron, playera, remera, camiseta, short, pollera, falda, empeine, empeines,
    tobillo, tobillos, pantorrilla, canilla de la pierna, espinilla, muslo, muslos, cadera, cintura,
    ombligo, guata, guatita, panza, barriga, pancita, cogote, nuca, cuello, cachete, cachetes, mejilla,
    pomulo, menton, pera, frente, ceja, sien, oreja, orejas, cuero cabelludo, pelo, rodilla, rodillas,
    codo, cortecito, corte en, herida abierta, padrastro, anillo, pulsera
  `,
  /** How skin, mouth or mood show that lye is at work. */
  signs: spaced`
    slippery, slimy, soapy feel, feels soapy, slick, greasy feel, tingle, tingling, tingles, tingly,
    pins and needles, prickly, itching, itches, burn, burning, burns, burnt, stings, stinging, stung,
    smarts, smarting, hurts, hurting, hurt, sore, sores, ache, aching, aches, achy, raw, red, reddening,
    redness, pink, white spot, white patch, white patches, going white, gone white, turned white,
    grey patch, blister, blisters, blistering, blistered, bubble on my skin, peeling, peels, peeled,
    weeping, oozing, scab, hole, swollen, swelling, swells, swole, puffy, puffed, numb, numbness, hot,
    getting hot, feels hot, feels warm, crying, cries, cryin, bawling, screaming, screams, yelling,
    howling, sobbing, whining, moaning, shaking, pale, clammy, unconscious, passed out, collapsed,
    unresponsive, cant talk, cant speak, wont stop crying, wont settle, in pain, agony, ow, ouch, owie,
    resbaladiza, resbaladizo, resbalosa, resbaloso, jabonosa, jabonoso, babosa, hormigueo, hormiguea,
    hormigueando, cosquilleo, adormecida, adormecido, dormida la, se me duerme, entumecida, arde, arden,
    ardiendo, ardor, ardio, quema, queman, quemando, quemadura, quemazon, quemo, quemado, quemada, pica,
    pican, picor, picazon, comezon, escuece, escuecen, escocia, escozor, duele, duelen, dolor, doliendo,
    adolorida, adolorido, roja, rojo, rojas, rojos, rojita, colorada, colorado, coloradas, colorados,
    enrojecida, enrojecido, irritada, irritado, blanca, blanquecina, blanquecino, mancha blanca, ampolla,
    ampollas, ampollita, vejiga, vejigas, llaga, llagas, ulcera, pelada, pelado, pelando, despellejada,
    hinchada, hinchado, hinchadas, hinchazon, inflamada, inflamado, llora, llorando, llore y llore, llanto,
    grita, gritando, chillando, berreando, temblando, palida, palido, inconsciente, no reacciona,
    no puede hablar, no habla, se queja, quejando, sangra, sangre, costra, sensible
  `,
  /** Chest, head and stomach after fumes. */
  unwell: spaced`
    cough, coughing, coughed, tight chest, chest tight, tightness, tightness in, chest, wheeze, wheezing,
    wheezy, hoarse, croaky, husky voice, lost voice, throat, scratchy, raspy, gasping, panting,
    short of breath, shortness of breath, breathless, puffing, cant catch, inhaler, ventolin, puffer,
    nebuliser, nebulizer, asthma, asthmatic, copd, headache, head hurts, my head, head is pounding,
    head is spinning, migraine, dizzy, dizziness, lightheaded, woozy, feel faint, feels faint,
    feeling faint, fainted, sick, nauseous, nausea, queasy, unwell, off colour, ill, disoriented, confused,
    drowsy, runny nose, nose, nostrils, sinuses, sneezing, sneeze, sneezes, eyes streaming, eyes sting,
    lungs, lungful, mouthful of fumes, metallic taste, tos, tosiendo, toser, tose, tosiendo, carraspera,
    ronco, ronca, ronquera, afonico, afonica, garganta, pecho, pecho apretado, apretado el pecho, apretada,
    opresion, presion en, silba, silbido, silbidos, pitos, ahogo, ahogada, ahogado, me ahogo, falta aire,
    falta el aire, falta de aire, sin aire, agitado, agitada, inhalador, ventolin, salbutamol, puff, asma,
    asmatico, asmatica, dolor de cabeza, duele la cabeza, jaqueca, me zumba, mareo, mareos, mareado,
    mareada, se marea, me marea, vahido, nauseas, ganas de vomitar, vomitar, asco, mal cuerpo,
    descompuesta, descompuesto, descompuso, malestar, confundida, confundido, atontada, atontado,
    somnoliento, nariz, estornuda, estornudo, estornudos, estornudando, moquea, pulmones, me siento mal,
    se siente mal
  `,
} as const;
