// A headless Chromium, spoken to over a pipe: nothing is installed and nothing is loaded from anywhere.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Starts a browser; `send(method, params, session)` answers with the result, `close()` ends it. */
export async function open(command) {
  const profile = mkdtempSync(join(tmpdir(), 'looks-'));
  const process = spawn(command, ['--headless', '--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking',
    '--disable-sync', '--hide-scrollbars', '--remote-debugging-pipe', `--user-data-dir=${profile}`, 'about:blank'],
    { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] });
  const waiting = new Map();
  const events = [];
  let last = 0;
  let rest = '';
  process.stdio[4].setEncoding('utf8').on('data', text => {
    const parts = (rest + text).split('\0');
    rest = parts.pop();
    for (const part of parts) {
      const message = JSON.parse(part);
      if (message.id) {
        const { done, failed } = waiting.get(message.id);
        waiting.delete(message.id);
        message.error ? failed(new Error(message.error.message)) : done(message.result);
      } else {
        events.filter(event => event.method === message.method && event.session === message.sessionId)
          .forEach(event => event.done(message.params));
      }
    }
  });
  process.on('error', error => { throw error; });
  const send = (method, params = {}, sessionId) => new Promise((done, failed) => {
    waiting.set(++last, { done, failed });
    process.stdio[3].write(JSON.stringify({ id: last, method, params, sessionId }) + '\0');
  });
  const next = (method, session) => new Promise(done => {
    const event = { method, session, done: params => { events.splice(events.indexOf(event), 1); done(params); } };
    events.push(event);
  });
  const close = async () => {
    await send('Browser.close');
    await new Promise(done => process.exitCode === null ? process.on('exit', done) : done());
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  return { send, next, close };
}

/** Opens a page of the browser: `load`, `size`, `media`, `run` a function in it, `picture`, `pdf`. */
export async function page(browser) {
  const { targetId } = await browser.send('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await browser.send('Target.attachToTarget', { targetId, flatten: true });
  const send = (method, params) => browser.send(method, params, sessionId);
  await send('Page.enable');
  return {
    async load(url) {
      const loaded = browser.next('Page.loadEventFired', sessionId);
      await send('Page.navigate', { url });
      await loaded;
    },
    size: (width, height, zoom = 1) =>
      send('Emulation.setDeviceMetricsOverride', { width, height, deviceScaleFactor: zoom, mobile: width < 700 }),
    touch: enabled => send('Emulation.setTouchEmulationEnabled', { enabled }),
    media: (media, features = {}) => send('Emulation.setEmulatedMedia',
      { media, features: Object.entries(features).map(([name, value]) => ({ name, value })) }),
    async run(what, ...given) {
      const { result, exceptionDetails } = await send('Runtime.evaluate',
        { expression: `(${what})(${given.map(one => JSON.stringify(one)).join(',')})`, returnByValue: true, awaitPromise: true });
      if (exceptionDetails) {
        throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
      }
      return result.value;
    },
    async picture(clip) {
      const { data } = await send('Page.captureScreenshot', clip ? { clip, captureBeyondViewport: true } : {});
      return Buffer.from(data, 'base64');
    },
    async pdf(width, height) {
      const { data } = await send('Page.printToPDF', { preferCSSPageSize: true, paperWidth: width / 25.4, paperHeight: height / 25.4,
        printBackground: true });
      return Buffer.from(data, 'base64');
    },
  };
}
