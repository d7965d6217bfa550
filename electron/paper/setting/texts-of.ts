import type { Part, Sheet } from '../../../core/sheets/sheet.ts';

/** Every text that may stand on the paper of these sheets: what fonts must be found for. */
export function* textsOf(sheets: Iterable<Sheet>): Generator<string> {
  for (const sheet of sheets) {
    yield sheet.subject;
    yield sheet.title;
    for (const { label, value } of sheet.facts) yield label + value;
    for (const part of sheet.parts) yield* textsOfPart(part);
  }
}

function* textsOfPart(part: Part): Generator<string> {
  if (part.heading !== null) yield part.heading;
  switch (part.is) {
    case 'table':
      for (const { title } of part.columns) yield title;
      for (const { cells } of part.rows) for (const cell of cells) if (typeof cell === 'string') yield cell;
      break;
    case 'text':
      yield* part.paragraphs;
      break;
    case 'drawing':
      for (const shape of part.drawing.shapes) if (shape.is === 'text') yield shape.text;
      break;
    case 'labels':
      for (const { name, below } of part.labels) yield name + below;
      break;
  }
}
