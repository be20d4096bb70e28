import { spaced } from '../../../engine/over-lines.ts';

/** What is said of lye dosed by guess, of what goes on in the jug, and of who stands near and what they do. */
export const lyeCare = {
  'unsteady-hands': {
    answer: ['Not the lye: let a second person weigh, mix and pour it.', 'All the rest can be yours.'],
    why: [
      'With hands that shake, eyes that see little, or a weak grip, one slip is a burn.',
      'Choose colours and scents, weigh oils on a talking scale, cut and stamp after two days with gloves.',
      'Never alone.',
      'Jug with a handle, half full, in a tray on a low table, goggles and gloves on all.',
      'Or melt-and-pour, where there is no lye.',
      'Ask your doctor where medicine makes you dizzy.',
    ],
  },
  'class-rules': {
    answer: ['Only you handle lye, mixed beforehand outdoors; no running water in the room, no lye in it.'],
    why: [
      'For each: sealed goggles, gloves, long sleeves, closed shoes.',
      'Grown-ups only, a table each, 2 m from the jug, no food, no flame, window open; one helper for six.',
      'Cooled, labelled lye water is poured by you.',
      'Nobody carries batter about.',
      'Elderly or unsteady guests, pregnancy, asthma: colours, moulds and cutting cured bars, or melt-and-pour.',
      'Rinsing water and phone at hand, first aid said before you start; ask insurance and house rules.',
    ],
  },
  'food-kitchen': {
    answer: ['No: no lye where food is made for others.'],
    why: [
      spaced`
        Lye and raw soap get onto boards, into drains and dishwashers; food law keeps dangerous
        substances out of such kitchens, and colleagues do not know what stands there.
      `,
      'Another room with running water and a window, own tools that never go back, everything labelled and locked.',
    ],
  },
  'not-sober': {
    answer: ['No: no lye after a drink, tired out, or on what makes you dizzy.', 'Make it tomorrow.'],
    why: [
      'A wrong weight burns later, a slip at once.',
      'Oils keep, dry lye in its closed tub too.',
      'Lye water made already: label it, cover it loosely, lock it away until you are sober.',
      'Somebody drank lye: that is another thing, /first-aid what:lye-swallowed.',
    ],
  },
  fan: {
    answer: [
      'No fan on you or on the lye: it blows caustic mist and powder into eyes.',
      'Turn it off while you mix.',
    ],
    why: [
      'Air must go from you to the window: mix beside an open window or outside with the wind at your side.',
      'A fan, if any, stands behind you at the window, blowing out.',
      'Goggles.',
      'Later it may cool a loaf.',
    ],
  },
  'flame-near': {
    answer: ['No flame, no cigarette, no pilot light beside you: put it out first, or mix elsewhere.'],
    why: [
      'Lye itself does not burn.',
      spaced`
        But alcohol and scents do, metal in lye makes hydrogen, an overheated pot of fat catches fire,
        and a hand with a cigarette goes to the mouth.
      `,
      'A boiler draws steam in.',
      'Candles and gas off, heat by electric plate, then off.',
      'If something burns: lid, heat off, never water, out and call.',
    ],
  },
  'goggles-fog': {
    answer: ['On again before you go on: step back, wipe them away from the lye, put them back.'],
    why: [
      'One drop costs an eye.',
      'Clean gloves off first, hands washed, then the face.',
      spaced`
        Against fog: goggles with side vents that bend (indirect), a drop of washing-up liquid rubbed
        dry inside, looser mask, cooler room, face out of the steam.
      `,
      'Something got in: running water 15 minutes, /first-aid.',
    ],
  },
  'power-cut': {
    answer: ['Go on by hand: a whisk, goggles and gloves on.', 'It takes longer, it does not spoil.'],
    why: [
      'No light to see by: leave it, covered, labelled, door shut, and wait.',
      'Whisk steadily until it no longer separates; warm fats help.',
      'Plug out before power comes back.',
      'Not thick after an hour and nobody can stay: see that no child or animal can reach it, do not pour it thin.',
      'Never alone at night without light, phone and running water.',
    ],
  },
  'left-halfway': {
    answer: ['No: do not stop half way.', 'Batter separates or sets, and it is caustic in the pot.'],
    why: [
      'Begin only with two free hours.',
      'Not in the fridge, not overnight, not in anything for food.',
      'If you must go: pour it at trace, or let somebody stay with goggles on.',
      spaced`
        Left already: goggles, gloves, look: oil on top and liquid below is blended again, warm to 40 °C
        (104 °F), until it holds together; hard: scrape it out as a rebatch.
      `,
      'Wet drops that burn: do not use it.',
    ],
  },
  'batter-in-hair': {
    answer: ['Running water now, 20 minutes, head tilted so that nothing runs into the eyes.'],
    why: [
      'Batter and lye burn scalp, ears and eyes.',
      'Goggles stay on while you rinse the hair; take off what is soaked.',
      'No vinegar, no shampoo first.',
      'Burning, redness, blisters, or anything in an eye or ear: go on rinsing and call a doctor or the emergency number.',
      '/first-aid what:lye-skin',
    ],
  },
  'soap-in-eye': {
    answer: ['Rinse now: lukewarm running water over the open eye, 15 minutes, contact lens out.'],
    why: [
      'Cured soap stings and passes.',
      'Still red, painful, blurred or shy of light after rinsing: a doctor today.',
      'Raw soap, batter or lye in the eye: rinse 20 minutes and more and call the emergency number meanwhile.',
      '/first-aid what:lye-eye',
    ],
  },
  'red-skin': {
    answer: [
      'Rinse with plenty of lukewarm water now, stop using this soap, and for a baby call a doctor today.',
    ],
    why: [
      'New soap may hold free lye, and skin of babies is thin.',
      'No cream, no vinegar.',
      'Blisters, crying that does not stop, red eyes, swelling, trouble breathing: emergency number.',
      'Check the weights and the age of the bar; nobody uses it until then.',
      '/first-aid',
    ],
  },
  'blocked-sink': {
    answer: ['No lye, no drain opener: in a pipe full of soap it heats, spits back and sets harder.'],
    why: [
      'Goggles and gloves; it is caustic.',
      spaced`
        Scoop out what stands there, put a bucket under the trap, unscrew it, take the plug of soap out
        by hand tool; hot water only after it runs.
      `,
      'Aluminium trap: do it at once.',
      'Else a plumber who is told what is in it.',
      'Next time wipe pots with paper and let them stand a day.',
    ],
  },
  'bleach-went-in': {
    answer: [
      'Do not use it: bleach makes no soap.',
      'Window open, out if it smells; never any acid near it.',
    ],
    why: [
      'Lye and bleach alone give off little, but with acid, vinegar or ammonia (scorched milk too) a poisonous gas.',
      'Add nothing, do not heat it.',
      'Cold: a labelled plastic tub, loosely closed, hazardous waste by your local rules.',
      'Coughing, sore eyes, a smell of chlorine: everybody out, /first-aid.',
    ],
  },
  'used-early': {
    answer: ['Too early: four weeks of cure first.', 'What you gave away, take back or tell them to wait.'],
    why: [
      'In the first two days it is caustic, in the first weeks harsh, and a wrong weight shows only later.',
      'Tell them: not on skin, out of reach of children, until the day you name.',
      'For laundry too: gloves.',
      'Burning or redness: rinse with much water; if it stays, a doctor.',
    ],
  },
  'old-bar': {
    answer: ['Not on skin: nobody knows how its lye was weighed, and age does not take lye away.'],
    why: [
      'Rancid smell, orange spots, crystals, drops, a sting: away with it, gloves on, by your local rules.',
      spaced`
        If its recipe is known and was weighed, it looks sound, and pH paper in its lather says 10 or
        less, for washing floors or laundry with gloves.
      `,
      'As a keepsake: wrapped, labelled, out of reach of children.',
    ],
  },
  'no-vinegar': {
    answer: [
      'Acid on lye makes heat, right on the skin, and costs minutes.',
      'Water dilutes and carries it away.',
    ],
    why: [
      'Lye is in the skin before you find the bottle, and nobody hits the right amount.',
      'So: running water at once, 20 minutes, soaked clothes off.',
      'On a bench: sweep or wipe up first, then much water; weak vinegar only for the last trace on a rinsed surface, never on a puddle.',
      'In a bar it mends nothing.',
      'Burnt just now: /first-aid what:lye-skin',
    ],
  },
  'zap-young': {
    answer: [
      'On the first days a zap is normal: gloves, wait, and test again at four weeks.',
      'No tongue on it.',
    ],
    why: [
      'Lye and oil need 24 to 48 hours, some bars a week or so.',
      'Keep it dry and out of reach.',
      'At four weeks: pH paper in the lather, 11 or more is suspect.',
      'Check the weights meanwhile (“I put 64 g lye in 500 g olive”): if they were wrong, no waiting helps.',
    ],
  },
  'no-lye-in-it': {
    answer: ['No lye in it, no soap: it is oil and water, and stays so.', 'It does not burn.'],
    why: [
      'First be sure: what went in was salt or sugar, by its own label, and no lye?',
      spaced`
        Then nothing is lost with oils alone: pour off the water, weigh the oils, and start with lye
        weighed for them (“how much lye for 500 g olive”) in fresh cold water.
      `,
      'Salt or sugar stays in it: better fresh oils.',
      'Where the lye went instead (a salt tub, a dish) is urgent: find it, nobody eats from it.',
    ],
  },
  'blender-smokes': {
    answer: [
      'Plug out, with dry hands, or switch off at the fuse first.',
      'Do not pull it out of the pot running.',
    ],
    why: [
      'Goggles and gloves on; let it cool, lift it out by the dry end, go on with a whisk.',
      'It is not used again.',
      'Shock, flame: fuse off, never water on it, emergency number.',
      'In the pot itself smoke or foam: step back, leave it.',
    ],
  },
};
