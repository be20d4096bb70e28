import { spaced } from '../../../over-lines.ts';

/** Small words that turn or weaken what stands beside them, English and Spanish. */
export const GRAMMAR = {
  /** Opens a denial that runs to the end of its clause. */
  deny: spaced`
    no, not, nt, never, without, none, nothing, neither, nor, isnt, arent, wasnt, werent, doesnt, dont,
    didnt, hasnt, havent, hadnt, wont, wouldnt, cant, cannot, couldnt, aint, shouldnt, zero, lacks,
    lacking, absent, absence, sin, ni, nunca, tampoco, nada, ningun, ninguna, ninguno, jamas, refuses,
    refused, fails, failed, nowhere, hardly, barely, isn, doesn, didn, wasn, shouldn, couldn, wouldn,
    weren, hasn, haven
  `,
  /** Looks like a denial and is none. */
  notdeny: spaced`
    not only, not just, not sure, not certain, no idea, no clue, no matter, no doubt, dont know,
    do not know, dont understand, cant tell, cant understand, cant figure, cant work out, cant stop,
    cant help, cant believe, cant get rid, wont stop, wont go away, doesnt go away, not know, no se,
    no entiendo, no solo, sin duda, no se por que, no se que, dont get it, dont get why, why not,
    no longer sure, nothing but, nada mas, none other, cant explain, dont remember, havent a clue,
    cant say, if not, no wonder, no luck, couldnt believe, didnt expect, never seen, never had,
    never happened, nothing wrong, nothing helps, no help, cant remember, not happy, not pleased, no good,
    nothing like it, no problem, couldnt help, didnt change anything, no surprise, didnt notice,
    never noticed, hadnt noticed, didnt realise, didnt realize, not long, not long after, cant wait,
    didnt think, not even, no fear, didnt stop, doesnt stop, didnt bother, not to mention, nothing special,
    nothing unusual, nothing fancy, nothing else, no more than, no less than, does not go away, no offence,
    not again, not too long, zero idea, no experience, not an expert
  `,
  /** Denies what stood just before it: "zap test negative", "ash: none". */
  denyafter:
    'negative, none, free, absent, nope, nada, zero, gone now, clear now, nil, negativo, fine, passed, ok, okay, normal, bien',
  /** Ends a denial and begins a new thought. */
  contrast: spaced`
    but, however, though, although, yet, except, instead its, whereas, while, only that, pero, sino,
    aunque, salvo, excepto, mas bien, just that, apart from, other than, otherwise, just, until, hasta, so,
    then, because, since, cuz, coz, bc, porque, and now, and then, now, ahora, and the, and it, and they,
    y se, y la, y el, y ahora, when, cuando, then again, which, que se, entonces
  `,
  /** Opens a question clause that a denial must not reach into: "I don't know why it is brown". */
  why: 'why, how come, if, whether, what, how, where, por que, como, donde, si',
  /** What was hoped for, not what is. */
  wish: spaced`
    supposed to be, suppose to be, meant to be, should be, should have been, wanted, want, wanting,
    was going for, going for, was after, was hoping, hoped for, hoping for, expected, expecting, aimed for,
    aiming for, was aiming, intended, planned, supposed to, was promised, instead of, rather than,
    deberia ser, tenia que ser, iba a ser, queria, esperaba, en vez de, en lugar de, used to be,
    was originally, started as, started out, started off, was a lovely, was a nice, was bright,
    was beautiful, era, looked in the jar, in the jar, in the bag, in the bottle, promised, ought to be,
    dreaming of, wished for
  `,
  /** A guess at a name, not a sight. */
  guess: spaced`
    could it be, could be, might be, may be, maybe, is it, is this, is that, i think, i guess, i suspect,
    wondering, wonder, worried, afraid, scared, perhaps, possibly, my friend says, somebody said,
    someone said, someone told, they say, people say, everyone says, was told, told me, says its, said its,
    not sure if, not sure whether, thought it was, thought, assumed, first guess, i bet, guessing, sera,
    puede ser, creo que, quizas, quiza, tal vez, me dicen, me dijeron, es esto, supongo, presumably,
    must be, looks like it could, suspect, if its, not sure, blame, blaming
  `,
} as const;
