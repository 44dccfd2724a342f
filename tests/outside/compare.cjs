// SPDX-License-Identifier: MIT
// Compares two pictures of one page: compare.cjs FIRST.png SECOND.png MEAN SHARE PATCH [DIFFERENCE.png]
// MEAN, SHARE and PATCH are the most that is allowed of three measures. Edges are smoothed differently by every program, so
// single pixels may differ, but the colour of a patch may not.
'use strict';
const fs = require('fs');
const {PNG} = require('pngjs');

// A pixel counts as different from this step of a channel on (0 to 255).
const step = 64;
// Side of a patch: 20 pixels of A4 at 100 dpi, about 5 mm on paper: smaller than a cuff on a plate.
const patchesAcross = 827 / 20;

function read(path) {
    const png = PNG.sync.read(fs.readFileSync(path));
    const pixels = new Float64Array(png.width * png.height * 3);
    for (let i = 0; i < png.width * png.height; ++i) {
        const alpha = png.data[4 * i + 3] / 255;
        for (let c = 0; c < 3; ++c) pixels[3 * i + c] = png.data[4 * i + c] * alpha + 255 * (1 - alpha);
    }
    return {width: png.width, height: png.height, pixels};
}

function compare(first, second) {
    const {width, height} = first;
    const side = Math.round(width / patchesAcross);
    let sum = 0;
    let different = 0;
    const patches = new Map();
    for (let y = 0; y < height; ++y) {
        for (let x = 0; x < width; ++x) {
            const at = 3 * (y * width + x);
            const key = Math.floor(y / side) * 100000 + Math.floor(x / side);
            let patch = patches.get(key);
            if (!patch) patches.set(key, patch = {n: 0, d: [0, 0, 0], x, y});
            let most = 0;
            for (let c = 0; c < 3; ++c) {
                const d = first.pixels[at + c] - second.pixels[at + c];
                patch.d[c] += d;
                sum += Math.abs(d);
                most = Math.max(most, Math.abs(d));
            }
            ++patch.n;
            if (most >= step) ++different;
        }
    }
    let worst = {size: 0, x: 0, y: 0};
    for (const {n, d, x, y} of patches.values()) {
        // Patches cut by the edge of the page are too small to average anything out.
        if (n < side * side) continue;
        const size = Math.max(...d.map(v => Math.abs(v) / n));
        if (size > worst.size) worst = {size, x, y};
    }
    const pixels = width * height;
    return {mean: sum / (3 * pixels), share: 100 * different / pixels, patch: worst.size, where: worst};
}

function writeDifference(first, second, path) {
    const png = new PNG({width: first.width, height: first.height});
    for (let i = 0; i < first.width * first.height; ++i) {
        for (let c = 0; c < 3; ++c) png.data[4 * i + c] = 255 - Math.abs(first.pixels[3 * i + c] - second.pixels[3 * i + c]);
        png.data[4 * i + 3] = 255;
    }
    fs.writeFileSync(path, PNG.sync.write(png));
}

const [firstPath, secondPath, mean, share, patch, differencePath] = process.argv.slice(2);
const limits = {mean: Number(mean), share: Number(share), patch: Number(patch)};
const first = read(firstPath);
const second = read(secondPath);
if (first.width !== second.width || first.height !== second.height) {
    console.error(`sizes differ: ${first.width} x ${first.height} and ${second.width} x ${second.height}`);
    process.exit(1);
}
const result = compare(first, second);
console.log(`mean difference ${result.mean.toFixed(2)} (at most ${limits.mean}), ` +
            `pixels that differ by ${step} or more ${result.share.toFixed(2)} % (at most ${limits.share}), ` +
            `worst patch ${result.patch.toFixed(1)} at ${result.where.x}, ${result.where.y} (at most ${limits.patch})`);
if (result.mean > limits.mean || result.share > limits.share || result.patch > limits.patch) {
    if (differencePath) writeDifference(first, second, differencePath);
    console.error('the pictures differ');
    process.exit(1);
}
