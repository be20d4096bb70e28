import { channel, choice, picture, text, whole, yesNo } from '../../../src/conversation/option.ts';
import { phrases } from '../../../src/words/declared.ts';

const says = phrases('challenge');

export const zone = text(says.options.zone);

const title = text(says.options.title, { most: 80 });

/** How a palette is drawn from the group's shelves. */
export const drawn = {
  seed: text(says.drawn.seed, { most: 40 }).optional(),
  share: whole(says.drawn.share, { least: 1, most: 100 }).optional(),
};

/** Everything a steward may set; all but the title has a usual value. */
export const terms = {
  title: title.optional(),
  brief: text(says.terms.brief, { most: 1000 }).optional(),
  palette: text(says.terms.palette, { most: 300 }).optional(),
  photo: picture(says.terms.photo).optional(),
  random: whole(says.terms.random, { least: 1, most: 6 }).optional(),
  ...drawn,
  rule: choice(says.terms.rule).optional(),
  colourants: whole(says.terms.colourants, { least: 1, most: 20 }).optional(),
  class: choice(says.terms.class).optional(),
  opens: text(says.terms.opens).optional(),
  'entries-until': text(says.terms['entries-until']).optional(),
  'votes-until': text(says.terms['votes-until']).optional(),
  zone: zone.optional(),
  decides: choice(says.terms.decides).optional(),
  method: choice(says.terms.method).optional(),
  'tie-seed': text(says.terms['tie-seed'], { most: 40 }).optional(),
  entries: whole(says.terms.entries, { least: 1, most: 5 }).optional(),
  'made-from': text(says.terms['made-from']).optional(),
  'cure-days': whole(says.terms['cure-days'], { least: 0, most: 366 }).optional(),
  'joined-before': text(says.terms['joined-before']).optional(),
  quorum: whole(says.terms.quorum, { least: 1, most: 100_000 }).optional(),
  anonymous: yesNo(says.terms.anonymous).optional(),
  channel: channel(says.terms.channel).optional(),
  totals: yesNo(says.terms.totals).optional(),
};
