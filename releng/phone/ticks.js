// Drives the page for a phone through the DevTools protocol over a pipe; prints the table of ticks that the page hands out.
// node ticks.js PAGE WIDTH PROFILE PICTURES
'use strict';
const assert = require('assert');
const { spawn } = require('child_process');
const fs = require('fs');
const path = require('path');
const { pathToFileURL } = require('url');

const [page, widthText, profile, pictures] = process.argv.slice(2);
const width = Number(widthText);
const HEIGHT = 800;

async function browser() {
  const process = spawn('chromium-headless-shell', ['--no-sandbox', '--disable-gpu', '--hide-scrollbars', '--remote-debugging-pipe',
    '--user-data-dir=' + profile], { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] });
  const asked = new Map();
  const faults = [];
  let number = 0, rest = '', loaded = () => {};
  process.stdio[4].on('data', (data) => {
    const parts = (rest + data).split('\0');
    rest = parts.pop();
    for (const message of parts.map(JSON.parse)) {
      if (message.id) { asked.get(message.id)(message); }
      if (message.method === 'Page.loadEventFired') { loaded(); }
      if (message.method === 'Runtime.exceptionThrown') { faults.push(message.params.exceptionDetails.text); }
    }
  });
  let session;
  const send = (method, params = {}) => new Promise((done, failed) => {
    asked.set(++number, (answer) => answer.error ? failed(new Error(answer.error.message)) : done(answer.result));
    process.stdio[3].write(JSON.stringify({ id: number, method, params, sessionId: session }) + '\0');
  });
  const { targetId } = await send('Target.createTarget', { url: 'about:blank' });
  session = (await send('Target.attachToTarget', { targetId, flatten: true })).sessionId;
  for (const domain of ['Page', 'Runtime', 'Network']) { await send(domain + '.enable'); }
  await send('Emulation.setDeviceMetricsOverride', { width, height: HEIGHT, deviceScaleFactor: 1, mobile: true });
  await send('Network.emulateNetworkConditions', { offline: true, latency: 0, downloadThroughput: 0, uploadThroughput: 0 });
  const ask = async (script) => (await send('Runtime.evaluate', { expression: script, returnByValue: true, awaitPromise: true })).result.value;
  const open = new Promise((done) => { loaded = done; });
  await send('Page.navigate', { url: pathToFileURL(path.resolve(page)).href });
  await open;
  return {
    ask,
    faults,
    type: (text) => send('Input.insertText', { text }),
    async tap(element) {
      const [x, y] = await ask(`(() => { const e = ${element}; e.scrollIntoView({ block: 'center' });
        const r = e.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]; })()`);
      for (const type of ['mousePressed', 'mouseReleased']) {
        await send('Input.dispatchMouseEvent', { type, x, y, button: 'left', clickCount: 1 });
      }
    },
    async picture(name) {
      const { data } = await send('Page.captureScreenshot', { format: 'png' });
      fs.writeFileSync(path.join(pictures, `${name}-${width}.png`), Buffer.from(data, 'base64'));
    },
    async close() {
      const gone = new Promise((done) => process.on('exit', done));
      process.stdio[3].write(JSON.stringify({ id: ++number, method: 'Browser.close' }) + '\0');
      asked.set(number, () => {});
      await gone;
    },
  };
}

const box = (row) => `document.querySelectorAll('input[data-id]')[${row}]`;
const text = (id) => `document.getElementById('${id}').textContent`;
const ticked = "Array.from(document.querySelectorAll('input[data-id]'), (box) => box.checked ? 1 : 0).join('')";

(async () => {
  let phone = await browser();
  assert.equal(await phone.ask('document.documentElement.scrollWidth'), width, 'the page is as wide as the phone');
  await phone.picture('list');
  await phone.tap(box(12));
  assert.equal(await phone.ask(box(12) + '.checked'), false, 'no tick without a name');
  assert.notEqual(await phone.ask(text('note')), '');
  assert.equal(await phone.ask('document.activeElement.id'), 'who');
  await phone.picture('name');
  await phone.type('Q5GLM');
  await phone.tap(box(12));
  await phone.tap(box(0));
  const before = await phone.ask(ticked);
  assert.equal(before.replace(/0/g, '').length, 2);
  await phone.ask(`(() => { const kind = document.getElementById('kind');
    kind.value = Array.from(kind.options).find((option) => option.value.startsWith('car-')).value;
    kind.dispatchEvent(new Event('change')); })()`);
  await phone.tap(box(1));
  await phone.picture('stop');
  await phone.close();

  phone = await browser();
  assert.equal(await phone.ask(ticked), before, 'the ticks are there after the browser was closed');
  assert.equal(await phone.ask("document.getElementById('who').value"), 'Q5GLM');
  await phone.tap("document.getElementById('send')");
  const table = await phone.ask("document.getElementById('text').value");
  assert.equal(table.trim().split('\n').length, 4, 'a heading and three ticks');
  await phone.picture('send');
  assert.deepEqual(phone.faults, []);
  await phone.close();
  process.stdout.write(table);
})().catch((failed) => {
  console.error(failed.message);
  process.exit(1);
});
