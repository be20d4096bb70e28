export const help = {
  headline: 'Ask me about colour in cold-process soap.',
  row: (v: { name: string; purpose: string; subcommands: readonly string[] }) =>
    `/${v.name}: ${v.purpose}${v.subcommands.length > 0 ? ` (${v.subcommands.join(', ')})` : ''}`,
  start: 'A good start: /dose, with the colourant and how much batter you pull out, such as “2 cups”.',
  lye: 'Raw soap and lye burn. Gloves and goggles on, children and pets away; nothing here replaces a tested recipe or your local rules.',
};
