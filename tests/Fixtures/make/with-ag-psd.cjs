// Fixtures written by ag-psd (MIT).
const fs = require('fs');
const path = require('path');
const { writePsdBuffer, initializeCanvas } = require('ag-psd');

initializeCanvas(() => { throw new Error('no canvas here'); }, (width, height) => ({ width, height, data: new Uint8ClampedArray(width * height * 4) }));

const folder = path.join(__dirname, '..');
const maker = 'ag-psd ' + JSON.parse(fs.readFileSync(path.join(path.dirname(require.resolve('ag-psd')), '..', 'package.json'))).version;

function box(width, height, [r, g, b]) {
    const data = new Uint8ClampedArray(width * height * 4);
    for (let i = 0; i < data.length; i += 4) data.set([r, g, b, 255], i);
    return { width, height, data };
}

function part(name, left, top, width, height, colour, more) {
    return { name, left, top, right: left + width, bottom: top + height, imageData: box(width, height, colour), ...more };
}

const head = more => part('Head', 9, 2, 14, 12, [242, 191, 153], more);
const arm = more => part('Arm L', 21, 12, 5, 10, [230, 153, 115], more);

function written(name, feature, special, children, more, options) {
    const psd = { width: 32, height: 32, imageData: box(32, 32, [119, 119, 119]), children, ...more };
    fs.writeFileSync(path.join(folder, name), writePsdBuffer(psd, options));
    fs.appendFileSync(process.env.FIXTURE_NOTES, [name, feature, maker, special].join('\t') + '\n');
}

const colour = { r: 51, g: 102, b: 178 };
const px = value => ({ units: 'Pixels', value });

written('ag-plain.psd', 'plain RGB', 'its own defaults', [head(), arm()]);
written('ag-plain.psb', 'plain PSB', '', [head(), arm()], {}, { psb: true });
written('ag-zip.psd', 'ZIP channels as ag-psd writes them', '', [head(), arm()], {}, { compress: true });
written('ag-groups.psd', 'groups, closed and hidden', '', [
    { name: 'Figure', opened: true, blendMode: 'pass through', children: [
        { name: 'Arms', opened: false, hidden: true, blendMode: 'normal', children: [arm()] }, head()] }]);
written('ag-mask.psd', 'user mask with density and feather', '', [
    head({ mask: { left: 11, top: 4, right: 21, bottom: 12, defaultColor: 0, imageData: box(10, 8, [200, 200, 200]), userMaskDensity: 0.5, userMaskFeather: 2 } })]);
written('ag-text.psd', 'live text layer', 'TySh; no pixels in the layer', [
    head(), { name: 'Note', text: { text: 'Arm L\n左腕', transform: [1, 0, 0, 1, 4, 20], style: { font: { name: 'InventedSans' }, fontSize: 8, fillColor: colour } } }]);
const id = '20953ddb-9391-11ec-b4f1-c15674f50bc4'; // invented
const placed = head({ name: 'Placed L', placedLayer: { id, placed: '20953dda-9391-11ec-b4f1-c15674f50bc4', type: 'raster',
    transform: [9, 2, 23, 2, 23, 14, 9, 14], width: 14, height: 12, resolution: { value: 72, units: 'Density' } } });
const linkedFiles = [{ id, name: 'arm.txt', data: new TextEncoder().encode('an invented placed file') }];
written('ag-placed.psd', 'placed content', 'PlLd and SoLd in the layer, lnk2 global with a text file inside', [placed], { linkedFiles });
written('ag-placed.psb', 'placed content in PSB', 'lnk2 has an 8-byte length', [placed], { linkedFiles }, { psb: true });
written('ag-vector.psd', 'shape layer', 'vmsk and SoCo', [
    head({ name: 'Shape', vectorFill: { type: 'color', color: colour }, vectorMask: { paths: [{ open: false, operation: 'combine', fillRule: 'non-zero', knots: [
        { linked: true, points: [10, 4, 10, 4, 12, 3] }, { linked: true, points: [20, 4, 20, 4, 20, 6] }, { linked: false, points: [15, 12, 15, 12, 15, 12] }] }] } })]);
written('ag-effects.psd', 'object effects', 'lfx2 with a drop shadow and a stroke, lrFX beside it', [
    head({ effects: {
        dropShadow: [{ enabled: true, size: px(4), angle: 120, distance: px(3), color: colour, blendMode: 'multiply', opacity: 0.5, useGlobalLight: true, present: true, showInDialog: true, choke: px(0), noise: 0, antialiased: false, layerConceals: true, contour: { name: 'Linear', curve: [{ x: 0, y: 0 }, { x: 255, y: 255 }] } }],
        stroke: [{ enabled: true, size: px(1), position: 'outside', fillType: 'color', blendMode: 'normal', opacity: 1, color: colour, overprint: false, present: true, showInDialog: true }] } })]);
written('ag-adjustments.psd', 'adjustment layers', 'brightness, curves, invert, threshold', [
    head(),
    { name: 'Brightness', adjustment: { type: 'brightness/contrast', brightness: 10, contrast: 20, meanValue: 127, useLegacy: false, labColorOnly: false, automatic: false } },
    { name: 'Curves', adjustment: { type: 'curves', rgb: [{ input: 0, output: 0 }, { input: 128, output: 140 }, { input: 255, output: 255 }] } },
    { name: 'Invert', adjustment: { type: 'invert' } },
    { name: 'Threshold', adjustment: { type: 'threshold', level: 100 } }]);
written('ag-gradient-fill.psd', 'gradient fill layer', 'GdFl', [
    { name: 'Gradient', vectorFill: { type: 'solid', name: 'Invented', style: 'linear', angle: 90, scale: 100, dither: false, reverse: false, smoothness: 1, align: true,
        colorStops: [{ color: colour, location: 0, midpoint: 50 }, { color: { r: 255, g: 255, b: 255 }, location: 1, midpoint: 50 }],
        opacityStops: [{ opacity: 1, location: 0, midpoint: 50 }, { opacity: 0, location: 1, midpoint: 50 }] } }, head()]);
written('ag-marks-and-locks.psd', 'marks, locks, fill opacity and ids as ag-psd writes them', '', [
    head({ layerColor: 'green', fillOpacity: 0.5, id: 5, protected: { transparency: true, composite: false, position: true } }),
    arm({ layerColor: 'red', clipping: true, id: 6, opacity: 0.25, blendMode: 'screen' })]);
written('ag-resources.psd', 'resources as ag-psd writes them', 'guides and resolution', [head()], { imageResources: {
    resolutionInfo: { horizontalResolution: 300, horizontalResolutionUnit: 'PPI', widthUnit: 'Inches', verticalResolution: 300, verticalResolutionUnit: 'PPI', heightUnit: 'Inches' },
    gridAndGuidesInformation: { grid: { horizontal: 576, vertical: 576 }, guides: [{ location: 16, direction: 'vertical' }, { location: 26, direction: 'horizontal' }] } } });
