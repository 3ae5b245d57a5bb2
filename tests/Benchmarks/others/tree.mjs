// The shortest time in ms that ag-psd needs for the tree of a file, image data skipped. Arguments: the folder it is installed in, the file.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';

const [folder, path] = process.argv.slice(2);
const { readPsd } = createRequire(join(resolve(folder), 'package.json'))('ag-psd');
const options = { skipLayerImageData: true, skipCompositeImageData: true, skipThumbnail: true, logMissingFeatures: false };

const times = [];
for (let i = 0; i < 15; i++) {
    const start = performance.now();
    readPsd(readFileSync(path), options);
    times.push(performance.now() - start);
}
console.log(Math.min(...times));
