import { spaced } from '../../../over-lines.ts';

/** Small words that deny, end a denial, or put a thing into the past. Named as `flaws/reading/polarity.ts` asks. */
export const EMERGENCY_GRAMMAR = {
  deny: spaced`
    no, not, nt, never, without, none, nothing, neither, nor, isnt, arent, wasnt, werent, doesnt, dont,
    didnt, hasnt, havent, hadnt, wont, wouldnt, aint, shouldnt, sin, ni, nunca, tampoco, ningun, ninguna,
    ninguno, jamas, nobody, no one, nadie, avoid, evitar, prevent, away from, lejos de, para que no,
    so that no, never touched, free of, instead of, rather than, en vez de, en lugar de
  `,
  notdeny: spaced`
    not only, not just, not sure, not certain, no idea, no clue, no matter, no doubt, dont know,
    do not know, dont understand, cant tell, cant stop, cant help, cant get, wont stop, wont go away,
    doesnt go away, wont let, doesnt stop, didnt stop, not know, no se, no se que, no sabemos, no se si,
    no se por que, no entiendo, no solo, sin duda, nothing helps, not even, didnt realise, didnt realize,
    didnt notice, hadnt noticed, not noticing, without noticing, without thinking, without gloves,
    no gloves, no goggles, without goggles, not wearing, wasnt wearing, werent wearing, didnt wear,
    didnt have gloves, dont have gloves, didnt have, wasnt looking, not looking, didnt know, didnt see,
    doesnt look good, not good, not ok, not okay, not right, not well, not normal, not working,
    not stopping, not helping, not feeling, not enough, no water, no vinegar, dont panic, why not,
    no longer, sin guantes, sin gafas, sin proteccion, sin querer, sin darme cuenta, sin darse cuenta,
    sin mirar, sin pensar, sin ventana, sin ventilacion, sin parar, no para, no paro, no paraba, no deja,
    no deja de, no me di cuenta, no se dio cuenta, no llevaba, no tenia, no me fije, no tengo, no usaba,
    no usa, no puedo, no puede, no puede hablar, no me deja, no quiere, no sabe, no sabia, no sabiamos,
    no vi, no es normal, no me va, no se mueve, no se va, no se calma, no se pasa, no se le pasa,
    no le quita, no se quita, no baja, no aguanto, nada mas, no more, dice que no, el dice q no,
    dice q no es nada, no es nada pero, it wasnt me, its not me, not me, not mine, no stainless,
    not stainless, not stainless steel, isnt stainless, no es acero, no era acero, no idea what,
    doesnt seem, no se quiere, no responde, not responding, not moving, not breathing, no respira,
    cant reach, no coge, no contesta, no la dejes, not sure if, dont want to scare, doesnt want,
    wont drink, wont eat, no come, never happened, never done, never had, not sure what, without looking,
    without checking, no window, no windows, no mask, without a mask, no shoes, without shoes,
    sin mascarilla, sin zapatos, sin lentes, no goggles on, no gloves on, cant see, cant open, cannot open,
    cant swallow, inhaler not helping, not going away, no se le quita, no se le va, no puede tragar,
    no le pasa
  `,
  contrast: spaced`
    but, however, though, although, yet, except, whereas, only that, pero, sino, aunque, salvo, just,
    until, hasta, so, then, because, since, cuz, coz, bc, porque, and now, and then, now, ahora, and the,
    and it, and they, y se, y la, y el, y ahora, when, cuando, then again, which, entonces, and, y, and my,
    and his, or, just now, ya, still, todavia
  `,
  why: 'why, how come, if, whether, what, how, where, por que, como, donde, si, que hago',
  turn: 'suddenly, de repente',
  wish: spaced`
    i want to make, want to make, want to try, want a, looking for a, quiero hacer, quiero un, quiero una,
    quisiera hacer, thinking of making, planning to make, as if
  `,
  denyafter: 'negative, none, nope, zero',
  guess: 'maybe, quizas',
  /** Long over: what stands in the same sentence is no emergency. */
  past: spaced`
    last year, last month, last summer, last winter, last spring, last autumn, last fall, last christmas,
    last season, year ago, years ago, months ago, a month ago, month ago, ages ago, long ago, a while back,
    back in, when i was a kid, when i was little, when i was young, as a child, as a kid, in the past,
    once upon, the other year, since she was little, since he was little, since i was little,
    since childhood, in the war, during the war, after the war, back then, in those days, in my day,
    in her day, en la posguerra, posguerra, postguerra, en la guerra, en aquella epoca,
    en aquellos tiempos, en aquel entonces, cuando era joven, de joven, el ano pasado, el mes pasado,
    hace anos, hace un ano, hace dos anos, hace tres anos, hace cuatro anos, hace cinco anos,
    hace seis anos, hace siete anos, hace ocho anos, hace nueve anos, hace diez anos, hace quince anos,
    hace veinte anos, hace treinta anos, hace cuarenta anos, in my student days, long healed, hace meses,
    hace un mes, hace tiempo, hace mucho, de nina, de nino, de chica, de chico, cuando era,
    el verano pasado, el invierno pasado, en su dia, anos atras, meses atras, un ano atras, desde pequena,
    desde pequeno, siempre ha tenido, always had, healed, all healed, healed up, healed fine, ya sano,
    ya se curo, ya quedo bien, quedo bien, cicatrizo, nobody hurt, no one hurt, nobody was hurt,
    no one was hurt, nobody got hurt, no one got hurt, nobody is hurt, no one is hurt, no harm done,
    nadie se lastimo, nadie se hizo dano, nadie esta herido, nadie salio herido, nobody was around,
    not from soap, not from the soap, no por el jabon, no es por el jabon, no es por ninguna, no del jabon,
    already know, ya se que, i know that, asked in advance, read about, i read that, lei que, in a clip,
    my character, in the novel, en la novela, in a movie
  `,
  /** Says that the whole text is none. */
  falsealarm: 'false alarm, falsa alarma',
  /**
   * Says that nothing is happening: lye not opened yet, metal only asked about, everything over and clean. Where the
   * same text tells of harm, these count for nothing.
   */
  idle: spaced`
    not opened, havent opened, have not opened, hasnt been opened, not opened yet, unopened, still sealed,
    still in its packet, sin abrir, no la he abierto, no lo he abierto, no la he destapado,
    no lo he destapado, no la abri, no lo abri, sin destapar, aun cerrada, this is curiosity,
    just curiosity, just curious, out of curiosity, only curious, purely curious, purely theoretical,
    in theory, hypothetically, es curiosidad, por curiosidad, solo curiosidad, pura curiosidad, en teoria,
    not going to mix, not mixing anything, wont be mixing, we are not making any, no vamos a mezclar,
    no voy a mezclar, no mezclamos nada, for the poster, for a poster, school poster, for a school,
    for the science fair, es solo el cartel, solo el cartel, para el cartel, para un cartel,
    exposicion de la escuela, para la escuela, feria de ciencias, why is it not acceptable,
    still not acceptable, why must you not, why would a bar, why might a bar, why would a soap,
    why shouldnt you use, why should you not use, why cant you use, why cant you, por que no se debe,
    por que no se puede, por que no debe, all cleaned up, cleaned it all up, all mopped up,
    already cleaned, everything is clean, ya limpie todo, ya limpie, todo limpio, ya esta todo limpio,
    quedo todo limpio, ni se asomo, ni se acerco, ni lo toco, ni la toco, didnt go near, didnt come near,
    never went near, was nowhere near, were nowhere near, was shut in, was locked in
  `,
  /** What follows, or the next words, is a picture, a shape or a name and nobody's body. */
  likeness: spaced`
    shaped like, in the shape of, look like, stamp with, stamps with, stamp of, stamp for, mould with,
    mold with, picture of, pictures of, drawing of, logo with, logo of, label with, design with, name it,
    name them, to call it, called it, en forma de, con forma de, forma de, sello de, sello con, sello para,
    dibujo de, logo de, etiqueta con, se llame, llamarlo, llamarle, ponerle de nombre, pensaba en,
    jabon para, jabones para, champu para, soap for my, soap for, shampoo for
  `,
  /** Brings the text back to today. */
  today:
    'today, now, right now, just now, this morning, tonight, hoy, ahora, ahorita, ahora mismo, recien, esta manana, esta tarde, anoche, but, pero',
} as const;
