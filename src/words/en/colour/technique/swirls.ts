import { spaced } from '../../../../engine/over-lines.ts';

/** What is said of pouring: layers, lines, swirls, and the tools for them. */
export const techniqueSwirls = {
  'layers-how': {
    answer: [
      'Medium trace, and pour the next when a spoonful rests on the layer below: often 5 to 20 minutes.',
    ],
    why: [
      'Mould level, knocked down to let air out.',
      'Pour low, over the back of a spoon or a spatula.',
      'Too soon and they run into each other; too late and they come apart: then roughen the surface with a fork.',
      'Keep the batter that waits at emulsion, unblended.',
    ],
  },
  'mica-line': {
    answer: ['A thin veil of mica, dusted through a fine sieve onto a firm layer, the next one poured low.'],
    why: [
      'Thick lines part the bar: the soap should still show through.',
      'Leave a hair free at the edge.',
      'Pour over a spatula so that it does not wash away.',
      'Cut the loaf on its side, so that the wire draws along the line and not the powder down the face.',
    ],
  },
  'drop-swirl': {
    answer: [
      'Base at light to medium trace in a tall mould, thin colours poured in lines from different heights.',
    ],
    why: [
      'High pours sink, low ones stay up.',
      'Two or three colours, each in a jug with a spout.',
      'No stirring, or one pass with a hanger at the end.',
    ],
  },
  'pot-swirl': {
    answer: [
      'Light trace; pour the colours into the pot in three or four places, one or two turns, then pour.',
    ],
    why: [
      'Like single cream.',
      'Two or three colours beside the base, with contrast.',
      'Stir no more than one or two slow turns, and pour along one line of the mould: more stirring makes mud.',
    ],
  },
  'hanger-swirl': {
    answer: ['Light trace, and one to three passes with the hanger: more makes mud.'],
    why: [
      'Layers or drops of two to four colours first, just thick enough not to sink.',
      'Down at one side to the bottom, across, up and over in loops, out where it went in.',
      'Put white or plain batter between colours that turn brown together, such as blue and orange.',
    ],
  },
  'spoon-swirl': {
    answer: [
      'Spoonfuls of light to medium trace side by side in turn, then one spoon or stick drawn through.',
    ],
    why: [
      'Medium enough to lie beside each other.',
      'One figure of eight or a few loops, then stop.',
      'Knock the mould down at the end.',
    ],
  },
  'comb-swirl': {
    answer: ['Thin lines of light-trace colour side by side; comb across once, back between, then curves.'],
    why: [
      'Squeeze bottles make even lines; a slab mould has the room.',
      'First the rake one way, then the other between its own lines, then the comb in curves for the feathers.',
      'Slow batter and no racing scent, since it takes time.',
    ],
  },
  'divider-swirl': {
    answer: [
      'Each colour at light trace between its dividers, all equally full; pull them straight up, then draw lines.',
    ],
    why: [
      'Pour all of them a little at a time so that the dividers stay upright.',
      'Then lines with a stick: crosswise first, then lengthwise, and perhaps curves.',
      'Equal thickness matters more than thin.',
    ],
  },
  'how-many-colours': {
    answer: ['Two or three and the plain base are plenty; four at most for a first swirl.'],
    why: [
      'Each wants its own jug, wetted beforehand, and at least half a cup (120 ml) of batter.',
      'Leave a third to a half of the batter as base, with contrast to the rest.',
      '/plan shares a batch out and doses each.',
    ],
  },
  piping: {
    answer: [
      'Pipe at thick trace: a peak stands stiff, like buttercream.',
      'Colour it while it is thin, then wait.',
    ],
    why: [
      'Set a third of the batter aside, stir the colour in at light trace and leave it 10 to 40 minutes, stirred now and then.',
      'It slides or melts: too early.',
      'Stiff in the bag: too late, so fill half a bag at a time.',
      'What it stands on is firm first.',
      'The bag may burst over raw batter.',
    ],
  },
  'pour-order': {
    answer: ['What thickens first goes first: the scented jug and those with titanium dioxide or clay.'],
    why: [
      'For layers from below upwards: darkest or heaviest look at the bottom, the one you want on top last.',
      'In the pot and for drops: base first, then the thin colours, the strongest one last and least.',
      'Keep the quiet jugs stirred by hand every minute or two while you colour the others.',
    ],
  },
  'swirl-tools': {
    answer: [
      'A skewer, a chopstick, a spoon handle or a bent plastic-coated hanger: anything thin and clean.',
    ],
    why: [
      'Never aluminium, zinc or tinned wire: lye eats it.',
      'Stainless steel, bamboo, silicone and PP plastic are right; wood only for soap from then on.',
      'Thin draws fine lines, a spoon broad ones.',
      'A comb: skewers stuck through a strip of firm plastic.',
    ],
  },
  'easiest-swirl': {
    answer: [
      'Easiest: in the pot, one colour and white.',
      'Then drop and spoon swirl; hanger; dividers and combs last.',
    ],
    why: [
      'In the pot needs no tool and forgives thick and thin.',
      'A hanger wants two or three layers at light trace and one to three passes.',
      'Dividers (taiwan) and a peacock comb want even, thin batter for a long time, so a slow recipe first.',
      'Two colours with contrast show more than five.',
    ],
  },
  'split-batter': {
    answer: [
      'By weight at emulsion: half as base, the rest shared equally, each into its own jug with its colour ready.',
    ],
    why: [
      'Batter is about 1.4 times the oils. 1,200 g for three colours: 600, 300 and 300, or 400 each.',
      spaced`
        Split first, since every jug then is equally thin and needs only a stir by hand; one that is
        coloured in the big pot thickens and leaves no plain base.
      `,
      'An accent needs 10 to 15 %.',
      '/plan portions:“1/2 plain; 1/4 red oxide; 1/4 charcoal” shares and doses.',
    ],
  },
  'dust-on-top': {
    answer: [
      'Yes: a thin veil through a fine sieve on the fresh top, or 1 tsp mica in 2 to 3 tsp light oil, dripped on.',
    ],
    why: [
      'Dry mica lies loose: it rubs off on hands and goes with the first wash.',
      'It sticks best on a top that is still tacky.',
      'With oil, a few drops a bar: more stands for days.',
      'On cured soap: with a brush and a little alcohol, away from flames.',
      'Gold stays gold only here.',
    ],
  },
};
