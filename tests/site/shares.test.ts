import { describe, expect } from 'vitest';
import { axeFindings, test } from './harness.ts';

describe('the owner’s pages of shares', () => {
  test('list every share, with for whom and until when', async ({ open }) => {
    const page = await open('shares/');
    expect(await page.locator('main tbody tr').count()).toBe(5);
    expect(await page.textContent('main')).toContain('Ingrid Toller');
    expect(await page.locator('nav a[aria-current=page]').textContent()).toBe('Shares');
    expect(await axeFindings(page)).toEqual([]);
  });

  test('say of one what goes along and what stays out, with the first page as its reader sees it', async ({ open }) => {
    const page = await open('shares/toller-valuation/');
    expect(await page.textContent('#along')).toContain('how and when it changed hands');
    expect(await page.textContent('#out')).toContain('where it is kept');
    expect(await page.textContent('#front')).toContain('Opened on this computer');
    expect(await page.locator('#front img').count()).toBe(2);
    expect(await axeFindings(page)).toEqual([]);
  });

  test('name a private fact that a share means to show', async ({ open }) => {
    const page = await open('shares/household-insurance/');
    expect(await page.textContent('#along')).toMatch(/meant to be shown: place/);
  });

  test('stand on 360 px', async ({ open }) => {
    const page = await open('shares/transfer-day/', { viewport: { width: 360, height: 740 } });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  });
});
