import type { Stage } from '../../../engine/batch/curing/stages.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { datesIn } from '../../dates.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';

const { figure: decimals, one, two, plain } = numbersIn('en');
const whole = (value: number) => decimals(value, 0);
const { day, soon } = datesIn('en');
const andList = new Intl.ListFormat('en', { type: 'conjunction' });
const quoted = (names: readonly string[]) => names.map(name => `“${name}”`);
const figure = (value: number) => (value < 10 ? one : whole)(value);
const g = (grams: number) => `${(grams < 10 ? two : one)(grams)} g`;
const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

type Seen = { readonly word: string; readonly hex: string };
type Guess = Seen & { readonly plusMinus: number };

const stages: Record<Stage, string> = {
  heat: 'look at the heat',
  unmould: 'unmould',
  cut: 'cut',
  turn: 'turn the bars',
  cured: 'cured',
  retest: 'look for fading',
};
const states = { poured: 'poured', cut: 'cut', cured: 'cured' } as const;

export const batches = {
  stages,
  grams: (v: { grams: number }) => `${plain(v.grams)} g`,
  colour: (v: { name: string; spoons: string; grams: number; lot: string | undefined }) =>
    `${v.spoons} ${v.name} (${plain(v.grams)} g${v.lot === undefined ? '' : `, ${v.lot}`})`,
  portion: (v: {
    name: string | undefined;
    colours: readonly string[];
    expected: Guess | undefined;
    became: Seen | undefined;
  }) => {
    const what = v.colours.length === 0 ? 'no colour' : v.colours.join(' + ');
    const head = v.name === undefined || v.name === what ? what : `${v.name}: ${what}`;
    const expected = v.expected
      ? `, expected ${v.expected.word} ${v.expected.hex} ± ${v.expected.plusMinus}`
      : '';
    return `${head}${expected}${v.became ? `, became ${v.became.word} ${v.became.hex}` : ''}`;
  },
  poured: (v: {
    name: string;
    date: string;
    taken: readonly { readonly name: string; readonly grams: number }[];
  }) =>
    v.taken.length === 0
      ? `“${v.name}”, poured ${v.date}, is in your book. Nothing left your shelf.`
      : `${v.taken.map(one => `${g(one.grams)} “${one.name}”`).join(', ')} off your shelf for “${v.name}”, poured ${v.date}`,
  notAll: (v: { name: string; grams: number; taken: number }) =>
    v.taken === 0
      ? `“${v.name}”: ${g(v.grams)} went in, but none was counted on your shelf, so none was taken off.`
      : `“${v.name}”: ${g(v.grams)} went in, your shelf had only ${g(v.taken)}. It now says 0: restock it or count again.`,
  changed: 'Counted as you made it, not as planned.',
  aside: (v: { text: string }) => `Kept as a note, it changes no number: “${v.text}”.`,
  photoKept: 'The photo is kept with it.',
  rawCaution:
    'Raw soap is caustic for a day or two: gloves and goggles, and keep it from children and animals.',
  undo: 'Undo',
  undone: (v: { name: string; back: readonly { readonly name: string; readonly grams: number }[] }) =>
    v.back.length === 0
      ? `“${v.name}” is out of your book.`
      : `“${v.name}” is out of your book; back on your shelf: ${v.back.map(one => `${g(one.grams)} “${one.name}”`).join(', ')}.`,
  renamed: (v: { wanted: string; name: string }) =>
    `There is a “${v.wanted}” already, so this one is called “${v.name}”.`,
  curedSince: (v: { at: number; zone: string }) => `cured since ${day(v.at, v.zone)}`,
  otherBars: (v: {
    name: string;
    why: 'count' | 'gained';
    before: readonly number[];
    now: readonly number[];
  }) => {
    const told = (grams: readonly number[]) =>
      `${count(grams.length, 'bar', 'bars')}, ${g(grams.reduce((sum, one) => sum + one, 0))}`;
    return v.why === 'count'
      ? `Are these the same bars of “${v.name}”? Before: ${told(v.before)}; now: ${told(v.now)}.`
      : `Soap loses weight, it never gains: before ${told(v.before)}, now ${told(v.now)}. Are these the same bars of “${v.name}”?`;
  },
  sameBars:
    'Nothing is kept yet. The loss is only told by the same bars, always all of them: weigh those again, or keep this as a new start.',
  keepWeights: 'Keep it all the same',
  undoneBefore: 'That batch was taken out before; nothing was changed now.',
  next: 'Next (I write to you)',
  nextSilent: 'Next (reminders are off)',
  date: (v: { what: string; at: number; zone: string; exact: boolean }) =>
    `${v.exact ? soon(v.at, v.zone) : day(v.at, v.zone)}: ${v.what}`,
  dateOf: (v: { name: string; date: string }) => `“${v.name}”, ${v.date}`,
  nextUp: (v: { name: string; what: string; date: string }) => `${v.date}: ${v.what}, “${v.name}”`,
  nothingDue: 'Nothing is due: no batch of yours is waiting for anything.',
  row: (v: {
    name: string;
    date: string;
    days: number;
    state: keyof typeof states;
    colours: readonly string[];
  }) => spaced`
    “${v.name}”: ${count(Math.max(0, v.days), 'day', 'days')} old, ${states[v.state]}; poured
    ${v.date}${v.colours.length > 0 ? `; ${v.colours.join(', ')}` : ''}
  `,
  byMaker: (v: { row: string; by: string }) => `${v.row} (by ${v.by})`,
  bed: (v: { gelled: boolean; said: boolean; lye: number; plan: boolean }) => {
    const why = v.said ? 'as you said' : v.plan ? 'as foretold' : 'as nothing was said';
    return `${v.gelled ? 'Gelled' : 'Not gelled'}, ${why}.${v.plan ? ` Lye ${figure(v.lye)} %.` : ''}`;
  },
  otherwise: (v: { text: string }) => `Made otherwise than planned: ${v.text}`,
  noted: (v: { date: string; text: string }) => `${v.date}: ${v.text}`,
  noteKept: (v: { name: string }) => `Noted beside “${v.name}”.`,
  drying: (v: { percent: number; inAll: number; cured: boolean; weeks: number | undefined }) => {
    const lost = `Loses ${figure(Math.max(0, v.percent))} % a week, ${figure(Math.max(0, v.inAll))} % since the first weighing`;
    if (v.cured) return `${lost}: under 1 % a week counts as cured (common practice).`;
    return spaced`
      ${lost}; cured under 1 % a week (common
      practice)${v.weeks === undefined ? ': weigh again in a week' : `: about ${count(v.weeks, 'week', 'weeks')} more`}.
    `;
  },
  cut: (v: { name: string; bars: number | undefined }) =>
    v.bars === undefined
      ? `“${v.name}” is cut.`
      : `“${v.name}” is cut, ${count(v.bars, 'bar', 'bars')} weighed.`,
  weighed: (v: { name: string; grams: readonly number[] }) =>
    `${g(v.grams.reduce((sum, one) => sum + one, 0))} in ${count(v.grams.length, 'bar', 'bars')} of “${v.name}”.`,
  /** How near a measured bar came to what was foretold, CIEDE2000. */
  nearness: (deltaE: number): string => {
    if (deltaE <= 1.5) return 'spot on';
    if (deltaE <= 3) return 'very near';
    if (deltaE <= 6) return 'near';
    if (deltaE <= 12) return 'a related colour';
    return 'another colour';
  },
  cured: (v: { name: string; off: number; nearness: string }) =>
    `Off by ${one(v.off)}, ${v.nearness}: “${v.name}” beside what I foretold`,
  curedNoted: (v: { name: string }) => `“${v.name}” is cured.`,
  photoNext: (v: { name: string }) =>
    `One bar beside white paper by daylight, and I learn your jars from it: /batch cured batch:${v.name} photo:`,
  balanced: 'Balanced by the white sheet in the photo.',
  roughReading:
    'A rough reading: no white sheet in view, so the light is a guess and your jars learn nothing from it. Lay white paper beside the bar.',
  unsureWhich:
    'I can’t tell which colour is which portion, so those teach me nothing. Say it with colours:“violet #6b5aa8; gold #c9a24b”.',
  notFound: (v: { found: number; of: number }) =>
    `${v.found} of ${count(v.of, 'portion', 'portions')} found on the bar.`,
  foretold: 'Foretold',
  became: 'Became',
  pair: (v: { expected: Guess; became: Guess; off: number }) => spaced`
    foretold ${v.expected.word} ${v.expected.hex} ± ${v.expected.plusMinus}, became ${v.became.word}
    ${v.became.hex} ± ${v.became.plusMinus}: off by ${one(v.off)}
  `,
  pairsNote:
    'Left half: foretold when it was poured. Right half: the cured bar as measured. Off by 2 just shows.',
  pairsAlt: (v: { list: string }) => `What was foretold beside what it became: ${v.list}.`,
  learntTitle: 'What this bar teaches of your jars',
  learnt: (v: {
    name: string;
    times: number;
    bars: number;
    before: number;
    after: number;
    spoons: { readonly used: string; readonly next: string; readonly capped: boolean } | undefined;
    shifted: boolean;
    dull: boolean;
  }) => {
    const spoons = v.spoons
      ? `: for the colour I foretold take ${v.spoons.next}${v.spoons.capped ? ', the most that goes in,' : ''} instead of ${v.spoons.used}`
      : ': your spoons stay as they are';
    const looks = [
      ...(v.shifted ? ['another hue than usual'] : []),
      ...(v.dull ? ['duller than usual'] : []),
    ];
    return spaced`
      “${v.name}” is ${plain(v.times)} times as strong as
      usual${looks.length > 0 ? `, ${looks.join(', ')}` : ''}${spoons}. Give or take ${v.after} now,
      ${v.before} untried; from ${count(v.bars, 'bar', 'bars')}.
    `;
  },
  /** A bar that would teach the opposite of what it shows. */
  oddBar: {
    duller:
      'Nothing learned yet: the bar is duller than I foretold, but what fits it would make your jar livelier. Was it this jar, this much, seen by daylight?',
    livelier:
      'Nothing learned yet: the bar is livelier than I foretold, but what fits it would make your jar duller. Was it this jar, this much, seen by daylight?',
  },
  teach: 'It was: learn from it',
  taught: (v: { name: string }) => `Learned from “${v.name}”.`,
  unlearn: 'Forget this lesson',
  unlearnt: (v: { names: readonly string[] }) =>
    `Forgotten: ${andList.format(quoted(v.names))} ${v.names.length === 1 ? 'is' : 'are'} as before this bar.`,
  unlearntBefore: 'Nothing of that batch counts any more; nothing was changed.',
  pooled: (v: { names: readonly string[] }) =>
    `Jars here of the same name start from what your bars said of ${andList.format(quoted(v.names))}.`,
  photoAlt: (v: { name: string }) => `Your photo of “${v.name}”.`,
  none: 'Your book is empty. After a pour: /batch poured keeps your last plan as you made it.',
  noneShared: 'Nobody shows a batch here yet: /batch share shows one of yours.',
  noneFit: 'No batch fits that.',
  count: (v: { batches: number; all: number }) =>
    v.batches === v.all
      ? count(v.batches, 'batch', 'batches')
      : `${v.batches} of ${count(v.all, 'batch', 'batches')}`,
  more: (v: { count: number }) => `And ${v.count} older: narrow it by colour, jar or date.`,
  sharedNow: (v: { name: string }) => `“${v.name}” is shown to this group.`,
  unshared: (v: { name: string }) => `“${v.name}” is no longer shown to this group.`,
  removed: (v: { name: string }) => `“${v.name}” is gone from your book. Your shelf stays as it is.`,
  exported: (v: { batches: number }) => `${count(v.batches, 'batch', 'batches')} in two files.`,
  done: 'Done',
  later: 'Later',
  stop: 'Stop',
  doneNoted: (v: { name: string; what: string }) => `Noted, “${v.name}”: ${v.what}.`,
  putOff: (v: { what: string; at: number; zone: string }) =>
    `I’ll remind you again ${soon(v.at, v.zone)}: ${v.what}.`,
  stopped: (v: { name: string }) =>
    `No more reminders of “${v.name}”. /batch dates batch:${v.name} remind:yes turns them on again.`,
  resumed: (v: { name: string }) => `Reminders of “${v.name}” are on again.`,
  stillLosing: (v: { name: string; percent: number }) =>
    `Not cured yet: “${v.name}” still loses ${figure(v.percent)} % a week. Weigh it again in a week.`,
  reminders: {
    heat: (v: { name: string; peakC: number | undefined }) =>
      `${v.peakC === undefined ? 'About now' : `About ${degrees(v.peakC)} now`}: “${v.name}” is at its hottest, look at it`,
    unmould: (v: { name: string; peakC: number | undefined }) => `Unmould “${v.name}”`,
    cut: (v: { name: string; peakC: number | undefined }) => `Cut “${v.name}”`,
    turn: (v: { name: string; peakC: number | undefined }) => `Turn the bars of “${v.name}”, and weigh one`,
    cured: (v: { name: string; peakC: number | undefined }) => `“${v.name}” should be cured`,
    retest: (v: { name: string; peakC: number | undefined }) =>
      `Three months on: has “${v.name}” faded? One photo tells`,
  } satisfies Record<Stage, (v: { name: string; peakC: number | undefined }) => string>,
  how: {
    heat: 'A crack or a dome: uncover it and let air at it. A dark, clear ring spreading from the middle is gel.',
    unmould: 'With gloves. Still soft or sticky: later, another day does no harm.',
    cut: 'With gloves, when it is as firm as cheese. Crumbling means it waited long, sticking means too early.',
    turn: '/batch weigh weights:“112 g” tells when it is cured.',
    cured:
      'Lay a bar beside white paper by daylight: /batch cured photo: shows what became of each colour and teaches me your jars.',
    retest: 'The same bar beside white paper by daylight: /batch cured photo:',
  } satisfies Record<Stage, string>,
};
