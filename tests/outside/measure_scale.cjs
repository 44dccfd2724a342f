// SPDX-License-Identifier: MIT
// Measures the scale bar of a printed page as a man with a ruler would: measure_scale.cjs FILE.pdf WORK-FOLDER
// The bar stands between the words "1 : N" and "M cm" and must be M / N cm long on what poppler draws.
'use strict';
const {execFileSync} = require('child_process');
const fs = require('fs');
const {PNG} = require('pngjs');

const [pdf, folder] = process.argv.slice(2);
const dpi = 254;
const listed = execFileSync('pdftotext', ['-bbox', pdf, '-'], {encoding: 'utf8'});
const words = [...listed.matchAll(
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

// Only the strip between the words is drawn.
const pixel = points => Math.round(points * dpi / 72);
const left = pixel(bar.scale.right) + 2;
const top = pixel(bar.scale.top);
execFileSync('pdftoppm', ['-r', dpi, '-x', left, '-y', top, '-W', pixel(bar.length.left) - 2 - left,
    '-H', pixel(bar.scale.bottom) - top, '-png', '-singlefile', pdf, `${folder}/strip`].map(String));
const strip = PNG.sync.read(fs.readFileSync(`${folder}/strip.png`));
const dark = (x, y) => {
    const i = 4 * (y * strip.width + x);
    return strip.data[i] + strip.data[i + 1] + strip.data[i + 2] < 300;
};

// The longest stretch of a row from its first dark pixel to its last.
let longest = 0;
for (let y = 0; y < strip.height; ++y) {
    const row = [...Array(strip.width).keys()].filter(x => dark(x, y));
    if (row.length > 0) longest = Math.max(longest, row[row.length - 1] - row[0] + 1);
}
const measured = longest * 25.4 / dpi;
console.log(`the bar of ${centimetres} cm at 1 : ${scale} measures ${measured.toFixed(2)} mm, wanted ${expected.toFixed(2)} mm`);
// Half the outline of the bar at each end, and a pixel.
process.exit(Math.abs(measured - expected) <= 0.3 ? 0 : 1);
