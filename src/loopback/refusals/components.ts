/** Checks the component tree of a message. */
import { type Json, listOf, recordOf, textOf } from '../state/json.ts';
import {
  checkButton,
  checkId,
  checkSelect,
  isKnownKind,
  isSelect,
  kinds,
  noIdsUsed,
  type UsedIds,
} from './controls.ts';
import { characters, type Findings, type Path } from './findings.ts';
import { ruleOf } from './rules.ts';

const inContainer: readonly number[] = [
  kinds.row,
  kinds.section,
  kinds.text,
  kinds.gallery,
  kinds.file,
  kinds.separator,
];
const atTop: readonly number[] = [...inContainer, kinds.container];

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
    if (!at.v2 && component.type !== kinds.row && isKnownKind(component.type)) {
      const rule = atTop.includes(Number(component.type)) ? 'components-need-flag' : 'component-misplaced';
      found.add(rule, [...path, 'type']);
    } else if (isAllowed(tour, component, path, atTop)) visit(tour, component, path);
  }
  if (!at.v2) found.count('legacy-rows', at.path, components, 0);
  if (tour.total > (ruleOf('components-total').limit ?? 0)) found.add('components-total', at.path);
  if (tour.characters > (ruleOf('text-total').limit ?? 0)) found.add('text-total', at.path);
}

function isAllowed({ found }: Tour, component: Json, path: Path, allowed: readonly number[]): boolean {
  const type = component.type;
  if (!isKnownKind(type)) found.add('component-kind-unknown', [...path, 'type']);
  else if (!allowed.includes(Number(type))) found.add('component-misplaced', [...path, 'type']);
  else return true;
  return false;
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
    case kinds.separator:
      return found.range('separator-spacing', [...path, 'spacing'], component.spacing, 1, 2);
    case kinds.container:
      return visitContainer(tour, component, path);
    default:
      return checkSelect(found, component, path, seen, false);
  }
}

function visitRow(tour: Tour, row: Json, path: Path) {
  const children = listOf(row.components);
  tour.found.count('row-buttons', [...path, 'components'], children, 1);
  const selects = children.filter(child => isSelect(recordOf(child).type));
  if (selects.length > 0 && children.length > 1) tour.found.add('row-select-alone', [...path, 'components']);
  const allowed = [2, 3, 5, 6, 7, 8];
  for (const [index, item] of children.entries()) {
    const at = [...path, 'components', index];
    if (isAllowed(tour, recordOf(item), at, allowed)) visit(tour, recordOf(item), at);
  }
}

function visitSection(tour: Tour, section: Json, path: Path) {
  const texts = listOf(section.components);
  tour.found.count('section-texts', [...path, 'components'], texts, 1);
  for (const [index, item] of texts.entries()) {
    const at = [...path, 'components', index];
    if (isAllowed(tour, recordOf(item), at, [kinds.text])) visit(tour, recordOf(item), at);
  }
  const at = [...path, 'accessory'];
  if (section.accessory === undefined || section.accessory === null) {
    tour.found.add('section-accessory', at);
    return;
  }
  const accessory = recordOf(section.accessory);
  if (isAllowed(tour, accessory, at, [kinds.button, kinds.thumbnail])) visit(tour, accessory, at);
}

function visitContainer(tour: Tour, container: Json, path: Path) {
  const { found } = tour;
  found.range('container-colour', [...path, 'accent_color'], container.accent_color, 0, 0xffffff);
  const children = listOf(container.components);
  if (children.length === 0) found.add('container-empty', [...path, 'components']);
  for (const [index, item] of children.entries()) {
    const at = [...path, 'components', index];
    if (isAllowed(tour, recordOf(item), at, inContainer)) visit(tour, recordOf(item), at);
  }
}

function visitGallery(tour: Tour, gallery: Json, path: Path) {
  const items = listOf(gallery.items);
  tour.found.count('gallery-items', [...path, 'items'], items, 1);
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
