import { spaced } from '../../../over-lines.ts';
import { EMERGENCY_GRAMMAR } from '../lexicon/grammar.ts';
import { HARM_WORDS } from '../lexicon/harm.ts';
import { pairs } from '../lexicon/pairs.ts';
import { SCENE_WORDS } from '../lexicon/scene.ts';
import { AT_THE_BENCH } from './at-the-bench.ts';
import { IN_THE_EYE } from './in-the-eye.ts';
import { SWALLOWED } from './swallowed.ts';

/** All of those phrases. */
const phrases = (...lists: readonly string[]): string => lists.join(', ');

/**
 * Ideas that tell outright of an emergency where the weighed ones are silent. Written as in `../lexicon/harm.ts`; a word
 * that means harm in one neighbourhood only stands here, so that it weighs nothing elsewhere.
 */
export const OUTRIGHT_WORDS = {
  ...EMERGENCY_GRAMMAR,
  /** Everyday phrases that would tell of it and mean none. */
  harmless: HARM_WORDS.harmless,
  caustic: SCENE_WORDS.caustic,
  batter: spaced`
    batter,
    raw soap, raw bar, raw loaf,
    fresh soap, fresh bar, uncured soap, uncured bar,
    soap, masa, mezcla, pasta de jabon,
    jabon, jabon crudo, jabon fresco,
    lye water, lye solution
  `,
  rawsoap: spaced`
    raw soap, raw bar, raw loaf, raw batter,
    fresh soap, fresh bar, uncured soap, uncured bar,
    soap batter, jabon crudo, jabon fresco, barra cruda,
    pastilla cruda, jabon sin curar, masa de jabon, masa cruda
  `,
  who: `i, he, she, we, they, somebody, someone, ${pairs(
    'my, our, his, her, the, a',
    spaced`
    kid, child, son, daughter,
    baby, toddler, boy, girl,
    friend, husband, wife, partner,
    mum, mom, dad, mother,
    father,
    grandma, grandpa, granny, gran,
    nan, nana, grandmother, grandfather,
    brother, sister, aunt, uncle,
    cousin, niece, nephew,
    neighbour, neighbor, grandson, granddaughter,
    roommate, student, helper, guest
  `,
  )}, kid, toddler, child, baby, alguien, ${pairs(
    'mi, el, la, un, una, nuestro, nuestra, su',
    spaced`
    hijo, hija, hijito, hijita,
    nino, nina, nene, nena,
    bebe,
    abuela, abuelo, abuelita, abuelito,
    amigo, amiga, esposo, esposa,
    marido, mujer, mama, papa,
    madre, padre, hermano, hermana,
    tia, tio, prima, primo,
    sobrino, sobrina, nieto, nieta,
    vecino, vecina, suegra, suegro,
    invitado, alumno, alumna
  `,
  )}, ella`,
  swell: spaced`
    swollen,
    swelling, swelled, swell,
    swells, swell up, swelling up,
    puffed up, puffing up, ballooned,
    closing up, is closing,
    se cierra, se me cierra, se le cierra,
    hincho, hinchó, se hincho, hinchada,
    hinchado, hinchadas, hinchados, hinchazon,
    hinchando, se hinchan, se hinchó,
    inflamo, se inflamo, inflamada, inflamados, inflamado
  `,
  spout: phrases(
    pairs(
      'throat of, lip of, lips of, mouth of, neck of, tongue of',
      pairs(
        'the, my, a, our',
        'funnel, jug, pitcher, bottle, bowl, beaker, mould, jar, pot, bag, cup, spout',
      ),
    ),
    pairs(
      'garganta, boca, labio, lengua, cuello',
      'del embudo, de la jarra, de la botella, del molde, del frasco, del bote, de la manga',
    ),
  ),
  airway: spaced`
    lip, lips, tongue, throat, eyelid, eyelids,
    ${pairs('my, his, her, their', 'face, mouth, neck, eyes, eye')}, labio, labios, lengua, garganta,
    parpado, parpados, ${pairs('la, mi, su', 'cara, boca')}
  `,
  allergy:
    'allergic, allergy, allergies, alergia, alergico, alergica, anaphylaxis, anaphylactic, anafilaxia, anafilactico, epipen, epi pen',
  breathless: spaced`
    cant breathe, cannot breathe, can not breathe,
    couldnt breathe, hard to breathe, trouble breathing, difficulty breathing,
    struggling to breathe, short of breath, no puedo respirar, no puede respirar,
    cuesta respirar, me ahogo, se ahoga,
    falta el aire, falta de aire, throat is closing
  `,
  ...SWALLOWED,
  pigment: spaced`
    mica, micas, pigment, oxide,
    glitter, colourant, colourants, clay,
    charcoal, powder, fragrance, fragrance oil,
    essential oil, candle dye, dye, pigmento,
    oxido, purpurina, colorante, arcilla,
    fragancia, esencia, aceite esencial
  `,
  contact: spaced`
    splash, splashed, splashes,
    splashback, splatter, splattered,
    spattered, sprayed, squirted, flicked,
    flew, popped, dripped,
    spilled, spilt, erupted,
    got some, got it, got lye, got soap,
    got batter, got a bit, got a drop,
    rubbed, wiped, touched,
    salpico, salpique, salpicado, salpicadura,
    entro, cayo, salto, escurrio,
    chorreo, derramo, toque, talle,
    frote, restregue, me paso
  `,
  ...IN_THE_EYE,
  pouring:
    'pour, poured, pouring, verti, eche, vertiendo, mixed, mixing, mezcle, mezclando, stirring, stick blending, making soap, haciendo jabon',
  onme: 'on me, onto me, over me, all over me, on myself, over myself, on him, onto him, on her, onto her, encima de mi, sobre mi, me cayo encima, encima mio',
  boilover: spaced`
    boil over, boiled over, boiling over, boils over,
    bubbled over, foamed over, volcanoed, erupted,
    overflowed, exploded, spilled, spilt,
    splashed, splattered, spat, tipped,
    poured, fell, dumped, derramo,
    desbordo, salpico, exploto
  `,
  ranonme: spaced`
    me escurrio, me chorreo, me cayo,
    me salpico, me salpique, me derrame, me salto,
    se me escurrio, se me derramo, se me cayo, me echo,
    me moje, le escurrio, le chorreo, le salpico
  `,
  splashedself:
    'me salpique, me he salpicado, se salpico, splashed myself, i got splashed, spilled on myself',
  upnose:
    'up my nose, up his nose, up her nose, in my nose, in his nose, in her nose, into my nose, por la nariz, en la nariz',
  blister: phrases(
    pairs(
      'have, got, has, getting, got some, have some, salio, salieron, tengo, tiene, hizo, hicieron',
      'a blister, blister, blisters, a big blister, una ampolla, ampolla, ampollas',
    ),
    pairs('my, his, her', 'blister, blisters'),
  ),
  /** Skin that lye has softened day after day: it does not hurt at first. */
  rawskin: spaced`
    raw, red raw,
    cracking, cracked, cracks,
    bleeding, bleed, bleeds,
    splitting, split open, peeling, peeled,
    shredded,
    agrietadas, agrietados, agrietan, se agrietan,
    sangran, sangrando, en carne viva,
    se pelan, peladas, peladisimas,
    despellejadas
  `,
  barehanded: spaced`
    bare handed, barehanded, bare hands, bare fingers,
    unmoulding, unmolding, unmoulded, unmolded,
    without gloves, no gloves, gloveless,
    desmoldo, desmoldar, desmoldando, desmolde,
    sin guantes, a mano pelada, manos desnudas
  `,
  fingerpart: spaced`
    fingertip, fingertips,
    yema, yemas, yemas de los dedos,
    fingernail, fingernails, cuticle, cuticles,
    under my nail, under my nails, nail bed, una del dedo,
    debajo de la una, bajo la una, bajo las unas,
    dedo, dedos, finger, fingers,
    brazo, mano, manos, arm,
    hand, hands, pierna, leg
  `,
  /** Lye eats deep and numbs what it eats: a hole in a hand need not hurt. */
  holed: spaced`
    ${pairs('ate, eaten, eating, burned, burnt, burning, made, left', 'a hole, a wee hole, a big hole, a hole in, a crater, through')},
    ${pairs('hizo, ha hecho, comio, abrio, dejo', 'un hueco, un hoyo, un agujero, un boquete')}
  `,
  /** Lungs that lye dust or mist has hurt fill with water, and what comes up is pink. */
  pinkcough: phrases(
    pairs(
      pairs('cough, coughing, coughed, coughs', 'up, out'),
      'blood, pink, pinkish, red, bloody, some blood, a bit of blood, pink stuff, pink froth, pink foam',
    ),
    pairs('cough, coughing, coughed', 'blood, pink'),
    pairs('pink, pinkish, bloody', 'phlegm, sputum'),
    pairs('tose, toso, tosiendo, tosio', 'sangre, rosado, rosa, con sangre, espuma rosada, flema rosada'),
    pairs('flema, flemas, esputo', 'rosada, rosado, rosa, con sangre'),
  ),
  outcold: spaced`
    unconscious, passed out, fainted, faints,
    collapsed, unresponsive, not breathing, isnt breathing,
    not waking up, wont wake up, blacked out, lost consciousness,
    desmayo, desmaye, se desmayo,
    me desmaye, desmayado, desmayada,
    inconsciente, se desplomo,
    no despierta, no responde, no reacciona, no respira,
    perdio el conocimiento
  `,
  ...AT_THE_BENCH,
} as const;

export type OutrightWord = keyof typeof OUTRIGHT_WORDS;
