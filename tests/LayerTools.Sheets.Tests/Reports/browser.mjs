// Opens a report in a headless browser as a user would and prints what it saw as JSON.
// node browser.mjs <report.html> <folder for pictures> <folder with node_modules> <chromium>
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { mkdirSync, readFileSync } from 'node:fs';

const [page, pictures, modules, executablePath] = process.argv.slice(2);
const require = createRequire(join(modules, 'node_modules', 'x.js'));
const { chromium } = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
mkdirSync(pictures, { recursive: true });
const address = pathToFileURL(page).href;
const seen = { console: [], requests: [], dialogs: 0, axe: {} };

const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
const open = async options => {
  const context = await browser.newContext(options);
  const tab = await context.newPage();
  tab.on('console', message => seen.console.push(`${message.type()}: ${message.text()}`));
  tab.on('pageerror', error => seen.console.push(`error: ${error.message}`));
  tab.on('request', request => { if (!request.url().startsWith('data:') && request.url() !== address) seen.requests.push(request.url()); });
  tab.on('dialog', dialog => { seen.dialogs++; dialog.dismiss(); });
  await tab.goto(address);
  return tab;
};
const picture = (tab, name, options) => tab.screenshot({ path: join(pictures, name), ...options });
// The policy of the page keeps injected scripts out, so axe comes in through the debugger, as extensions do.
const check = async (tab, name) => {
  const session = await tab.context().newCDPSession(tab);
  await session.send('Runtime.evaluate', { expression: axe });
  const run = `axe.run({ resultTypes: ['violations'] }).then(seen => JSON.stringify(seen.violations.map(({ id, impact, nodes }) => ({ id, impact, at: nodes.slice(0, 3).map(node => node.html + ' | ' + node.failureSummary) }))))`;
  const { result } = await session.send('Runtime.evaluate', { expression: run, awaitPromise: true, returnByValue: true });
  seen.axe[name] = JSON.parse(result.value);
};
const shown = tab => tab.$$eval('.overview tbody tr:not([hidden]) th a', links => links.map(link => link.textContent));

const desktop = await open({ viewport: { width: 1200, height: 900 }, colorScheme: 'light' });
seen.title = await desktop.title();
seen.files = await shown(desktop);
seen.scriptLayers = await desktop.$$eval('tr.layer bdi', names => names.map(name => name.textContent).filter(name => name.includes('<script>')));
await picture(desktop, 'desktop-light.png');
await check(desktop, 'light, closed');

await desktop.getByLabel('Find files').fill('<script>');
seen.found = await shown(desktop);
seen.foundLayers = await desktop.$$eval('tr.layer:not([hidden]) bdi', names => names.map(name => name.textContent));
seen.told = await desktop.textContent('#told');
await picture(desktop, 'desktop-found.png');
await desktop.getByLabel('Find files').fill('no such thing');
seen.foundNothing = await desktop.textContent('#told');
await desktop.getByLabel('Find files').fill('');
await desktop.getByLabel('Show').selectOption('trouble');
seen.trouble = await shown(desktop);
await desktop.getByLabel('Show').selectOption('');
await desktop.getByRole('button', { name: 'Close all' }).click();

await desktop.getByRole('button', { name: 'Parts' }).click();
seen.byParts = await desktop.$$eval('.overview tbody tr td.number', cells => cells.map(cell => cell.textContent));
await desktop.getByRole('button', { name: 'Parts' }).click();
seen.byPartsDown = await desktop.$$eval('.overview tbody tr td.number', cells => cells.map(cell => cell.textContent));
seen.sortedBy = await desktop.$$eval('.overview [aria-sort]', headings => headings.map(heading => `${heading.textContent} ${heading.getAttribute('aria-sort')}`));

// By keyboard alone: the skip link first, then a link of the overview opens its file and takes the focus there.
await desktop.reload();
await desktop.keyboard.press('Tab');
seen.firstFocus = await desktop.evaluate(() => document.activeElement.className);
await desktop.focus('.overview tbody a');
await desktop.keyboard.press('Enter');
await desktop.waitForFunction(() => document.activeElement.tagName === 'SUMMARY');
seen.opened = await desktop.$$eval('details[open]', files => files.map(file => file.id));
await picture(desktop, 'desktop-file.png');
await desktop.getByRole('button', { name: 'Open all' }).click();
seen.allOpen = await desktop.$$eval('details:not([open])', files => files.length);
await picture(desktop, 'desktop-light-whole.png', { fullPage: true });

const dark = await open({ viewport: { width: 1200, height: 900 }, colorScheme: 'dark' });
await dark.getByRole('button', { name: 'Open all' }).click();
await picture(dark, 'desktop-dark.png');
await check(dark, 'dark, open');

const phone = await open({ viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true });
await picture(phone, 'phone.png');
seen.phoneOverflow = await phone.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
await phone.locator('.overview tbody a').first().tap();
await phone.waitForTimeout(200);
await picture(phone, 'phone-file.png');
await phone.locator('details[open] tr.layer').first().scrollIntoViewIfNeeded();
await picture(phone, 'phone-layers.png');
await check(phone, 'phone, one open');

const print = await open({ colorScheme: 'dark' });
await print.pdf({ path: join(pictures, 'print.pdf'), format: 'A4' });

const plain = await open({ javaScriptEnabled: false, viewport: { width: 1200, height: 900 } });
seen.withoutScript = await plain.locator('#controls').isVisible();

await browser.close();
console.log(JSON.stringify(seen));
