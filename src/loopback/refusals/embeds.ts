import { listOf, recordOf, textOf } from '../state/json.ts';
import { characters, type Findings, type Path } from './findings.ts';
import { ruleOf } from './rules.ts';

/** Adds what is wrong with the embeds of a message. Limits: Resources > Message > Embed Limits. */
export function checkEmbeds(found: Findings, embeds: readonly unknown[], path: Path) {
  found.count('embed-count', path, embeds, 0);
  let total = 0;
  const measure = (value: unknown): void => {
    total += characters(textOf(value) ?? '');
  };
  for (const [index, item] of embeds.entries()) {
    const embed = recordOf(item);
    const at = [...path, index];
    const footer = recordOf(embed.footer).text;
    const author = recordOf(embed.author).name;
    found.text('embed-title', [...at, 'title'], embed.title, 0);
    found.text('embed-description', [...at, 'description'], embed.description, 0);
    found.text('embed-footer', [...at, 'footer', 'text'], footer, 0);
    found.text('embed-author', [...at, 'author', 'name'], author, 0);
    for (const value of [embed.title, embed.description, footer, author]) measure(value);
    const fields = listOf(embed.fields);
    found.count('embed-fields', [...at, 'fields'], fields, 0);
    for (const [number, entry] of fields.entries()) {
      const field = recordOf(entry);
      found.text('embed-field-name', [...at, 'fields', number, 'name'], field.name, 1);
      found.text('embed-field-value', [...at, 'fields', number, 'value'], field.value, 1);
      measure(field.name);
      measure(field.value);
    }
  }
  if (total > (ruleOf('embed-total').limit ?? 0)) found.add('embed-total', path);
}
