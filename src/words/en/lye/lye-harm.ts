import { spaced } from '../../../engine/over-lines.ts';

/** What is said where somebody may be hurt near lye: what got into food, fire, gas, current, and weights that went wrong. */
export const lyeHarm = {
  swallowed: {
    answer: [
      'Rinse the mouth and spit, do not make anyone vomit, and call a poison centre or your emergency number now.',
    ],
    why: [
      'Call even if nothing hurts.',
      'Short of breath, drooling, cannot swallow, sleepy: ambulance.',
      'Only if fully awake and able to swallow: a few sips of water, nothing else; no vinegar, no lemon.',
      'Steps and numbers: /first-aid what:lye-swallowed.',
    ],
  },
  'lye-in-food': {
    answer: ['Nobody eats it: throw all of it away, closed and out of reach of children and animals.'],
    why: [
      'Lye burns mouth and gullet; baking or boiling does not take it away, and it cannot be picked out.',
      spaced`
        Gloves; wrap it twice or use a labelled closed tub, with the rest of that sugar, salt or flour;
        rinse pot and spoons with much water.
      `,
      spaced`
        If anyone ate or tasted it: rinse the mouth, spit, no vomiting, nothing sour, and call a poison
        centre or your emergency number now.
      `,
      '/first-aid what:lye-swallowed',
    ],
  },
  'maybe-lye': {
    answer: [
      'Never taste or try it: treat it as lye.',
      'Gloves and goggles, close it, label it, hand it in as caustic waste.',
    ],
    why: [
      'Lye looks like salt, sugar or soda, and heats water as they do not.',
      'Nobody eats from that pot, nor what was made with it; if anyone did: rinse the mouth, no vomiting, poison centre now.',
      'Out of reach of children and animals.',
      'For soap use only what its own label calls sodium hydroxide, with its purity: a guessed powder has no known strength.',
    ],
  },
  'not-for-washing': {
    answer: ['No: home-made soap is for whole skin of hands and body, and for nothing else.'],
    why: [
      'It is alkaline: a wound, a fresh tattoo, teeth, eyes or intimate skin burn from it, and it does not kill lice.',
      'A wound: clean running water, and a doctor if it is deep or red.',
      'Lice: ask a pharmacy.',
      'Fruit, salad and meat: water only, since soap soaks in and is eaten.',
    ],
  },
  'soap-in-wound': {
    answer: ['Running water into it now, 20 minutes if the soap was raw or lye was there.'],
    why: [
      'Nothing but water, no vinegar.',
      'Cured soap only stings: rinse it, cover it, done.',
      spaced`
        Raw batter, lye water or fresh soap burns on inside the wound: a doctor today, at once if it is
        deep, whitens, or hurts more after rinsing.
      `,
      'Bleeding that does not stop: press a clean cloth on it and call.',
      'Next time gloves, and a plaster under them.',
    ],
  },
  'amounts-swapped': {
    answer: [
      'Stop: do not use it, do not heat it, add no water.',
      'It holds far too much lye and too little water.',
    ],
    why: [
      'Nothing mixed yet: weigh again, never less water than lye.',
      'Else goggles and gloves, everybody else out.',
      'In the jug: strong lye gets very hot, and water on it boils and spits; leave it to cool where nobody goes.',
      'In the pot or mould: leave it, keep it off skin.',
      'When it is cold: a labelled plastic tub (PP or HDPE), caustic waste by your local rules.',
      'How far off it is: tell me “I put 300 g lye in 900 g olive”.',
      'Then start again, lye into cold water.',
    ],
  },
  'oil-forgotten': {
    answer: ['Do not use it: the lye of the oil that is missing stays free and burns.'],
    why: [
      'Half of the oils forgotten is about twice the lye; 200 g coconut oil alone leaves about 35 g NaOH.',
      'Gloves and goggles.',
      'Still liquid in the pot: weigh that oil, warm, and blend it in now.',
      spaced`
        In the mould or set: only if every weight is certain, melt it slowly with the missing oil as a
        rebatch, cure four weeks, test for a zap.
      `,
      'If not certain: caustic waste by your local rules.',
      'Waiting does not cure it.',
      'To check: “I put 86 g lye in 400 g olive”.',
    ],
  },
  'ph-high': {
    answer: ['No: at pH 11 or more do not use it, do not give it away, gloves on.'],
    why: [
      'Sound soap is about 9 to 10.5.',
      'Younger than four weeks: leave it to cure and test again at four weeks, a fresh strip in the lather of a wetted bar.',
      'Older: it has too much lye, and waiting does not help.',
      spaced`
        Check the weights (“I put 150 g lye in 1000 g olive”); rebatch with the missing oils only if
        each is certain, else caustic waste by your local rules.
      `,
    ],
  },
  'ash-or-lye': {
    answer: ['Gloves until you know: a thin dry film is soda ash, hard grains or a sting are lye.'],
    why: [
      spaced`
        Ash: fine and even, on the side that met the air, gone when you rub it with a wet glove; it is
        harmless once cured, plane or rinse it off.
      `,
      'Lye: grains, crystals or wet drops, in spots, inside too when cut, that stay hard or sting.',
      'Never taste it.',
      'At four weeks hold pH paper to the wetted place: 11 or more, or any zap, do not use it and check the weights.',
    ],
  },
  'lye-into-water': {
    answer: ['Lye into cold water, slowly, always.', 'Never water onto lye.'],
    why: [
      'Goggles, gloves, open window.',
      spaced`
        Weigh the cold water into a jug of polypropylene (PP 5) or steel, sprinkle the lye in a little
        at a time while you stir, face away from the steam, until it is clear.
      `,
      'It gets hot, up to about 90 °C (194 °F), but does not explode.',
      'Water poured on a heap of lye boils at once and spits.',
      'Snow falls on the lake: lye falls into water.',
    ],
  },
  'bleach-mixed': {
    answer: [
      'Never: bleach is mixed with nothing, least of all with alcohol, acid or ammonia.',
      'It makes toxic gas.',
    ],
    why: [
      'With acid chlorine, with ammonia chloramines, with alcohol chlorinated vapours.',
      'Moulds need no disinfecting: hot water and washing-up liquid, rinsed and dried.',
      'If they have met: leave it, out into fresh air, window open from outside, and /first-aid if anybody coughs.',
    ],
  },
  'zap-child': {
    answer: ['No: never a child, and never pupils.', 'Nobody tests soap with a child’s tongue.'],
    why: [
      'Free lye burns a mouth at once.',
      'Whoever is grown up tests with pH paper on a wetted bar: 11 or more, do not use it.',
      'Children get bars that are cured and tested.',
      'If a child has licked some: rinse the mouth, no vomiting, and call a poison centre.',
      '/first-aid what:lye-swallowed',
    ],
  },
  'hands-full': {
    answer: [
      'No: while there is lye, both hands and both eyes are on it.',
      'No phone, no child on your arm, no cigarette.',
    ],
    why: [
      'A drop on a child’s face costs an eye, and whoever looks away pours wrong.',
      'Somebody else takes the child, out of the room; the phone off; nobody drinks, smokes or eats at that table.',
      'No time for that today: make it another day, it does not spoil.',
    ],
  },
  'bare-hands': {
    answer: ['No: gloves for the bowl, the tools and the first cut.', 'Raw soap burns.'],
    why: [
      'For two days batter and fresh soap are caustic, and it often hurts only later.',
      'Bowl and spoons: wipe with paper, gloves and goggles on, leave them a day, then wash.',
      'Cutting after 24 hours: still gloves.',
      'Bare hands once it is cured and does not zap.',
      'On skin: running water, 20 minutes.',
      'Write “lye on my skin” if it stings.',
    ],
  },
  'no-window': {
    answer: [
      'No: no lye in a room without a window.',
      'Mix it outside, or by an open window with a draught.',
    ],
    why: [
      'The steam carries caustic drops, and a small room fills at once.',
      'A cooker hood blows back and is no draught.',
      'The batter itself gives off little: dissolve the lye outside or at an open door, let it cool there, guarded, then carry it in.',
      'For a class: lye water ready beforehand, goggles and gloves for each.',
      'Whoever coughs goes out into fresh air.',
    ],
  },
  birds: {
    answer: ['No: birds out of the room, best out of the flat, before lye meets water.'],
    why: [
      'Their lungs take up mist and fumes faster than any of ours: what makes you cough can kill a bird.',
      'It comes back when the lye water is cool and covered, the room aired for an hour, and all batter is in the mould.',
      'No spray, no strong scent beside a cage.',
      'A bird that gasps or sits fluffed up: fresh air, a vet at once.',
    ],
  },
  'weak-gear': {
    answer: [
      'No: a paper or cloth mask stops no caustic mist, sandals and shorts no splash, sunglasses no drop.',
    ],
    why: [
      'Against the steam: a draught or outside, cold water, face away; stop if you cough.',
      'Goggles that close all round, gloves over the wrist, long sleeves and trousers, closed shoes, trousers over them.',
      'In summer too: it is for half an hour.',
      'A dust mask (FFP2 or N95) helps with powders only.',
    ],
  },
  'lye-by-food': {
    answer: ['No: lye never stands beside food, neither in the fridge nor in the larder.'],
    why: [
      'Somebody will take it for milk, water, salt or sugar.',
      spaced`
        Take it out now, goggles and gloves on: a closed, labelled plastic bottle or tub (HDPE or PP)
        that never held food, locked away from children and animals.
      `,
      'What it dripped on is not eaten: throw it away and wipe the shelf with much water.',
      'If anyone tasted it: rinse, no vomiting, poison centre now.',
    ],
  },
};
