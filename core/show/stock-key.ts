/** A thing of the stock by its name: case, spaces and forms of one letter are no difference. */
export const stockKey = (name: string): string =>
  name.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim();
