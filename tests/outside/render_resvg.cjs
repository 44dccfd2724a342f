// SPDX-License-Identifier: MIT
// Draws an SVG with resvg: render_resvg.cjs IN.svg OUT.png DPI WIDTH HEIGHT FONT-FILE...
'use strict';
const fs = require('fs');
const {PNG} = require('pngjs');
const {Resvg} = require('@resvg/resvg-js');

const [from, to, dpi, width, height, ...fontFiles] = process.argv.slice(2);
const resvg = new Resvg(fs.readFileSync(from), {
    // A CSS pixel is 1/96 inch.
    fitTo: {mode: 'zoom', value: Number(dpi) / 96},
    background: 'white',
    font: {loadSystemFonts: false, fontFiles, defaultFontFamily: 'EB Garamond'},
});
// Programs round the last row of pixels up or down; the asked size is cut out.
const drawn = PNG.sync.read(Buffer.from(resvg.render().asPng()));
const cut = new PNG({width: Number(width), height: Number(height)});
PNG.bitblt(drawn, cut, 0, 0, cut.width, cut.height, 0, 0);
fs.writeFileSync(to, PNG.sync.write(cut));
