// SPDX-License-Identifier: MIT
// Draws an SVG with resvg: render_resvg.cjs IN.svg OUT.png WIDTH-IN-PIXELS FONT-FILE...
'use strict';
const fs = require('fs');
const {Resvg} = require('@resvg/resvg-js');

const [from, to, width, ...fontFiles] = process.argv.slice(2);
const resvg = new Resvg(fs.readFileSync(from), {
    fitTo: {mode: 'width', value: Number(width)},
    background: 'white',
    font: {loadSystemFonts: false, fontFiles, defaultFontFamily: 'EB Garamond'},
});
fs.writeFileSync(to, resvg.render().asPng());
