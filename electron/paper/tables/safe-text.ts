/**
 * Text that a spreadsheet would take for a formula, by its first sign (the list of OWASP, "CSV Injection"). What
 * comes from a rider may be written so on purpose.
 */
export function looksLikeFormula(text: string): boolean {
  return /^[=+\-@\t\r]/.test(text);
}

/** Spaces as a search in a spreadsheet finds them: the no-break ones are for paper. */
export function withPlainSpaces(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, ' ');
}

/** XML 1.0 has no place for these control characters, not even written as a number. */
export function withoutControls(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out.
  return text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '').toWellFormed();
}
