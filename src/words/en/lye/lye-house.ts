import { spaced } from '../../../engine/over-lines.ts';

/** What is said to questions of safety about a house where soap is made: its cleaners, its sink, how a loaf behaves. */
export const lyeHouse = {
  'lye-with-cleaner': {
    answer: ['Never: lye is mixed with no other cleaner, not with bleach, ammonia, acid or drain opener.'],
    why: [
      'Bleach gives off poisonous gas with acids and ammonia; strong lye heats and spits with most things.',
      spaced`
        For a pot: let the soap in it harden a day, wipe it out, then hot water and washing-up liquid,
        rinsed well between one cleaner and the next.
      `,
      'Gloves, goggles, open window.',
      'If they have met already, or it smells, or somebody coughs: out into fresh air, and /first-aid.',
    ],
  },
  'hot-crack': {
    answer: ['Unwrap it and let it cool, a tray under it: a hot loaf with a crack on top has overheated.'],
    why: [
      'Gloves and goggles; keep your face away, do not press or stir it.',
      'Moving air or a fan, a cold floor under the mould, out of the oven.',
      spaced`
        When it is cold the crack is mostly looks: cut it after a day, look for oil or clear drops that
        have separated, and use it only if it shows none and does not zap.
      `,
      'If it rises on, spits or smokes: step back, leave it, keep everybody away, and /first-aid.',
    ],
  },
  'batter-away': {
    answer: ['No: raw batter goes down no sink.', 'It is caustic, and sets in the pipe.'],
    why: [
      'Scrape it into a lined box or a spare mould and let it harden; cured and without a zap it is soap.',
      'Wipe pot and tools with paper, gloves and goggles on, leave them a day, then wash.',
      'Paper and scraps in a closed bag, out of reach of children and animals, by your local rules.',
    ],
  },
  'safe-test': {
    answer: [
      'Cured four weeks, weights that were right, no zap, nothing oozing: then use it.',
      'One “no” and it waits.',
    ],
    why: [
      'First the numbers: tell me “I put 100 g lye in 700 g olive” and I check them.',
      spaced`
        Then look: no white crystals inside, no clear drops, no greasy layer. pH paper on a wet lather:
        9 to 10.5 is usual, 11 and over is suspect, and a good figure alone proves nothing.
      `,
      'A sting, or a zap, means free lye; never the tongue to find out.',
      'Gloves until then; whoever sells it needs what local rules ask.',
    ],
  },
  'no-superfat': {
    answer: [
      'No reserve at 0 %: any slip makes it lye-heavy. 5 % is usual; 15 to 20 % for a bar of all coconut.',
    ],
    why: [
      'Oils differ from batch to batch by 2 to 3 %, and so does a scale: at 0 % half of such bars have lye over.',
      'For laundry some makers go to 0 to 1 %, never for skin.',
      'All-coconut soap strips skin at 5 %, hence the more.',
      '/plan oils:“coconut 100%” size:“1000 g oils” superfat:20',
    ],
  },
  vanillin: {
    answer: ['About 1 % vanillin turns soap tan, 5 % brown, 10 % and over dark brown, within days to weeks.'],
    why: [
      'No white hides it: colour only a part that you leave unscented, or accept brown.',
      spaced`
        How much: the share for rinse-off soap in its certificate (IFRA category 9), usually up to 3 %
        of the oils (30 g per kg), weighed, never more.
      `,
      'Its vanillin percent is no dose.',
      '/plan fragrance:“3%, vanillin 10%”',
    ],
  },
  'scale-batch': {
    answer: ['Everything by the same number: twice the oils take twice the lye and twice the water.'],
    why: [
      'So 99 g lye for 700 g oils is 198 g for 1400 g of the same oils.',
      spaced`
        Other oils take another lye: tell me oil by oil, such as “how much lye for 1000 g olive and 400
        g coconut”, and check that it fits: /plan with the mould’s size works it out.
      `,
      'A larger batch also gets hotter.',
    ],
  },
};
