// Writes the hydraulic fixtures that the Go line solver is tested against.
//
// The engine is EPANET (US Environmental Protection Agency, public domain) as
// packed for Node by the package epanet-js 0.9.0. It is used while developing
// only: run `npm install && node generate.js` to write lines.json and
// submains.json again. The Go tests read those files and need no Node.
//
// Every network is a reservoir, a line of equal pipes, and one emitter a pipe
// (q = k * P^x with P in psi), on an even slope. A positive slope climbs away
// from the inlet. Random networks come from a small seeded generator, so the
// same script writes the same files.
import { writeFileSync } from 'node:fs';
import { Project, Workspace } from 'epanet-js';

const PSI_PER_FOOT = 0.4333; // EPANET's own figure
const PRESSURE = 11; // property codes of the EPANET toolkit
const LINK_FLOW = 8;
const LINK_VELOCITY = 9;
const LINK_HEADLOSS = 10;

const workspace = new Workspace();
await workspace.loadModule();

function network(c) {
  const lines = ['[TITLE]', c.id, '[RESERVOIRS]', `R ${(c.inlet_psi / PSI_PER_FOOT).toFixed(10)}`];
  const k = c.emitter_gph / 60 / Math.pow(c.rated_psi, c.exponent);
  lines.push('[JUNCTIONS]');
  for (let i = 1; i <= c.emitters; i++) {
    lines.push(`J${i} ${((c.slope_percent / 100) * i * c.spacing_ft).toFixed(10)} 0`);
  }
  lines.push('[PIPES]');
  const last = c.law === 'H-W' ? c.c : c.roughness_millifeet;
  for (let i = 1; i <= c.emitters; i++) {
    lines.push(`P${i} ${i === 1 ? 'R' : `J${i - 1}`} J${i} ${c.spacing_ft} ${c.bore_in} ${last} 0 Open`);
  }
  lines.push('[EMITTERS]');
  for (let i = 1; i <= c.emitters; i++) lines.push(`J${i} ${k.toFixed(14)}`);
  lines.push(
    '[OPTIONS]', 'Units GPM', `Headloss ${c.law}`, `Emitter Exponent ${c.exponent}`,
    'Accuracy 0.0000001', 'Trials 500', 'Viscosity 1', 'Specific Gravity 1', '[END]',
  );
  return lines.join('\n');
}

function solve(c) {
  workspace.writeFile('line.inp', network(c));
  const model = new Project(workspace);
  model.open('line.inp', 'line.rpt', 'line.bin');
  model.solveH();
  const psi = [];
  const flow = [];
  for (let i = 1; i <= c.emitters; i++) {
    psi.push(model.getNodeValue(model.getNodeIndex(`J${i}`), PRESSURE));
    flow.push(model.getLinkValue(model.getLinkIndex(`P${i}`), LINK_FLOW));
  }
  const velocity = model.getLinkValue(model.getLinkIndex('P1'), LINK_VELOCITY);
  model.close();
  const gph = flow.map((q, i) => (q - (flow[i + 1] ?? 0)) * 60);
  const r = (x) => Number(x.toPrecision(9));
  const profile = [];
  for (let part = 1; part <= 10; part++) {
    const i = Math.max(1, Math.round((c.emitters * part) / 10));
    profile.push({ emitter: i, psi: r(psi[i - 1]) });
  }
  return {
    ...c,
    total_gpm: r(flow[0]),
    inlet_ft_s: r(velocity),
    first_psi: r(psi[0]),
    last_psi: r(psi[psi.length - 1]),
    min_psi: r(Math.min(...psi)),
    first_gph: r(gph[0]),
    last_gph: r(gph[gph.length - 1]),
    min_gph: r(Math.min(...gph)),
    max_gph: r(Math.max(...gph)),
    profile,
  };
}

const base = { inlet_psi: 10, exponent: 0.5, emitter_gph: 0.27, rated_psi: 8, law: 'H-W', c: 150 };
const lettered = [
  { id: 'A', emitters: 100, spacing_ft: 1, bore_in: 0.625, slope_percent: 0, ...base },
  { id: 'B', emitters: 400, spacing_ft: 1, bore_in: 0.625, slope_percent: 0, ...base },
  { id: 'D', emitters: 400, spacing_ft: 1, bore_in: 0.625, slope_percent: 1, ...base },
  { id: 'E', emitters: 400, spacing_ft: 1, bore_in: 0.625, slope_percent: -1, ...base },
  { id: 'F', emitters: 400, spacing_ft: 1, bore_in: 0.875, slope_percent: 0, ...base },
  { id: 'H', emitters: 400, spacing_ft: 1, bore_in: 0.625, slope_percent: 0, ...base, law: 'D-W', c: undefined, roughness_millifeet: 0.005 },
];

// mulberry32: a 32-bit generator of a few lines, enough to vary test cases.
let state = 20270520;
function random() {
  state = (state + 0x6d2b79f5) | 0;
  let t = Math.imul(state ^ (state >>> 15), 1 | state);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
}
const between = (low, high, digits) => Number((low + (high - low) * random()).toFixed(digits));
const pick = (list) => list[Math.floor(random() * list.length)];

const randomCases = [];
for (let attempt = 0; randomCases.length < 48 && attempt < 1000; attempt++) {
  const roughWalled = randomCases.length % 3 === 2;
  const c = {
    id: `R${String(randomCases.length + 1).padStart(2, '0')}`,
    emitters: Math.round(between(20, 600, 0)),
    spacing_ft: pick([1 / 3, 0.5, 2 / 3, 1, 1.25, 1.5, 2]),
    bore_in: between(0.4, 1.2, 3),
    slope_percent: between(-3, 3, 2),
    inlet_psi: between(5, 15, 2),
    exponent: random() < 0.3 ? 0.5 : between(0.3, 1, 2),
    emitter_gph: between(0.1, 0.5, 3),
    rated_psi: 8,
    law: roughWalled ? 'D-W' : 'H-W',
    ...(roughWalled ? { roughness_millifeet: between(0.002, 0.05, 4) } : { c: pick([120, 130, 140, 150]) }),
  };
  const answer = solve(c);
  // A line that runs dry is outside what the oracle answers: EPANET would let
  // the emitter draw water in.
  if (answer.min_psi > 0.3 && Number.isFinite(answer.total_gpm)) randomCases.push(answer);
}

const submains = [1.0, 1.5, 2.0].map((bore) =>
  solve({
    id: `submain-${bore.toFixed(2)}`, emitters: 20, spacing_ft: 5, bore_in: bore, slope_percent: 0,
    inlet_psi: 10, exponent: 0.5, emitter_gph: 81, rated_psi: 8, law: 'H-W', c: 140,
  }),
);

function singlePipe(id, units, flow, length, bore, c) {
  const inp = ['[RESERVOIRS]', 'R 500', '[JUNCTIONS]', `J 0 ${flow}`, '[PIPES]', `P R J ${length} ${bore} ${c} 0 Open`,
    '[OPTIONS]', `Units ${units}`, 'Headloss H-W', 'Accuracy 0.0000001', '[END]'].join('\n');
  workspace.writeFile('pipe.inp', inp);
  const model = new Project(workspace);
  model.open('pipe.inp', 'pipe.rpt', 'pipe.bin');
  model.solveH();
  const link = model.getLinkIndex('P');
  const answer = { id, units, flow, length, bore, c,
    headloss: Number(model.getLinkValue(link, LINK_HEADLOSS).toPrecision(9)),
    velocity: Number(model.getLinkValue(link, LINK_VELOCITY).toPrecision(9)) };
  model.close();
  return answer;
}

const about = {
  source: 'EPANET (US EPA), through the npm package epanet-js 0.9.0; written by generate.js',
  units: 'lengths ft, bores in, pressures psi, line flow US gal/min, emitter flow US gal/h; k from emitter_gph at rated_psi',
  engine: workspace.version,
};
const write = (name, data) => writeFileSync(new URL(name, import.meta.url), JSON.stringify(data, null, 1) + '\n');
write('lines.json', { ...about, cases: [...lettered.map(solve), ...randomCases] });
write('submains.json', { ...about, cases: submains,
  pipes: [singlePipe('us', 'GPM', 20, 300, 2.067, 150), singlePipe('si', 'LPS', 1.25, 100, 52.5, 150)] });
console.log(`${lettered.length} lettered, ${randomCases.length} random, ${submains.length} submains`);
