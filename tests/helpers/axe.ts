import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** What axe would change on the page as it stands, one line each. */
export function axeTrouble(page: Page): Promise<readonly string[]> {
  return told(new AxeBuilder({ page }));
}

/** The same in both appearances. Dark differs from light in its colours alone, so these alone are looked at again. */
export async function axeTroubleInBoth(page: Page): Promise<readonly string[]> {
  await page.emulateMedia({ colorScheme: 'light' });
  const light = await axeTrouble(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await told(new AxeBuilder({ page }).withRules('color-contrast'));
  return [...light, ...dark.map((line) => `dark: ${line}`)];
}

async function told(axe: AxeBuilder): Promise<readonly string[]> {
  // The studio is one page without frames: not gathering what frames would say takes half the time.
  const { violations } = await axe.setLegacyMode(true).analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target}: ${failureSummary}`),
  );
}
