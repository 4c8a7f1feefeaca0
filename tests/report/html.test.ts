import { existsSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { HtmlValidate } from 'html-validate';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { composeReport } from '../../src/7-report/compose-report.ts';
import { reportHtml } from '../../src/7-report/html/write-html.ts';
import { gradeDraft } from '../grade/make-draft.ts';
import { crowdedDraft, fullInspection } from './full-inspection.ts';

const none = { stills: [], signed: null } as const;
const hostile = `<script>document.title="run"</script><img src=x onerror=alert(1)> "quoted" & 'so' #eval("1") *b* $x$ \u0007\u202eturned`;
const still = {
  number: 1,
  caption: 'No. 1, Roots at 19 ft 6 in.',
  jpeg: null,
  why: 'the recording gave no picture at this moment.',
};

const pages = {
  full: reportHtml(composeReport(fullInspection(), { ...none, stills: [still] })),
  crowded: reportHtml(composeReport(gradeDraft(crowdedDraft(120, 300)), none)),
  empty: reportHtml(composeReport(gradeDraft({ runs: [], site: {} }), none)),
  hostile: reportHtml(
    composeReport(
      gradeDraft(
        { site: { address: hostile }, observations: [{ kind: 'hole', heard: { start: 1, end: 2, text: hostile } }] },
        { equipment: hostile, property: { client: hostile } },
      ),
      none,
    ),
  ),
};
const named = Object.entries(pages);

describe('the HTML report', () => {
  // html-validate, an independent validator, with its recommended rules.
  it.each(named)('%s is valid', async (_name, page) => {
    const result = await new HtmlValidate({ extends: ['html-validate:recommended'] }).validateString(page);
    expect(result.results.flatMap(({ messages }) => messages.map((m) => `${m.line} ${m.ruleId} ${m.message}`))).toEqual(
      [],
    );
  });

  it.each(named)('%s asks for nothing outside itself', (_name, page) => {
    const addresses = [...page.matchAll(/(?:src|href)="([^"]*)"|url\(([^)]*)\)/g)].map((m) => m[1] ?? m[2]!);
    expect(addresses.filter((address) => !/^(data:|#)/.test(address))).toEqual([]);
    expect(page).not.toMatch(/<script|<link|<iframe|@import/);
  });

  it('says what picture is missing', () => {
    expect(pages.full).toContain(
      'No. 1, Roots at 19 ft 6 in. No picture: the recording gave no picture at this moment.',
    );
  });
});

// Where there is no browser, these are left out; continuous integration installs one.
const browserPath = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync);

describe.skipIf(browserPath === undefined)('the HTML report in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: browserPath!, args: ['--no-sandbox'] });
  });
  afterAll(() => browser?.close());

  async function open(page: string, width: number) {
    const tab = await (await browser.newContext({ viewport: { width, height: 900 } })).newPage();
    const complaints: string[] = [];
    const requests: string[] = [];
    tab.on('console', (message) => complaints.push(message.text()));
    tab.on('request', (request) => requests.push(request.url()));
    await tab.setContent(page);
    return { tab, complaints, requests: requests.filter((url) => !url.startsWith('data:')) };
  }

  // The crowded page repeats the rows of the full one, and axe takes half a minute over them.
  it.each(named.filter(([name]) => name !== 'crowded'))('%s has no fault that axe finds', async (_name, page) => {
    const { tab } = await open(page, 1280);
    const { violations, passes } = await new AxeBuilder({ page: tab }).analyze();
    expect(violations.map((violation) => `${violation.id} ${violation.nodes[0]?.html.slice(0, 120)}`)).toEqual([]);
    expect(passes.length).toBeGreaterThan(10);
    await tab.close();
  });

  it.each(named)('%s fits a phone, complains of nothing and asks for nothing', async (_name, page) => {
    const { tab, complaints, requests } = await open(page, 390);
    expect(await tab.evaluate('document.documentElement.scrollWidth')).toBe(390);
    expect([complaints, requests]).toEqual([[], []]);
    await tab.close();
  });

  it('shows markup as it was typed and runs none of it', async () => {
    const { tab } = await open(pages.hostile, 1280);
    expect(await tab.title()).not.toBe('run');
    const shown = (await tab.evaluate('document.body.textContent')) as string;
    expect(shown).toContain(
      `<script>document.title="run"</script><img src=x onerror=alert(1)> "quoted" & 'so' #eval("1") *b* $x$ turned`,
    );
    await tab.close();
  });

  it('keeps every label of the drawing on the drawing', async () => {
    for (const page of [pages.full, pages.crowded]) {
      const { tab } = await open(page, 1280);
      const outside = await tab.evaluate(
        `[...document.querySelectorAll('figure svg')].flatMap((svg) => { const box = svg.getBoundingClientRect(); return [...svg.querySelectorAll('text')].filter((t) => { const b = t.getBoundingClientRect(); return b.left < box.left - 1 || b.right > box.right + 1 || b.bottom > box.bottom + 1 || b.top < box.top - 1; }).map((t) => t.textContent); })`,
      );
      expect(outside).toEqual([]);
      await tab.close();
    }
  });
});
