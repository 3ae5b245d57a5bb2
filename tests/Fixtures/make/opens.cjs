// Which fixtures ag-psd opens, with the pixels of every layer: one line a file, to standard output.
const fs = require('fs');
const path = require('path');
const { readPsd, initializeCanvas } = require('ag-psd');

initializeCanvas(() => { throw new Error('no canvas here'); }, (width, height) => ({ width, height, data: new Uint8ClampedArray(width * height * 4) }));
console.warn = console.log = () => { };
const names = layers => (layers || []).map(l => l.children ? { [l.name]: names(l.children) } : l.name);

for (const file of process.argv.slice(2)) {
    const say = (...cells) => process.stdout.write([path.basename(file), 'ag-psd', ...cells].join('\t') + '\n');
    try {
        const psd = readPsd(fs.readFileSync(file), { useImageData: true, useRawThumbnail: true, throwForMissingFeatures: false });
        say('yes', `${psd.width}x${psd.height} ${JSON.stringify(names(psd.children))}`);
    } catch (error) {
        say('no', JSON.stringify(String(error.message).slice(0, 160)));
    }
}
