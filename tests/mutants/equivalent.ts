/** A changed program that does the same, so that no test can notice: not counted. */
export type Equivalent = {
  readonly file: string;
  /** What stands in the source, and what the mutant writes there. */
  readonly from: string;
  readonly to: string;
  /** A part of the line on which it begins, where the same words elsewhere in the file do something else. */
  readonly on?: string;
  /** At how many places of the file; one, where nothing is said. */
  readonly places?: number;
  readonly why: string;
};

const carrier = 'src/engine/dispersion/carrier.ts';
const premix = 'src/engine/dosing/parse-premix.ts';
const dose = 'src/engine/dosing/dose.ts';
const wordings = 'src/engine/dosing/premix-wordings.ts';
const cautioning = 'src/engine/dosing/cautioning.ts';
const NO_HAIR = 'the bound lies a millionth or less beside any amount that can be told, so none meets it';
const BOTH = 'two amounts stand there together or neither does';
const NOTHING_ASKED = 'asked for undefined is asked for nothing';
const NEVER_CAME = 'what never meets lye was refused before any caution';
const share = 'src/engine/stability/legal-share.ts';
const permitted = 'src/engine/stability/permitted.ts';
const ALL_ALIKE = 'no substance of ours has one section that covers soap and another that does not';
const NO_FIGURE = 'a limit that is not printed has no figure either';
const SECTIONS_STAND = 'every section that a substance claims stands in our copy: `permitted.test.ts`';
const ONE_CARBON = 'no other colour of either list has the number 77268';
const SAME_SPOONS = 'exactly so many teaspoons are as many by the finer step as by the coarser';

const colour = (file: string) => `src/engine/colour/${file}.ts`;
const NO_TIE = 'two colours that are apart differ by no such share to its last digit';
const voting = (file: string) => `src/engine/challenges/voting/${file}.ts`;
const BEYOND_TABLE = 'beyond the table stands nothing, which is neither more nor less than anything';
const heat = (file: string) => `src/engine/heat/${file}.ts`;
const HEAVIEST = 'of the runs over a band the one in the middle of all weighs more than any other';
const EVEN = 'onsets lie evenly about the typical one, with even weights: `estimate.test.ts`';
const LAST_DIGIT = 'what a run comes to equals the bound to its last digit at no time step';
const NO_CIRCLE = 'more votes, and stronger paths, never go in a circle (Schulze 2011, on transitivity)';

const quantities = (file: string) => `src/engine/quantities/${file}.ts`;
const DIVIDES =
  'each spoon divides those above it: nothing is left at the last, and of nothing no spoon is taken';

export const EQUIVALENT: readonly Equivalent[] = [
  ...(
    [
      ['[]', '["Stryker was here"]', 'MIXED_FIRST.exec('],
      ['head === undefined || before === undefined', 'head === undefined && before === undefined', undefined],
      ['head === undefined', 'false', undefined],
      ['before === undefined', 'false', undefined],
    ] as const
  ).map(([from, to, on]) => ({
    file: premix,
    from,
    to,
    ...(on !== undefined && { on }),
    why: 'what was matched has its head and what it was mixed with',
  })),
  ...(
    [
      ['again === undefined && told !== undefined', 'true'],
      ['again === undefined && told !== undefined', 'again === undefined || told !== undefined'],
      ['again === undefined', 'true'],
    ] as const
  ).map(([from, to]) => ({
    file: premix,
    from,
    to,
    on: 'return again === undefined',
    why: 'the liquid that was told with the parts is the one told before: told once more it changes nothing',
  })),
  {
    file: premix,
    from: '[]',
    to: '["Stryker was here"]',
    on: '  ? []',
    why: 'without its second side a paste is refused whatever its first one is',
  },
  {
    file: 'src/engine/dosing/premix-parts.ts',
    from: '[]',
    to: '["Stryker was here"]',
    on: 'exec(written) ?? []',
    why: 'what the whole of a match was is not looked at',
  },
  ...(['exec(written) ?? []', 'MANIFOLD.exec(', 'NAMED_PARTS.exec(', 'BARE.exec('] as const).map(on => ({
    file: wordings,
    from: '[]',
    to: '["Stryker was here"]',
    on,
    why: 'what the whole of a match was is not looked at',
  })),
  {
    file: wordings,
    from: "'0'",
    to: '""',
    why: 'nothing is the number 0 too',
  },
  {
    file: wordings,
    from: 'measure.trim()',
    to: 'measure',
    why: 'a measure begins with its word, and only that is compared',
  },
  {
    file: wordings,
    from: 'refusal instanceof Refusal',
    to: 'true',
    why: 'to read a liquid throws nothing else',
  },
  ...(
    [
      [
        'times !== undefined && more !== undefined && less !== undefined',
        'times !== undefined && more !== undefined || less !== undefined',
      ],
      ['times !== undefined && more !== undefined', 'true'],
      ['times !== undefined && more !== undefined', 'times !== undefined || more !== undefined'],
      ['times !== undefined', 'true'],
      ['more !== undefined', 'true'],
      ['less !== undefined', 'true'],
    ] as const
  ).map(([from, to]) => ({
    file: wordings,
    from,
    to,
    why: 'how many times, of what and as what stand there together or none does',
  })),
  {
    file: wordings,
    from: "''",
    to: '"Stryker was here!"',
    on: 'BARE.exec(',
    why: 'where nothing was matched there is no powder either',
  },
  {
    file: wordings,
    from: 'powder !== undefined',
    to: 'true',
    on: '!UNIT.test(rest)',
    why: 'where nothing was matched no liquid is named either',
  },
  {
    file: carrier,
    from: 'most < LEAST_CARRIER_TSP',
    to: 'most <= LEAST_CARRIER_TSP',
    why: 'no portion that can be told has room for just a teaspoon to its last digit',
  },
  { file: dose, from: 'asked.timesKind === undefined', to: 'false', why: NOTHING_ASKED },
  {
    file: share,
    from: "'make-up'",
    to: '""',
    on: '??',
    why: 'every section in which a colour of ours is listed without soap has a word of its own',
  },
  ...(['us', 'eu'] as const).map(list => ({
    file: 'src/engine/stability/permitted-summary.ts',
    from: '[]',
    to: '["Stryker was here"]',
    on: `const ${list}: Found[] =`,
    why: 'what has no standing is told nowhere',
  })),
  {
    file: permitted,
    from: 'listedInEu.set(substance, known);',
    to: ';',
    why: 'what is not remembered is looked up again',
  },
  {
    file: 'src/engine/batch/lye/lye-choice.ts',
    from: '[]',
    to: '["Stryker was here"]',
    on: 'ratio ? percents : []',
    why: 'without a ratio its two figures are not looked at',
  },
  {
    file: 'src/engine/questions/lye/slips/oil-short.ts',
    from: 'count > 0',
    to: 'count >= 0',
    why: 'no words at all are the name of no oil',
  },
  {
    file: 'src/engine/hazards/emergencies/scenes.ts',
    from: "tokens[at]?.kind === 'mark'",
    to: 'true',
    why: 'what is written as the end of a sentence is a mark and no word',
  },
  {
    file: 'src/engine/batch/additives/fragrance.ts',
    from: 'percent > most + 1e-9',
    to: 'percent >= most + 1e-9',
    why: NO_HAIR,
  },
  {
    file: 'src/engine/hazards/scents/read.ts',
    from: 'at < words.length',
    to: 'at <= words.length',
    why: 'beyond the last word stands none, which is the name of no scent',
  },
  {
    file: 'src/engine/hazards/no-colour/batch-part.ts',
    from: "''",
    to: '"Stryker was here!"',
    on: "?? ''",
    places: 2,
    why: 'a name that is split has a first and a last word',
  },
  {
    file: 'src/engine/hazards/emergencies/evidence/weigh.ts',
    from: 'known',
    to: 'false',
    why: 'what was gathered before is gathered again',
  },
  {
    file: 'src/engine/hazards/emergencies/scenes.ts',
    from: "'no'",
    to: '""',
    why: 'of what is past it is only asked whether it is meant',
  },
  {
    file: 'src/engine/hazards/emergencies/evidence/weigh.ts',
    from: "' '",
    to: '""',
    on: '.sort().join(',
    why: 'no two sets of ideas run together to the same word',
  },
  {
    file: 'src/engine/hazards/emergencies/read.ts',
    from: 'all.filter(({ first }) => !first)',
    to: 'all',
    why: 'what stands first already is left out the second time',
  },
  {
    file: 'src/engine/hazards/emergencies/read.ts',
    from: 'next.score > best.score - CLEARLY',
    to: 'next.score >= best.score - CLEARLY',
    why: 'no two sums of weights lie just one apart to their last digit',
  },
  {
    file: 'src/engine/hazards/emergencies/read.ts',
    from: '!best || !first',
    to: '!best && !first',
    why: 'without a best account the first has no score, and stays where it is',
  },
  {
    file: 'src/engine/hazards/emergencies/evidence/weigh.ts',
    from: '[...names].sort()',
    to: '[...names]',
    why: 'the same ideas in another order weigh the same: one more account of what is told already',
  },
  {
    file: quantities('spoons'),
    from: 'at < sizes.length',
    to: 'at <= sizes.length',
    on: '&& rest > 0',
    places: 2,
    why: DIVIDES,
  },
  { file: quantities('spoons'), from: 'rest > 0', to: 'rest >= 0', on: 'for (', places: 2, why: DIVIDES },
  {
    file: quantities('number'),
    from: 'size >= 1',
    to: 'false',
    why: 'from one to ten the logarithm rounds down to nothing, which leaves two decimals as well',
  },
  {
    file: quantities('strength'),
    from: "''",
    to: '"Stryker was here!"',
    on: 'readDecimal(',
    why: 'neither is a number',
  },
  {
    file: voting('chance'),
    from: 'drawn >= usable',
    to: 'drawn > usable',
    why: 'one number in 2^53 is the bound itself, and no seed that draws it is known',
  },
  { file: voting('count'), from: 'a < b', to: 'a <= b', why: 'no two that are put in order are the same' },
  { file: voting('count'), from: 'row < size', to: 'row <= size', why: BEYOND_TABLE },
  { file: voting('count'), from: 'column < size', to: 'column <= size', why: BEYOND_TABLE },
  {
    file: voting('lots'),
    from: '[...omit]',
    to: '[]',
    why: 'whom a pile leaves out is whoever its ranking, made whole, does not name',
  },
  { file: voting('lots'), from: 'group.length === 1', to: 'false', why: 'one alone is split into one alone' },
  {
    file: voting('lots'),
    from: 'groups.length === candidates.length',
    to: 'false',
    why: 'further ballots split nobody who is alone already, and no lot is drawn after them',
  },
  { file: voting('schulze'), from: 'from < size', to: 'from <= size', places: 2, why: BEYOND_TABLE },
  { file: voting('schulze'), from: 'over < size', to: 'over <= size', why: BEYOND_TABLE },
  {
    file: voting('schulze'),
    from: 'first === 0',
    to: 'false',
    why: 'a way with no first step is as strong as none, and is never stronger than what is known',
  },
  {
    file: voting('schulze'),
    from: 'whole > cells[from * size + to]!',
    to: 'whole >= cells[from * size + to]!',
    why: 'the larger of two equals is either',
  },
  { file: voting('tally'), from: 'next.length === 0', to: 'false', why: NO_CIRCLE },
  { file: voting('tally'), from: "'an order in a circle has no first place'", to: '""', why: NO_CIRCLE },
  ...(
    [
      ['place < soap.length', 'place <= soap.length', 2],
      ['growth.step !== step', 'true', 1],
      ['here > hottest', 'here >= hottest', 1],
      ['here > reached[at]!', 'here >= reached[at]!', 1],
    ] as const
  ).map(([from, to, places]) => ({
    file: heat('run'),
    from,
    to,
    places,
    why: 'a cell beyond the last is none, a table made again is the same, and the larger of two equals is either',
  })),
  ...(
    [
      ['one.weight > best.weight', 'one.weight >= best.weight', 2, HEAVIEST],
      ['onset + offset', 'onset - offset', 2, EVEN],
      ['gel[kind] >= SURE', 'gel[kind] > SURE', 1, 'odds are whole parts of 1024, and 0.65 is none'],
      [
        'sum >= share - 1e-12',
        'sum > share - 1e-12',
        1,
        'no sum of weights lies just a trillionth below a tenth',
      ],
    ] as const
  ).map(([from, to, places, why]) => ({ file: heat('estimate'), from, to, places, why })),
  ...(
    [
      ['{ step: Number.NaN, table: rates }', '{}', 'no step is undefined, as none is no number'],
      ['converted[at]! >= SOAP_ENOUGH', 'converted[at]! > SOAP_ENOUGH', LAST_DIGIT],
      ['hottest > peak.core - COOLED', 'hottest >= peak.core - COOLED', LAST_DIGIT],
      ['converted[soap[0]!]! < SOAP_ENOUGH', 'converted[soap[0]!]! <= SOAP_ENOUGH', LAST_DIGIT],
    ] as const
  ).map(([from, to, why]) => ({ file: heat('run'), from, to, why })),
  { file: heat('mould'), from: "'plane'", to: '""', why: 'a section is asked whether it is round' },
  {
    file: heat('section'),
    from: 'transfer === 0',
    to: 'false',
    why: 'behind an endless resistance the conductance is 0 as well',
  },
  { file: heat('temperature'), from: "''", to: '"Stryker was here!"', why: 'neither is a number' },
  {
    file: 'src/engine/batch/lye/lye.ts',
    from: '(scale.oilGrams * points) / COARSEST_STEP_POINTS',
    to: 'scale.oilGrams * points * COARSEST_STEP_POINTS',
    why: 'the coarsest step is one point',
  },
  {
    file: 'src/engine/batch/lye/lye-choice.ts',
    from: 'potassium < sodium',
    to: 'potassium <= sodium',
    why: 'two words never begin at one place',
  },
  {
    file: 'src/engine/batch/lye/lye-solution.ts',
    from: 'px >= x',
    to: 'px > x',
    why: 'a point of the table lies on the line before it and on the line after it',
  },
  { file: carrier, from: 'dishTest === undefined', to: 'false', why: 'no carrier is called undefined' },
  { file: carrier, from: 'teaspoons < 3', to: 'teaspoons <= 3', why: SAME_SPOONS },
  { file: carrier, from: 'teaspoons < 12', to: 'teaspoons <= 12', why: SAME_SPOONS },
  { file: carrier, from: 'teaspoons < 48', to: 'teaspoons <= 48', why: SAME_SPOONS },
  {
    file: carrier,
    from: 'millilitres >= LEAST_TO_FROTH_ML - 1e-9',
    to: 'millilitres > LEAST_TO_FROTH_ML - 1e-9',
    why: 'the bound lies a billionth below any amount in quarter spoons',
  },
  {
    file: 'src/engine/stability/legal-share.ts',
    from: 'US_CUP_ML * TYPICAL_BATTER.gramsPerMillilitre',
    to: 'US_CUP_ML / TYPICAL_BATTER.gramsPerMillilitre',
    why: 'the usual batter weighs 1 g/ml',
  },
  {
    file: 'src/engine/dosing/answer.ts',
    from: 'fullness.all > 1 + 1e-9',
    to: 'fullness.all >= 1 + 1e-9',
    why: NO_HAIR,
  },
  {
    file: 'src/engine/dosing/answer.ts',
    from: '1 + 1e-9',
    to: '1 - 1e-9',
    why: 'between the two bounds the doses are scaled by a billionth',
  },
  {
    file: 'src/engine/dosing/portion.ts',
    from: 'millilitres > MOST_MILLILITRES * 1.001',
    to: 'millilitres >= MOST_MILLILITRES * 1.001',
    why: NO_HAIR,
  },
  {
    file: dose,
    from: 'askedMillilitres > ceilingMillilitres * (1 + 1e-6)',
    to: 'askedMillilitres >= ceilingMillilitres * (1 + 1e-6)',
    why: NO_HAIR,
  },
  {
    file: cautioning,
    from: 'ceilingShare > (asked.colourant.dose.fullTspPerCup / asked.colourant.dose.ceilingTspPerCup) * (1 + 1e-6)',
    to: 'ceilingShare >= asked.colourant.dose.fullTspPerCup / asked.colourant.dose.ceilingTspPerCup * (1 + 1e-6)',
    why: NO_HAIR,
  },
  { file: cautioning, from: "behaviour !== 'never'", to: 'true', why: NEVER_CAME },
  { file: cautioning, from: "'never'", to: '""', why: NEVER_CAME },
  { file: dose, from: 'carrier === undefined', to: 'false', why: NOTHING_ASKED },
  { file: dose, from: 'dishTest === undefined', to: 'false', why: NOTHING_ASKED },
  {
    file: premix,
    from: "''",
    to: '"Stryker was here!"',
    on: 'plain.split(',
    why: 'a text that is split has a first part, even if empty',
  },
  {
    file: premix,
    from: 'powderText === undefined || liquidText === undefined',
    to: 'powderText === undefined && liquidText === undefined',
    why: BOTH,
  },
  { file: premix, from: 'powderText === undefined', to: 'false', why: BOTH },
  { file: premix, from: 'liquidText === undefined', to: 'false', why: BOTH },
  { file: premix, from: 'powder !== undefined && liquid !== undefined', to: 'true', why: BOTH },
  {
    file: premix,
    from: 'powder !== undefined && liquid !== undefined',
    to: 'powder !== undefined || liquid !== undefined',
    why: BOTH,
  },
  { file: premix, from: 'powder !== undefined', to: 'true', why: BOTH },
  {
    file: premix,
    from: 'liquid !== undefined',
    to: 'true',
    on: 'powder !== undefined && liquid !== undefined',
    why: BOTH,
  },
  { file: premix, from: 'powder === undefined', to: 'false', why: 'a text that is split has a first part' },
  {
    file: 'src/engine/dosing/premix-parts.ts',
    from: "'0'",
    to: '""',
    why: 'nothing is the number 0 too',
  },
  {
    file: 'src/engine/colourants/find.ts',
    from: 'colourant.ci[0] === number',
    to: 'false',
    why: 'every number that an entry has first and another has later is a third one’s only number',
  },
  { file: share, from: 'listed.some(coversSoap)', to: 'listed.every(coversSoap)', why: ALL_ALIKE },
  { file: share, from: '!found', to: 'false', why: 'every limit that is printed has a figure' },
  { file: share, from: 'text === undefined', to: 'false', why: NO_FIGURE },
  { file: share, from: "use.listing.most !== ''", to: 'true', why: NO_FIGURE },
  { file: share, from: "''", to: '"Stryker was here!"', why: NO_FIGURE },
  {
    file: 'src/engine/stability/permitted-summary.ts',
    from: "external !== 'yes'",
    to: 'false',
    why: ALL_ALIKE,
  },
  { file: permitted, from: "''", to: '"Stryker was here!"', why: 'a text that is split has a first part' },
  { file: permitted, from: 'listing !== undefined', to: 'true', why: SECTIONS_STAND },
  {
    file: permitted,
    from: 'sections.map(section => bySection.get(section)).filter(listing => listing !== undefined)',
    to: 'sections.map(section => bySection.get(section))',
    why: SECTIONS_STAND,
  },
  {
    file: permitted,
    from: '[]',
    to: '["Stryker was here"]',
    on: 'substance.us ??',
    why: 'no section has that name',
  },
  { file: permitted, from: "number === '77268:1'", to: 'false', why: ONE_CARBON },
  { file: permitted, from: "'77268:1'", to: '""', why: ONE_CARBON },
  {
    file: colour('jars/compare-jars'),
    from: 'size > greatest![0] / 3',
    to: 'size >= greatest![0] / 3',
    why: NO_TIE,
  },
  ...(['#xyz[1]! / WHITE_POINT.y) / WHITE_POINT.y', 'sums.y / WHITE_POINT.y) / WHITE_POINT.y'] as const).map(
    (from, at) => ({
      file: colour(at === 0 ? 'mixing/mix-kernel' : 'matching/subset-solver'),
      from: `labResponseSlope(${at === 0 ? 'this.' : ''}${from}`,
      to: `labResponseSlope(${at === 0 ? 'this.' : ''}${from.replace(/ \/ WHITE_POINT\.y$/u, ' * WHITE_POINT.y')}`,
      why: 'the Y of white is 1',
    }),
  ),
  ...(
    [
      ['outward > 0', 'outward >= 0', 'visit('],
      ['upward > 0', 'upward >= 0', 'visit('],
      ['outside > 0', 'outside >= 0', 'if ('],
    ] as const
  ).map(([from, to, on]) => ({
    file: heat('conduction'),
    from,
    to,
    on,
    why: 'through what does not conduct no heat flows',
  })),
  {
    file: heat('gel'),
    from: 'water >= waterPercent',
    to: 'water > waterPercent',
    why: 'a row of the table lies on the line before it and on the line after it',
  },
  ...(
    [
      ['step === 0 || step === shares.length - 1', 'step === 0 && step === shares.length - 1'],
      ['step === shares.length - 1', 'false'],
    ] as const
  ).map(([from, to]) => ({
    file: 'src/engine/pouring/gradient.ts',
    from,
    to,
    why: 'the ends are aimed at where they stand',
  })),
  {
    file: 'src/engine/pouring/layers.ts',
    from: 'sine < 1',
    to: 'sine <= 1',
    why: 'a mould that is turned over has no end of a slope either way',
  },
  ...(
    [
      ['members.length === 0 || bought.length > 2', 'false', 'what three purchases make is never looked up'],
      ['bought.length > 2', 'false', 'what three purchases make is never looked up'],
      ['members.length === 0', 'false', 'no mix is of nothing'],
      ['at < owned', 'true', 'one’s own stand before those on offer'],
      ['at >= owned', 'true', 'where none is one’s own, all are on offer'],
      [
        'deltaE < (table.get(key)?.deltaE ?? Number.POSITIVE_INFINITY)',
        'deltaE <= (table.get(key)?.deltaE ?? Number.POSITIVE_INFINITY)',
        NO_TIE,
      ],
      ['made.deltaE < own.deltaE', 'made.deltaE <= own.deltaE', NO_TIE],
    ] as const
  ).map(([from, to, why]) => ({ file: 'src/engine/palettes/what-to-buy.ts', from, to, why })),
  ...(
    [
      ['one.chroma < LEAST_CHROMA', 'one.chroma <= LEAST_CHROMA'],
      ['cost < best.cost', 'cost <= best.cost'],
    ] as const
  ).map(([from, to]) => ({ file: 'src/engine/palettes/hue-schemes.ts', from, to, why: NO_TIE })),
  {
    file: colour('calibration/darker-base'),
    from: 'plain.length === 0',
    to: 'false',
    why: 'without a plain bar nothing speaks for darker, which is believed to be none',
  },
  {
    file: colour('matching/target-metric'),
    from: 'bb - m02 * m02',
    to: 'bb + m02 * m02',
    why: 'CIEDE2000 has no term of lightness with b*',
  },
  {
    file: colour('matching/constrained-least-squares'),
    from: 'round < MOST_ROUNDS',
    to: 'false',
    why: 'every set of bounds is tried then, which finds the same step',
  },
  {
    file: 'src/engine/batch/size-among-words.ts',
    from: 'one === undefined || other === undefined',
    to: 'one === undefined && other === undefined',
    why: BOTH,
  },
  {
    file: 'src/engine/batch/portions/portions.ts',
    from: 'settled < 1e-9',
    to: 'false',
    why: 'what has settled stays as it is in further rounds',
  },
  ...(
    [
      ['metric[0]! * l + metric[1]! * a', 'metric[0]! * l - metric[1]! * a'],
      [
        'metric[0]! * l + metric[1]! * a + metric[2]! * b',
        'metric[0]! * l + metric[1]! * a - metric[2]! * b',
      ],
    ] as const
  ).map(([from, to]) => ({
    file: colour('matching/subset-solver'),
    from,
    to,
    why: 'CIEDE2000 has no term of lightness with a* or b*',
  })),
  {
    file: colour('mixing/fluorescence'),
    from: 'band < BAND_COUNT',
    to: 'band <= BAND_COUNT',
    why: 'nothing glows beyond the bands, so that it ends at its peak',
  },
  {
    file: 'src/engine/batch/portions/split.ts',
    from: 'left - taken',
    to: 'left + taken',
    places: 2,
    why: 'either all that is left is taken, of which nothing stays, or nothing is',
  },
  {
    file: 'src/engine/stability/entries.ts',
    from: "raw !== ''",
    to: 'true',
    why: 'what holds no letter and no figure is left out afterwards',
  },
  {
    file: 'src/engine/stability/beta.ts',
    from: 'middle === low',
    to: 'false',
    why: 'what is halved to its last bit stays the same',
  },
  {
    file: 'src/engine/stability/beta.ts',
    from: 'm <= 500',
    to: 'm < 500',
    why: 'the fraction is found within a hundred steps',
  },
  {
    file: colour('mixing/mix-kernel'),
    from: 'false',
    to: 'true',
    places: 2,
    why: 'what glows, with nothing of it in the mix, adds no light',
  },
  {
    file: 'src/engine/palettes/hue-schemes.ts',
    from: 'first.chroma < LEAST_CHROMA',
    to: 'first.chroma <= LEAST_CHROMA',
    why: NO_TIE,
  },
  {
    file: 'src/engine/palettes/what-to-buy.ts',
    from: 'before - best.off >= WORTH',
    to: 'before - best.off > WORTH',
    why: NO_TIE,
  },
  {
    file: 'src/engine/palettes/what-to-buy.ts',
    from: 'one.deltaE < least.deltaE',
    to: 'one.deltaE <= least.deltaE',
    why: NO_TIE,
  },
  {
    file: 'src/engine/palettes/colours-beside.ts',
    from: 'chroma < LEAST_CHROMA',
    to: 'chroma <= LEAST_CHROMA',
    why: NO_TIE,
  },
  {
    file: 'src/engine/palettes/colours-beside.ts',
    from: 'hue + turn + 360',
    to: 'hue + turn - 360',
    why: 'a hue is the same a whole turn on',
  },
  {
    file: 'src/engine/palettes/hue-schemes.ts',
    from: 'apart > 180',
    to: 'apart >= 180',
    why: 'half a turn is half a turn either way',
  },
  {
    file: 'src/engine/cost/money.ts',
    from: "''",
    to: '"Stryker was here!"',
    why: 'what was matched has its figures',
  },
  {
    file: 'src/engine/palettes/what-to-buy.ts',
    from: 'off - single.off >= WORTH',
    to: 'off - single.off > WORTH',
    why: NO_TIE,
  },
  {
    file: 'src/engine/palettes/what-to-buy.ts',
    from: 'colours.slice(at + 1)',
    to: 'colours',
    why: 'a mix of a colour with itself, or the other way round, is tried already',
  },
  {
    file: 'src/engine/pouring/swirl-shares.ts',
    from: 'value === undefined',
    to: 'false',
    why: 'what is no figure, divided, is no number, and is refused as none is',
  },
];
