import { channel, choice, picture, text, whole, yesNo } from '../../../src/conversation/option.ts';

export const zone = text({ en: 'Time zone, such as Europe/Madrid', es: 'Zona horaria, como Europe/Madrid' });

const title = text({ en: 'What it is called', es: 'Cómo se llama' }, { most: 80 });

/** How a palette is drawn from the group's shelves. */
export const drawn = {
  seed: text({ en: 'Same seed, same palette', es: 'Misma semilla, misma paleta' }, { most: 40 }).optional(),
  share: whole(
    { en: 'Percent of shelves that must reach it', es: 'Porcentaje de estantes que deben alcanzarla' },
    { least: 1, most: 100 },
  ).optional(),
};

/** Everything a steward may set; all but the title has a usual value. */
export const terms = {
  title: title.optional(),
  brief: text({ en: 'What it is about', es: 'De qué va' }, { most: 1000 }).optional(),
  palette: text(
    { en: 'Colours: “teal, #4b3f9e 30%”', es: 'Colores: «teal, #4b3f9e 30%»' },
    { most: 300 },
  ).optional(),
  photo: picture({ en: 'Palette from a photo', es: 'Paleta de una foto' }).optional(),
  random: whole({ en: 'Draw so many colours', es: 'Sacar tantos colores' }, { least: 1, most: 6 }).optional(),
  ...drawn,
  rule: choice(
    { en: 'What may be used', es: 'Qué se puede usar' },
    {
      none: { en: 'anything', es: 'cualquier cosa' },
      'one-pigment': { en: 'one pigment only', es: 'un solo pigmento' },
      'own-shelf': { en: 'own shelf only', es: 'solo el propio estante' },
    },
  ).optional(),
  colourants: whole(
    { en: 'Most colourants', es: 'Colorantes como máximo' },
    { least: 1, most: 20 },
  ).optional(),
  class: choice(
    { en: 'Who it is for', es: 'Para quién es' },
    {
      open: { en: 'everybody', es: 'todos' },
      beginner: { en: 'no wins yet', es: 'sin victorias aún' },
      technique: { en: 'about technique', es: 'de técnica' },
    },
  ).optional(),
  opens: text({ en: 'Opens; now if left out', es: 'Abre; ahora si falta' }).optional(),
  'entries-until': text({ en: '“in 3 days”, “friday 18:00”', es: '«en 3 días», «viernes 18:00»' }).optional(),
  'votes-until': text({ en: '3 days later if left out', es: '3 días después si falta' }).optional(),
  zone: zone.optional(),
  decides: choice(
    { en: 'What decides', es: 'Qué decide' },
    {
      votes: { en: 'votes', es: 'los votos' },
      colour: { en: 'measured colour', es: 'el color medido' },
      both: { en: 'both', es: 'ambos' },
    },
  ).optional(),
  method: choice(
    { en: 'How is voted', es: 'Cómo se vota' },
    {
      schulze: { en: 'ranking', es: 'orden de preferencia' },
      approval: { en: 'every bar one likes', es: 'todas las que gustan' },
      single: { en: 'one bar', es: 'una barra' },
    },
  ).optional(),
  'tie-seed': text({ en: 'Seed that breaks ties', es: 'Semilla que desempata' }, { most: 40 }).optional(),
  entries: whole({ en: 'Bars per member', es: 'Barras por persona' }, { least: 1, most: 5 }).optional(),
  'made-from': text({ en: 'Made on or after', es: 'Hecha desde' }).optional(),
  'cure-days': whole(
    { en: 'Least cure, days', es: 'Curado mínimo, días' },
    { least: 0, most: 366 },
  ).optional(),
  'joined-before': text({ en: 'Voters joined before', es: 'Vota quien entró antes de' }).optional(),
  quorum: whole({ en: 'Fewest ballots', es: 'Papeletas mínimas' }, { least: 1, most: 100_000 }).optional(),
  anonymous: yesNo({ en: 'Makers hidden (yes if left out)', es: 'Autores ocultos (sí si falta)' }).optional(),
  channel: channel({ en: 'Where it is announced', es: 'Dónde se anuncia' }).optional(),
  totals: yesNo({ en: 'Show the count while it runs', es: 'Mostrar el recuento en curso' }).optional(),
};
