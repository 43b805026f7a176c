// Opens pages and drawings in a browser and says what does not fit, overlaps, is too small or too pale. Pictures and prints go beside the words.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { open, page } from './browser.mjs';

const WIDTHS = [360, 412, 640, 1280];
const FEATURES = {
  light: {},
  dark: { 'prefers-color-scheme': 'dark' },
  contrast: { 'prefers-contrast': 'more' },
  forced: { 'forced-colors': 'active', 'prefers-color-scheme': 'dark' },
};
const PAPERS = { A4: [210, 297], Letter: [215.9, 279.4] };
const SMALLEST_PRINT = 8 / 72 * 96;
/** How wide the text of a sheet of A4 is between its margins, in pixels. */
const PRINT_WIDTH = Math.round(186 / 25.4 * 96);
/** A wider typeface than most machines have for the one that is asked for. */
const WIDE = 'DejaVu Sans, Verdana, sans-serif';

/** Runs in the page: what a reader at this width would stumble over. */
function faults(touch) {
  const found = [];
  const say = (what, element) => found.push(`${what}: <${element.tagName.toLowerCase()}> ${element.textContent.trim().slice(0, 60)}`);
  const root = document.documentElement;
  if (root.scrollWidth > root.clientWidth) {
    found.push(`the page is ${root.scrollWidth} px wide in a window of ${root.clientWidth} px`);
  }
  const hidden = element => element.closest('.skip, thead')?.matches('.skip, .cut thead') || !element.checkVisibility();
  const scrolls = element => {
    for (let up = element; up && up !== document.body; up = up.parentElement) {
      if (['auto', 'scroll'].includes(getComputedStyle(up).overflowX)) {
        return true;
      }
    }
    return false;
  };
  const channel = part => part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  const luminance = rgb => [0.2126, 0.7152, 0.0722].reduce((sum, share, i) => sum + share * channel(rgb[i] / 255), 0);
  const colour = text => text.match(/[\d.]+/g).map(Number);
  const probe = document.body.appendChild(document.createElement('i'));
  probe.style.background = 'Canvas';
  const canvas = colour(getComputedStyle(probe).backgroundColor);
  probe.remove();
  const ground = element => {
    for (let up = element; up; up = up.parentElement) {
      const rgb = colour(getComputedStyle(up).backgroundColor);
      if (rgb.length === 3 || rgb[3] > 0) {
        return rgb;
      }
    }
    return canvas;
  };
  for (const element of document.body.querySelectorAll('*')) {
    if (element.closest('svg') || hidden(element)) {
      continue;
    }
    const box = element.getBoundingClientRect();
    const own = [...element.childNodes].some(node => node.nodeType === 3 && node.data.trim());
    if (own && box.right > root.clientWidth + 0.5 && !scrolls(element)) {
      say('beyond the window', element);
    }
    const style = getComputedStyle(element);
    if (own && style.overflowX === 'hidden' && element.scrollWidth > element.clientWidth) {
      say('cut off', element);
    }
    if (own) {
      const [a, b] = [luminance(colour(style.color)), luminance(ground(element))];
      const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
      if (ratio < 4.5) {
        say(`contrast ${ratio.toFixed(2)}`, element);
      }
    }
    if (touch && element.matches('input, summary, nav a')) {
      const target = (element.closest('label') ?? element).getBoundingClientRect();
      if (target.height < 24 || target.width < 24) {
        say(`${target.width.toFixed(0)} by ${target.height.toFixed(0)} px to touch`, element);
      }
    }
  }
  return found;
}

/** Runs in the page: texts of drawings that leave their paper or lie on each other, as this browser sets them. */
function drawn() {
  const found = [];
  const svgs = document.documentElement.tagName === 'svg' ? [document.documentElement] : [...document.querySelectorAll('svg')];
  for (const svg of svgs) {
    const paper = svg.getBoundingClientRect();
    const scale = paper.width / svg.viewBox.baseVal.width;
    const name = svg.querySelector('title')?.textContent ?? 'drawing';
    const texts = [...svg.querySelectorAll('text')].filter(text => !text.closest('defs') && text.textContent.trim());
    const boxes = texts.map(text => {
      const box = text.getBBox();
      const matrix = svg.getScreenCTM().inverse().multiply(text.getScreenCTM());
      // Capitals and digits stand between these; the rest of the line's height is air.
      const size = parseFloat(text.getAttribute('font-size'));
      const base = parseFloat(text.getAttribute('y'));
      const corners = [[box.x, base - 0.72 * size], [box.x + box.width, base - 0.72 * size], [box.x + box.width, base], [box.x, base]]
        .map(([x, y]) => ({ x: matrix.a * x + matrix.c * y + matrix.e, y: matrix.b * x + matrix.d * y + matrix.f }));
      return { text: text.textContent, size: size * scale, left: Math.min(...corners.map(c => c.x)), right: Math.max(...corners.map(c => c.x)),
        top: Math.min(...corners.map(c => c.y)), bottom: Math.max(...corners.map(c => c.y)), turned: matrix.b !== 0 && matrix.a !== 0 };
    });
    const { width, height } = svg.viewBox.baseVal;
    for (const box of boxes) {
      if (box.left < -0.1 || box.top < -0.1 || box.right > width + 0.1 || box.bottom > height + 0.1) {
        found.push(`${name}: "${box.text}" leaves the paper`);
      }
    }
    boxes.sort((one, other) => one.left - other.left);
    for (let i = 0; i < boxes.length; i++) {
      for (let k = i + 1; k < boxes.length && boxes[k].left < boxes[i].right - 0.1; k++) {
        if (!boxes[i].turned && !boxes[k].turned && boxes[k].top < boxes[i].bottom - 0.1 && boxes[k].bottom > boxes[i].top + 0.1) {
          found.push(`${name}: "${boxes[i].text}" and "${boxes[k].text}" lie on each other`);
        }
      }
    }
  }
  return found;
}

/** Runs in the page, set for paper: text that is too small to be read there. */
function small(least) {
  const found = new Set();
  for (const element of document.body.querySelectorAll('*')) {
    const own = [...element.childNodes].some(node => node.nodeType === 3 && node.data.trim());
    const size = parseFloat(getComputedStyle(element).fontSize);
    if (own && !element.closest('svg') && element.checkVisibility() && size < least - 0.05) {
      found.add(`${(size * 0.75).toFixed(1)} pt on paper: <${element.tagName.toLowerCase()} class="${element.className}">`);
    }
  }
  return [...found];
}

/** Runs in the page: numbers that are broken, so that a line ends with a part that reads as another number. */
function broken(family) {
  const style = document.head.appendChild(document.createElement('style'));
  style.textContent = family ? `* { font-family: ${family} !important }` : '';
  const found = [];
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const text = texts.currentNode;
    if (text.parentElement.closest('svg') || !text.parentElement.checkVisibility()) {
      continue;
    }
    for (const number of text.data.matchAll(/\d+(?:[./:]\d+)*/g)) {
      const range = document.createRange();
      range.setStart(text, number.index);
      range.setEnd(text, number.index + number[0].length);
      if (new Set([...range.getClientRects()].map(box => box.top)).size > 1) {
        found.push(`${number[0]} is broken: <${text.parentElement.tagName.toLowerCase()}> ${text.data.trim().slice(0, 60)}`);
      }
    }
  }
  style.remove();
  return found;
}

/** Headings that a page ends with, and pages of cut cards without the line that says whose they are. */
function pages(pdf, headings) {
  let text;
  try {
    text = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8', maxBuffer: 1 << 28 });
  } catch {
    return { count: '?', found: ['pdftotext is not here: page ends were not looked at'] };
  }
  const plain = line => line.replace(/\s+/g, ' ').trim();
  // A heading may take several lines, and broken words have no space between them; marks of writing direction are the converter's.
  const letters = text => text.replace(/[\s\u200e\u200f\u202a-\u202e]/g, '');
  const all = text.split('\f').slice(0, -1);
  const found = [];
  all.forEach((one, i) => {
    const lines = one.split('\n').map(plain).filter(line => line && !/^page \d+ of \d+$/.test(line));
    const last = lines.at(-1) ?? '';
    if (lines.length < 2) {
      found.push(`page ${i + 1} is empty`);
    } else if (last.length > 3 && lines.slice(-8).some((_, from, end) => headings.some(heading =>
        letters(heading) === letters(end.slice(from).join(''))))) {
      found.push(`page ${i + 1} ends with a heading: ${last}`);
    } else if (/^Row Piece Board Length/.test(last)) {
      found.push(`page ${i + 1} ends with the head of a table`);
    }
  });
  return { count: all.length, found };
}

function files(path) {
  if (!statSync(path).isDirectory()) {
    return [path];
  }
  return readdirSync(path).sort().flatMap(name => files(join(path, name))).filter(file => /\.(html|svg)$/.test(file));
}

const [out, ...paths] = process.argv.slice(2);
if (!out || paths.length === 0) {
  console.error('usage: node look.mjs FOLDER-FOR-PICTURES FILE-OR-FOLDER...');
  process.exit(2);
}
mkdirSync(out, { recursive: true });
const browser = await open(process.env.CHROMIUM ?? 'chromium');
const tab = await page(browser);
let count = 0;
for (const file of paths.flatMap(path => existsSync(path) ? files(resolve(path)) : [])) {
  const name = `${basename(dirname(file))}-${basename(file).replace(/\.\w+$/, '')}`;
  const found = new Map();
  const note = (where, faults) => faults.forEach(fault => found.set(fault, [...(found.get(fault) ?? []), where]));
  await tab.media('', {});
  await tab.size(1280, 900);
  await tab.load(pathToFileURL(file).href);
  note('drawing', await tab.run(drawn));
  let printed = '';
  if (file.endsWith('.html')) {
    await tab.run(() => document.querySelectorAll('details').forEach(details => { details.open = true; }));
    for (const [kind, features] of Object.entries(FEATURES)) {
      await tab.media('', features);
      for (const width of WIDTHS) {
        await tab.size(width, 900);
        await tab.touch(width < 700);
        note(`${width} px ${kind}`, await tab.run(faults, width < 700));
        if (kind === 'light') {
          note(`${width} px`, await tab.run(broken, ''));
          note(`${width} px wide letters`, await tab.run(broken, WIDE));
        }
      }
      await tab.size(360, 900);
      writeFileSync(join(out, `${name}-360-${kind}.png`), await tab.picture({ x: 0, y: 0, width: 360, height: 4000, scale: 1 }));
    }
    await tab.touch(false);
    await tab.run(() => document.querySelectorAll('details').forEach(details => { details.open = false; }));
    await tab.media('print', {});
    note('print', await tab.run(small, SMALLEST_PRINT));
    await tab.size(PRINT_WIDTH, 900);
    note('print', await tab.run(broken, ''));
    note('print, wide letters', await tab.run(broken, WIDE));
    const headings = await tab.run(() => [...document.querySelectorAll('h2, h3, caption')]
      .filter(heading => heading.checkVisibility()).map(heading => heading.textContent));
    await tab.media('', {});
    for (const [paper, [width, height]] of Object.entries(PAPERS)) {
      const pdf = join(out, `${name}-${paper}.pdf`);
      writeFileSync(pdf, await tab.pdf(width, height));
      const { count: sheets, found: ends } = pages(pdf, headings);
      note(paper, ends);
      printed += `, ${sheets} pages of ${paper}`;
    }
  } else {
    writeFileSync(join(out, `${name}.png`), await tab.picture());
  }
  console.log(`${name}: ${found.size === 0 ? 'nothing to mend' : found.size + ' to mend'}${printed}`);
  found.forEach((where, fault) => console.log(`  ${fault} (${where.length > 3 ? where.length + ' ways' : where.join(', ')})`));
  count += found.size;
}
await browser.close();
process.exit(count === 0 ? 0 : 1);
