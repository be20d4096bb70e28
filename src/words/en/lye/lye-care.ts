import { spaced } from '../../../engine/over-lines.ts';

/** What is said of lye dosed by guess, of what goes on in the jug, and of who stands near and what they do. */
export const lyeCare = {
  'lye-guessed': {
    answer: 'No guess: lye water of unknown strength goes into no soap.',
    why: spaced`
      If jug and water were weighed before: weigh jug and all now; less jug, less water, the rest is lye,
      as long as it did not boil or stand open. Half poured: weigh what is left in the jug,
      and the empty jug; the share that is missing went in. Neither known: goggles and gloves, let it cool,
      a labelled HDPE bottle,
      caustic waste by your local rules. Start again with a fresh battery; the jug on the scale first,
      tare, then the lye.
    `,
  },
  'fluid-ounces': {
    answer: 'Lye is ounces of weight, 28.35 g each, on a scale. Never fluid ounces, never a measuring cup.',
    why: spaced`
      A fluid ounce is a space: filled with beads it holds more lye than an ounce weighs, filled with
      flakes less. Measured that way already: the amount is unknown. Do not use it, gloves and goggles;
      weigh what is left in the tub against what it held, or start again by weight in grams.
    `,
  },
  'too-much-in': {
    answer:
      'Do not use it and do not touch it bare: too much lye stays in the bar and burns. Work out how much.',
    why: spaced`
      Goggles and gloves. Ask me with what really went in,
      such as “I put 180 g lye in 1000 g olive”: I say the superfat. Below 0 %: only if every weight is certain,
      the missing oils, weighed and warm, are stirred into the batter now,
      or a set loaf is rebatched with them. Not certain: a closed, labelled plastic tub,
      caustic waste by your local rules. Waiting, pH paper or a taste do not make it safe.
    `,
  },
  'too-little-in': {
    answer: 'Too little lye does not burn, it leaves oil over: soft, greasy, soon rancid. Add none by guess.',
    why: spaced`
      Ask me with what went in, such as “I put 100 g lye in 1000 g olive”: up to 10 % superfat it is a mild
      bar, 20 % only in all coconut. Far short: weigh out the lye that is missing, dissolve it in at least
      its own weight of cold water, let it cool, and blend it in while the batter is still liquid, goggles
      and gloves on. Never dry, never tomorrow. Until it is clear which weight is right, treat it as
      caustic.
    `,
  },
  'extra-lye': {
    answer: 'No: not a gram more. Lye that the oils do not take stays in the bar and burns.',
    why: spaced`
      It cleans no better and sets no harder. In 500 g olive 5 g more than the 5 % line is down to about −2
      %. Round down, never up: 64.4 g is 64 g. 5 % superfat is the usual reserve; 0 % is the floor, for
      laundry alone, never below. For what you weighed ask “I put 70 g lye in 500 g olive”.
    `,
  },
  'rest-later': {
    answer: 'No: all the lye goes in at once. The rest tomorrow does not mix in any more.',
    why: spaced`
      By then the batter is stiff or has separated, and new lye sits in pockets that burn. Not begun: wait
      until you have all of it, or make less: “how much lye for 300 g olive” for what your lye is enough
      for. Begun already: note what went in and ask “I put 40 g lye in 500 g olive”; it is kept labelled,
      gloves on, out of reach, and rebatched with the weighed, dissolved rest, or discarded by your local
      rules.
    `,
  },
  'second-water': {
    answer: 'It has lye enough and not too much: it is only strong, thick and hot. Add no water now.',
    why: spaced`
      Water carries lye and takes no part in the soap. With 1:1 lye water the batter sets fast, gets hot,
      may crack or crumble: goggles and gloves, do not cover it, cut it early. It counts only if the lye
      was clear, all dissolved and weighed right. White crystals, a wet sting: do not use it. Four weeks of
      cure as ever.
    `,
  },
  'oil-spilled': {
    answer: 'Do not pour the lye in: less oil takes less lye, and the rest burns.',
    why: spaced`
      Goggles on, step round the oil, it is slippery. Weigh the oil that is left, or weigh out anew what
      was lost and put it back. Else weigh the lye anew: ask “how much lye for 600 g olive”. Lye water made
      already: pour in only the share by weight, such as 600/800 of it, and keep the rest labelled. Poured
      in already: gloves, add the lost oil, weighed, now while it is liquid.
    `,
  },
  'two-figures': {
    answer: 'Two figures that differ a little are both right for another superfat: take the lower one.',
    why: spaced`
      500 g olive take about 67.8 g NaOH at 0 % and 64.4 g at 5 %. Books also count other oil values (a
      range of some 3 %) and another purity. Compare superfat, purity and NaOH or KOH; the lower figure
      leaves more oil over and never burns. A difference of more than 10 % is another oil, KOH, or a
      misprint: do not mix it until you know. I can be wrong too: check me with a second source.
    `,
  },
  'water-unwritten': {
    answer:
      'Only not written down: twice the weight of the lye, 140 g for 70 g. Not put in at all: add none now.',
    why: spaced`
      Water may be 1.5 to 2.5 times the lye; ask “how much water for 70 g lye”. If dry lye is in the oils
      already: no water on it, it heats and spits; goggles, gloves, leave it, and ask “I forgot the water”.
    `,
  },
  'metal-in-lye': {
    answer: 'Step back, no flame, no spark: there is metal in the lye. It makes hydrogen, which can explode.',
    why: spaced`
      Grey, fizzing or smelling lye water is aluminium,
      zinc or tin being eaten. Everybody out; window open, gas,
      cigarettes and switches left alone; do not stir, do not lid it,
      pour nothing in. Wait outside until it has stopped and is cold. Then goggles, gloves,
      steel or plastic tongs for the metal; the liquid into an open plastic tub in the open air, labelled,
      never closed tight while it bubbles: caustic waste by your local rules. It makes no soap. Coughing,
      dizzy, splashed: /first-aid.
    `,
  },
  'cloudy-lye': {
    answer:
      'White cloud or flakes in cold lye water are mostly carbonate: let it settle, use only what is clear.',
    why: spaced`
      Old or damp lye has it, and hard water. Still warm and grains at the bottom: not dissolved yet, stir
      on. Cold and clear above the flakes: pour it off through steel mesh or polyester, goggles, gloves; it
      is a little weaker, never stronger. Thick with white, or the lye was clumped: do not use it, caustic
      waste by your local rules. Grey and bubbling is metal: step back.
    `,
  },
  'undissolved-lye': {
    answer:
      'Not into the oils until it is clear: stir on. If it has gone cold, stand the open jug in warm tap water.',
    why: spaced`
      Grains that go into the oils burn weeks later. Still hot: cold water round the jug. At least as much
      water as lye by weight, better twice. No poking, no flame. A lump at the bottom: wait, stir gently
      with silicone or steel, never force it, it spits. Set or frozen in the cold (lye of 50 % does at 15
      °C (59 °F)): the open jug in warm tap water, stir until clear; never microwave or flame. It stays
      cloudy: let it settle.
    `,
  },
  'honey-in-lye': {
    answer: 'Never honey or sugar into lye water that is made: it heats, foams over and turns brown.',
    why: spaced`
      Sugar or salt: dissolve it in the cold water first, then the lye, slowly,
      jug in ice. Honey: in a little kept-back cold water,
      into the oils or at thin trace. At most 30 g sugar or honey per kg oils (a tablespoon of honey is 21 g),
      10 to 20 g salt; more overheats or crumbles. No wrapping, no oven. If it foams now: step back,
      face away, let it fall. /plan additives:“honey 15 g”
    `,
  },
  'alcohol-in-lye': {
    answer:
      'No: no alcohol into lye water. Lye reaches 90 °C (194 °F), alcohol boils at 78 °C (172 °F): it spits and its vapour burns.',
    why: spaced`
      Nor vodka against ash: a spray on the poured top is what some use, with no flame in the room. Against
      soda ash: less water, cover the mould, gel, or a plane afterwards. Wine and beer: boiled until flat
      and free of alcohol, then ice-cold.
    `,
  },
  'water-was-put-on': {
    answer:
      'If it has cooled, is clear and nothing is left at the bottom, it may be used. Next time lye into water.',
    why: spaced`
      What makes water on lye dangerous is the boiling and spitting at that moment; afterwards it is lye
      water, if both were weighed. Weigh it: jug, lye and water must add up, else water has boiled off
      (that alone does not change the lye). Grains or a crust: stir in the open jug standing in cold water
      until it is clear. Goggles, gloves. Splashed: running water, /first-aid.
    `,
  },
  'unsteady-hands': {
    answer: 'Not the lye: let a second person weigh, mix and pour it. All the rest can be yours.',
    why: spaced`
      With hands that shake, eyes that see little, or a weak grip,
      one slip is a burn. Choose colours and scents, weigh oils on a talking scale,
      cut and stamp after two days with gloves. Never alone. Jug with a handle, half full,
      in a tray on a low table, goggles and gloves on all. Or melt-and-pour,
      where there is no lye. Ask your doctor where medicine makes you dizzy.
    `,
  },
  'class-rules': {
    answer: 'Only you handle lye, mixed beforehand outdoors; no running water in the room, no lye in it.',
    why: spaced`
      For each: sealed goggles, gloves, long sleeves, closed shoes. Grown-ups only, a table each,
      2 m from the jug, no food, no flame, window open; one helper for six. Cooled,
      labelled lye water is poured by you. Nobody carries batter about. Elderly or unsteady guests,
      pregnancy, asthma: colours, moulds and cutting cured bars,
      or melt-and-pour. Rinsing water and phone at hand,
      first aid said before you start; ask insurance and house rules.
    `,
  },
  'food-kitchen': {
    answer: 'No: no lye where food is made for others.',
    why: spaced`
      Lye and raw soap get onto boards, into drains and dishwashers; food law keeps dangerous substances
      out of such kitchens, and colleagues do not know what stands there. Another room with running water
      and a window, own tools that never go back, everything labelled and locked.
    `,
  },
  'not-sober': {
    answer: 'No: no lye after a drink, tired out, or on what makes you dizzy. Make it tomorrow.',
    why: spaced`
      A wrong weight burns later, a slip at once. Oils keep, dry lye in its closed tub too. Lye water made
      already: label it, cover it loosely, lock it away until you are sober. Somebody drank lye: that is
      another thing, /first-aid what:lye-swallowed.
    `,
  },
  fan: {
    answer:
      'No fan on you or on the lye: it blows caustic mist and powder into eyes. Turn it off while you mix.',
    why: spaced`
      Air must go from you to the window: mix beside an open window or outside with the wind at your side.
      A fan, if any, stands behind you at the window, blowing out. Goggles. Later it may cool a loaf.
    `,
  },
  'flame-near': {
    answer: 'No flame, no cigarette, no pilot light beside you: put it out first, or mix elsewhere.',
    why: spaced`
      Lye itself does not burn. But alcohol and scents do, metal in lye makes hydrogen,
      an overheated pot of fat catches fire,
      and a hand with a cigarette goes to the mouth. A boiler draws steam in. Candles and gas off,
      heat by electric plate, then off. If something burns: lid, heat off, never water, out and call.
    `,
  },
  'goggles-fog': {
    answer: 'On again before you go on: step back, wipe them away from the lye, put them back.',
    why: spaced`
      One drop costs an eye. Clean gloves off first, hands washed, then the face. Against fog: goggles with
      side vents that bend (indirect), a drop of washing-up liquid rubbed dry inside, looser mask, cooler
      room, face out of the steam. Something got in: running water 15 minutes, /first-aid.
    `,
  },
  'power-cut': {
    answer: 'Go on by hand: a whisk, goggles and gloves on. It takes longer, it does not spoil.',
    why: spaced`
      No light to see by: leave it, covered, labelled, door shut, and wait. Whisk steadily until it no
      longer separates; warm fats help. Plug out before power comes back. Not thick after an hour and
      nobody can stay: see that no child or animal can reach it, do not pour it thin. Never alone at night
      without light, phone and running water.
    `,
  },
  'left-halfway': {
    answer: 'No: do not stop half way. Batter separates or sets, and it is caustic in the pot.',
    why: spaced`
      Begin only with two free hours. Not in the fridge, not overnight, not in anything for food. If you
      must go: pour it at trace, or let somebody stay with goggles on. Left already: goggles, gloves, look:
      oil on top and liquid below is blended again, warm to 40 °C (104 °F), until it holds together; hard:
      scrape it out as a rebatch. Wet drops that burn: do not use it.
    `,
  },
  'batter-in-hair': {
    answer: 'Running water now, 20 minutes, head tilted so that nothing runs into the eyes.',
    why: spaced`
      Batter and lye burn scalp, ears and eyes. Goggles stay on while you rinse the hair; take off what is
      soaked. No vinegar, no shampoo first. Burning, redness, blisters, or anything in an eye or ear: go on
      rinsing and call a doctor or the emergency number. /first-aid what:lye-skin
    `,
  },
  'soap-in-eye': {
    answer: 'Rinse now: lukewarm running water over the open eye, 15 minutes, contact lens out.',
    why: spaced`
      Cured soap stings and passes. Still red, painful, blurred or shy of light after rinsing: a doctor
      today. Raw soap, batter or lye in the eye: rinse 20 minutes and more and call the emergency number
      meanwhile. /first-aid what:lye-eye
    `,
  },
  'red-skin': {
    answer:
      'Rinse with plenty of lukewarm water now, stop using this soap, and for a baby call a doctor today.',
    why: spaced`
      New soap may hold free lye, and skin of babies is thin. No cream, no vinegar. Blisters, crying that
      does not stop, red eyes, swelling, trouble breathing: emergency number. Check the weights and the age
      of the bar; nobody uses it until then. /first-aid
    `,
  },
  'blocked-sink': {
    answer: 'No lye, no drain opener: in a pipe full of soap it heats, spits back and sets harder.',
    why: spaced`
      Goggles and gloves; it is caustic. Scoop out what stands there, put a bucket under the trap, unscrew
      it, take the plug of soap out by hand tool; hot water only after it runs. Aluminium trap: do it at
      once. Else a plumber who is told what is in it. Next time wipe pots with paper and let them stand a
      day.
    `,
  },
  'bleach-went-in': {
    answer: 'Do not use it: bleach makes no soap. Window open, out if it smells; never any acid near it.',
    why: spaced`
      Lye and bleach alone give off little, but with acid,
      vinegar or ammonia (scorched milk too) a poisonous gas. Add nothing,
      do not heat it. Cold: a labelled plastic tub, loosely closed,
      hazardous waste by your local rules. Coughing, sore eyes, a smell of chlorine: everybody out,
      /first-aid.
    `,
  },
  'used-early': {
    answer: 'Too early: four weeks of cure first. What you gave away, take back or tell them to wait.',
    why: spaced`
      In the first two days it is caustic, in the first weeks harsh, and a wrong weight shows only later.
      Tell them: not on skin, out of reach of children, until the day you name. For laundry too: gloves.
      Burning or redness: rinse with much water; if it stays, a doctor.
    `,
  },
  'old-bar': {
    answer: 'Not on skin: nobody knows how its lye was weighed, and age does not take lye away.',
    why: spaced`
      Rancid smell, orange spots, crystals, drops, a sting: away with it, gloves on,
      by your local rules. If its recipe is known and was weighed, it looks sound,
      and pH paper in its lather says 10 or less,
      for washing floors or laundry with gloves. As a keepsake: wrapped, labelled, out of reach of children.
    `,
  },
  'no-vinegar': {
    answer:
      'Acid on lye makes heat, right on the skin, and costs minutes. Water dilutes and carries it away.',
    why: spaced`
      Lye is in the skin before you find the bottle, and nobody hits the right amount. So: running water at
      once, 20 minutes, soaked clothes off. On a bench: sweep or wipe up first, then much water; weak
      vinegar only for the last trace on a rinsed surface, never on a puddle. In a bar it mends nothing.
      Burnt just now: /first-aid what:lye-skin
    `,
  },
  'zap-young': {
    answer: 'On the first days a zap is normal: gloves, wait, and test again at four weeks. No tongue on it.',
    why: spaced`
      Lye and oil need 24 to 48 hours, some bars a week or so. Keep it dry and out of reach. At four weeks:
      pH paper in the lather, 11 or more is suspect. Check the weights meanwhile (“I put 64 g lye in 500 g
      olive”): if they were wrong, no waiting helps.
    `,
  },
  'no-lye-in-it': {
    answer: 'No lye in it, no soap: it is oil and water, and stays so. It does not burn.',
    why: spaced`
      First be sure: what went in was salt or sugar, by its own label, and no lye? Then nothing is lost
      with oils alone: pour off the water, weigh the oils, and start with lye weighed for them (“how much
      lye for 500 g olive”) in fresh cold water. Salt or sugar stays in it: better fresh oils. Where the
      lye went instead (a salt tub, a dish) is urgent: find it, nobody eats from it.
    `,
  },
  'blender-smokes': {
    answer:
      'Plug out, with dry hands, or switch off at the fuse first. Do not pull it out of the pot running.',
    why: spaced`
      Goggles and gloves on; let it cool, lift it out by the dry end, go on with a whisk. It is not used
      again. Shock, flame: fuse off, never water on it, emergency number. In the pot itself smoke or foam:
      step back, leave it.
    `,
  },
  'rusty-lid': {
    answer: 'Goggles and gloves, wipe it off with paper, then water; keep lye under plastic, not metal.',
    why: spaced`
      Mist and damp lye eat tin, zinc and aluminium: a lid rusts, a hood goes dull. Old traces are no
      danger, wet grey foam is: step back, no flame. Lye with rust, clumps or damp in it is not weighed for
      soap any more: leave a lid that sticks or bulges alone, do not force it, hand it in as caustic waste
      by your local rules.
    `,
  },
  'purity-unknown': {
    answer:
      'No soap of lye whose label names neither sodium hydroxide nor its purity: ask the seller, or buy another.',
    why: spaced`
      A range such as 95–97 %: count with the higher figure, then it is never too much: /plan lye:“NaOH
      97%”. Pearls, flakes and beads differ in form only. No figure at all, but pure sodium hydroxide by
      name: count it as 100 %, the bar is a little softer. Drain openers, mixtures, rusty or unlabelled
      tins: never.
    `,
  },
};
