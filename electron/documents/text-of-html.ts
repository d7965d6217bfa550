const htmlEntities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' };

/** The words of a formatted text, as of a mail or a saved page; cells of its tables are parted by tabs. */
export function textOfHtml(html: string): string {
  return html
    .replace(/<(style|script|head)\b[^>]*>[\s\S]*?<\/\1>/gi, '')
    .replace(/\s+/g, ' ')
    .replace(/<\/t[dh]> ?(?=<t[dh]\b)/gi, '\t')
    .replace(/<(?:br|\/p|\/div|\/tr|\/li|\/h[1-6]|\/table)\b[^>]*> ?/gi, '\n')
    .replace(/<[^>]*>/g, '')
    .replace(/&#(x?)([0-9a-f]+);/gi, (whole, hex: string, digits: string) => {
      const code = Number.parseInt(digits, hex ? 16 : 10);
      return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
    })
    .replace(/&([a-z]+);/gi, (whole, name: string) => htmlEntities[name.toLowerCase()] ?? whole);
}
