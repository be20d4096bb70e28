/** Checks the component tree of a message. */
import { type Json, listOf, recordOf, textOf } from '../state/json.ts';
import { checkButton, checkId, checkSelect, isSelect, kinds, noIdsUsed, type UsedIds } from './controls.ts';
import { characters, type Findings, type Path } from './findings.ts';
import { ruleOf } from './rules.ts';

interface Tour {
  readonly found: Findings;
  readonly seen: UsedIds;
  /** Names of files that attachment:// may point at. */
  readonly fileNames: ReadonlySet<string>;
  total: number;
  characters: number;
}

/** Adds what is wrong with `components`; `v2` tells whether IS_COMPONENTS_V2 is in force. */
export function checkComponents(
  found: Findings,
  components: readonly unknown[],
  at: { readonly path: Path; readonly v2: boolean; readonly fileNames: ReadonlySet<string> },
) {
  const tour: Tour = { found, seen: noIdsUsed(), fileNames: at.fileNames, total: 0, characters: 0 };
  for (const [index, item] of components.entries()) {
    const path = [...at.path, index];
    const component = recordOf(item);
    if (!at.v2 && component.type !== kinds.row) found.add('components-need-flag', [...path, 'type']);
    else visit(tour, component, path);
  }
  if (!at.v2) found.count('legacy-rows', at.path, components, 0);
  if (tour.total > (ruleOf('components-total').limit ?? 0)) found.add('components-total', at.path);
  if (tour.characters > (ruleOf('text-total').limit ?? 0)) found.add('text-total', at.path);
}

function visit(tour: Tour, component: Json, path: Path) {
  const { found, seen } = tour;
  tour.total += 1;
  checkId(found, component, path, seen);
  switch (component.type) {
    case kinds.row:
      return visitRow(tour, component, path);
    case kinds.button:
      return checkButton(found, component, path, seen);
    case kinds.section:
      return visitSection(tour, component, path);
    case kinds.text:
      found.text('text-empty', [...path, 'content'], component.content, 1);
      tour.characters += characters(textOf(component.content) ?? '');
      return;
    case kinds.thumbnail:
      found.text('media-description', [...path, 'description'], component.description, 0);
      return checkMedia(tour, component.media, [...path, 'media']);
    case kinds.gallery:
      return visitGallery(tour, component, path);
    case kinds.file:
      return checkFile(tour, component, path);
    case kinds.container:
      return visitAll(tour, component, path);
    default:
      if (isSelect(component.type)) checkSelect(found, component, path, seen, false);
  }
}

function visitRow(tour: Tour, row: Json, path: Path) {
  const children = listOf(row.components);
  const selects = children.filter(child => isSelect(recordOf(child).type));
  if (selects.length > 0 && children.length > 1) tour.found.add('row-select-alone', [...path, 'components']);
  visitAll(tour, row, path);
}

function visitAll(tour: Tour, parent: Json, path: Path) {
  for (const [index, item] of listOf(parent.components).entries())
    visit(tour, recordOf(item), [...path, 'components', index]);
}

function visitSection(tour: Tour, section: Json, path: Path) {
  visitAll(tour, section, path);
  visit(tour, recordOf(section.accessory), [...path, 'accessory']);
}

function visitGallery(tour: Tour, gallery: Json, path: Path) {
  const items = listOf(gallery.items);
  for (const [index, item] of items.entries()) {
    const at = [...path, 'items', index];
    tour.found.text('media-description', [...at, 'description'], recordOf(item).description, 0);
    checkMedia(tour, recordOf(item).media, [...at, 'media']);
  }
}

function checkFile(tour: Tour, component: Json, path: Path) {
  const url = textOf(recordOf(component.file).url) ?? '';
  if (!url.startsWith('attachment://')) tour.found.add('file-attachment-only', [...path, 'file', 'url']);
  else checkMedia(tour, component.file, [...path, 'file']);
}

function checkMedia(tour: Tour, media: unknown, path: Path) {
  const url = textOf(recordOf(media).url) ?? '';
  if (!/^(https?|attachment):\/\/./.test(url)) return tour.found.add('media-url', [...path, 'url']);
  if (url.startsWith('attachment://') && !tour.fileNames.has(url.slice('attachment://'.length)))
    tour.found.add('media-attachment-missing', [...path, 'url']);
}
