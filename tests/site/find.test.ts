import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { find } from '../../src/commands/find.ts';
import { chance } from '../bench/chance.ts';
import { axeFindings, TODAY, test } from './harness.ts';

const PHONE = { viewport: { width: 360, height: 740 } };
const options = (page: Page) => page.locator('form.numbox [role=option]');
const status = (page: Page) => page.locator('form.numbox [role=status]');

async function type(page: Page, text: string): Promise<void> {
  await page.keyboard.press('/');
  await page.keyboard.type(text);
  await options(page).first().waitFor();
}

describe('the number box, by keyboard alone', () => {
  test('"/" goes to it from any page, and a number in any spelling finds its reel', async ({ open }) => {
    const page = await open('machines/');
    await type(page, 'wqx.4471');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('n');
    expect(await options(page).first().textContent()).toMatch(/^WQX 4471 Caderno de Nevoeiro, side 1.*held$/);
  });

  test('arrows move, Enter opens what is at hand', async ({ open }) => {
    const page = await open('');
    await type(page, 'WQX 4471');
    await page.keyboard.press('ArrowDown');
    const active = await page.locator('#n').getAttribute('aria-activedescendant');
    expect(await page.locator(`#${active}`).getAttribute('aria-selected')).toBe('true');
    await page.keyboard.press('ArrowUp');
    expect(await page.locator('#n').getAttribute('aria-activedescendant')).toBe(null);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/reels/caderno-side-1/');
  });

  test('Enter with nothing at hand leads to all answers; Escape closes the list', async ({ open }) => {
    const page = await open('');
    await type(page, 'WQX 44?1');
    await page.keyboard.press('Escape');
    expect(await page.locator('#found').isHidden()).toBe(true);
    expect(await page.locator('#n').inputValue()).toBe('WQX 44?1');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/look-up/?n=WQX+44%3F1');
    expect(await page.locator('h1').textContent()).toBe('What could WQX 44?1 be?');
  });

  test('a "/" typed into a field stays a "/"', async ({ open }) => {
    const page = await open('numbers/');
    await page.locator('#pl').focus();
    await page.keyboard.type('4471/2');
    expect(await page.locator('#pl').inputValue()).toBe('4471/2');
  });
});

describe('what it says', () => {
  test('a screen reader hears how many and why, and which search answered', async ({ open }) => {
    const page = await open('');
    await type(page, 'WQX 44?1');
    await page.waitForFunction(() =>
      /with these words|has these words/.test(document.querySelector('[role=status]')?.textContent ?? ''),
    );
    expect(await status(page).textContent()).toMatch(
      /^\d+ numbers fit: \d+ with an unread character filled, .*only near\..* words\.$/,
    );
    const groups = await page
      .locator('#found [role=group]')
      .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')));
    expect(groups[0]).toMatch(/^By number: \d+$/);
    expect(groups.at(-1)).toMatch(/^By words: /);
  });

  test('words find entries by their text in the same box', async ({ open }) => {
    const page = await open('stocks/');
    await type(page, 'Sargaço');
    const texts = page.locator('#found [role=group][aria-label^="By words"] [role=option]');
    await texts.first().waitFor();
    expect(await texts.first().textContent()).toContain('Caderno de Nevoeiro');
    expect(await texts.first().getAttribute('href')).toMatch(/reels\/caderno/);
  });

  test('a number nobody has shows only near ones, and says so', async ({ open }) => {
    const page = await open('');
    await type(page, 'MZV 3098');
    const groups = page.locator('#found [role=group]');
    expect(await groups.first().getAttribute('aria-label')).toBe('By number: none fits');
    expect(await groups.nth(1).getAttribute('aria-label')).toBe('Not what you typed, only near');
  });

  test('once loaded it answers without a network', async ({ open }) => {
    const page = await open('');
    await type(page, 'WQX');
    await page.locator('#n').fill('');
    await page.context().setOffline(true);
    await page.locator('#n').pressSequentially('MZV 3114');
    await options(page).first().waitFor();
    expect(await options(page).first().textContent()).toContain('MZV 3114');
  });
});

describe('the page for looking up', () => {
  test('lays what was typed over what is written, and gives each answer’s reason', async ({ open }) => {
    const page = await open('look-up/?n=WQX%2044%3F1');
    const hit = page.locator('#fit-list .hit').first();
    await hit.waitFor();
    expect(await hit.locator('.coll').getAttribute('aria-label')).toBe('typed WQX 44?1, found WQX 4471');
    expect(await hit.locator('.chars').textContent()).toContain('fills the ? 7');
    expect(await page.locator('#near-list .k.off').count()).toBeGreaterThan(0);
  });

  test('where nothing is found, it says what can be typed', async ({ open }) => {
    const page = await open('look-up/?n=zzz999');
    await page.locator('#how').waitFor();
    expect(await page.locator('#count').textContent()).toContain('No number fits.');
  });

  test('what stands in the address is only ever text', async ({ open }) => {
    const page = await open(`look-up/?n=${encodeURIComponent('<img src=x onerror=document.title="no">')}`);
    await page.waitForFunction(() => document.querySelector('#count')?.textContent !== '');
    expect(await page.locator('h1').textContent()).toBe('What could <img src=x onerror=document.title="no"> be?');
    expect(await page.locator('main img').count()).toBe(0);
  });

  test('text answers are narrowed by a filter', async ({ open }) => {
    const page = await open('look-up/?n=Caderno');
    await page.locator('#text-list li').first().waitFor();
    const before = await page.locator('#text-list li').count();
    await page.locator('#filter-what').selectOption({ index: 1 });
    await page.waitForFunction((count) => document.querySelectorAll('#text-list li').length < count, before);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('filter-what');
  });

  test('without script it leads to the list of all numbers', async ({ open }) => {
    const page = await open('look-up/?n=WQX', { javaScriptEnabled: false });
    await page.getByRole('link', { name: /All numbers stand/ }).click();
    expect(await page.locator('h1').textContent()).toBe('Numbers');
    expect(await page.locator('table').first().textContent()).toContain('WQX 4471');
  });
});

describe('a pasted list', () => {
  test('says of each line whether it is held, known or new', async ({ open }) => {
    const page = await open('numbers/');
    await page
      .locator('#pl')
      .fill('3114 copy tape side 1\nWQX 4534 (no box)\nMZV3098 master\n\n7 in. reel, unlabelled');
    await page.getByRole('button', { name: 'Compare' }).click();
    await page.waitForFunction(() => /^4 lines: /.test(document.querySelector('#answer')?.textContent ?? ''));
    expect(await page.locator('#answer').textContent()).toBe(
      '4 lines: 1 known of, 1 perhaps, 1 new, 1 with no number.',
    );
    const marks = await page.locator('#answer-rows .mk').allTextContents();
    expect(marks).toEqual(['perhaps held', 'known, not held', 'new', 'no number']);
  });
});

describe('on a telephone and for everyone', () => {
  test('at 360 px the list of answers doesn’t widen the page', async ({ open }) => {
    const page = await open('', PHONE);
    await type(page, 'WQX 44?1');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    const box = await page.locator('#found').boundingBox();
    expect(box?.x).toBeGreaterThanOrEqual(0);
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(360);
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    test(`axe finds nothing in the open list, the answers and the compared list (${colorScheme})`, async ({ open }) => {
      const page = await open('look-up/?n=WQX%2044%3F1', { ...PHONE, colorScheme });
      await page.locator('#fit-list .hit').first().waitFor();
      expect(await axeFindings(page)).toEqual([]);
      await type(page, '2');
      await page.keyboard.press('ArrowDown');
      expect(await axeFindings(page)).toEqual([]);
      await page.goto(page.url().replace(/look-up.*/, 'numbers/'));
      await page.locator('#pl').fill('WQX 4471\nMZV3098\nreel');
      await page.getByRole('button', { name: 'Compare' }).click();
      await page.locator('#answer-rows tr').first().waitFor();
      expect(await axeFindings(page)).toEqual([]);
    });
  }
});

/** 300 questions made of the numbers of the demo: as they are, respelt, half-read, misread, in part, within an etching. */
function questionsOf(numbers: readonly string[]): readonly string[] {
  const next = chance(4471);
  const at = (text: string) => Math.floor(next() * text.length);
  const change = (text: string, to: string) => {
    const place = at(text);
    return text.slice(0, place) + to + text.slice(place + 1);
  };
  const ways: readonly ((text: string) => string)[] = [
    (text) => text,
    (text) => text.toLowerCase().replaceAll(' ', '-'),
    (text) => change(text, '?'),
    (text) => change(text, String(Math.floor(next() * 10))),
    (text) => text.slice(0, 3 + at(text)),
    (text) => `${text}-2 ‖ QQ`,
  ];
  return Array.from({ length: 300 }, (_, each) => {
    const number = numbers[Math.floor(next() * numbers.length)] ?? '';
    return (ways[each % ways.length] ?? ways[0])?.(number).trim() || number;
  });
}

test('the page and the command give the same answers to the same 300 questions', async ({ open }) => {
  const page = await open('numbers/');
  const numbers = await page.locator('#all tbody th').allTextContents();
  const questions = questionsOf(numbers.map((text) => text.trim()));
  await type(page, 'W');
  const shown = await page.evaluate(async (asked) => {
    const box = document.querySelector<HTMLInputElement>('#n');
    const answers: string[][] = [];
    for (const question of asked) {
      if (box === null) break;
      box.value = question;
      box.dispatchEvent(new Event('input'));
      await new Promise((go) => setTimeout(go, 0));
      const leads = [...document.querySelectorAll('#found > [role=group] > [role=option]')];
      answers.push(
        leads.map(
          (lead) => `${lead.querySelector('.as-written')?.textContent} | ${lead.querySelector('b')?.textContent}`,
        ),
      );
    }
    return answers;
  }, questions);
  const told = await Promise.all(questions.map(commandsAnswer));
  expect(shown).toEqual(told);
  expect(told.filter((answers) => answers.length > 0).length).toBeGreaterThan(250);
}, 120_000);

async function commandsAnswer(question: string): Promise<readonly string[]> {
  const out: string[] = [];
  const io = {
    out: (text: string) => void out.push(text),
    err: () => undefined,
    cwd: process.cwd(),
    now: new Date(0),
    env: {},
    terminal: false,
  };
  await find([`--today=${TODAY}`, '--format', 'json', '--', question], io);
  const { hits, near } = JSON.parse(out.join(''));
  const leads = [...hits.slice(0, 8), ...near.slice(0, hits.length === 0 ? 8 : 4)];
  return leads.map(({ number, title }: { number: string; title: string }) => `${number} | ${title}`);
}
