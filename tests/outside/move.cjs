// SPDX-License-Identifier: MIT
// Moves a picture to the right, to try the comparison: move.cjs IN.png OUT.png PIXELS
'use strict';
const fs = require('fs');
const {PNG} = require('pngjs');

const [from, to, by] = process.argv.slice(2);
const png = PNG.sync.read(fs.readFileSync(from));
const moved = new PNG({width: png.width, height: png.height});
moved.data.fill(255);
PNG.bitblt(png, moved, 0, 0, png.width - Number(by), png.height, Number(by), 0);
fs.writeFileSync(to, PNG.sync.write(moved));
