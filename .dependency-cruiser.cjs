// The floors of the house (DEVELOPERS.md): a wrong import fails `npm run lint:floors`.
const floor0 = ['measure', 'figure', 'words', 'reference'];
const floor1 = ['event', 'household'];
const floor2 = ['guests', 'menu', 'buying', 'kitchen', 'frying', 'calibration', 'drinks', 'cooking', 'timeline', 'safety'];
const above3 = ['changes', 'service', 'edit', 'exchange'];
const rooms = [...floor0, ...floor1, ...floor2, 'plan', ...above3, 'sheets', 'host'];
const any = (list) => `^shared/(${list.join('|')})/`;

const rules = [];
const forbid = (name, from, to, comment) => rules.push({ name, severity: 'error', comment, from, to });

// Through the other room's public file only.
for (const room of rooms) {
  forbid(`public-file-of-${room}`, { path: `^(shared|src-main|src-renderer)/`, pathNot: `^shared/${room}/` },
    { path: `^shared/${room}/`, pathNot: `^shared/${room}/index\\.tsx?$${room === 'host' ? '|^shared/host/methods\\.ts$' : ''}` }, 'enter a room through its index file');
}
for (const room of floor0) {
  forbid(`floor-0-${room}`, { path: `^shared/${room}/` }, { path: '^shared/', pathNot: `^shared/${room}/` }, 'floor 0 knows nothing else');
}
for (const room of floor1) {
  forbid(`floor-1-${room}`, { path: `^shared/${room}/` }, { path: '^shared/', pathNot: [`^shared/${room}/`, any(floor0), ...(room === 'household' ? ['^shared/event/'] : [])] }, 'floor 1 builds on floor 0');
}
floor2.forEach((room, at) => {
  forbid(`floor-2-${room}`, { path: `^shared/${room}/` },
    { path: '^shared/', pathNot: [`^shared/${room}/`, any([...floor0, ...floor1]), ...(at > 0 ? [any(floor2.slice(0, at))] : [])] }, 'floor 2 looks down and to its left');
});
forbid('floor-3-plan', { path: '^shared/plan/' }, { path: '^shared/', pathNot: any([...floor0, ...floor1, ...floor2, 'plan']) }, 'the plan composes floor 2');
for (const room of above3) {
  forbid(`floor-3-${room}`, { path: `^shared/${room}/` }, { path: '^shared/', pathNot: any([...floor0, ...floor1, ...floor2, 'plan', room]) }, 'rooms beside the plan do not import each other');
}
forbid('floor-4-sheets', { path: '^shared/sheets/' }, { path: '^shared/host/' }, 'sheets know no host');
forbid('floor-4-host', { path: '^shared/host/' }, { path: '^shared/', pathNot: '^shared/(host|event)/' }, 'the contract stands alone');
forbid('shared-is-pure', { path: '^shared/' }, { path: '^(src-main|src-renderer|tests)/|^node:|^electron$' }, 'the core knows neither hosts nor faces');
forbid('faces-know-no-host', { path: '^src-renderer/' }, { path: '^src-main/|^node_modules/electron/' }, 'a face talks through the contract');
forbid('hosts-know-no-face', { path: '^src-main/' }, { path: '^src-renderer/' }, 'a host serves the built face');
forbid('electron-only-in-desktop', { path: '^(src-main|src-renderer|shared)/', pathNot: '^src-main/desktop/' }, { path: 'node_modules/electron/' }, 'only the desktop host imports electron');
forbid('no-cycles', {}, { circular: true }, 'no circles');

module.exports = {
  forbidden: rules,
  options: {
    parser: 'swc',
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^out/' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs', '.json'] },
    builtInModules: {},
  },
};

// The checker hands .tsx files to its parser without saying that they draw; without this it stops at the first `<section className=…>`.
const swc = require('@swc/core');
const parseFile = swc.parseFileSync.bind(swc);
swc.parseFileSync = (path, options) => parseFile(path, { ...options, tsx: path.endsWith('.tsx') });
