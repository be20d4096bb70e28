import type { Stage } from '../../../engine/batch/curing/stages.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { datesIn } from '../../dates.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';

const { figure: decimals, one, two, plain } = numbersIn('es');
const whole = (value: number) => decimals(value, 0);
const { day, soon } = datesIn('es');
const andList = new Intl.ListFormat('es', { type: 'conjunction' });
const quoted = (names: readonly string[]) => names.map(name => `«${name}»`);
const figure = (value: number) => (value < 10 ? one : whole)(value);
const g = (grams: number) => `${(grams < 10 ? two : one)(grams)} g`;
const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

type Seen = { readonly word: string; readonly hex: string };
type Guess = Seen & { readonly plusMinus: number };

const stages: Record<Stage, string> = {
  heat: 'mirar el calor',
  unmould: 'desmoldar',
  cut: 'cortar',
  turn: 'girar las barras',
  cured: 'curado',
  retest: 'mirar si se destiñó',
};
const states = { poured: 'vertido', cut: 'cortado', cured: 'curado' } as const;

export const batches = {
  stages,
  grams: (v: { grams: number }) => `${plain(v.grams)} g`,
  colour: (v: { name: string; spoons: string; grams: number; lot: string | undefined }) =>
    `${v.spoons} de ${v.name} (${plain(v.grams)} g${v.lot === undefined ? '' : `, ${v.lot}`})`,
  portion: (v: {
    name: string | undefined;
    colours: readonly string[];
    expected: Guess | undefined;
    became: Seen | undefined;
  }) => {
    const what = v.colours.length === 0 ? 'sin color' : v.colours.join(' + ');
    const head = v.name === undefined || v.name === what ? what : `${v.name}: ${what}`;
    const expected = v.expected
      ? `, previsto ${v.expected.word} ${v.expected.hex} ± ${v.expected.plusMinus}`
      : '';
    return `${head}${expected}${v.became ? `, quedó ${v.became.word} ${v.became.hex}` : ''}`;
  },
  poured: (v: {
    name: string;
    date: string;
    taken: readonly { readonly name: string; readonly grams: number }[];
  }) =>
    v.taken.length === 0
      ? `«${v.name}», vertido el ${v.date}, está en tu libro. Nada salió de tu estantería.`
      : `${v.taken.map(one => `${g(one.grams)} de «${one.name}»`).join(', ')} fuera de tu estantería para «${v.name}», vertido el ${v.date}`,
  notAll: (v: { name: string; grams: number; taken: number }) =>
    v.taken === 0
      ? `«${v.name}»: entraron ${g(v.grams)}, pero no había nada contado en tu estantería, así que no se quitó nada.`
      : `«${v.name}»: entraron ${g(v.grams)} y tu estantería solo tenía ${g(v.taken)}. Ahora dice 0: repón o cuenta de nuevo.`,
  changed: 'Contado como lo hiciste, no como estaba planeado.',
  aside: (v: { text: string }) => `Guardado como nota, no cambia ningún número: «${v.text}».`,
  photoKept: 'La foto queda con él.',
  rawCaution: 'El jabón crudo quema uno o dos días: guantes y gafas, y lejos de niños y animales.',
  undo: 'Deshacer',
  undone: (v: { name: string; back: readonly { readonly name: string; readonly grams: number }[] }) =>
    v.back.length === 0
      ? `«${v.name}» está fuera de tu libro.`
      : `«${v.name}» está fuera de tu libro; de vuelta en tu estantería: ${v.back.map(one => `${g(one.grams)} de «${one.name}»`).join(', ')}.`,
  renamed: (v: { wanted: string; name: string }) =>
    `Ya hay un «${v.wanted}», así que este se llama «${v.name}».`,
  curedSince: (v: { at: number; zone: string }) => `curado desde el ${day(v.at, v.zone)}`,
  otherBars: (v: {
    name: string;
    why: 'count' | 'gained';
    before: readonly number[];
    now: readonly number[];
  }) => {
    const told = (grams: readonly number[]) =>
      `${count(grams.length, 'barra', 'barras')}, ${g(grams.reduce((sum, one) => sum + one, 0))}`;
    return v.why === 'count'
      ? `¿Son las mismas barras de «${v.name}»? Antes: ${told(v.before)}; ahora: ${told(v.now)}.`
      : `El jabón pierde peso, nunca gana: antes ${told(v.before)}, ahora ${told(v.now)}. ¿Son las mismas barras de «${v.name}»?`;
  },
  sameBars:
    'Aún no se ha guardado nada. La pérdida solo se sabe con las mismas barras, siempre todas: pésalas otra vez, o guarda esto como un nuevo comienzo.',
  keepWeights: 'Guardarlo igual',
  undoneBefore: 'Ese lote ya se había sacado; ahora no cambió nada.',
  next: 'Lo que sigue (te escribo)',
  nextSilent: 'Lo que sigue (sin avisos)',
  date: (v: { what: string; at: number; zone: string; exact: boolean }) =>
    `${v.exact ? soon(v.at, v.zone) : day(v.at, v.zone)}: ${v.what}`,
  dateOf: (v: { name: string; date: string }) => `«${v.name}», ${v.date}`,
  nextUp: (v: { name: string; what: string; date: string }) => `${v.date}: ${v.what}, «${v.name}»`,
  nothingDue: 'Nada pendiente: ningún lote tuyo espera nada.',
  row: (v: {
    name: string;
    date: string;
    days: number;
    state: keyof typeof states;
    colours: readonly string[];
  }) => spaced`
    «${v.name}»: ${count(Math.max(0, v.days), 'día', 'días')}, ${states[v.state]}; vertido el
    ${v.date}${v.colours.length > 0 ? `; ${v.colours.join(', ')}` : ''}
  `,
  byMaker: (v: { row: string; by: string }) => `${v.row} (de ${v.by})`,
  bed: (v: { gelled: boolean; said: boolean; lye: number; plan: boolean }) => {
    const why = v.said ? 'como dijiste' : v.plan ? 'como estaba previsto' : 'ya que no se dijo nada';
    return `${v.gelled ? 'Gelificado' : 'Sin gel'}, ${why}.${v.plan ? ` Lejía al ${figure(v.lye)} %.` : ''}`;
  },
  otherwise: (v: { text: string }) => `Distinto de lo planeado: ${v.text}`,
  noted: (v: { date: string; text: string }) => `${v.date}: ${v.text}`,
  noteKept: (v: { name: string }) => `Apuntado junto a «${v.name}».`,
  drying: (v: { percent: number; inAll: number; cured: boolean; weeks: number | undefined }) => {
    const lost = `Pierde el ${figure(Math.max(0, v.percent))} % por semana, el ${figure(Math.max(0, v.inAll))} % desde la primera pesada`;
    if (v.cured) return `${lost}: por debajo del 1 % semanal cuenta como curado (práctica habitual).`;
    return spaced`
      ${lost}; curado por debajo del 1 % semanal (práctica
      habitual)${v.weeks === undefined ? ': pesa otra vez en una semana' : `: unas ${count(v.weeks, 'semana', 'semanas')} más`}.
    `;
  },
  cut: (v: { name: string; bars: number | undefined }) =>
    v.bars === undefined
      ? `«${v.name}» está cortado.`
      : `«${v.name}» está cortado, ${count(v.bars, 'barra pesada', 'barras pesadas')}.`,
  weighed: (v: { name: string; grams: readonly number[] }) =>
    `${g(v.grams.reduce((sum, one) => sum + one, 0))} en ${count(v.grams.length, 'barra', 'barras')} de «${v.name}».`,
  nearness: (deltaE: number): string => {
    if (deltaE <= 1.5) return 'clavado';
    if (deltaE <= 3) return 'muy cerca';
    if (deltaE <= 6) return 'cerca';
    if (deltaE <= 12) return 'un color emparentado';
    return 'otro color';
  },
  cured: (v: { name: string; off: number; nearness: string }) =>
    `A ${one(v.off)}, ${v.nearness}: «${v.name}» junto a lo que predije`,
  curedNoted: (v: { name: string }) => `«${v.name}» está curado.`,
  photoNext: (v: { name: string }) =>
    `Una barra junto a papel blanco con luz de día, y aprendo de ella tus botes: /batch cured batch:${v.name} photo:`,
  balanced: 'Ajustado por la hoja blanca de la foto.',
  roughReading:
    'Lectura aproximada: no se ve una hoja blanca, así que la luz es una suposición y tus botes no aprenden nada. Pon papel blanco junto a la barra.',
  unsureWhich:
    'No sé qué color es qué parte, así que de esas no aprendo. Dilo con colours:«violeta #6b5aa8; dorado #c9a24b».',
  notFound: (v: { found: number; of: number }) =>
    `${v.found} de ${count(v.of, 'parte', 'partes')} encontradas en la barra.`,
  foretold: 'Previsto',
  became: 'Quedó',
  pair: (v: { expected: Guess; became: Guess; off: number }) =>
    `previsto ${v.expected.word} ${v.expected.hex} ± ${v.expected.plusMinus}, quedó ${v.became.word} ${v.became.hex} ± ${v.became.plusMinus}: a ${one(v.off)}`,
  pairsNote:
    'Mitad izquierda: previsto al verter. Mitad derecha: la barra curada, medida. Una diferencia de 2 apenas se ve.',
  pairsAlt: (v: { list: string }) => `Lo previsto junto a lo que quedó: ${v.list}.`,
  learntTitle: 'Qué enseña esta barra de tus botes',
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
      ? `: para el color previsto toma ${v.spoons.next}${v.spoons.capped ? ', lo máximo que cabe,' : ''} en vez de ${v.spoons.used}`
      : ': tus cucharas quedan igual';
    const looks = [
      ...(v.shifted ? ['de otro tono que lo habitual'] : []),
      ...(v.dull ? ['más apagado que lo habitual'] : []),
    ];
    return spaced`
      «${v.name}» es ${plain(v.times)} veces tan fuerte como lo
      habitual${looks.length > 0 ? `, ${looks.join(', ')}` : ''}${spoons}. Más o menos ${v.after} ahora,
      ${v.before} sin probar; de ${count(v.bars, 'barra', 'barras')}.
    `;
  },
  oddBar: {
    duller: spaced`
      Aún no aprendo nada: la barra salió más apagada de lo que dije, pero lo que la explica haría tu bote
      más vivo. ¿Era ese bote, esa cantidad, con luz de día?
    `,
    livelier: spaced`
      Aún no aprendo nada: la barra salió más viva de lo que dije, pero lo que la explica haría tu bote más
      apagado. ¿Era ese bote, esa cantidad, con luz de día?
    `,
  },
  teach: 'Sí: aprende de ella',
  taught: (v: { name: string }) => `Aprendido de «${v.name}».`,
  unlearn: 'Olvidar esta lección',
  unlearnt: (v: { names: readonly string[] }) =>
    `Olvidado: ${andList.format(quoted(v.names))}, como antes de esta barra.`,
  unlearntBefore: 'Nada de ese lote cuenta ya; no cambió nada.',
  pooled: (v: { names: readonly string[] }) =>
    `Los botes de aquí con el mismo nombre parten de lo que tus barras dijeron de ${andList.format(quoted(v.names))}.`,
  photoAlt: (v: { name: string }) => `Tu foto de «${v.name}».`,
  none: 'Tu libro está vacío. Tras verter: /batch poured guarda tu último plan tal como lo hiciste.',
  noneShared: 'Nadie muestra aún un lote aquí: /batch share muestra uno tuyo.',
  noneFit: 'Ningún lote encaja.',
  count: (v: { batches: number; all: number }) =>
    v.batches === v.all
      ? count(v.batches, 'lote', 'lotes')
      : `${v.batches} de ${count(v.all, 'lote', 'lotes')}`,
  more: (v: { count: number }) => `Y ${v.count} más antiguos: acota por color, bote o fecha.`,
  sharedNow: (v: { name: string }) => `«${v.name}» se muestra a este grupo.`,
  unshared: (v: { name: string }) => `«${v.name}» ya no se muestra a este grupo.`,
  removed: (v: { name: string }) => `«${v.name}» ya no está en tu libro. Tu estantería queda igual.`,
  exported: (v: { batches: number }) => `${count(v.batches, 'lote', 'lotes')} en dos archivos.`,
  done: 'Hecho',
  later: 'Más tarde',
  stop: 'Basta',
  doneNoted: (v: { name: string; what: string }) => `Apuntado, «${v.name}»: ${v.what}.`,
  putOff: (v: { what: string; at: number; zone: string }) =>
    `Te aviso de nuevo ${soon(v.at, v.zone)}: ${v.what}.`,
  stopped: (v: { name: string }) =>
    `No habrá más avisos de «${v.name}». /batch dates batch:${v.name} remind:yes los activa de nuevo.`,
  resumed: (v: { name: string }) => `Los avisos de «${v.name}» están activos de nuevo.`,
  stillLosing: (v: { name: string; percent: number }) =>
    `Aún sin curar: «${v.name}» pierde el ${figure(v.percent)} % por semana. Pésalo otra vez en una semana.`,
  reminders: {
    heat: (v: { name: string; peakC: number | undefined }) =>
      `${v.peakC === undefined ? 'Más o menos ahora' : `A unos ${degrees(v.peakC)} ahora`}: «${v.name}» está en su punto más caliente, míralo`,
    unmould: (v: { name: string; peakC: number | undefined }) => `Desmolda «${v.name}»`,
    cut: (v: { name: string; peakC: number | undefined }) => `Corta «${v.name}»`,
    turn: (v: { name: string; peakC: number | undefined }) => `Gira las barras de «${v.name}» y pesa una`,
    cured: (v: { name: string; peakC: number | undefined }) => `«${v.name}» debería estar curado`,
    retest: (v: { name: string; peakC: number | undefined }) =>
      `Tres meses después: ¿se ha desteñido «${v.name}»? Una foto lo dice`,
  } satisfies Record<Stage, (v: { name: string; peakC: number | undefined }) => string>,
  how: {
    heat: 'Si se agrieta o se abomba: destápalo y deja que le dé el aire. Un círculo oscuro y traslúcido que crece desde el centro es gel.',
    unmould: 'Con guantes. Si está blando o pegajoso: más tarde, otro día no le hace daño.',
    cut: 'Con guantes, cuando esté firme como el queso. Si se desmigaja esperó demasiado; si se pega, es pronto.',
    turn: '/batch weigh weights:«112 g» dice cuándo está curado.',
    cured:
      'Pon una barra junto a papel blanco con luz de día: /batch cured photo: muestra en qué quedó cada color y me enseña tus botes.',
    retest: 'La misma barra junto a papel blanco con luz de día: /batch cured photo:',
  } satisfies Record<Stage, string>,
};
