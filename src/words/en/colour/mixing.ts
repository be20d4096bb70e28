import type { AlkaliBehaviour } from '../../../engine/colourants/colourant.ts';
import type { StrengthName } from '../../../engine/quantities/strength.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { plain } = numbersIn('en');
const andList = new Intl.ListFormat('en');
/** How near a recipe should come, for a reader who has no use for a number alone: colour units, all that is unknown counted. */
const nearness = ({ within }: { readonly within: number }): string => {
  if (within <= 2) return 'too close to tell apart';
  if (within <= 5) return `very close, within ${within}`;
  if (within <= 8) return `should be close: within ${within}`;
  if (within <= 14) return `a related colour: within ${within}`;
  return `a rough guess: within ${within}`;
};

const columns: Record<StrengthName, string> = {
  tint: 'Tint',
  pastel: 'Pastel',
  medium: 'Medium',
  full: 'Full',
};

const lye: Record<AlkaliBehaviour, string> = {
  stable: 'holds in lye',
  conditional: 'holds in most batches',
  unknown: 'untested in lye',
  shifts: 'changes colour in lye',
  bleeds: 'bleeds into its neighbours',
  destroyed: 'lost in lye',
  never: 'must not meet lye',
};

export const preview = {
  /** The colour first. */
  headline: (v: { word: string; hex: string; plusMinus: number; mix: string }) =>
    `${v.word}, ${v.hex} ± ${v.plusMinus}: ${v.mix}`,
  inBase: (v: { base: string; gel: string }) => `${v.base}, ${v.gel}`,
  ofOils: 'your oils',
  base: 'In',
  otherwise: { gelled: 'If it gels', notGelled: 'If it does not gel' },
  colour: (v: { word: string; hex: string }) => `${v.word}, ${v.hex}`,
  spooned: (v: { spoons: string; grams: number; portion: string }) =>
    `${v.spoons} in ${v.portion}, about ${plain(v.grams)} g`,
  aboveMost: (v: { most: string }) =>
    `Shown as you told it, but more than this portion should take: ${v.most} at most. More colours the lather and the cloth.`,
  pooled: 'From test bars others here made with the same product.',
  under: (v: { spoon: string }) => `under ${v.spoon}`,
  calibrateFirst: 'One test bar and /calibrate bars narrow this for your own jar.',
  columns,
  card: {
    mix: 'Your mix',
    plain: 'No colour',
    note: 'Predicted cured colour. Screens differ; a test bar decides.',
    expected: (v: { plusMinus: number }) => `give or take ${v.plusMinus} (2 just shows, 10 is another shade)`,
    inPortion: (v: { portion: string }) => `for ${v.portion}`,
  },
  alt: (v: { word: string; hex: string; list: string }) =>
    `Swatch card: your mix is ${v.word}, ${v.hex}. Not gelled: ${v.list}.`,
  altField: (v: { strength: string; word: string; hex: string }) => `${v.strength} ${v.word} ${v.hex}`,
};

export const match = {
  nearness,
  lye,
  headline: (v: { recipe: string; portion: string; word: string; nearness: string }) =>
    `${v.recipe} for ${v.portion}: ${v.word}, ${v.nearness}`,
  unreached: (v: { recipe: string; portion: string; nearest: string; target: string; deltaE: number }) =>
    v.nearest === v.target
      ? `${v.recipe} for ${v.portion}: ${v.nearest}, the nearest I get (off by ${plain(v.deltaE)})`
      : `${v.recipe} for ${v.portion}: ${v.nearest}, the nearest I get to ${v.target} (off by ${plain(v.deltaE)})`,
  buy: (v: { names: readonly string[]; off: number }) =>
    `To come nearer, buy ${andList.format(v.names)}: off by ${plain(v.off)}.`,
  nothing: (v: { target: string }) => `${v.target} is nearest to the plain soap: leave the colour out`,
  /** The portion when none is said, as `parsePortion` reads it. */
  oneCup: '1 cup',
  part: (v: { spoons: string; name: string }) => `${v.spoons} ${v.name}`,
  predicted: 'You would get',
  predictedValue: (v: { word: string; hex: string; plusMinus: number }) =>
    `${v.word} ${v.hex}, give or take ${v.plusMinus}`,
  pigment: 'Pigment in all',
  pigmentValue: (v: { grams: number; percent: number }) =>
    `${plain(v.grams)} g, ${v.percent} % of the most this portion takes`,
  others: 'Other ways',
  other: (v: { recipe: string; word: string; hex: string; deltaE: number; risk: string }) =>
    `${v.recipe}: ${v.word} ${v.hex}, off by ${plain(v.deltaE)}; ${v.risk}`,
  gramsOf: (v: { grams: number }) => `about ${plain(v.grams)} g`,
  share: (v: { percent: number }) => `${v.percent} % of the most that goes in.`,
  enough: (v: { left: string }) => `${v.left} on your shelf.`,
  short: (v: { left: string }) => `Only ${v.left} on your shelf.`,
  uncounted: 'On your shelf, amount not noted.',
  scale:
    'Off by 2 is just visible, by 10 it is another shade. Give or take counts what nobody knows of your jars yet.',
  rounding: (v: { unrounded: number }) => `Without rounding to spoons it could be ${plain(v.unrounded)}.`,
  onlyOfThese: 'Only of the colourants that were named.',
  fromCatalogue: 'From the catalogue: pigments that hold in lye. Dyes and plants are left out.',
  shelfEmpty: 'Nothing on your shelf can be used yet, so this is from the catalogue.',
  leftOut: (v: { names: string }) => `Left out, since I do not know what is in them: ${v.names}.`,
  target: 'You want',
  targetValue: (v: { word: string; hex: string }) => `${v.word} ${v.hex}`,
  dose: (v: { number: number }) => `${v.number}: how to dose it`,
  take: (v: { number: number }) => `${v.number}: take it off my shelf`,
  takenAll: (v: { list: string }) => `Off your shelf. Left: ${v.list}.`,
  left: (v: { name: string; grams: string }) => `${v.name} ${v.grams}`,
  card: {
    target: 'You want',
    recipe: (v: { number: number; nearness: string }) => `${v.number}: ${v.nearness}`,
    note: 'Left half: the colour you want. Right half: the cured colour predicted.',
  },
  alt: (v: { target: string; list: string }) =>
    `The wanted colour ${v.target} beside each recipe: ${v.list}.`,
  photo: {
    which: (v: { count: number }) => `Which colour do you want? I see ${v.count} in the photo`,
    pick: 'Pick a colour',
    item: (v: { number: number; word: string; hex: string }) => `${v.number}: ${v.word} ${v.hex}`,
    share: (v: { percent: number }) => `${v.percent} % of the bar`,
    balanced: 'Balanced by the white sheet in the photo.',
    unbalanced:
      'No white sheet in view, so the light is a guess: lay white paper beside it for a truer colour.',
    alt: (v: { list: string }) => `The main colours of the photo: ${v.list}.`,
  },
};

export const calibrating = {
  plainLeftOut:
    'The plain bar was left out: beside several jars I can’t tell whose base it is. Give it with item: and the bars of one jar.',
  headline: (v: { name: string; times: string; before: number; after: number }) =>
    `“${v.name}” is ${v.times}: give or take ${plain(v.after)} now, ${plain(v.before)} before`,
  notKept: (v: { name: string; off: number }) =>
    `Not kept: these bars do not fit “${v.name}”, off by ${plain(v.off)} at best`,
  asStrong: 'as strong as usual',
  stronger: (v: { times: number }) => `${plain(v.times)} times as strong as usual`,
  bar: (v: { dose: string; hex: string; expected: string; deltaE: number }) =>
    `${v.dose}: your bar ${v.hex}, now predicted ${v.expected}, off by ${plain(v.deltaE)}`,
  plainBar: (v: { hex: string }) => `Plain bar ${v.hex}: the base is judged by it`,
  doseOf: (v: { spoons: string }) => `${v.spoons} per cup`,
  bars: 'Your test bars',
  fullCup: 'Full colour in a cup',
  spoonsNow: (v: { now: string; usual: string }) =>
    v.now === v.usual
      ? `${v.now}, as ever`
      : `${v.now} now, where a usual jar takes ${v.usual}: /dose uses it`,
  covering: 'Hiding power',
  strength: 'Colour strength',
  timesKind: (v: { times: number }) => `${plain(v.times)} times the usual`,
  fit: 'Your bars',
  fitValue: (v: { before: number; after: number }) =>
    `off by ${plain(v.after)} on average, ${plain(v.before)} before`,
  kept: (v: { name: string; lot: string }) =>
    `Kept with ${v.lot} of “${v.name}”: /preview and /match use it. A new lot starts anew.`,
  more: 'A second bar at another strength would tell strength and hiding power apart.',
  otherBase: 'Your earlier bars were in another base, so they no longer count.',
  fromPhoto: (v: { hex: string; plusMinus: number }) =>
    `Read from the photo: ${v.hex}, give or take ${v.plusMinus}.`,
  shared: (v: { name: string; others: number }) =>
    v.others === 0
      ? `Shared with this group: others whose jar is called “${v.name}” start from it.`
      : `Shared with this group under “${v.name}”; ${v.others} other ${v.others === 1 ? 'jar' : 'jars'} of it helped yours.`,
  helped: (v: { others: number }) =>
    `${v.others} other ${v.others === 1 ? 'jar' : 'jars'} of the same name in this group helped.`,
  withdrawn: 'No longer shared with this group.',
  mixedJars: 'What the mixed bars tell of your jars',
  mixedBars: 'Your mixed bars',
  mixedNotKept: (v: { off: number }) =>
    `Not kept: no such jars give these colours, off by ${plain(v.off)} at best`,
  mixedShared: (v: { names: readonly string[] }) => `Shared with this group: ${v.names.join(', ')}.`,
  mixedWhy:
    'Jars that share a bar are learnt together: a bar of each alone, or the two in other shares, tells them apart.',
  plot: {
    title: (v: { name: string }) => `Test bars of ${v.name}`,
    lightness: 'Lightness (100 white, 0 black)',
    chroma: 'Colourfulness (0 grey)',
    dose: 'Teaspoons per cup of batter',
    measured: 'your bars',
    usual: 'usual jar',
    fitted: 'predicted now',
    pairs: 'Each bar: yours left, predicted right',
  },
  alt: (v: { name: string; list: string }) =>
    `Lightness and colourfulness of ${v.name} against dose, measured and predicted. ${v.list}.`,
};

export const mixingRefusals: Pick<
  RefusalSentences,
  | 'mix-empty'
  | 'mix-too-many'
  | 'mix-part-without-name'
  | 'base-unreadable'
  | 'test-bar-unreadable'
  | 'lab-out-of-range'
  | 'match-of-nothing'
  | 'match-without-target'
  | 'match-two-targets'
  | 'match-forgotten'
  | 'calibration-photo-without-dose'
  | 'calibration-photo-without-white'
  | 'calibration-without-item'
  | 'calibration-mix-without-jar'
> = {
  'mix-empty': () => 'Say what goes in, such as “ultramarine violet pastel + titanium dioxide 1/4 tsp”.',
  'mix-too-many': ({ most }) => `At most ${most} colourants fit in one portion; more turn to mud.`,
  'mix-part-without-name': ({ text }) =>
    `“${text}” names no colourant. Write it like “gold mica pastel” or “1/4 tsp gold mica”.`,
  'base-unreadable': ({ text }) =>
    `I can’t read “${text}” as a base. Say white, cream, yellow or green, or your oils: “olive 60%, coconut 40%”.`,
  'test-bar-unreadable': ({ text }) =>
    `I can’t read “${text}” as a test bar. Give its dose, then its colour: “1/4 tsp per cup #6b5aa8”.`,
  'lab-out-of-range': ({ text }) =>
    `“${text}” is no colour: in Lab, L is 0 to 100, and a and b are −128 to 128.`,
  'match-of-nothing': () =>
    'Lye spoils every colourant that you named: name one that holds, such as an oxide or an ultramarine.',
  'match-without-target': () =>
    'Say which colour you want, such as “#6b3fa0” or “teal”, or attach a photo of it.',
  'match-two-targets': () => 'Give a colour or a photo, not both: I match one at a time.',
  'match-forgotten': () => 'That match is too long ago: run /match again and press there.',
  'calibration-photo-without-dose': () =>
    'Say the dose of the bar in the photo too, such as dose: “1/4 tsp per cup”.',
  'calibration-without-item': () =>
    'Which jar? Give item: its name, or name it in the bar: “Sky 1 tsp + White 1/2 tsp #8899bb”.',
  'calibration-mix-without-jar': ({ text }) =>
    `“${text}” has no jar of your shelf in it: name one of yours, or /shelf add it first.`,
  'calibration-photo-without-white': () =>
    'I see no white sheet in that photo, so its light is unknown. Lay white paper beside the bar, by daylight, and try again.',
};
