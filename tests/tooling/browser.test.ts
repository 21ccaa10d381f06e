import { afterEach, expect, it, vi } from 'vitest';
import { launchBrowser } from '../helpers/browser.ts';
import { canUnpackBrowser, unpackBrowser } from '../helpers/packedBrowser.ts';
import { describeWithTool } from '../helpers/tools.ts';

const page = 'data:text/html,<title>Cloth</title><button onclick="document.title=&quot;Cut&quot;">Cut</button>';

async function pressTheButton(): Promise<string> {
  const browser = await launchBrowser();
  try {
    const tab = await browser.newPage();
    await tab.goto(page);
    await tab.getByRole('button', { name: 'Cut' }).click();
    return await tab.title();
  } finally {
    await browser.close();
  }
}

describeWithTool('chromium', 'the browser that tests drive', () => {
  afterEach(() => vi.unstubAllEnvs());

  it('opens a page and presses a button', async () => {
    expect(await pressTheButton()).toBe('Cut');
  });

  it.runIf(canUnpackBrowser())('may also come out of npm, on a machine that has none', async () => {
    const { executablePath, env } = unpackBrowser();
    vi.stubEnv('PIECEWRIGHT_CHROMIUM', executablePath);
    for (const [name, value] of Object.entries(env)) vi.stubEnv(name, value);
    expect(await pressTheButton()).toBe('Cut');
  });
});
