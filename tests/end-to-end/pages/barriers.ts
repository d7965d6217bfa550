import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';

/** What axe finds. The themes differ in nothing but colour: all rules in one of them, those of colour in the other. */
export async function barriers(
  page: Page,
  theme: 'night' | 'day' = 'night',
  part = 'body',
): Promise<string[]> {
  const axe = new AxeBuilder({ page }).include(part);
  if (theme === 'day') axe.withTags(['cat.color']);
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}
