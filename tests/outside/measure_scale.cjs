// SPDX-License-Identifier: MIT
// Measures the scale bar of a printed page as a man with a ruler would: measure_scale.cjs WORDS.html PAGE.png DPI
// WORDS.html is what `pdftotext -bbox` says of the PDF, PAGE.png what another program drew of it. The bar stands between the
// words "1 : N" and "M cm" and must be M / N cm long.
'use strict';
const fs = require('fs');
const {PNG} = require('pngjs');

const [wordsPath, pagePath, dpiText] = process.argv.slice(2);
const dpi = Number(dpiText);
const words = [...fs.readFileSync(wordsPath, 'utf8').matchAll(
    /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)<\/word>/g)]
    .map(([, left, top, right, bottom, text]) => ({left: +left, top: +top, right: +right, bottom: +bottom, text}));

// Words are listed in no order to be relied on: what stands on one line, and beside each other, is seen from their places.
const number = /^\d+(\.\d+)?$/;
const line = word => words.filter(other => Math.abs(other.bottom - word.bottom) < 2);
const before = word => line(word).find(other => Math.abs(other.right - word.left) < 4 && other !== word);
const after = word => line(word).find(other => Math.abs(other.left - word.right) < 4 && other !== word);

function findBar() {
    for (const unit of words.filter(word => word.text === 'cm')) {
        const length = before(unit);
        const colon = line(unit).find(word => word.text === ':' && before(word)?.text === '1');
        const scale = colon && after(colon);
        if (length && scale && number.test(length.text) && number.test(scale.text)) return {scale, length};
    }
    console.error('there is no scale bar between "1 : N" and "M cm"');
    process.exit(1);
}

const bar = findBar();
const scale = Number(bar.scale.text);
const centimetres = Number(bar.length.text);
const expected = 10 * centimetres / scale;

const page = PNG.sync.read(fs.readFileSync(pagePath));
const pixel = points => Math.round(points * dpi / 72);
// Longest stretch of the window's rows from the first dark pixel to the last.
let longest = 0;
for (let y = pixel(bar.scale.top); y <= pixel(bar.scale.bottom); ++y) {
    let first = -1;
    let last = -1;
    for (let x = pixel(bar.scale.right) + 2; x < pixel(bar.length.left) - 2; ++x) {
        const i = 4 * (y * page.width + x);
        if (page.data[i] + page.data[i + 1] + page.data[i + 2] >= 300) continue;
        if (first < 0) first = x;
        last = x;
    }
    if (first >= 0) longest = Math.max(longest, last - first + 1);
}
const measured = longest * 25.4 / dpi;
console.log(`the bar of ${centimetres} cm at 1 : ${scale} measures ${measured.toFixed(2)} mm, wanted ${expected.toFixed(2)} mm`);
// Half the outline of the bar at each end, and a pixel.
process.exit(Math.abs(measured - expected) <= 0.3 ? 0 : 1);
