import { describe, expect, test } from 'vitest';
import { html, joined, Markup } from '#render/markup.ts';

const HOSTILE = `<img src=x onerror="alert(1)">'&`;

describe('html', () => {
  test('text is escaped in text and in quoted attributes', () => {
    expect(html`<a title="${HOSTILE}">${HOSTILE}</a>`.toString()).toBe(
      '<a title="&lt;img src=x onerror=&quot;alert(1)&quot;&gt;&#39;&amp;">&lt;img src=x onerror=&quot;alert(1)&quot;&gt;&#39;&amp;</a>',
    );
  });

  test('what is markup already stays, and lists of both are joined', () => {
    expect(html`<p>${[html`<b>1</b>`, '<', 2]}</p>`.toString()).toBe('<p><b>1</b>&lt;2</p>');
  });

  test('false and undefined print nothing', () => expect(html`a${false}${undefined}b`.toString()).toBe('ab'));

  test('what stands between parts is escaped too', () =>
    expect(joined(['a', html`<i>b</i>`], ' & ').toString()).toBe('a &amp; <i>b</i>'));

  test('the site’s builder takes it for HTML by its symbol', () =>
    expect(Reflect.get(new Markup(''), Symbol.for('astro:html-string'))).toBe(true));
});
