import type { WriteStream } from 'node:tty';

/** What a terminal can show. */
export type Look = {
  /** Characters in a line; undefined where nobody looks at lines, as in a pipe. */
  readonly width: number | undefined;
  /** True for 24-bit colour that the user has not put off with NO_COLOR. */
  readonly colour: boolean;
};

/** How a stream looks. NO_COLOR: https://no-color.org, any value that is not empty. */
export const lookOf = (
  stream: Partial<Pick<WriteStream, 'isTTY' | 'columns' | 'getColorDepth'>>,
  environment: NodeJS.ProcessEnv = process.env,
): Look => ({
  width: stream.isTTY ? stream.columns : undefined,
  colour: stream.isTTY === true && !environment.NO_COLOR && (stream.getColorDepth?.(environment) ?? 1) >= 24,
});

/** A text as it is seen there: colours shown beside their hex, lines wrapped at words under where their text began. */
export const dressed = (text: string, { width, colour }: Look): string => {
  const wrapped =
    width === undefined
      ? text
      : text
          .split('\n')
          .map(line => wrap(line, width))
          .join('\n');
  return colour ? wrapped.replaceAll(/#[\da-f]{6}\b/giu, hex => `${patch(hex)} ${hex}`) : wrapped;
};

/** Two spaces on a ground of that colour. Source: ECMA-48 SGR 48, ISO 8613-6 direct colour. */
function patch(hex: string): string {
  const [r, g, b] = [1, 3, 5].map(at => Number.parseInt(hex.slice(at, at + 2), 16));
  return `\u001b[48;2;${r};${g};${b}m  \u001b[0m`;
}

/** Narrower than this nothing reads well; such a terminal breaks lines by itself. */
const NARROWEST = 20;

function wrap(line: string, width: number): string {
  if (line.length <= width || width < NARROWEST) return line;
  const [lead = ''] = /^\s*(?:[-!]\s|\d+\.\s|\[\d+\]\s)?/u.exec(line) ?? [];
  const indent = ' '.repeat(lead.length);
  const lines: string[] = [];
  let now = lead;
  for (const word of line.slice(lead.length).split(' ')) {
    const isFirst = now === lead || now === indent;
    if (isFirst) now += word;
    else if (now.length + 1 + word.length <= width) now += ` ${word}`;
    else {
      lines.push(now);
      now = indent + word;
    }
  }
  return [...lines, now].join('\n');
}
