// Opens pages in a headless browser, at two widths and as on paper, and says what is wrong with them.
//
//     node open.js BROWSER FOLDER PAGE...
//
// Prints one complaint a line. What each recording in a page decodes to goes to FOLDER, as 16-bit mono at 44,100 a
// second without a header: PAGE.1.pcm, PAGE.2.pcm. Pictures of the pages go there too.
'use strict';

const fs = require('fs');
const path = require('path');
const url = require('url');
const { chromium } = require('playwright-core');

const RATE = 44100;
const WIDTHS = [360, 1280];
// What a reader has to be able to call something.
const NAMED = new Set(['image', 'img', 'button', 'link', 'Audio', 'audio', 'slider', 'region', 'group', 'heading']);

const complain = (file, what) => process.stdout.write(`${path.basename(file)}: ${what}\n`);

/** Every node that a reader meets, with its role and name. */
async function tree(context, page) {
    const session = await context.newCDPSession(page);
    const { nodes } = await session.send('Accessibility.getFullAXTree');
    return nodes
        .filter((node) => !node.ignored)
        .map((node) => ({ role: node.role.value, name: node.name ? node.name.value : '' }));
}

/** Runs in the page: what is wider than the window and cannot be scrolled. */
function overflow() {
    const wide = [...document.querySelectorAll('body *')].filter(
        (element) => element.getBoundingClientRect().right > window.innerWidth + 1 && !element.closest('pre, .answer'),
    );
    return wide.map((element) => element.tagName).slice(0, 3);
}

/** Runs in an empty page: decodes a recording to one channel. */
async function decode({ base64, rate }) {
    const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
    const sound = await new OfflineAudioContext(1, rate, rate).decodeAudioData(bytes.buffer);
    const samples = sound.getChannelData(0);
    const whole = new Int16Array(samples.length);
    samples.forEach((sample, i) => { whole[i] = Math.round(Math.max(-1, Math.min(1, sample)) * 32767); });
    let binary = '';
    const octets = new Uint8Array(whole.buffer);
    for (let i = 0; i < octets.length; i += 8192) {
        binary += String.fromCharCode(...octets.subarray(i, i + 8192));
    }
    return btoa(binary);
}

async function look(browser, file, folder) {
    const address = url.pathToFileURL(path.resolve(file)).href;
    const context = await browser.newContext();
    for (const width of WIDTHS) {
        const page = await context.newPage();
        page.on('console', (message) => complain(file, `console: ${message.text()}`));
        page.on('pageerror', (error) => complain(file, `error: ${error.message}`));
        page.on('request', (request) => {
            if (request.url() !== address && !request.url().startsWith('data:')) {
                complain(file, `asks for ${request.url()}`);
            }
        });
        page.on('dialog', (dialog) => complain(file, `a dialog: ${dialog.message()}`));
        await page.setViewportSize({ width, height: 800 });
        await page.goto(address, { waitUntil: 'load' });
        (await page.evaluate(overflow)).forEach((tag) => complain(file, `${tag} is wider than ${width}`));
        const nodes = await tree(context, page);
        nodes.filter((node) => NAMED.has(node.role) && !node.name.trim())
            .forEach((node) => complain(file, `a ${node.role} without a name`));
        if (nodes.filter((node) => node.role === 'heading').length === 0) {
            complain(file, 'no heading');
        }
        if (width === WIDTHS[WIDTHS.length - 1]) {
            await onPaper(page, file, folder);
            await recordings(context, page, file, folder);
        }
        await page.close();
    }
    await context.close();
}

async function onPaper(page, file, folder) {
    await page.emulateMedia({ media: 'print' });
    const paper = await page.pdf({ format: 'A4' });
    if (paper.length < 1000) {
        complain(file, 'nothing on paper');
    }
    fs.writeFileSync(path.join(folder, `${path.basename(file)}.pdf`), paper);
    await page.emulateMedia({ media: 'screen' });
}

async function recordings(context, page, file, folder) {
    const sources = await page.evaluate(() => [...document.querySelectorAll('audio')].map((audio) => audio.src));
    const empty = await context.newPage();
    for (const [i, source] of sources.entries()) {
        try {
            const base64 = source.slice(source.indexOf(',') + 1);
            const pcm = await empty.evaluate(decode, { base64, rate: RATE });
            fs.writeFileSync(path.join(folder, `${path.basename(file)}.${i + 1}.pcm`), Buffer.from(pcm, 'base64'));
        } catch (broken) {
            complain(file, `recording ${i + 1} cannot be decoded: ${broken.message}`);
        }
    }
    await empty.close();
}

async function main([program, folder, ...files]) {
    const browser = await chromium.launch({
        executablePath: program,
        args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking',
            '--disable-component-update', '--disable-sync'],
    });
    for (const file of files) {
        await look(browser, file, folder);
    }
    await browser.close();
}

main(process.argv.slice(2)).catch((fault) => {
    process.stderr.write(`${fault.stack}\n`);
    process.exit(1);
});
