import { Parser } from 'saxen';

/** What a walk does at each step; names come without their namespace prefix. */
export type XmlVisitor = {
  open?(name: string, attribute: (name: string) => string | undefined): void;
  close?(name: string): void;
  text?(text: string): void;
};

/**
 * Walks an XML text once, in order. Entities of a document's own are never expanded (saxen knows none but the
 * predefined ones), so an entity bomb is only text. Throws the parser's error where the XML is broken.
 */
export function walkXml(xml: string, visitor: XmlVisitor): void {
  let failure: Error | null = null;
  const parser = new Parser();
  parser.on('error', (error) => {
    failure ??= error;
  });
  parser.on('warn', () => {});
  parser.on('openTag', (name, attributes, decode) => {
    visitor.open?.(local(name), (wanted) => {
      const all = attributes();
      const value = all[wanted] ?? Object.entries(all).find(([key]) => local(key) === wanted)?.[1];
      return value === undefined ? undefined : decode(value);
    });
  });
  parser.on('closeTag', (name) => visitor.close?.(local(name)));
  parser.on('text', (text, decode) => visitor.text?.(decode(text)));
  parser.on('cdata', (text) => visitor.text?.(text));
  parser.parse(xml);
  if (failure) throw failure;
}

function local(name: string): string {
  return name.slice(name.indexOf(':') + 1);
}
