// Prints as JSON what ag-psd reads from each file named on the command line: the layers front to back, and a hash of the pixels of
// each as RGBA, where samples have 8 bits. The first argument is the folder that ag-psd is installed in.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';

const [readersFolder, ...paths] = process.argv.slice(2);
const { initializeCanvas, readPsd } = createRequire(join(resolve(readersFolder), 'package.json'))('ag-psd');
initializeCanvas(
    () => { throw new Error('no canvas here'); },
    (width, height) => ({ width, height, data: new Uint8ClampedArray(4 * width * height) }));

const digest = data => createHash('sha256').update(data).digest('hex');

function pixels(image) {
    const isEmpty = !image || !image.width || !image.height;
    return isEmpty || image.data.BYTES_PER_ELEMENT !== 1 ? null : digest(image.data);
}

function walk(children, depth, found) {
    for (const layer of [...children].reverse()) {
        const group = layer.children !== undefined;
        found.push({
            name: layer.name,
            depth,
            group,
            bounds: group ? null : [layer.left ?? 0, layer.top ?? 0, layer.right ?? 0, layer.bottom ?? 0],
            visible: !layer.hidden,
            opacity: Math.round((layer.opacity ?? 1) * 255),
            clipped: Boolean(layer.clipping),
            rgba: group ? null : pixels(layer.imageData),
        });
        if (group) walk(layer.children, depth + 1, found);
    }
}

function read(path) {
    try {
        const psd = readPsd(readFileSync(path), { useImageData: true, skipThumbnail: true, skipCompositeImageData: true, logMissingFeatures: false });
        const found = [];
        walk(psd.children ?? [], 0, found);
        return { path, width: psd.width, height: psd.height, layers: found, error: null };
    } catch (error) { // the caller decides which files must be readable
        return { path, error: String(error) };
    }
}

process.stdout.write(JSON.stringify(paths.map(read)));
