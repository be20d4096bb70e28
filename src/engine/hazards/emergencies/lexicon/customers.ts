import { spaced } from '../../../over-lines.ts';

/** Customers and friends who used a soap, and what is asked for them. Written as in `harm.ts`. */
export const CUSTOMER_WORDS = {
  /** Told of a customer, a first aid is asked for. */
  allergy: spaced`
    da alergia, da reaccion, dio reaccion, hizo reaccion,
    dio una reaccion, hace reaccion, dar alergia, de alergia,
    diera alergia, tiene alergia, tuviera alergia,
    es alergica, es alergico,
    allergy, allergies, allergic, is allergic,
    has an allergy, has a reaction, have a reaction, has an allergic reaction,
    reacts to, reaction to
  `,
  advise: spaced`
    se recomienda hacer,
    que se hace, que hacer, que debe hacer, que tiene que hacer,
    que hago, que le digo, que le digo que haga, que hacemos,
    what to do, what do i do, what should they do, what should she do,
    what should he do, what do they do, what do i tell, what do i tell them,
    what should i tell, what do you do, what do you recommend doing,
    first aid
  `,
  /** Somebody used it. */
  used: spaced`
    wash, washed, washing, washes,
    use, used, using, uses,
    bath, bathed, bathing, bathe,
    shower, showered, showering,
    lathered, started using,
    tried it, tried the, tried my,
    gave, customer, customers, client,
    buyer,
    lave, lavo, lavado, lavarme, lavarse,
    lavar, lavando, lavaron, lavarle,
    uso,
    usar, usado, usando, usa,
    use,
    bane, bano, banado, banarme,
    banarse, banarlo, banarla, banamos,
    ducha, duche, duchado,
    ducharme, ducharse, ducho,
    regale, vendi,
    clienta, clientas, cliente,
    compradora, probo mi, probe el,
    con mi jabon, con el jabon, from my soap, from the soap,
    after the soap, my soap gave
  `,
} as const;
